/** Stands in for Node's streams in the page: sax looks for them, and does without. */
export const Stream = undefined;

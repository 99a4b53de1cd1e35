/** Apart from what packs and unpacks: that is loaded when there is an archive. */
export const archiveMediaType = 'application/zip';

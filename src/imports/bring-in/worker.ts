import { messagePieces } from '../../survey/message-pieces';
import { proposalOf } from './combine';
import type { Answer, Jobs, Request } from './messages';
import { readFiles } from './read-file';
import type { ReadSource } from './types';

/** The worker's entry: reads files away from the page, keeps what they hold, and answers what would come in. */
let sources: readonly ReadSource[] = [];

const post = (answer: Answer) => self.postMessage(answer);

async function run(message: Request): Promise<Jobs[keyof Jobs][1]> {
  if (message.job === 'propose') {
    const proposal = proposalOf(sources, message.request.surroundings, message.request.answers);
    // In pieces, so that none of them holds the page up.
    for (const candidates of messagePieces(proposal.candidates, ({ shape }) => shape.coordinates))
      post({ id: message.id, candidates });
    return { ...proposal, candidates: [] };
  }
  let told = 0;
  const progress = (share: number) => {
    // Hundredths are all that a person sees.
    if (share - told < 0.01 && share < 1) return;
    told = share;
    post({ id: message.id, progress: share });
  };
  const read = await readFiles(message.request.files, { progress, now: message.request.now });
  sources = read.sources;
  return { read: sources.length, refused: read.refused };
}

self.addEventListener('message', ({ data }: MessageEvent<Request>) => {
  run(data).then(
    (response) => post({ id: data.id, response }),
    (error: unknown) =>
      post({ id: data.id, failed: error instanceof Error ? (error.stack ?? error.message) : String(error) }),
  );
});

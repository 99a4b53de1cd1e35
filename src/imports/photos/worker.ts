import type { PhotosAnswer, PhotosRequest } from './messages';
import { readPhotos } from './read-photos';

/** The worker's entry: reads what photographs say of themselves, away from the page. */
const post = (answer: PhotosAnswer) => self.postMessage(answer);

/** Photographs between two words about how far it is. */
const toldEvery = 10;

self.addEventListener('message', ({ data }: MessageEvent<PhotosRequest>) => {
  readPhotos(data.files, (done, of) => {
    if (done % toldEvery === 0) post({ done, of });
  }).then(
    (records) => post({ records }),
    (error: unknown) => post({ failed: error instanceof Error ? error.message : String(error) }),
  );
});

import { Answering } from './answering';
import type { Request } from './messages';

const answering = new Answering(() => performance.now());

self.onmessage = ({ data }: MessageEvent<Request>) => {
  const { response, transfer } = answering.answer(data);
  self.postMessage(response, { transfer });
};

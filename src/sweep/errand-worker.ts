import { runErrand, type Errand } from './errands';

self.onmessage = ({ data }: MessageEvent<Errand>) =>
  void runErrand(data).then((answer) => self.postMessage(answer));

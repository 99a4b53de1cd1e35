import { sweep } from './sweep.bench.ts';
sweep();

import type { Answers, Candidate, Proposal, Surroundings } from './types';

/** What the page asks of the import's worker: name -> [request, response]. */
export interface Jobs {
  /** Reads the files and keeps what they hold. `refused`: why others could not be read. */
  read: [
    request: { readonly files: readonly File[]; readonly now: number },
    response: { readonly read: number; readonly refused: readonly string[] },
  ];
  /** What would come in of all that has been read. */
  propose: [request: { readonly surroundings: Surroundings; readonly answers: Answers }, response: Proposal];
}

export type Request = {
  [J in keyof Jobs]: { readonly id: number; readonly job: J; readonly request: Jobs[J][0] };
}[keyof Jobs];

export type Answer =
  | { readonly id: number; readonly progress: number }
  /** Some of the candidates of a proposal; the response that ends it has none. */
  | { readonly id: number; readonly candidates: readonly Candidate[] }
  | { readonly id: number; readonly response: Jobs[keyof Jobs][1] }
  /** An error in the program, not in the file. */
  | { readonly id: number; readonly failed: string };

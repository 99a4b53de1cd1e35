import type { PhotoRecord } from '../../survey/photo-record';

/** What the page asks of the worker that reads photographs, once. */
export interface PhotosRequest {
  readonly files: readonly File[];
}
export type PhotosAnswer =
  | { readonly done: number; readonly of: number }
  | { readonly records: readonly PhotoRecord[] }
  | { readonly failed: string };

/** Files that are photographs, and how much is preferred of those with one name: the camera's JPEG is the quickest to read. */
const kinds = ['jpg', 'jpeg', 'heic', 'heif', 'tif', 'tiff', 'dng', 'nef', 'cr2', 'arw', 'pef', 'orf', 'rw2'];

export interface PhotoFiles<F> {
  readonly photo: F;
  /** The XMP file beside it. */
  readonly sidecar: F | null;
}

const parts = (name: string) => {
  const dot = name.lastIndexOf('.');
  return dot <= name.lastIndexOf('/')
    ? { stem: name, end: '' }
    : { stem: name.slice(0, dot), end: name.slice(dot + 1).toLowerCase() };
};

/**
 * One entry a photograph, in the order of names: raw and JPEG of one name are one frame, and an XMP file belongs to the
 * photograph of its name ("a.xmp" or "a.jpg.xmp"). What is no photograph is passed over.
 */
export function pairFiles<F>(files: readonly F[], nameOf: (file: F) => string): readonly PhotoFiles<F>[] {
  const sidecars = new Map<string, F>();
  const frames = new Map<string, { readonly file: F; readonly rank: number; readonly name: string }>();
  for (const file of files) {
    const name = nameOf(file);
    const { stem, end } = parts(name);
    if (end === 'xmp') sidecars.set(stem.toLowerCase(), file);
    const rank = kinds.indexOf(end);
    if (rank < 0) continue;
    const known = frames.get(stem.toLowerCase());
    if (!known || rank < known.rank) frames.set(stem.toLowerCase(), { file, rank, name });
  }
  return [...frames]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([stem, { file, name }]) => ({
      photo: file,
      sidecar: sidecars.get(stem) ?? sidecars.get(name.toLowerCase()) ?? null,
    }));
}

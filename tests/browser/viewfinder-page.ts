import { frameFor, type FrameChoice } from '../../src/figures/frame/frame-for';
import { landscape, type Hold } from '../../src/figures/optics/framing';
import { nothingPinned, type Pinned } from '../../src/figures/optics/settings';
import { outlookOf } from '../../src/figures/outlook';
import { spotFigures } from '../../src/figures/spot-figures';
import { everyPath } from '../../src/figures/traffic/every-path';
import { readContents } from '../../src/survey/contents';
import { openSurvey } from '../../src/survey/open';
import { Viewfinder } from '../../src/viewfinder/viewfinder';

/** A picture to be drawn: a survey's text, a spot and a path in it, and how the camera is set. */
export interface Wanted {
  readonly survey: string;
  readonly spot: string;
  readonly path: string;
  /** m on the path; the best sample when left out. */
  readonly station?: number;
  /** ms since 1970, UTC. */
  readonly at: number;
  readonly subject?: string;
  readonly hold?: Hold;
  readonly pinned?: Partial<Pinned>;
  readonly width: number;
  readonly height: number;
  readonly brightness?: boolean;
}

let viewfinder: Viewfinder | null = null;
const drawer = () => (viewfinder ??= new Viewfinder());

function frame({ survey, spot, path, station, at, subject, hold = landscape, pinned = {} }: Wanted) {
  const opened = openSurvey(survey);
  if (!opened.ok) throw new Error(opened.reason);
  const read = readContents(opened.survey);
  const contents = { ...read, subject: read.subjects.find((s) => s.key === subject) ?? read.subject };
  const outlook = outlookOf(contents, null);
  const standing = contents.spots.find((s) => s.id === spot);
  const along = everyPath(contents, () => true, null).find((p) => p.ref.path === path);
  const [lens] = contents.kit.lenses;
  if (!standing || !along || !lens) throw new Error('expected a spot, a path and a lens');
  const [figures] = spotFigures(standing, [along], outlook, [at]);
  if (!figures) throw new Error('expected figures');
  const wanted = station ?? figures.paths[0]?.best.station ?? 0;
  const stations = Array.from(along.samples.station);
  const index = stations.reduce(
    (best, s, i) => (Math.abs(s - wanted) < Math.abs((stations[best] ?? 0) - wanted) ? i : best),
    0,
  );
  const choose = (focalLength: number | null): FrameChoice => ({
    lens,
    hold,
    pinned: { ...nothingPinned, ...pinned, focalLength },
  });
  const look = (focal: number | null) =>
    frameFor(standing, figures.ground, along, index, contents, outlook, at, choose(focal));
  // At the needed focal length the subject takes the wanted share of the frame: there the two must agree.
  const needed = look(null).needed;
  return { ...look(pinned.focalLength ?? needed), fill: contents.kit.fill, subject: contents.subject };
}

export function measure(wanted: Wanted) {
  const { picture, sample, needed, fill, card, subject } = frame(wanted);
  const measured = drawer().measure(picture, wanted.width, wanted.height, wanted.brightness);
  return { measured, sample, needed, fill, warnings: card.warnings, subject, lens: picture.lens };
}

/** Draws on a canvas of the page; ms of script that drawing took, first and later. */
export function draw(wanted: Wanted): { readonly first: number; readonly later: number } {
  const { picture } = frame(wanted);
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width: wanted.width, height: wanted.height });
  document.body.replaceChildren(canvas);
  const began = performance.now();
  drawer().draw(picture, canvas);
  const first = performance.now() - began;
  const times = Array.from({ length: 12 }, (_, i) => {
    const from = performance.now();
    drawer().draw(picture, canvas, { right: i * 0.01, up: 0 });
    return performance.now() - from;
  }).sort((a, b) => a - b);
  drawer().draw(picture, canvas);
  return { first, later: times[6] ?? NaN };
}

/** Draws, and tells how many px are at least so bright (0 to 255) and where their middle is; with what it was drawn from. */
export function bright(wanted: Wanted, least: number) {
  const { width, height } = wanted;
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const { picture } = frame(wanted);
  drawer().draw(picture, canvas);
  const { data } = canvas.getContext('2d')?.getImageData(0, 0, width, height) ?? {
    data: new Uint8ClampedArray(0),
  };
  let [count, x, y] = [0, 0, 0];
  for (let i = 0; i < width * height; i++) {
    if (Math.min(data[4 * i] ?? 0, data[4 * i + 1] ?? 0, data[4 * i + 2] ?? 0) < least) continue;
    count++;
    x += (i % width) + 0.5;
    y += Math.floor(i / width) + 0.5;
  }
  const { camera, lens, moon, sun } = picture;
  return { count, x: x / count, y: y / count, camera, lens, moon, sun };
}

/** Draws, and tells how bright a box of the picture is, in shares of its sides: 0 to 255, the darkest and brightest px and the mean. */
export function brightness(wanted: Wanted, left: number, top: number, right: number, bottom: number) {
  const { width, height } = wanted;
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  drawer().draw(frame(wanted).picture, canvas);
  const box = [left * width, top * height, (right - left) * width, (bottom - top) * height] as const;
  const { data } = canvas.getContext('2d')?.getImageData(...box) ?? { data: new Uint8ClampedArray(0) };
  const values = Array.from({ length: data.length / 4 }, (_, i) => {
    const [r, g, b] = data.subarray(4 * i, 4 * i + 3);
    return 0.3 * (r ?? 0) + 0.6 * (g ?? 0) + 0.1 * (b ?? 0);
  });
  return {
    least: Math.min(...values),
    most: Math.max(...values),
    mean: values.reduce((sum, v) => sum + v, 0) / values.length,
  };
}

export const cost = () => drawer().cost;
export function dispose(): void {
  viewfinder?.dispose();
  viewfinder = null;
}

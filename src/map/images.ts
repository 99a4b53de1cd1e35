import { palettes, type Look, type Palette } from '../../styles/map-style';

/** Pixels of an image for each pixel of the screen: sharp on fine screens as well. */
export const imageScale = 3;

type Pen = OffscreenCanvasRenderingContext2D;

function drawn(width: number, height: number, draw: (pen: Pen) => void): ImageData {
  const canvas = new OffscreenCanvas(width * imageScale, height * imageScale);
  // Read back at once: a canvas that the graphics card draws would be waited for.
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('expected a canvas that can be drawn on');
  pen.scale(imageScale, imageScale);
  pen.lineJoin = 'round';
  pen.lineCap = 'round';
  draw(pen);
  return pen.getImageData(0, 0, canvas.width, canvas.height);
}

/** Slanting lines that meet at the tiles' edges. */
const hatch = (size: number, colour: string, width: number) =>
  drawn(size, size, (pen) => {
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.beginPath();
    for (const shift of [-size, 0, size]) {
      pen.moveTo(shift - 1, size + 1);
      pen.lineTo(shift + size + 1, -1);
    }
    pen.stroke();
  });

/** A station mark as field books have it: a triangle with a point in it. */
const station = (edge: string, { sheet }: Palette, width: number, crossed: boolean) =>
  drawn(24, 24, (pen) => {
    pen.beginPath();
    pen.moveTo(12, 3);
    pen.lineTo(21, 18.6);
    pen.lineTo(3, 18.6);
    pen.closePath();
    pen.fillStyle = sheet;
    pen.fill();
    pen.strokeStyle = sheet;
    pen.lineWidth = width + 2.4;
    pen.stroke();
    pen.fill();
    pen.strokeStyle = edge;
    pen.lineWidth = width;
    pen.stroke();
    pen.beginPath();
    if (crossed) {
      pen.moveTo(8, 10.5);
      pen.lineTo(16, 18);
      pen.moveTo(16, 10.5);
      pen.lineTo(8, 18);
      pen.stroke();
    } else {
      pen.arc(12, 13.4, 1.6, 0, 2 * Math.PI);
      pen.fillStyle = edge;
      pen.fill();
    }
  });

/** An open square: where a thing is by the survey that is merged. */
const theirs = ({ sheet, signal }: Palette) =>
  drawn(30, 30, (pen) => {
    for (const [colour, width] of [
      [sheet, 5.5],
      [signal, 3],
    ] as const) {
      pen.strokeStyle = colour;
      pen.lineWidth = width;
      pen.strokeRect(4, 4, 22, 22);
    }
  });

const images: Readonly<Record<string, (paper: Palette) => ImageData>> = {
  theirs,
  // Glare is far round on the ramp, where it is dark in every look: light lines show.
  glare: (paper) => hatch(5, paper.hatch, 1.4),
  'no-go': (paper) => hatch(10, paper.noGo, 0.9),
  trees: (paper) =>
    drawn(28, 28, (pen) => {
      pen.strokeStyle = paper.tree;
      pen.lineWidth = 1;
      for (const [x, y] of [
        [6, 8],
        [20, 22],
      ] as const) {
        pen.beginPath();
        pen.arc(x, y, 2.6, Math.PI * 0.75, Math.PI * 2.25);
        pen.moveTo(x, y + 1);
        pen.lineTo(x, y + 4);
        pen.stroke();
      }
    }),
  chevron: (paper) =>
    drawn(12, 12, (pen) => {
      for (const [colour, width] of [
        [paper.sheet, 3.6],
        [paper.ink, 1.6],
      ] as const) {
        pen.strokeStyle = colour;
        pen.lineWidth = width;
        pen.beginPath();
        pen.moveTo(4, 2);
        pen.lineTo(8, 6);
        pen.lineTo(4, 10);
        pen.stroke();
      }
    }),
  tick: (paper) =>
    drawn(14, 4, (pen) => {
      pen.fillStyle = paper.sheet;
      pen.fillRect(0, 0.4, 14, 3.2);
      pen.fillStyle = paper.ink;
      pen.fillRect(0.8, 1.2, 12.4, 1.6);
    }),
  best: (paper) =>
    drawn(16, 16, (pen) => {
      pen.beginPath();
      pen.moveTo(8, 1.5);
      pen.lineTo(14.5, 8);
      pen.lineTo(8, 14.5);
      pen.lineTo(1.5, 8);
      pen.closePath();
      pen.fillStyle = paper.ink;
      pen.fill();
      pen.strokeStyle = paper.sheet;
      pen.lineWidth = 1.6;
      pen.stroke();
    }),
  spot: (paper) => station(paper.ink, paper, 1.7, false),
  'spot-forbidden': (paper) => station(paper.ink, paper, 1.7, true),
  'spot-selected': (paper) => station(paper.signal, paper, 2.4, false),
  'spot-forbidden-selected': (paper) => station(paper.signal, paper, 2.4, true),
};

/** The image of a name that a layer asks for; null for a name that is not ours. */
export const imageOf = (name: string, look: Look): ImageData | null => images[name]?.(palettes[look]) ?? null;
export const imageNames: readonly string[] = Object.keys(images);

import { CanvasTexture, LinearMipmapLinearFilter, RepeatWrapping, SRGBColorSpace } from 'three';

/** m between the wires of a chain-link fence. From memory. */
export const wireSpacing = 0.05;
/** Tiles of the texture per m, and mesh openings in a tile. */
const openings = 20;
const size = 512;
/** What the wires cover of the view through them. */
const cover = 0.2;

/**
 * Chain link over one square metre. `contrast` 1: wires in focus; 0: only the veil that they leave when the lens is
 * wider than the mesh.
 */
export function meshTexture(contrast: number): CanvasTexture {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = size;
  const pen = canvas.getContext('2d');
  if (pen) {
    pen.fillStyle = `rgba(150, 153, 150, ${(cover * (1 - contrast)).toFixed(3)})`;
    pen.fillRect(0, 0, size, size);
    const step = size / openings;
    pen.strokeStyle = `rgba(140, 144, 142, ${(0.95 * contrast).toFixed(3)})`;
    pen.lineWidth = step * 0.14;
    pen.beginPath();
    for (let i = -openings; i <= openings; i++) {
      pen.moveTo(i * step, 0);
      pen.lineTo(i * step + size, size);
      pen.moveTo(i * step + size, 0);
      pen.lineTo(i * step, size);
    }
    pen.stroke();
    // The wire along the top, and a post every metre.
    pen.strokeStyle = `rgba(110, 114, 112, ${(0.35 + 0.65 * contrast).toFixed(3)})`;
    pen.lineWidth = size * 0.012;
    pen.strokeRect(-size, -1, 3 * size, size + 2);
  }
  const texture = new CanvasTexture(canvas);
  texture.wrapS = texture.wrapT = RepeatWrapping;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.anisotropy = 8;
  texture.colorSpace = SRGBColorSpace;
  return texture;
}

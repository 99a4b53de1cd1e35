/** Grass from afar: a tile of quiet speckles, the same at every start. */
export function speckles(): HTMLCanvasElement {
  const size = 256;
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = size;
  const pen = canvas.getContext('2d');
  if (!pen) return canvas;
  pen.fillStyle = '#8b9361';
  pen.fillRect(0, 0, size, size);
  let seed = 7;
  const next = () => (seed = (seed * 16_807) % 2_147_483_647) / 2_147_483_647;
  const tones = ['#7f8957', '#98a06c', '#858d5c', '#a09f70', '#77834f'];
  for (let i = 0; i < 900; i++) {
    pen.fillStyle = tones[Math.floor(next() * tones.length)] ?? '#8b9361';
    pen.globalAlpha = 0.22;
    const [x, y, r] = [next() * size, next() * size, 2 + next() * 9];
    for (const dx of [-size, 0, size])
      for (const dy of [-size, 0, size]) {
        pen.beginPath();
        pen.ellipse(x + dx, y + dy, r * 1.6, r, 0, 0, 2 * Math.PI);
        pen.fill();
      }
  }
  return canvas;
}

/** Pictures side by side as one PNG, with a line of words under them; null where there is none. */
export function pictureOf(
  canvases: readonly HTMLCanvasElement[],
  words: readonly string[],
): Promise<Blob> | null {
  const [first] = canvases;
  if (!first) return null;
  const gap = canvases.length > 1 ? Math.round(first.width * 0.01) : 0;
  const line = Math.max(18, Math.round(first.width * 0.022));
  const page = document.createElement('canvas');
  page.width = canvases.reduce((sum, c) => sum + c.width, 0) + gap * (canvases.length - 1);
  page.height = first.height + line * (words.length * 1.5 + 0.8);
  const pen = page.getContext('2d');
  if (!pen) return null;
  pen.fillStyle = '#fbf8ef';
  pen.fillRect(0, 0, page.width, page.height);
  let x = 0;
  for (const canvas of canvases) {
    pen.drawImage(canvas, x, 0);
    x += canvas.width + gap;
  }
  pen.fillStyle = '#22251f';
  pen.font = `${line}px 'Source Sans 3', sans-serif`;
  words.forEach((text, i) =>
    pen.fillText(text, line, first.height + line * (1.5 * i + 1.4), page.width - 2 * line),
  );
  return new Promise((resolve, reject) =>
    page.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('it is too large'))), 'image/png'),
  );
}

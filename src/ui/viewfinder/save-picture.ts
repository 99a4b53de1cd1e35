/** Saves pictures side by side as one PNG, with a line of words under them. */
export async function savePicture(
  canvases: readonly HTMLCanvasElement[],
  words: readonly string[],
  fileName: string,
): Promise<boolean> {
  const [first] = canvases;
  if (!first) return false;
  const gap = canvases.length > 1 ? Math.round(first.width * 0.01) : 0;
  const line = Math.max(18, Math.round(first.width * 0.022));
  const page = document.createElement('canvas');
  page.width = canvases.reduce((sum, c) => sum + c.width, 0) + gap * (canvases.length - 1);
  page.height = first.height + line * (words.length * 1.5 + 0.8);
  const pen = page.getContext('2d');
  if (!pen) return false;
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
  const blob = await new Promise<Blob | null>((done) => page.toBlob(done, 'image/png'));
  if (!blob) return false;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = fileName;
  link.click();
  // The download has begun by then; keeping the bytes longer would be waste.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return true;
}

/** Where a key moves the active line of a list to; `active` itself for every other key. From the ends it goes round. */
export function moved(active: number, count: number, key: string): number {
  if (count === 0) return active;
  switch (key) {
    case 'ArrowDown':
      return (active + 1) % count;
    case 'ArrowUp':
      return (active - 1 + count) % count;
    case 'PageDown':
      return Math.min(active + 8, count - 1);
    case 'PageUp':
      return Math.max(active - 8, 0);
    default:
      return active;
  }
}

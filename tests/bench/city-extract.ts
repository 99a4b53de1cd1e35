/**
 * An invented city round an airfield as an OpenStreetMap extract (.osm XML) of about `megabytes`: streets of houses with
 * heights now and then, roads, a runway. Made anew each time: nothing of that size is kept with the program.
 */
export function cityExtract(megabytes: number, [lng, lat]: readonly [number, number]): string {
  const parts: string[] = [
    '<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6" generator="a benchmark">\n',
  ];
  const ways: string[] = [];
  let size = 0;
  let node = 1;
  const put = (list: string[], text: string) => {
    list.push(text);
    size += text.length;
  };
  const nodeAt = (x: number, y: number) => {
    const [nodeLng, nodeLat] = [(lng + x / 70_000).toFixed(7), (lat + y / 111_250).toFixed(7)];
    put(parts, ` <node id="${node}" version="1" lat="${nodeLat}" lon="${nodeLng}"/>\n`);
    return node++;
  };
  const way = (id: number, nodes: readonly number[], tags: readonly (readonly [string, string])[]) =>
    put(
      ways,
      ` <way id="${id}" version="1">${nodes.map((n) => `<nd ref="${n}"/>`).join('')}${tags.map(([k, v]) => `<tag k="${k}" v="${v}"/>`).join('')}</way>\n`,
    );
  way(
    1,
    [nodeAt(-900, -330), nodeAt(900, 330)],
    [
      ['aeroway', 'runway'],
      ['ref', '07/25'],
    ],
  );
  // Rings of blocks, from the airfield outwards.
  for (let i = 0; size < megabytes * 1_000_000; i++) {
    const [ring, turn] = [600 + 0.35 * i, i * 2.399963];
    const [x, y] = [ring * Math.cos(turn), ring * Math.sin(turn)];
    const corners = [nodeAt(x, y), nodeAt(x + 14, y), nodeAt(x + 14, y + 9), nodeAt(x, y + 9)];
    const height: readonly (readonly [string, string])[] =
      i % 5 === 0
        ? [['building:levels', String(1 + (i % 4))]]
        : i % 7 === 0
          ? [['height', `${4 + (i % 9)} m`]]
          : [];
    way(
      10 + 2 * i,
      [...corners, corners[0] ?? 0],
      [['building', 'house'], ['addr:housenumber', String(i)], ...height],
    );
    if (i % 6 === 0)
      way(
        11 + 2 * i,
        [nodeAt(x - 20, y - 15), nodeAt(x + 60, y - 15), nodeAt(x + 140, y - 10)],
        [
          ['highway', i % 18 === 0 ? 'footway' : 'residential'],
          ['name', `Street ${i}`],
        ],
      );
  }
  return `${parts.join('')}${ways.join('')}</osm>\n`;
}

import { describe, expect, it } from 'vitest';
import { proposalOf } from '../../../src/imports/bring-in/combine';
import { readFiles } from '../../../src/imports/bring-in/read-file';
import type { Answers, Proposal, Surroundings } from '../../../src/imports/bring-in/types';
import { heightIn, heightOfLevels } from '../../../src/imports/osm/heights';
import { joinRings } from '../../../src/imports/osm/rings';
import type { Position } from '../../../src/survey/document';
import { tidyShape } from '../../../src/survey/edits/add-feature';
import { osmGeoJson, osmXml, osmXmlGeom, overpassGeom, overpassNodes } from '../fixtures/extract';
import { answers, field, fileOf, now } from '../fixtures/surroundings';

async function proposed(
  name: string,
  text: string,
  around: Surroundings = field,
  with_: Partial<Answers> = {},
): Promise<Proposal> {
  const { sources, refused } = await readFiles([fileOf(name, text)], { progress: () => undefined, now });
  expect(refused).toEqual([]);
  return proposalOf(sources, around, { ...answers, ...with_ });
}
const geom = JSON.stringify(overpassGeom());
const overpassGeomElements = () => (overpassGeom() as { elements: unknown[] }).elements;
const counted = ({ candidates }: Proposal) => {
  const counts: Record<string, number> = {};
  for (const { group } of candidates) counts[group] = (counts[group] ?? 0) + 1;
  return counts;
};
const find = ({ candidates }: Proposal, source: string) => {
  const found = candidates.find((c) => c.source === `osm ${source}`);
  if (!found) throw new Error(`expected ${source} among the candidates`);
  return found;
};

describe('an extract of OpenStreetMap', () => {
  it('[I1] says the same in all its forms: Overpass with geometry or nodes, XML, GeoJSON', async () => {
    const inline = await proposed('a.json', geom);
    const nodes = await proposed('b.json', JSON.stringify(overpassNodes()));
    const xml = await proposed('c.osm', osmXml());
    expect(nodes).toEqual(inline);
    expect(xml).toEqual(inline);
    expect(await proposed('c.osm', osmXmlGeom())).toEqual(inline);
    // Of a relation whose ways are not in the file themselves.
    const bare = osmXmlGeom().replace(/<way id="5[012]".*<\/way>/g, '');
    expect(find(await proposed('c.osm', bare), 'relation/100')).toEqual(find(inline, 'relation/100'));
    expect(counted(inline)).toEqual({
      runways: 1,
      'taxi routes': 1,
      aprons: 1,
      buildings: 9,
      walls: 1,
      fences: 2,
      hedges: 1,
      'tree rows': 1,
      woods: 1,
      roads: 3,
      paths: 1,
      parking: 1,
      greens: 1,
    });
    const geojson = await proposed('d.geojson', JSON.stringify(osmGeoJson()));
    // Converters wind holes the other way; so does the survey.
    const wound = (c: Proposal['candidates'][number]) => ({ ...c, shape: tidyShape(c.shape) });
    for (const candidate of geojson.candidates)
      expect(wound(find(inline, candidate.source.slice(4)))).toEqual(wound(candidate));
    // All but the building that this form has no relation for.
    expect(geojson.candidates.length).toBe(inline.candidates.length - 1);
  });

  it('[I18] counts single trees among what is left out, with the reason, in every form', async () => {
    const place = { lat: 50.93, lon: 18.17 };
    const tree = { natural: 'tree' };
    const json = { elements: [1, 2].map((id) => ({ type: 'node', id, ...place, tags: tree })) };
    const xml = '<node id="1" lat="50.93" lon="18.17"><tag k="natural" v="tree"/></node>';
    const point = {
      type: 'Feature',
      id: 'node/1',
      properties: tree,
      geometry: { type: 'Point', coordinates: [18.17, 50.93] },
    };
    const converted = osmGeoJson() as { type: string; features: unknown[] };
    const forms: [string, string][] = [
      ['a.json', JSON.stringify({ version: 0.6, elements: [...overpassGeomElements(), ...json.elements] })],
      ['b.osm', osmXml().replace('</osm>', `${xml}${xml.replace('"1"', '"2"')}</osm>`)],
      [
        'c.geojson',
        JSON.stringify({
          ...converted,
          features: [...converted.features, point, { ...point, id: 'node/2' }],
        }),
      ],
    ];
    for (const [name, text] of forms)
      expect((await proposed(name, text)).leftOut, name).toContainEqual({
        what: 'single trees',
        reason: 'a point has no width: draw those that stand in the way as obstacles',
        count: 2,
      });
  });

  it('[I2] makes one runway of its pieces, names its ends by their direction, and measures the displaced threshold', async () => {
    const runway = find(await proposed('a.json', geom), 'way/1+way/2+way/3');
    // Drawn 25/07 on the map and pointing to 70 degrees at its first position: that end is 07.
    expect(runway.properties).toEqual({
      name: '07/25',
      width: 45,
      surface: 'asphalt',
      ends: [
        { designator: '07', displaced: 160 },
        { designator: '25', displaced: 0 },
      ],
    });
    const line = runway.shape.coordinates as readonly Position[];
    expect(line).toHaveLength(2);
    expect(line[0]?.[0]).toBeLessThan(line[1]?.[0] ?? 0);
  });

  it('[I3] reads heights as people tag them, and the largest of several', () => {
    expect(heightIn('12 m')).toBe(12);
    expect(heightIn('12')).toBe(12);
    expect(heightIn('12,5')).toBe(12.5);
    expect(heightIn('~8')).toBe(8);
    expect(heightIn('40 ft')).toBe(12.19);
    expect(heightIn("40'")).toBe(12.19);
    expect(heightIn('40\'6"')).toBe(12.34);
    expect(heightIn('3;4')).toBe(4);
    expect(heightIn('8-10 m')).toBe(10);
    for (const odd of ['tall', '', '-3', '0', '1e9', '12 storeys', 'NaN', '5000'])
      expect(heightIn(odd)).toBeNull();
    expect(heightOfLevels('3')).toBe(9);
    expect(heightOfLevels('2;5')).toBe(15);
    expect(heightOfLevels('G+2')).toBeNull();
  });

  it('[I4] says of every height what it rests on, and assumes one where the map says nothing', async () => {
    const proposal = await proposed('a.json', geom, field, { buildingHeight: 7.5 });
    const height = (id: string) => {
      const { properties, assumed } = find(proposal, id);
      return [properties['height'], properties['heightFrom'], assumed ?? false];
    };
    expect(height('way/10')).toEqual([12, 'map', false]);
    expect(height('way/11')).toEqual([12.19, 'map', false]);
    expect(height('way/12')).toEqual([4, 'map', false]);
    expect(height('way/13')).toEqual([12, 'levels', false]);
    expect(height('way/14')).toEqual([7.5, 'assumed', true]);
    expect(height('way/15')).toEqual([6, 'levels', false]);
    expect(height('way/32')).toEqual([3.5, 'map', false]);
    expect(proposal.asks.buildingHeight).toBe(true);
    expect(proposal.remarks.join(' ')).toContain('"tall"');
  });

  it('[S1023] takes what a building says of its underside, or says in words why it cannot', async () => {
    const at = (i: number) => ({ lat: 50.93 + i * 0.001, lon: 18.17 });
    const house = (id: number, tags: Record<string, string>) => ({
      type: 'way',
      id,
      tags: { building: 'yes', ...tags },
      geometry: [
        [0, 0],
        [0, 2e-4],
        [2e-4, 2e-4],
        [2e-4, 0],
        [0, 0],
      ].map(([lat = 0, lon = 0]) => ({ lat: at(id).lat + lat, lon: at(id).lon + lon })),
    });
    const said: readonly (readonly [
      Record<string, string>,
      height: number,
      underside: number | undefined,
    ])[] = [
      [{ height: '12', min_height: '4 m' }, 12, 4],
      [{ height: '12', min_height: '4;5' }, 12, 4],
      [{ 'building:levels': '4', 'building:min_level': '1' }, 12, 3],
      [{ height: '12', min_height: '0', 'building:min_level': '2' }, 12, undefined],
      // Nobody has measured its top: it is a storey above its underside.
      [{ min_height: '9' }, 12, 9],
      [{ 'building:levels': '1', 'building:min_level': '2' }, 9, 6],
      [{ height: '12', min_height: 'high' }, 12, undefined],
      [{ height: '5', min_height: '7' }, 5, undefined],
      [{ height: '12', min_height: 'some', 'building:min_level': '1' }, 12, 3],
    ];
    const elements = said.map(([tags], i) => house(i, tags));
    const proposal = await proposed('a.json', JSON.stringify({ version: 0.6, elements }));
    said.forEach(([tags, height, underside], i) =>
      expect(find(proposal, `way/${i}`).properties, JSON.stringify(tags)).toMatchObject(
        underside === undefined ? { height } : { height, underside },
      ),
    );
    expect(proposal.candidates.filter(({ properties }) => 'underside' in properties)).toHaveLength(6);
    expect(proposal.remarks).toEqual([
      '2 undersides of buildings could not be read or are not below the top ("high", "7"): taken to hide down to the ground.',
    ]);
  });

  it('[I5] looks through a mesh fence, not through a wooden one; leaves hide in their months, needles always', async () => {
    const proposal = await proposed('a.json', geom);
    expect(find(proposal, 'way/30').properties['sight']).toBe('mesh');
    expect(find(proposal, 'way/30').shape.type).toBe('LineString');
    expect(find(proposal, 'way/31').properties['sight']).toBe('solid');
    expect(find(proposal, 'way/33').properties).toMatchObject({
      sight: 'hedge',
      leafMonths: [4, 5, 6, 7, 8, 9, 10],
    });
    expect(find(proposal, 'way/36').properties['leafMonths']).toHaveLength(12);
    const south = { ...field, reference: [18.1734, -50.9287] as const };
    const mirrored = geom.replace(/"lat":50/g, '"lat":-50');
    expect(find(await proposed('a.json', mirrored, south), 'way/33').properties['leafMonths']).toEqual([
      1, 2, 3, 4, 10, 11, 12,
    ]);
  });

  it('[I6] puts areas together from pieces, with their holes', async () => {
    const proposal = await proposed('a.json', geom);
    const terminal = find(proposal, 'relation/100');
    expect(terminal.shape.type).toBe('Polygon');
    const [outer, hole] = terminal.shape.coordinates as readonly (readonly Position[])[];
    expect([outer?.length, hole?.length]).toEqual([5, 5]);
    // An old relation has its tags on the outline, which is not one more building.
    expect(find(proposal, 'relation/102').properties['height']).toBe(6);
    expect(proposal.candidates.some((c) => c.source === 'osm way/54')).toBe(false);
  });

  it('[I7] joins an outline whichever way its pieces run, and counts what stays open', () => {
    const [a, b, c, d]: Position[] = [
      [0, 0],
      [1, 0],
      [1, 2],
      [0, 1],
    ];
    if (!a || !b || !c || !d) throw new Error('expected four corners');
    for (const pieces of [
      [
        [a, b],
        [b, c, d],
        [d, a],
      ],
      [
        [a, b],
        [d, c, b],
        [a, d],
      ],
      [
        [b, a],
        [d, a],
        [b, c],
        [d, c],
      ],
    ]) {
      const { closed, open } = joinRings(pieces);
      expect([closed.length, open]).toEqual([1, 0]);
      expect(new Set(closed[0]?.map((p) => p.join()))).toEqual(new Set([a, b, c, d].map((p) => p.join())));
    }
    expect(joinRings([[a, b, c]])).toEqual({ closed: [], open: 1 });
  });

  it('[I8] says what is left out and why: nothing goes silently', async () => {
    const { leftOut, remarks } = await proposed('a.json', geom);
    const said = leftOut.map(({ what, reason, count }) => `${count} ${what}: ${reason}`);
    expect(said).toEqual(
      expect.arrayContaining([
        '1 areas: part of their outline is not in the file',
        '1 areas: their outline is not closed',
        '1 runway areas: the runway itself comes from its centreline',
        '1 buildings: they are underground',
        '1 buildings: smaller than 15 m²',
        '1 buildings: farther than 10,000 m from the airfield',
        '1 other barriers: gates, kerbs, bollards and the like hide no aircraft',
        '1 roads and paths: they run in a tunnel',
      ]),
    );
    expect(remarks.join(' ')).toContain('without the hole');
  });

  it('[I9] takes what is near, and only as much as a survey stays quick with', async () => {
    const box = (i: number) => {
      const [lng, lat] = [18.17 + 0.0005 * (i % 80), 50.92 + 0.0003 * Math.floor(i / 80)];
      const corner = (x: number, y: number) => ({ lon: lng + x * 0.0003, lat: lat + y * 0.0002 });
      return {
        type: 'way',
        id: i,
        tags: { building: 'yes' },
        geometry: [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1), corner(0, 0)],
      };
    };
    const elements = Array.from({ length: 6000 }, (_, i) => box(i + 1));
    const city = await proposed('city.json', JSON.stringify({ elements }));
    expect(city.candidates).toHaveLength(2000);
    const near = (c: Proposal['candidates'][number]) => {
      const [ring] = c.shape.coordinates as readonly (readonly Position[])[];
      return Math.hypot(
        ((ring?.[0]?.[0] ?? 0) - 18.1734) * 70_100,
        ((ring?.[0]?.[1] ?? 0) - 50.9287) * 111_250,
      );
    };
    expect(Math.max(...city.candidates.map(near))).toBeLessThan(3100);
    expect(city.leftOut.reduce((sum, { count }) => sum + count, 0)).toBe(4000);
    const close = await proposed('city.json', JSON.stringify({ elements }), field, { radius: 500 });
    expect(close.candidates.length).toBeLessThan(700);
    expect(Math.max(...close.candidates.map(near))).toBeLessThan(560);
  });

  it('[I10] knows a runway that the survey has already', async () => {
    const first = await proposed('a.json', geom);
    const [from, to] = find(first, 'way/1+way/2+way/3').shape.coordinates as readonly [Position, Position];
    const runways = [
      { name: '07/25', line: [to, from] as const, elevations: [null, null] as const, source: null },
    ];
    const again = await proposed('a.json', geom, { ...field, runways });
    expect(counted(again)['runways']).toBeUndefined();
    expect(again.leftOut).toContainEqual({
      what: 'runway 07/25',
      reason: 'the survey has this runway already',
      count: 1,
    });
    // The one that came from this very map is updated, not left out.
    const own = runways.map((r) => ({ ...r, source: 'osm way/1+way/2+way/3' }));
    expect(counted(await proposed('a.json', geom, { ...field, runways: own }))['runways']).toBe(1);
    // A parallel one 200 m beside it is another runway.
    const beside = runways.map((r) => ({
      ...r,
      line: r.line.map(([x, y]) => [x, y + 0.002] as Position) as [Position, Position],
    }));
    expect(counted(await proposed('a.json', geom, { ...field, runways: beside }))['runways']).toBe(1);
  });

  it('[I11] names its source wherever the data go', async () => {
    const { credits } = await proposed('a.json', geom);
    expect(credits).toEqual([
      expect.objectContaining({ mark: '© OpenStreetMap contributors', licence: 'Open Database License 1.0' }),
    ]);
  });

  it('[I12] says where a survey is that does not know it yet', async () => {
    const aerodrome =
      '<way id="200"><nd ref="1000"/><nd ref="1001"/><nd ref="1003"/><nd ref="1000"/><tag k="aeroway" v="aerodrome"/><tag k="name" v="Invented Field"/><tag k="icao" v="XXIF"/><tag k="ele" v="186"/></way>';
    const text = osmXml().replace('</osm>', `${aerodrome}</osm>`);
    const { site } = await proposed('a.osm', text, { ...field, reference: null, elevation: null });
    expect(site).toMatchObject({ name: 'Invented Field', icao: 'XXIF', elevation: 186 });
    const [lng, lat] = site['reference'] as unknown as Position;
    expect(Math.hypot(lng - 18.1817, lat - 50.9327)).toBeLessThan(0.001);
    const known = await proposed('a.osm', text);
    expect([known.site, known.placeName]).toEqual([{}, 'Invented Field']);
  });

  it('[I13] keeps what people may say of access on foot', async () => {
    const proposal = await proposed('a.json', geom);
    const access = (id: string) => find(proposal, id).properties['access'];
    expect(['way/40', 'way/41', 'way/42', 'way/43', 'way/44'].map(access)).toEqual([
      'unknown',
      'public',
      'forbidden',
      'forbidden',
      'ask',
    ]);
  });
});

describe('broken extracts', () => {
  const refusedOf = async (name: string, text: string) =>
    (await readFiles([fileOf(name, text)], { progress: () => undefined, now })).refused.join();

  it('[I14] takes what stands before the place where XML breaks off, and names that place', async () => {
    const whole = osmXml();
    const cut = whole.slice(0, whole.indexOf('<way id="40"') + 30);
    const { candidates, remarks } = await proposed('cut.osm', cut);
    expect(candidates.some((c) => c.source === 'osm way/10')).toBe(true);
    expect(candidates.some((c) => c.source === 'osm way/45')).toBe(false);
    expect(remarks.join(' ')).toMatch(/breaks off or is damaged\. At line \d+, column \d+/);
  });

  it('[I15] names the mend where a query has asked for no coordinates', async () => {
    const elements = [{ type: 'way', id: 1, nodes: [1, 2], tags: { building: 'yes' } }];
    const { candidates, remarks } = await proposed('a.json', JSON.stringify({ elements }));
    expect(candidates).toEqual([]);
    expect(remarks.join(' ')).toContain('out geom;');
    const remark = { elements: [], remark: 'runtime error: Query timed out' };
    expect((await proposed('a.json', JSON.stringify(remark))).remarks.join(' ')).toContain('timed out');
  });

  it('[I16] expands no entities: a billion laughs are an error, at once', async () => {
    const bomb = `<?xml version="1.0"?><!DOCTYPE osm [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><osm><way id="1"><tag k="name" v="&b;"/></way></osm>`;
    const { candidates, remarks } = await proposed(
      'bomb.osm',
      bomb.replace('<way', '<node id="1" lat="50.9" lon="18.1"/><way'),
    );
    expect(candidates).toEqual([]);
    expect(remarks.join(' ')).toContain('damaged');
    const gpx = bomb.replace(/osm/g, 'gpx');
    expect(await refusedOf('bomb.gpx', gpx)).toContain('entities of its own');
  });

  it('[I17] refuses what it cannot read, naming the file, the place and the mend', async () => {
    expect(await refusedOf('a.osm', '')).toContain('a.osm: the file is empty');
    expect(await refusedOf('b.osm', '<html><body>no</body></html>')).toContain('b.osm: ');
    expect(await refusedOf('c.json', '{"elements": [1, 2')).toMatch(/c\.json: the file is not JSON/);
    expect(await refusedOf('d.bin', '\u0000\u0001')).toContain('can be brought in');
    expect(await refusedOf('e.kmz', 'PK\u0003\u0004')).toContain('Unpack it');
  });

  it('[I213] of a field at the antimeridian is put there, not half the earth away', async () => {
    const way = (id: number, tags: object, line: readonly (readonly [number, number])[]) => ({
      type: 'way',
      id,
      tags,
      geometry: line.map(([lon, lat]) => ({ lon, lat })),
    });
    const east = [179.985, -16.69] as const;
    const west = [-179.992, -16.685] as const;
    const text = JSON.stringify({
      elements: [
        way(1, { aeroway: 'runway', ref: '08/26' }, [east, west]),
        way(2, { aeroway: 'taxiway' }, [
          [179.99, -16.692],
          [-179.999, -16.69],
        ]),
        way(3, { aeroway: 'taxiway' }, [
          [-179.995, -16.69],
          [-179.993, -16.685],
        ]),
      ],
    });
    const around = { ...field, reference: null, elevation: null };
    const { candidates, middle, site } = await proposed('a.json', text, around);
    expect(candidates).toHaveLength(3);
    // Half of the way from 179.985 E to 179.992 W.
    expect(middle?.[0]).toBeCloseTo(179.9965, 6);
    expect((site['reference'] as Position)[0]).toBeCloseTo(179.9965, 6);
  });
});

import type { Position } from '../../survey/document';

/** A place that leave is asked for, in words. */
export interface AskedPlace {
  readonly name: string;
  readonly position: Position;
  /** As the user reads coordinates. */
  readonly coordinates: string;
  /** When one would stand there: "16:40–21:05"; empty where the plan does not say. */
  readonly times: readonly string[];
  /** What would be photographed from there. */
  readonly paths: readonly string[];
}

/** What a request to an airfield's office is written from. Empty text is left out. */
export interface RequestNeeds {
  readonly field: string;
  /** The day in words, "Sunday, 21 June 2026". */
  readonly day: string;
  readonly office: string | null;
  readonly places: readonly AskedPlace[];
  readonly own: {
    readonly name: string;
    readonly phone: string;
    readonly vehicle: string;
    readonly home: string;
  };
  /** What one carries: "a camera with a long lens". */
  readonly brings: string;
}

/** A letter: plain text, to be edited before it is sent. */
export interface Letter {
  readonly subject: string;
  readonly body: string;
}

/** A place on a map that any browser opens (OpenStreetMap), and as a geo: address (RFC 5870) that a phone opens. */
export function mapLinks([lng, lat]: Position): { readonly web: string; readonly geo: string } {
  const [x, y] = [lng.toFixed(5), lat.toFixed(5)];
  return { web: `https://www.openstreetmap.org/?mlat=${y}&mlon=${x}#map=17/${y}/${x}`, geo: `geo:${y},${x}` };
}

/** A request for leave to photograph, in plain polite words: who, when, exactly where, what for, with what vehicle. */
export function requestLetter({ field, day, office, places, own, brings }: RequestNeeds): Letter {
  const subject = `Request: photographs of aircraft at ${field}, ${day}`;
  const placeLines = places.flatMap(({ name, position, coordinates, times, paths }) => {
    const links = mapLinks(position);
    return [
      `- ${name}${times.length > 0 ? `, ${times.join(' and ')}` : ''}`,
      `  Position (WGS84): ${coordinates}`,
      `  Map: ${links.web}`,
      ...(paths.length > 0 ? [`  To photograph: ${paths.join(', ')}`] : []),
    ];
  });
  const one = places.length === 1;
  const about = [
    own.name && `Name: ${own.name}`,
    own.home && `Address: ${own.home}`,
    own.phone && `Telephone: ${own.phone}`,
    own.vehicle && `Vehicle: ${own.vehicle}`,
  ].filter((line) => line !== '');
  const body = [
    `To ${office ?? `the office of ${field}`}`,
    '',
    'Good day,',
    '',
    `I should like to photograph aircraft at ${field} on ${day}, and ask whether I may stand at the following ${one ? 'place' : 'places'}:`,
    '',
    ...placeLines,
    '',
    `The photographs are for my own pleasure and are not sold. I bring ${brings}. I keep to where I am told to stand, leave at once if I am asked to, and keep clear of lights, fences and anything that moves.`,
    '',
    `If ${one ? 'the place does' : 'some of these places do'} not suit you I am glad of another. Please also tell me of any rule I should know, for instance on ladders, tripods, vehicles or listening to the radio, and whom to call on the day.`,
    '',
    ...(about.length > 0 ? ['About me:', ...about, ''] : []),
    'With kind regards',
    ...(own.name === '' ? [] : [own.name]),
  ].join('\n');
  return { subject, body };
}

import type { Contents } from '../../survey/contents';
import type { Subject } from '../../survey/schema/subject';
import { groundLine } from '../geometry/earth';
import type { DueMovement } from '../movements/due-on';
import { byWindAt, endsOf, type EndsByUse } from '../movements/ends-of';
import { subjectOf } from '../movements/movement-figures';
import { endName, endPath } from '../traffic/end-name';
import { findMovement } from './find-movement';
import { findSpot } from './find-spot';
import type { PhotoFrame } from './frame-time';
import { groupFrames } from './group-frames';
import { longPass, siteWithin } from './practice';

/** A question that a pass leaves open: what it is about, and in words. */
export interface Ask {
  readonly about: 'spot' | 'path' | 'subject' | 'movement' | 'length';
  readonly words: string;
}

/** Frames of one passing aircraft, and what is known of it; what is not is null, and asked among the doubts. */
export interface Pass {
  readonly frames: readonly PhotoFrame[];
  /** ms since 1970 of its first and last frame. */
  readonly from: number;
  readonly to: number;
  /** Id of the spot; path as the figures print it; key of the subject; id of the movement. */
  readonly spot: string | null;
  readonly path: string | null;
  readonly subject: string | null;
  readonly movement: string | null;
  readonly doubts: readonly Ask[];
}

export interface Passes {
  /** In the order of time. */
  readonly passes: readonly Pass[];
  /** Frames without a time, and those taken far from the airfield: they are of no pass. */
  readonly left: readonly PhotoFrame[];
}

/** `inUse`: ends in use where the survey tells no wind of that time. */
export function findPasses(frames: readonly PhotoFrame[], contents: Contents, inUse: EndsByUse): Passes {
  const { reference } = contents.site;
  const left: PhotoFrame[] = [];
  const near = frames.filter((frame) => {
    const { position } = frame.record;
    const away = position === null ? 0 : groundLine(reference, position).distance;
    if (frame.instant !== null && away <= siteWithin) return true;
    left.push(
      away > siteWithin
        ? {
            ...frame,
            doubts: [...frame.doubts, `Taken ${Math.round(away / 1000)} km from the airfield: passed over.`],
          }
        : frame,
    );
    return false;
  });
  const groups = groupFrames(near).map((group) => ({ group, due: movementOf(group, contents) }));
  const byMovement = new Map<string, { group: readonly PhotoFrame[]; due: (typeof groups)[number]['due'] }>();
  const whole: { group: readonly PhotoFrame[]; due: (typeof groups)[number]['due'] }[] = [];
  for (const { group, due } of groups) {
    const key = due.due && `${due.due.movement.id} ${due.due.instant}`;
    const known = key === null ? undefined : byMovement.get(key);
    if (known) known.group = [...known.group, ...group];
    else {
      const entry = { group, due };
      whole.push(entry);
      if (key !== null) byMovement.set(key, entry);
    }
  }
  return { passes: whole.map(({ group, due }) => passOf(group, due, contents, inUse)), left };
}

const spanOf = (group: readonly PhotoFrame[]): readonly [from: number, to: number] => {
  const instants = group.map(({ instant }) => instant ?? 0);
  return [Math.min(...instants), Math.max(...instants)];
};

const movementOf = (group: readonly PhotoFrame[], contents: Contents) =>
  findMovement(...spanOf(group), contents);

function passOf(
  group: readonly PhotoFrame[],
  { due, doubts: ofMovement }: ReturnType<typeof findMovement>,
  contents: Contents,
  inUse: EndsByUse,
): Pass {
  const [from, to] = spanOf(group);
  const { spot, plannedPath, doubts: ofSpot } = findSpot(group, contents);
  const subject = subjectFor(due, contents);
  const path = pathFor(due, plannedPath, subject.subject, contents, inUse, from);
  const long =
    to - from > longPass
      ? [`The pass takes ${Math.round((to - from) / 1000)} s: was it one aircraft, or several?`]
      : [];
  return {
    frames: group,
    from,
    to,
    spot,
    path: path.path,
    subject: subject.key,
    movement: due?.movement.id ?? null,
    doubts: [
      ...asks('length', long),
      ...asks('spot', ofSpot),
      ...asks('movement', ofMovement),
      ...asks('path', path.doubts),
      ...asks('subject', subject.doubts),
    ],
  };
}

const asks = (about: Ask['about'], words: readonly string[]): readonly Ask[] =>
  words.map((said) => ({ about, words: said }));

/** Whose movement it was; without one, the survey's subject, which is said. */
function subjectFor(
  due: DueMovement | null,
  { subject, subjects }: Contents,
): { readonly subject: Subject; readonly key: string | null; readonly doubts: readonly string[] } {
  if (due) {
    const known = subjectOf(due.movement, subjects);
    if (known) return { subject: known, key: known.key, doubts: [] };
    return {
      subject,
      key: null,
      doubts: [`No subject stands for “${due.movement.type}”: which one was it?`],
    };
  }
  if (subjects.length === 1) return { subject, key: subject.key, doubts: [] };
  return {
    subject,
    key: subject.key,
    doubts: [`Nothing says which aircraft it was: ${subject.name} is assumed.`],
  };
}

/** The one path that was flown, by the movement, else by the plan, else by the flow of that time. */
function pathFor(
  due: DueMovement | null,
  planned: string | null,
  subject: Subject,
  survey: Contents,
  inUse: EndsByUse,
  instant: number,
): { readonly path: string | null; readonly doubts: readonly string[] } {
  const contents = { ...survey, subject };
  if (!due && planned !== null) return { path: planned, doubts: [] };
  const flow = byWindAt(contents, instant) ?? inUse;
  const candidates = due
    ? endsOf(due.movement, contents, inUse, instant).refs.map((ref) => ({ ref, kind: due.movement.use }))
    : [
        ...flow.arrivals.map((ref) => ({ ref, kind: 'arrival' as const })),
        ...flow.departures.map((ref) => ({ ref, kind: 'departure' as const })),
      ];
  const paths = candidates.flatMap(({ ref, kind }) => {
    const runway = contents.runways.find((r) => r.id === ref.runway);
    return runway
      ? [{ path: `${endPath(runway, ref.end)}/${kind}`, name: `${endName(runway, ref.end)} ${kind}` }]
      : [];
  });
  const [only, second] = paths;
  if (only !== undefined && second === undefined) return { path: only.path, doubts: [] };
  return {
    path: null,
    doubts: [
      paths.length === 0
        ? 'No end was in use then: which path was it?'
        : `Which path was it: ${paths.map(({ name }) => name).join(', ')}?`,
    ],
  };
}

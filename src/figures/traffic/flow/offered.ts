import type { Contents } from '../../../survey/contents';
import type { EndIndex, Runway } from '../../../survey/schema/runway';
import type { EndRef } from '../../../survey/schema/site';
import type { Subject } from '../../../survey/schema/subject';
import { endName } from '../end-name';
import { fieldElevation } from '../paths';
import { endGeometry, type EndGeometry } from '../runway-geometry';
import { againstEnd, metres } from './serves';

export type Use = 'arrivals' | 'departures';

/** An end as the flow sees it. */
export interface FlowEnd {
  readonly ref: EndRef;
  readonly runway: Runway;
  /** As people say it. */
  readonly name: string;
  /** Degrees true, looking along its landing direction. */
  readonly bearingDeg: number;
  /** Why it serves no arrivals or departures, null where it may. */
  readonly against: Readonly<Record<Use, string | null>>;
  /** m of pavement. */
  readonly length: number;
  /** Why the subject cannot use it at all where no configuration names it; null where it can. */
  readonly serves: string | null;
}

/** Every end of the survey's runways, in their order; runways without direction are left out. */
export function flowEnds(contents: Pick<Contents, 'runways' | 'site' | 'subject'>): FlowEnd[] {
  const elevation = fieldElevation(contents);
  return contents.runways.flatMap((runway) =>
    ([0, 1] as const).flatMap((end) => {
      const geometry = endGeometry(runway, end, elevation);
      if (!geometry) return [];
      return [
        {
          ref: { runway: runway.id, end },
          runway,
          name: endName(runway, end),
          bearingDeg: geometry.bearing,
          against: against(runway, end, contents.subject, geometry),
          length: geometry.length,
          serves: againstEnd(geometry, contents.subject),
        },
      ];
    }),
  );
}

/**
 * m that an end has for the subject's run, and that the run takes: it takes off over its whole length and lands on what
 * lies beyond its landing threshold. The least that can be said against an end which the survey itself names.
 */
export const runsAt = (
  { length, displaced }: Pick<EndGeometry, 'length' | 'displaced'>,
  subject: Subject,
): Readonly<Record<Use, { readonly thereM: number; readonly neededM: number }>> => ({
  arrivals: { thereM: length - displaced, neededM: subject.landingRun },
  departures: { thereM: length, neededM: subject.groundRun },
});

function against(runway: Runway, end: EndIndex, subject: Subject, geometry: EndGeometry) {
  const name = endName(runway, end);
  if (runway.ends[end].closed) return { arrivals: `${name} is closed`, departures: `${name} is closed` };
  const runs = runsAt(geometry, subject);
  const enough = (use: Use) =>
    runs[use].neededM <= runs[use].thereM
      ? null
      : `${name} is too short for ${use} of ${subject.name || subject.key} (${metres(runs[use].thereM)} of ${metres(runs[use].neededM)})`;
  return { arrivals: enough('arrivals'), departures: enough('departures') };
}

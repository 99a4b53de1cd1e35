import type { Contents } from '../../../survey/contents';
import type { EndRef } from '../../../survey/schema/site';
import { endName } from '../end-name';
import { fieldElevation } from '../paths';
import { endGeometry } from '../runway-geometry';
import { runsAt, type Use } from './offered';

/** An end in use that is shorter than the subject's run. */
export interface ShortEnd {
  readonly use: Use;
  /** As people say it. */
  readonly name: string;
  /** m that there are, and that the subject's run takes. */
  readonly thereM: number;
  readonly neededM: number;
}

/** The ends in use that the subject could not use: its paths are drawn there all the same. */
export function shortEnds(
  contents: Pick<Contents, 'runways' | 'site' | 'subject'>,
  inUse: Readonly<Record<Use, readonly EndRef[]>>,
): ShortEnd[] {
  const elevation = fieldElevation(contents);
  return (['arrivals', 'departures'] as const).flatMap((use) =>
    inUse[use].flatMap(({ runway: id, end }): ShortEnd[] => {
      const runway = contents.runways.find((r) => r.id === id);
      const geometry = runway && endGeometry(runway, end, elevation);
      if (!geometry) return [];
      const { thereM, neededM } = runsAt(geometry, contents.subject)[use];
      return neededM <= thereM ? [] : [{ use, name: endName(runway, end), thereM, neededM }];
    }),
  );
}

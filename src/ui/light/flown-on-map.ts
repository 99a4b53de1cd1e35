import type { Path } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';

/** Whether a band of recorded flights lies beside one of the paths that are drawn: it takes two stations to be one. */
export const flownOnMap = (
  runways: Contents['runways'],
  paths: readonly { readonly ref: Pick<Path['ref'], 'kind' | 'runway' | 'end'> }[],
): boolean =>
  paths.some(({ ref: { kind, runway, end } }) => {
    const found = end === null ? undefined : runways.find(({ id }) => id === runway)?.ends[end];
    const band = found?.flown?.find((b) => b.kind === kind);
    return band !== undefined && band.offset.filter((offset) => offset !== null).length > 1;
  });

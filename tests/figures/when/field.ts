import { destination } from '../../../src/figures/geometry/earth';
import { outlookOf } from '../../../src/figures/outlook';
import { spotFigures } from '../../../src/figures/spot-figures';
import { stillViewsOf } from '../../../src/figures/when/still-views';
import { pathsOf } from '../../../src/figures/traffic/paths';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../support/contents';

/** A field with one runway at a place, seen from a spot `along` m down and `off` m to the right of it. */
export function fieldAt(
  place: readonly [number, number],
  along: number,
  off: number,
  { azimuth = 118, timeZone = 'UTC' } = {},
) {
  const beside = destination(destination(place, azimuth, along), azimuth + 90, off);
  const contents = contentsOf(
    [
      runwayFeature('rwy', place, destination(place, azimuth, 1700), [
        { designator: '12' },
        { designator: '30' },
      ]),
      spotFeature('spot', beside),
    ],
    { site: { elevation: 430, timeZone }, subjects: [plainSubject], kit: plainKit },
  );
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected a spot');
  const outlook = outlookOf(contents, null);
  const paths = pathsOf(contents, () => true, null);
  const [path] = paths;
  if (!path) throw new Error('expected a path');
  return {
    contents,
    spot,
    path,
    paths,
    views: stillViewsOf(spot, paths, outlook, 0),
    /** The figures as the screen shows them for one instant. */
    at: (instant: number) => {
      const [figures] = spotFigures(spot, paths, outlook, [instant]);
      if (!figures) throw new Error('expected figures');
      return figures;
    },
  };
}

import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { lastAnswer } from '../../survey/memo';
import { cyclingSpeed, driveFrom, drivingSpeed, offWays, parkingMinutes, walkingSpeed } from '../practice';
import type { MoveTime } from './move-time';
import { WayNetwork, type Going } from './way-network';

type Field = Pick<Contents, 'groundUses' | 'runways' | 'site'>;

/** The same network while its ways and runways stay. */
const networkFor = () =>
  lastAnswer(
    (uses: Field['groundUses'], runways: Field['runways'], lng: number, lat: number, going: Going) =>
      new WayNetwork(uses, runways, [lng, lat], going),
  );
const networks: Readonly<Record<Going, ReturnType<typeof networkFor>>> = {
  foot: networkFor(),
  bicycle: networkFor(),
  car: networkFor(),
};

/**
 * How long it takes over the roads and paths of the survey, in whole minutes; null where they do not lead there, or are
 * not known. `by`: null goes on foot, and by car what is farther than people walk with a bag.
 */
export function moveByWays(a: Position, b: Position, field: Field, by: Going | null): MoveTime | null {
  const foot = by === null || by === 'foot' ? going('foot', a, b, field) : null;
  if (by === 'foot') return foot;
  if (by === null && (!foot || foot.metres < driveFrom)) return foot;
  if (by === 'bicycle') return going('bicycle', a, b, field);
  const drive = going('car', a, b, field);
  // Nobody fetches the car for a way that is walked as soon.
  return foot && (!drive || foot.minutes <= drive.minutes) ? foot : drive;
}

function going(by: Going, a: Position, b: Position, { groundUses, runways, site }: Field): MoveTime | null {
  if (groundUses.length === 0) return null;
  const [lng, lat] = site.reference;
  const network = networks[by](groundUses, runways, lng, lat, by);
  if (network.isEmpty) return null;
  const way = network.find(a, b, offWays);
  if (!way) return null;
  const { along, beside } = way;
  const onFoot = beside / walkingSpeed;
  const seconds = {
    foot: along / walkingSpeed + onFoot,
    bicycle: along / cyclingSpeed + onFoot,
    car: along / drivingSpeed + onFoot + parkingMinutes * 60,
  }[by];
  return {
    minutes: Math.max(1, Math.round(seconds / 60)),
    by,
    over: 'ways',
    metres: Math.round((along + beside) / 10) * 10,
  };
}

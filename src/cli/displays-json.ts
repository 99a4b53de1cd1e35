import { actPlaces } from '../figures/display/act-places';
import { displayFigures } from '../figures/display/display-figures';
import type { ActType } from '../figures/display/programme-acts';
import type { BestPlace } from '../figures/movements/best-places';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Contents } from '../survey/contents';
import { isoInstant } from '../time/local-time';

/**
 * What a survey's displays have on a civil day ("2026-06-21" at the airfield), as the `figures` command prints it: `from` and
 * `to` as late as the programme runs, `lit` as it is for whoever stands at the crowd line when an act begins.
 */
export function displaysJson(contents: Contents, date: string, terrain: ElevationGrid | null) {
  return contents.displayLines.map((display) => {
    const { crowdDistance, programme } = displayFigures(display, contents, date);
    const due = programme.filter(({ act }) => act.date === date);
    const places = actPlaces(
      due.map(({ act }) => act),
      display,
      contents,
      terrain,
    );
    return {
      id: display.id,
      name: display.name,
      crowdDistance,
      acts: due.map(({ act, light }, i) => ({
        name: act.entry.name,
        from: act.slot && isoInstant(act.slot.from),
        to: act.slot && isoInstant(act.slot.to),
        late: act.late,
        type: typeJson(act.type),
        lit: light && light.lit,
        litUntil: light?.until == null ? null : isoInstant(light.until),
        best: bestJson(places[i] ?? null),
      })),
    };
  });
}

/** `subject`: the key of what it is framed as; null where that is the one at hand. */
const typeJson = (type: ActType) => ({
  is: type.kind,
  given: type.kind === 'unknown' ? type.type : null,
  subject: type.kind === 'known' ? type.subject.key : null,
});

const bestJson = (place: BestPlace | null) =>
  place && {
    spot: place.spot.id,
    path: place.path.ref.path,
    focalLength: place.reading.focalLength,
    slantRange: place.reading.slantRange,
    light: place.reading.light,
    score: place.reading.score.total,
    checkFirst: place.checkFirst,
  };

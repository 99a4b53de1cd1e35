import { addFeature } from '../../survey/edits/add-feature';
import type { JsonObject } from '../../survey/json';
import { newSurvey } from '../../survey/new-survey';
import { catalogueCredit } from './credit';
import {
  isLocated,
  missingRunwayDoubts,
  runwayDoubts,
  runwayName,
  usableWidth,
  type LocatedRunway,
} from './doubts';
import type { Airfield, AirfieldToStart, CatalogueEnd, StartedSurvey } from './types';

/**
 * A survey to start from: the site and every runway that the data locate, ends in the order of the line. What is
 * odd about a runway stands in its property `doubts` (a list of sentences); what could not be drawn is returned.
 * `ids` gives a new id at each call; `timeZone` is an IANA name.
 */
export function surveyFromAirfield(
  airfield: AirfieldToStart,
  ids: () => string,
  timeZone: string,
): StartedSurvey {
  const survey = (airfield.runways ?? [])
    .filter(isLocated)
    .reduce(
      (drawn, runway) =>
        addFeature(
          drawn,
          ids(),
          'runway',
          { type: 'LineString', coordinates: runway.ends.map((end) => end.position) },
          runwayProperties(runway, airfield),
        ),
      newSurvey(siteOf(airfield, timeZone)),
    );
  return {
    // The licence asks that its notice stays with what is made of the data.
    survey: { ...survey, sunside: { ...survey.sunside, sources: [{ ...catalogueCredit }] } },
    doubts: [...missingRunwayDoubts(airfield), ...frequencyDoubts(airfield)],
  };
}

const frequencyDoubts = ({ frequencies }: AirfieldToStart): string[] =>
  frequencies === null ? ['The list of frequencies could not be loaded: none are filled in.'] : [];

/** Centimetres: feet turned into metres have no more to say. */
const tidy = (m: number) => Math.round(m * 100) / 100;

function siteOf(
  { name, icao, elevation, position, frequencies }: AirfieldToStart,
  timeZone: string,
): JsonObject {
  return {
    name,
    ...(icao === null ? {} : { icao }),
    elevation: tidy(elevation),
    timeZone,
    reference: position,
    ...(frequencies === null || frequencies.length === 0
      ? {}
      : { frequencies: frequencies.map(({ use, mhz }) => ({ use, mhz })) }),
  };
}

export function runwayProperties(runway: LocatedRunway, airfield: Pick<Airfield, 'elevation'>): JsonObject {
  const doubts = runwayDoubts(runway, airfield);
  const width = usableWidth(runway);
  return {
    name: runwayName(runway),
    ...(width === null ? {} : { width: tidy(width) }),
    ...(runway.surface === '' ? {} : { surface: runway.surface }),
    ends: runway.ends.map(endOf),
    ...(doubts.length === 0 ? {} : { doubts }),
  };
}

function endOf({ designator, elevation, displaced }: CatalogueEnd): JsonObject {
  return {
    designator,
    ...(elevation === null ? {} : { elevation: tidy(elevation) }),
    displaced: tidy(displaced),
  };
}

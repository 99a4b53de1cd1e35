import { groundLine } from '../figures/geometry/earth';
import { groups as allGroups, type Proposal, type Surroundings } from '../imports/bring-in/types';
import { bySource, sourceOf, standingOf } from '../survey/brought-in';
import type { Contents } from '../survey/contents';
import type { Position, Survey } from '../survey/document';
import { isObject } from '../survey/json';
import type { ImportGroup, ImportPreview } from '../ports/imports';

/** What the imports need to know of a survey. */
export function surroundingsOf(survey: Survey, contents: Contents): Surroundings {
  const sources = new Map(survey.features.map((feature) => [feature.id, sourceOf(feature)]));
  const { site, runways, spots, subject } = contents;
  const stated = isObject(survey.sunside['site']) && survey.sunside['site']['reference'] !== undefined;
  return {
    reference: stated || runways.length + spots.length > 0 ? site.reference : null,
    elevation: site.elevation,
    runways: runways.map(({ id, name, line, ends }) => ({
      name,
      line,
      elevations: [ends[0].elevation, ends[1].elevation],
      source: sources.get(id) ?? null,
    })),
    spots: spots.map(({ position }) => position),
    subjectHeight: subject.height,
  };
}

const namesShown = 3;

export function previewOf(
  { candidates, leftOut, remarks, credits, asks, middle, site }: Proposal,
  survey: Survey,
  { reference }: Surroundings,
  startAt: (place: Position) => Promise<void>,
): ImportPreview {
  const there = bySource(survey.features);
  const groups = new Map<string, ImportGroup>();
  for (const candidate of candidates) {
    const standing = standingOf(candidate, there.get(candidate.source));
    const group = groups.get(candidate.group) ?? {
      name: candidate.group,
      fresh: 0,
      changed: 0,
      same: 0,
      assumed: 0,
      names: [],
    };
    const name = candidate.properties['name'];
    groups.set(candidate.group, {
      ...group,
      fresh: group.fresh + Number(standing === 'new'),
      changed: group.changed + Number(standing === 'changed'),
      same: group.same + Number(standing === 'same'),
      assumed: group.assumed + Number(candidate.assumed === true && standing !== 'same'),
      names:
        group.names.length < namesShown &&
        typeof name === 'string' &&
        name !== '' &&
        !group.names.includes(name)
          ? [...group.names, name]
          : group.names,
    });
  }
  const place = Array.isArray(site['reference']) ? null : middle;
  return {
    groups: allGroups.flatMap((name) => groups.get(name) ?? []),
    leftOut,
    remarks,
    credits: candidates.length > 0 ? credits.map(({ text }) => text) : [],
    asks,
    elsewhere:
      candidates.length === 0 && place && reference
        ? { away: groundLine(reference, place).distance, startThere: () => startAt(place) }
        : null,
  };
}

import { noQuestions, type Answers, type Proposal, type ReadSource, type Surroundings } from './types';
import { Tally } from './tally';

/** What several files would bring, as one proposal. */
export function proposalOf(sources: readonly ReadSource[], around: Surroundings, answers: Answers): Proposal {
  const proposals = sources.map((source) => source.propose(around, answers));
  const tally = new Tally();
  for (const { leftOut } of proposals) tally.addAll(leftOut);
  const credits = proposals.flatMap((p) => p.credits);
  return {
    candidates: proposals.flatMap((p) => p.candidates),
    leftOut: tally.list,
    remarks: [...new Set(proposals.flatMap((p) => p.remarks))],
    credits: credits.filter((c, i) => credits.findIndex((d) => d.text === c.text) === i),
    // What the first of them says goes.
    site: Object.assign({}, ...proposals.map((p) => p.site).reverse()) as Proposal['site'],
    asks: proposals.reduce<Proposal['asks']>(
      (all, { asks }) => ({
        radius: all.radius || asks.radius,
        buildingHeight: all.buildingHeight || asks.buildingHeight,
        altitude: all.altitude || asks.altitude,
        altitudeUnit: all.altitudeUnit || asks.altitudeUnit,
        airfields: [...all.airfields, ...asks.airfields],
      }),
      noQuestions,
    ),
    middle: proposals.find((p) => p.middle !== null)?.middle ?? null,
    placeName: proposals.find((p) => p.placeName !== '')?.placeName ?? '',
  };
}

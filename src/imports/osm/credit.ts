import type { SourceCredit } from '../../survey/sources';

/** Asked for by the licence (ODbL 1.0, sections 4.2 and 4.3) wherever the data are shown, and with every copy of them. */
export const osmCredit: SourceCredit = {
  text: 'Map data © OpenStreetMap contributors, under the Open Database License 1.0.',
  mark: '© OpenStreetMap contributors',
  licence: 'Open Database License 1.0',
  licenceUrl: 'https://opendatacommons.org/licenses/odbl/1.0/',
};

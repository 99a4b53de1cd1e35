import {
  encodeCatalogue,
  type AirfieldRow,
  type CatalogueFiles,
} from '../../../src/imports/catalogue/encode';
import type { CatalogueEnd, CatalogueRunway } from '../../../src/imports/catalogue/types';
import { wholeCatalogue, type WholeAirfield, type WholeCatalogue } from '../../support/catalogue';

const ft = 0.3048;
export const source = { package: 'invented', version: '1.2.3', licence: 'none', credit: 'nobody' };

export const end = (over: Partial<CatalogueEnd> = {}): CatalogueEnd => ({
  designator: '09',
  position: [-0.486772, 51.464901],
  elevation: 75 * ft,
  displaced: 0,
  ...over,
});

export const runway = (over: Partial<CatalogueRunway> = {}): CatalogueRunway => ({
  length: 6000 * ft,
  width: 148 * ft,
  surface: 'asphalt',
  ends: [
    end({ displaced: 1013 * ft }),
    end({ designator: '27', position: [-0.460444, 51.464988], elevation: 77 * ft }),
  ],
  flags: [],
  ...over,
});

export const airfield = (over: Partial<AirfieldRow> = {}): AirfieldRow => ({
  name: 'Farthing Airport',
  town: 'Farthing',
  region: 'GB-ENG',
  icao: 'EGXQ',
  iata: 'FQX',
  localCodes: [],
  kind: 'large-airport',
  position: [-0.4736, 51.4649],
  elevation: 83 * ft,
  frequencies: [],
  runways: [runway()],
  ...over,
});

/** Invented airfields, larger ones first as the builder puts them. */
export const invented: readonly AirfieldRow[] = [
  airfield({
    name: 'Łužice O’Dell International Airport',
    town: 'Groß Übersee',
    region: 'DE-SN',
    icao: 'EDQX',
    iata: null,
    localCodes: ['XQ-7'],
    position: [14.0213, 51.3391],
    runways: [],
  }),
  airfield({
    frequencies: [
      { use: 'tower', mhz: 118.505 },
      { use: 'atis', mhz: 127.4 },
    ],
  }),
  airfield({
    name: 'Tidewater Field',
    town: 'Farthing Bay',
    region: 'FJ-N',
    icao: null,
    iata: 'TQW',
    localCodes: ['NFQX', '7Q2'],
    kind: 'small-airport',
    position: [179.9987, -16.6912],
    elevation: -3 * ft,
    runways: [
      runway({
        width: null,
        ends: [
          end({ designator: 'N', position: [179.999912, -16.694] }),
          end({ designator: 'S', position: [-179.998, -16.688001], elevation: null }),
        ],
        flags: [
          { kind: 'length-off', measured: 693 },
          { kind: 'far-away', away: 14_210 },
        ],
      }),
      runway({ surface: '', width: null, ends: [null, null] }),
      runway({
        surface: 'grass',
        length: null,
        ends: [null, end({ designator: '33', position: [179.991, -16.7] })],
      }),
      runway({
        ends: [end({ position: [179.99, -16.69] }), end({ designator: '08', position: [179.98, -16.69] })],
        flags: [{ kind: 'ends-swapped', magnetic: 277 }],
      }),
    ],
  }),
  airfield({
    name: 'Lower Farthing Strip',
    town: '',
    region: 'US-IL',
    icao: 'KGXQ',
    iata: null,
    localCodes: ['GXQ'],
    kind: 'small-airport',
    position: [-88.1234, 40.5],
    runways: [runway({ surface: 'grass', width: null, ends: [null, null] })],
  }),
  airfield({
    name: 'Mercy Heliport',
    town: 'Farthing',
    region: 'US-IL',
    icao: null,
    iata: null,
    localCodes: ['EGX'],
    kind: 'heliport',
    position: [-88.2, -0.0001],
    runways: [],
  }),
];

export function decoded(airfields: readonly AirfieldRow[]): WholeCatalogue {
  return wholeCatalogue(
    JSON.parse(JSON.stringify(encodeCatalogue(airfields, source, 'tests'))) as CatalogueFiles,
  );
}

export const asRow = ({
  index: _index,
  country: _country,
  runwayCount: _runwayCount,
  locatedCount: _locatedCount,
  ...row
}: WholeAirfield): AirfieldRow => row;

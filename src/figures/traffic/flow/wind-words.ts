import { calmBelowKt } from '../../practice';
import { windComponents } from '../wind/components';
import type { Wind } from '../wind/wind';
import type { FlowEnd } from './offered';

export const kt = (speed: number): string => `${Number(speed.toFixed(1))} kt`;

/** What a wind is called that prefers no end. */
export const weak = (wind: Wind): string =>
  wind.speedKt === 0
    ? 'The wind is calm'
    : wind.from === null
      ? `The wind is variable at ${kt(wind.speedKt)}`
      : `${kt(wind.speedKt)} of wind count as calm (under ${calmBelowKt} kt)`;

/** "25 (14.5 kt of headwind, 3.9 kt across)". */
export const headwindWords = (ends: readonly FlowEnd[], wind: Wind): string =>
  ends
    .map(({ name, bearingDeg }) => {
      const parts = windComponents(wind.from, wind.speedKt, bearingDeg);
      if (!parts) return name;
      const { headwindKt, crosswindKt } = parts;
      const along =
        headwindKt < -0.05 ? `${kt(-headwindKt)} of tailwind` : `${kt(Math.max(0, headwindKt))} of headwind`;
      return `${name} (${along}, ${kt(Math.abs(crosswindKt))} across)`;
    })
    .join(' or ');

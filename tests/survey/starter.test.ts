import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { bodyFields, kitFields, lensFields } from '../../src/survey/schema/kit';
import { subjectFields } from '../../src/survey/schema/subject';
import { starterKit } from '../../src/survey/starter/kit';
import { starterSubjects } from '../../src/survey/starter/subjects';

type Range = number | readonly [number, number];

/**
 * Span (helicopters: main rotor), overall length and height in m by ICAO type designator. Sources: OpenAP
 * (TUDelft-CNS-ATM/openap, commit 1305320b) and the FAA's aircraft characteristics (in feet, turned into m) where
 * they have the type; otherwise from memory, which then only guards against slips of the pen.
 */
const published: Record<string, readonly [span: Range, length: Range, height: Range]> = {
  C152: [10.2, 7.3, 2.6],
  C172: [11.0, 8.28, 2.72],
  C182: [10.97, 8.84, 2.84],
  P28A: [[9.2, 10.8], 7.25, 2.22],
  SR22: [11.68, 7.92, 2.7],
  DA40: [11.94, 8.06, 1.97],
  DR40: [8.72, 6.96, 2.23],
  BE58: [11.52, 9.09, [2.77, 2.99]],
  DA42: [13.42, 8.56, 2.49],
  PA31: [12.4, 9.94, 3.96],
  PC12: [16.28, 14.4, 4.26],
  C208: [15.88, [11.46, 12.68], 4.51],
  BE20: [16.61, 13.36, 4.57],
  DHC6: [19.81, 15.77, 5.94],
  AT76: [27.05, 27.17, 7.65],
  DH8D: [28.42, 32.83, 8.34],
  C525: [14.26, 12.98, 4.2],
  C550: [15.9, 14.39, 4.57],
  F2TH: [19.3, 20.2, 7.06],
  GLF6: [30.36, 30.41, 7.82],
  E145: [20.04, 29.87, 6.76],
  E190: [28.72, 36.24, 10.57],
  E75L: [28.65, 31.68, 9.86],
  A320: [[33.92, 35.8], 37.57, [11.76, 11.92]],
  A21N: [35.8, 44.51, 12.1],
  B738: [[34.32, 35.79], 39.47, 12.55],
  B752: [38.05, 47.3, 13.56],
  A333: [60.3, 63.67, 16.8],
  B744: [[64.4, 64.92], 70.66, 19.6],
  B77W: [64.8, 73.86, 18.5],
  B789: [60.12, 62.81, 17.0],
  A359: [64.75, 66.8, 17.05],
  A388: [[79.6, 79.75], 72.72, 24.1],
  R44: [10.06, 11.66, 3.28],
  AS50: [10.69, 12.94, 3.34],
  EC35: [[10.2, 10.4], 12.16, 3.51],
  AS21: [17.0, 8.35, 1.55],
  LS4: [15.0, 6.83, 1.26],
  DUOD: [20.0, 8.62, 1.6],
};

const share = (value: number, range: Range) => {
  const [low, high] = typeof range === 'number' ? [range, range] : range;
  return value < low ? 1 - value / low : value > high ? value / high - 1 : 0;
};

const classes = starterSubjects.filter((s) => s.key.startsWith('any-'));
const types = starterSubjects.filter((s) => !s.key.startsWith('any-'));
const byKey = new Map(starterSubjects.map((s) => [s.key, s]));
const get = (key: string) => {
  const found = byKey.get(key);
  if (!found) throw new Error(`expected a subject "${key}", got none`);
  return found;
};

describe('starter subjects', () => {
  test('every entry states each field of the schema within its bounds', () => {
    for (const subject of starterSubjects) {
      const parsed = v.safeParse(v.strictObject(subjectFields), subject);
      expect(parsed.success ? [] : parsed.issues.map((i) => i.message), subject.key).toEqual([]);
      expect(Object.keys(subject).sort(), subject.key).toEqual(Object.keys(subjectFields).sort());
    }
  });

  test('keys and names are unique; the default is a narrow-body jet', () => {
    expect(byKey.size).toBe(starterSubjects.length);
    expect(new Set(starterSubjects.map((s) => s.name)).size).toBe(starterSubjects.length);
    expect(starterSubjects[0]?.key).toBe('A320');
  });

  test('at least 35 type designators, each shown first in its name, and classes for what has no type', () => {
    expect(types.length).toBeGreaterThanOrEqual(35);
    for (const type of types) {
      expect(type.key).toMatch(/^[A-Z][A-Z0-9]{1,3}$/);
      expect(type.name.startsWith(`${type.key} — `), type.name).toBe(true);
    }
    for (const key of ['light-single', 'piston-twin', 'turboprop-twin', 'business-jet', 'regional-jet'])
      expect(byKey.has(`any-${key}`), key).toBe(true);
    for (const key of ['narrow-body', 'wide-body', 'helicopter', 'glider'])
      expect(byKey.has(`any-${key}`), key).toBe(true);
    expect(classes.length).toBeGreaterThanOrEqual(9);
  });

  test('sizes agree with the published rows within 2 %, and no type is without a row', () => {
    expect(types.map((t) => t.key).sort()).toEqual(Object.keys(published).sort());
    for (const [key, [span, length, height]] of Object.entries(published)) {
      const subject = get(key);
      expect(share(subject.span, span), `${key} span`).toBeLessThanOrEqual(0.02);
      expect(share(subject.length, length), `${key} length`).toBeLessThanOrEqual(0.02);
      expect(share(subject.height, height), `${key} height`).toBeLessThanOrEqual(0.02);
    }
  });

  test('the regional jet that one source lists with the sizes of its smaller sister has its own', () => {
    expect(get('E75L').length).toBeGreaterThan(31);
    expect(get('E75L').span).toBeGreaterThan(28);
  });

  test('propellers and rotors turn, jets and gliders have none; engines fit the propulsion', () => {
    for (const s of starterSubjects) {
      const turning = s.propulsion === 'propeller' || s.propulsion === 'rotor';
      expect(s.rpm !== null, s.key).toBe(turning);
      expect(s.blades !== null && s.blades >= 2, s.key).toBe(turning);
      expect(s.engines, s.key).toSatisfy((n: number | null) =>
        s.propulsion === 'none' ? n === 0 : n !== null && n >= 1 && n <= 4,
      );
      // A rotor's tip stays well under the speed of sound; a propeller's is near it at most.
      if (s.propulsion === 'rotor' && s.rpm !== null)
        expect((s.rpm / 60) * Math.PI * s.span, s.key).toBeLessThan(240);
    }
  });

  test('only helicopters and gliders come down more steeply than the runway end says', () => {
    for (const s of starterSubjects)
      expect(s.approachAngle !== null && s.approachAngle > 4, s.key).toBe(
        s.propulsion === 'rotor' || s.propulsion === 'none',
      );
  });

  test('performance hangs together', () => {
    for (const s of starterSubjects) {
      expect(s.landingRun, s.key).toBeLessThan(s.groundRun * 1.9);
      if (s.propulsion !== 'rotor') {
        // Stopping from approach speed and reaching climb speed take between 0.8 and 4.5 m/s2.
        const braking = s.approachSpeed ** 2 / (2 * s.landingRun);
        const pull = s.climbSpeed ** 2 / (2 * s.groundRun);
        expect(braking, `${s.key} braking`).toBeGreaterThan(1.2);
        expect(braking, `${s.key} braking`).toBeLessThan(4.5);
        expect(pull, `${s.key} acceleration`).toBeGreaterThan(1.4);
        expect(pull, `${s.key} acceleration`).toBeLessThan(13.5);
        expect(s.climbSpeed, s.key).toBeGreaterThan(s.approachSpeed);
      }
      expect(s.climbGradient, s.key).toBeGreaterThanOrEqual(0.06);
      expect(s.climbGradient, s.key).toBeLessThanOrEqual(0.3);
    }
    const order = ['LS4', 'C172', 'AT76', 'A320', 'B744'].map((key) => get(key).approachSpeed);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });
});

describe('starter kit', () => {
  test('every body and lens fits the schema; keys are unique', () => {
    expect(v.safeParse(v.object(kitFields), starterKit).success).toBe(true);
    for (const body of starterKit.bodies)
      expect(v.safeParse(v.strictObject(bodyFields), body).success, body.key).toBe(true);
    for (const lens of starterKit.lenses) {
      expect(v.safeParse(v.strictObject(lensFields), lens).success, lens.key).toBe(true);
      expect(lens.shortest).toBeLessThanOrEqual(lens.longest);
    }
    const keys = [...starterKit.bodies, ...starterKit.lenses].map((item) => item.key);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('pixels are square within 3 % on every body', () => {
    for (const body of starterKit.bodies) {
      const wide = body.pixelsWide / body.sensorWidth;
      const high = body.pixelsHigh / body.sensorHeight;
      expect(Math.abs(wide / high - 1), body.key).toBeLessThan(0.03);
    }
  });
});

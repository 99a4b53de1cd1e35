import { describe, expect, test } from 'vitest';
import { findTypes, typeNamed } from '../../../src/figures/movements/find-types';
import { nearestClass } from '../../../src/figures/movements/nearest-class';
import { aircraftTypes } from '../../../src/survey/starter/aircraft-types';
import { starterSubjects } from '../../../src/survey/starter/subjects';

const found = (text: string) => findTypes(text, 50).map(({ designator }) => designator);

describe('aircraft by the names of the trade', () => {
  test.each([
    ['737', ['B732', 'B733', 'B738', 'B38M']],
    ['ATR', ['AT43', 'AT76']],
    ['Dash 8', ['DH8A', 'DH8D']],
    ['King Air', ['BE9L', 'BE20', 'B350']],
    ['Hercules', ['C130', 'C30J']],
    ['Typhoon', ['EUFI']],
    ['Hawk', ['HAWK']],
    ['A320 family', ['A318', 'A21N']],
    ['a319', ['A319']],
    ['747-400', ['B744']],
    ['Jumbo', ['B744', 'B748']],
    ['Boeing', ['B738', 'B789']],
    ['dash8', ['DH8C']],
    ['bucker', ['BU31']],
    ['Chinook', ['H47']],
    ['Cub', ['J3', 'PA18']],
  ])('[F700] "%s"', (text, expected) => {
    expect(found(text)).toEqual(expect.arrayContaining(expected));
  });

  test('[F701] what is named most exactly stands first', () => {
    expect(found('Hawk')[0]).toBe('HAWK');
    expect(found('B738')[0]).toBe('B738');
    expect(found('T6')[0]).toBe('T6');
  });

  test('[F702] what nobody knows stays unknown', () => {
    expect(found('')).toEqual([]);
    expect(found('Zeppelin')).toEqual([]);
    expect(nearestClass('Zeppelin', starterSubjects)).toBeNull();
  });

  test('[F703] one exact name is that type; a family is a question, with the class offered that all of it share', () => {
    expect(typeNamed('Typhoon')?.designator).toBe('EUFI');
    expect(typeNamed('c30j')?.designator).toBe('C30J');
    expect(typeNamed('737')).toBeNull();
    // Maker and model are told apart in the list, and typed as one.
    const maker = 'Boeing';
    expect(typeNamed(`${maker} 737-800`)?.designator).toBe('B738');
    expect(typeNamed(`${maker} 737`)).toBeNull();
    // Not in the list: its class is offered, nothing is taken.
    expect(typeNamed('737-700')).toBeNull();
    expect(nearestClass('737-700', starterSubjects)).toBe('any-narrow-body');
    expect(nearestClass('737', starterSubjects)).toBe('any-narrow-body');
    expect(nearestClass('Hercules', starterSubjects)).toBe('any-turboprop-twin');
  });
});

describe('the list itself', () => {
  test('[F704] two hundred types and more, each designator once, in the form of Doc 8643, with a class beside it', () => {
    expect(aircraftTypes.length).toBeGreaterThanOrEqual(200);
    expect(new Set(aircraftTypes.map((t) => t.designator)).size).toBe(aircraftTypes.length);
    for (const { designator, classKey, names } of aircraftTypes) {
      expect(designator).toMatch(/^[A-Z][A-Z0-9]{1,3}$/);
      expect(starterSubjects.map((s) => s.key)).toContain(classKey);
      expect(names[0]?.length).toBeGreaterThan(2);
    }
  });

  // Published sizes (check-values, section 9): FAA Aircraft Characteristics Database and AC 150/5300-13 in ft, OpenAP in m.
  test.each([
    ['A21N', 117.45 * 0.3048, 146.03 * 0.3048],
    ['B738', 34.32, 39.47],
    ['B744', 64.4, 70.66],
    ['A388', 79.75, 72.72],
    ['A359', 64.75, 66.8],
    ['B77W', 64.8, 73.86],
    ['E190', 28.72, 36.24],
    ['E145', 20.04, 29.87],
    ['GLF6', 30.36, 30.41],
    ['B752', 124.83 * 0.3048, 47.3],
    ['C550', 52.17 * 0.3048, 14.39],
  ])('[F705] %s within 2 % of its published span and length', (designator, span, length) => {
    const type = aircraftTypes.find((t) => t.designator === designator);
    expect(Math.abs((type?.subject.span ?? NaN) / span - 1)).toBeLessThan(0.02);
    expect(Math.abs((type?.subject.length ?? NaN) / length - 1)).toBeLessThan(0.02);
    expect(type?.published).toBe(true);
  });

  test('[F706] no size is a slip of the hand: spans and lengths lie within half and twice those of the class', () => {
    const odd = aircraftTypes.filter(({ subject, classKey }) => {
      const stand = starterSubjects.find((s) => s.key === classKey);
      const ratio = (a: number, b: number | undefined) => a / (b ?? NaN);
      const ratios = [ratio(subject.span, stand?.span), ratio(subject.length, stand?.length)];
      return ratios.some((r) => !(r > 0.5 && r < 2));
    });
    // Heavier machines than their class mostly holds, or bombers among the fast jets.
    expect(odd.map((t) => t.designator).sort()).toEqual(expect.arrayContaining(['B1', 'LANC', 'U2']));
    expect(odd.length).toBeLessThan(20);
  });
});

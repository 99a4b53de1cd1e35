import { describe, expect, test } from 'vitest';
import { TileHealth } from '../../../src/map/base/tile-health';

describe('how a base map fares', () => {
  test('[M9] one tile that comes is enough', () => {
    const health = new TileHealth();
    health.asked('a');
    expect(health.health).toBe('waiting');
    health.came('a');
    expect(health.health).toBe('shown');
  });
  test('[M9] is out of reach after three failures in a row, and back with the next tile', () => {
    const health = new TileHealth();
    health.came('a');
    health.failed('b');
    health.failed('c');
    expect(health.health).toBe('shown');
    health.failed('d');
    expect(health.health).toBe('unreachable');
    health.came('e');
    expect(health.health).toBe('shown');
  });
  test('[M9] one failure counts when nothing else came of what was asked', () => {
    const health = new TileHealth();
    health.asked('a');
    health.failed('a');
    health.rested();
    expect(health.health).toBe('unreachable');
  });
  test('[M9] one failure among others does not', () => {
    const health = new TileHealth();
    health.came('a');
    health.failed('b');
    health.rested();
    expect(health.health).toBe('shown');
  });
  test('[M9] is empty where no tile is, and nothing is said of tiles that are no longer wanted', () => {
    const health = new TileHealth();
    health.asked('a');
    health.left('a');
    health.rested();
    expect(health.health).toBe('waiting');
    health.asked('b');
    health.rested();
    expect(health.health).toBe('empty');
  });
  test('[M9] without its description nothing can come', () => {
    const health = new TileHealth();
    health.failed(null);
    expect(health.health).toBe('unreachable');
  });
});

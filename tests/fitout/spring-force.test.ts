import { describe, expect, it } from 'vitest';
import { forceAt, springArm, springForce } from '../../src/fitout/fittings/spring-force.ts';

const lid = { massKg: 8, centreMm: 300, leanRad: 0, armMm: 100, springs: 2, factor: 1.1, gravity: 9.80665 };

describe('gas springs', () => {
  it('share the moment of the lid with a margin', () => {
    // 8 × 9.80665 × 300 × 1.1 / (2 × 100) = 129.4 N each.
    expect(springForce(lid)).toBeCloseTo(129.45, 2);
    // Leaning 60° off level gravity pulls half as hard.
    expect(springForce({ ...lid, leanRad: Math.PI / 3 })).toBeCloseTo(129.45 / 2, 2);
  });

  it('give less when cold and more when hot', () => {
    // 253.15 / 293.15 and 323.15 / 293.15.
    expect(forceAt(100, 20)).toBe(100);
    expect(forceAt(100, -20)).toBeCloseTo(86.36, 2);
    expect(forceAt(100, 50)).toBeCloseTo(110.23, 2);
  });

  it('act on the lever of their line about the hinge', () => {
    // From (3, 0) to (0, 4): 12 / 5.
    expect(springArm([3, 0], [0, 4])).toBeCloseTo(2.4, 9);
    expect(springArm([1, 1], [2, 2])).toBe(0);
    expect(springArm([1, 1], [1, 1])).toBe(0);
  });

  it('refuse to share nothing', () => {
    expect(() => springForce({ ...lid, springs: 0 })).toThrow(RangeError);
    expect(() => springForce({ ...lid, armMm: 0 })).toThrow(RangeError);
  });
});

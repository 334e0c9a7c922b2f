import { describe, expect, it } from 'vitest';
import { chiSquareTail, normalTails, normalTwoSided, seededRandom } from '../../../src/base/index.ts';
import { judgeReadings, type Network, type NetworkMark, SURVEY_CHANCE } from '../../../src/envelope/adjust/index.ts';
import reference from '../../reference/tape-networks.json' with { type: 'json' };

const START: Readonly<Record<string, readonly [number, number]>> = {
  A: [0, 0],
  B: [1200, 0],
  C: [1200, 1000],
  D: [0, 1000],
  E: [0, 500],
  F: [1200, 500],
};
const networkOf = (index: number): Network => {
  const readings = reference.cases[index]?.readings ?? [];
  return {
    marks: Object.entries(START)
      .filter(([id]) => readings.some((reading) => reading.from === id || reading.to === id))
      .map(
        ([id, [x, y]]): NetworkMark => ({ id, start: [x, y, 0], fixed: [id === 'A', id === 'A' || id === 'B', true] }),
      ),
    readings: readings.map(({ id, from, to, mm, sigma }) => ({ kind: 'distance', id, from, to, value: mm, sigma })),
  };
};

describe('distribution functions', () => {
  it('agree with printed tables', () => {
    // Two-sided 5 % and 1 % of the normal: 1.959964, 2.575829; χ² 5 % tails: 3.841459 (1), 18.307038 (10).
    expect(normalTwoSided(0.05)).toBeCloseTo(1.959964, 6);
    expect(normalTwoSided(0.01)).toBeCloseTo(2.575829, 6);
    expect(normalTails(1.959964)).toBeCloseTo(0.05, 7);
    expect(chiSquareTail(3.841459, 1)).toBeCloseTo(0.05, 7);
    expect(chiSquareTail(18.307038, 10)).toBeCloseTo(0.05, 7);
  });
});

describe('judgeReadings', () => {
  it('says inconsistent but names nobody where every residual is equally bad, and asks for another reading', () => {
    const verdict = judgeReadings(networkOf(0));
    expect(verdict.consistent).toBe(false);
    expect(verdict.suspects).toEqual([]);
    expect([...verdict.undecided].sort()).toEqual(['AB', 'AC', 'AD', 'BC', 'BD', 'CD']);
  });

  it('flags nothing in the well-braced network', () => {
    const verdict = judgeReadings(networkOf(1));
    expect(verdict).toMatchObject({ consistent: true, suspects: [], undecided: [] });
    expect(verdict.fitChance).toBeGreaterThan(0.5);
  });

  it('names the misread diagonal and what the others make it', () => {
    const verdict = judgeReadings(networkOf(2));
    // Network 2 read BD as 1542.3 with residual 0.8923 and redundancy 0.42854: the others made it 1542.3 − 0.8923 / 0.42854 = 1540.2178.
    expect(verdict.suspects.map((suspect) => suspect.id)).toEqual(['BD']);
    expect(Math.abs((verdict.suspects[0]?.others ?? 0) - 1540.2178)).toBeLessThan(0.01);
  });

  it('blames a clean survey in no more than the stated share of cases', () => {
    const random = seededRandom(20310314);
    const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const clean = networkOf(1);
    const truth = judgeReadings(clean).adjustment.readings;
    let blamed = 0;
    const surveys = 1000;
    for (let i = 0; i < surveys; i++) {
      const readings = clean.readings.map((reading, k) => ({
        ...reading,
        value: (truth[k]?.adjusted ?? 0) + normal() * reading.sigma,
      }));
      if (judgeReadings({ ...clean, readings }).suspects.length > 0) blamed++;
    }
    // Of 1000 draws at 1 %, 10 are expected at the very most; three standard deviations above is 19.
    expect(blamed).toBeLessThanOrEqual(surveys * SURVEY_CHANCE + 9);
  });
});

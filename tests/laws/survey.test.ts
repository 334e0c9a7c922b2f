import { describe, expect, it } from 'vitest';
import { distance, seededRandom, type Vec3 } from '../../src/base/index.ts';
import { adjust, type Network, predict, surveyNetwork } from '../../src/envelope/index.ts';
import { normalFrom, randomSurvey, rules } from '../envelope/random-survey.ts';

const SURVEYS = 12;
const networks = (
  seed: number,
  noise: number,
): readonly { readonly network: Network; readonly truth: ReadonlyMap<string, Vec3> }[] => {
  const random = seededRandom(seed);
  return Array.from({ length: SURVEYS }, () => {
    const { survey, truth } = randomSurvey(random, { noise, leftUndone: 0.1 });
    return { network: surveyNetwork(survey, rules).network, truth };
  });
};
const sigmas = (network: Network): readonly number[] => {
  const adjustment = adjust(network);
  return network.marks.flatMap(({ id }) => {
    const c = adjustment.covarianceOf(id);
    return c ? [Math.sqrt(c[0]), Math.sqrt(c[3]), Math.sqrt(c[5])] : [Infinity, Infinity, Infinity];
  });
};

/** Noise of the solve against sigmas of a millimetre. */
const SOLVED = 0.0001;

describe('adjustment keeps its laws on random surveys', () => {
  it('perfect readings: nothing changes, whatever the start', () => {
    for (const { network, truth } of networks(31, 0)) {
      const adjustment = adjust(network);
      expect(adjustment.converged).toBe(true);
      for (const row of adjustment.readings) expect(Math.abs(row.residual)).toBeLessThan(SOLVED);
      for (const { id } of network.marks) {
        const [found, true_] = [adjustment.points.get(id), truth.get(id)];
        expect(found && true_ && distance(found, true_)).toBeLessThan(0.001);
      }
    }
  });

  it('a further reading that agrees never raises a sigma', () => {
    const random = seededRandom(32);
    for (const { network } of networks(33, 1)) {
      const before = sigmas(network);
      const adjustment = adjust(network);
      const pick = () => network.marks[Math.floor(random() * network.marks.length)];
      const [from, to] = [pick(), pick()];
      if (!from || !to || from === to) continue;
      const bare = { kind: 'distance', id: 'more', from: from.id, to: to.id, value: 0, sigma: 0.5 + random() } as const;
      const value = predict(bare, adjustment.points);
      const after = sigmas({ ...network, readings: [...network.readings, { ...bare, value }] });
      after.forEach((sigma, i) => {
        expect(sigma).toBeLessThanOrEqual((before[i] ?? 0) + SOLVED);
      });
    }
  });

  it('scaling every sigma by k leaves points and redundancies, scales w by 1/k and sigmas by k', () => {
    for (const { network } of networks(34, 1)) {
      const k = 2.5;
      const scaled: Network = { ...network, readings: network.readings.map((r) => ({ ...r, sigma: k * r.sigma })) };
      const [a, b] = [adjust(network), adjust(scaled)];
      a.readings.forEach((row, i) => {
        expect(Math.abs((b.readings[i]?.w ?? 0) * k - row.w)).toBeLessThan(0.001);
        expect(Math.abs((b.readings[i]?.redundancy ?? 0) - row.redundancy)).toBeLessThan(SOLVED);
      });
      const [p, q] = [sigmas(network), sigmas(scaled)];
      p.forEach((sigma, i) => {
        expect(Math.abs((q[i] ?? 0) - k * sigma)).toBeLessThan(0.001);
      });
    }
  });

  it('redundancy numbers lie between 0 and 1 and add up to the readings to spare', () => {
    for (const { network } of networks(35, 1)) {
      const adjustment = adjust(network);
      const sum = adjustment.readings.reduce((total, { redundancy }) => total + redundancy, 0);
      expect(sum).toBeCloseTo(adjustment.redundancy, 6);
      for (const { redundancy } of adjustment.readings) expect(redundancy).toBeLessThanOrEqual(1);
    }
  });

  it('the stated sigmas are those that repeated surveys show', () => {
    const { survey, exact } = randomSurvey(seededRandom(36), { kind: 'lift-hatch', noise: 0 });
    const { network } = surveyNetwork(survey, rules);
    expect(exact.size).toBe(network.readings.length);
    const random = seededRandom(37);
    const first = adjust(network);
    const stated = sigmas(network);
    const squares = new Float64Array(stated.length);
    const runs = 200;
    for (let run = 0; run < runs; run++) {
      const noisy = network.readings.map((r) => ({ ...r, value: r.value + r.sigma * normalFrom(random) }));
      const { points } = adjust({ ...network, readings: noisy });
      network.marks.forEach(({ id }, m) => {
        for (const axis of [0, 1, 2] as const) {
          const off = (points.get(id)?.[axis] ?? 0) - (first.points.get(id)?.[axis] ?? 0);
          squares[3 * m + axis] = (squares[3 * m + axis] ?? 0) + off * off;
        }
      });
    }
    // The standard deviation of a standard deviation from 200 runs is 1/√400 = 5 %; some 75 of them stay within 4 of that.
    stated.forEach((sigma, i) => {
      const shown = Math.sqrt((squares[i] ?? 0) / runs);
      if (sigma > 0) expect(Math.abs(shown / sigma - 1)).toBeLessThan(0.2);
      else expect(shown).toBe(0);
    });
  });
});

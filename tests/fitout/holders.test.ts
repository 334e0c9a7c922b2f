import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/fitout/index.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

/** Clear inside: across 17.7 to 882.3, deep 0 to 581.6, up 17.7 to 682.3. */
const held = (fitting: Readonly<Record<string, unknown>>, gear: readonly Readonly<Record<string, unknown>>[] = []) =>
  solved([carcass(fitted('opening-1', fitting))], {
    gear: gear.map((item, i) => ({ id: `gear-${i + 1}`, massFrom: 'measured', ...item })),
  });

const boxOf = (fitOut: ReturnType<typeof held>, id: string) => {
  const body = fitOut.bodies.find((each) => each.id === id);
  if (!body) throw new Error(`no body ${id}`);
  return bodyBox(body as Body);
};

const place = { opening: 'opening-1', at: [0, 0, 0], stance: 'upright' };

describe('an extinguisher cradle', () => {
  const cradle = { kind: 'extinguisher-cradle', cradle: 'cradle-extinguisher-10', mounting: 'back' };
  // Length 222 × width 127 × height 521 as it stands.
  const extinguisher = { name: 'Powder', sizeMm: [222, 127, 521], massKg: 8, place };

  it('stands its saddle on the back, in the middle of the extinguisher, which stands against it', () => {
    const fitOut = held(cradle, [extinguisher]);
    expect(fitOut.problems).toEqual([]);
    // The record is 170 across × 170 out × 320 up and goes round 140 at most: 170 − 140 stands behind.
    const box = boxOf(fitOut, 'opening-1/cradle');
    expect(box.min[0]).toBeCloseTo(450 - 85, 9);
    expect(box.max[0]).toBeCloseTo(450 + 85, 9);
    expect([box.min[1], box.max[1]]).toEqual([581.6 - 30, 581.6]);
    // Half way up 521 from the floor: 17.7 + (521 − 320) / 2
    expect(box.min[2]).toBeCloseTo(118.2, 9);
    // 127 across about the middle, 222 deep against the saddle.
    const stood = boxOf(fitOut, 'gear-1/body');
    expect(stood.min[0]).toBeCloseTo(450 - 63.5, 9);
    expect(stood.min[1]).toBeCloseTo(551.6 - 222, 9);
    expect(stood.min[2]).toBeCloseTo(17.7, 9);
  });

  it('is bolted twice through the back, and asks for what it takes and what stands in it', () => {
    const fitOut = held(cradle, [extinguisher]);
    const bolts = panelOf(fitOut, 'carcass-1/back').cuts.filter((cut) => cut.kind === 'hole');
    // Half of 170 apart.
    expect(bolts.map(({ diameter, depth }) => [diameter, depth])).toEqual([
      [6.6, null],
      [6.6, null],
    ]);
    const [a, b] = bolts.map(({ at }) => at);
    expect(Math.hypot((a?.[0] ?? 0) - (b?.[0] ?? 0), (a?.[1] ?? 0) - (b?.[1] ?? 0))).toBeCloseTo(85, 9);
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/clamp-bolts')?.quantity).toBe(2);
    // Across: the cradle; deep: 222 + 3 spare + saddle 30; up: 521 + hand room 15.
    expect(fitOut.openings[0]?.least).toEqual([170, 255, 536]);
    expect(held(cradle).openings[0]?.least).toEqual([170, 170, 320]);
    // 1.2 kg cradle and 8 kg in it.
    expect(fitOut.masses.find(({ id }) => id === 'opening-1/cradle')?.massKg).toBe(1.2);
  });

  it('says when the extinguisher is thinner or thicker than it goes round, and what the catalog does not have', () => {
    const thick = held(cradle, [{ ...extinguisher, sizeMm: [260, 178, 610] }]);
    expect(thick.problems).toMatchObject([{ code: 'bad-joint', at: 'opening-1', needMm: 140, haveMm: 178 }]);
    expect(held({ ...cradle, cradle: 'cradle-x' }).problems).toMatchObject([
      { code: 'unknown-hardware', because: ['cradle-x'] },
    ]);
  });
});

describe('a cylinder clamp', () => {
  const clamp = { kind: 'cylinder-clamp', clamp: 'clamp-cylinder-180', clamps: 2, lies: 'upright-left' };
  const cylinder = { name: 'Spare', sizeMm: [185, 185, 575], massKg: 7.3, place };

  it('shares its bands out along the cylinder, a saddle of each behind it', () => {
    const fitOut = held(clamp, [cylinder]);
    expect(fitOut.problems).toEqual([]);
    // 205 across × 60 along × 200 out, round 190 at most: saddles of 10 on the left side, in the middle of the depth.
    const [low, high] = ['clamp-1', 'clamp-2'].map((role) => boxOf(fitOut, `opening-1/${role}`));
    expect([low?.min[0], low?.max[0]]).toEqual([17.7, 27.7]);
    expect(low?.min[1]).toBeCloseTo(581.6 / 2 - 102.5, 9);
    // (575 − 2 × 60) / 3 of air below, between and above.
    const air = 455 / 3;
    expect(low?.min[2]).toBeCloseTo(17.7 + air, 9);
    expect(high?.min[2]).toBeCloseTo(17.7 + 2 * air + 60, 9);
    expect(boxOf(fitOut, 'gear-1/body').min[0]).toBeCloseTo(27.7, 9);
    expect(fitOut.rooms[0]?.keeps).toBe('bracket');
  });

  it('asks for its bands one after the other, whichever way they lie', () => {
    expect(held(clamp).openings[0]?.least).toEqual([200, 205, 120]);
    expect(held({ ...clamp, lies: 'across-floor' }).openings[0]?.least).toEqual([120, 205, 200]);
    expect(held({ ...clamp, lies: 'deep-right', clamps: 3 }).openings[0]?.least).toEqual([200, 180, 205]);
  });
});

describe('a tool clamp', () => {
  const irons = { name: 'Bar', sizeMm: [762, 150, 150], massKg: 4.4, place: { ...place, turnDeg: 90 } };

  it('lies across the back, its pocket over the far end', () => {
    const fitOut = held(
      { kind: 'tool-clamp', clamp: 'clamp-tool-38', clamps: 2, lies: 'across-back', headCover: 'clamp-axe-head' },
      [irons],
    );
    expect(fitOut.problems).toEqual([]);
    // Saddles: 70 − 45 = 25 of a clamp, 60 − 50 = 10 of the pocket; the bar lies against the greater.
    expect(boxOf(fitOut, 'gear-1/body').max[1]).toBeCloseTo(581.6 - 25, 9);
    const cover = boxOf(fitOut, 'opening-1/head-cover');
    expect(cover.min[1]).toBeCloseTo(581.6 - 10, 9);
    // 762 from 69 to 831; 60 + 60 + 140 of pieces, (762 − 260) / 4 of air; the pocket is the last.
    expect(cover.max[0]).toBeCloseTo(831 - 125.5, 9);
    expect(cover.min[0]).toBeCloseTo(831 - 125.5 - 140, 9);
  });

  it('says when there is no panel to bolt it to', () => {
    const open = solved([
      carcass(
        fitted('opening-1', { kind: 'tool-clamp', clamp: 'clamp-tool-25', lies: 'across-back', headCover: null }),
        {
          joints: { corner: 'dado', dadoDepthMm: 6, back: { kind: 'none' } },
        },
      ),
    ]);
    expect(open.problems).toMatchObject([{ code: 'bad-joint', because: ['holder meets no panel at its back'] }]);
  });
});

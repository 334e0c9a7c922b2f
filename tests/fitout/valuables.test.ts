import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/fitout/index.ts';
import { carcass, empty, fitted, openingOf, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

const box = (rest: Readonly<Record<string, unknown>> = {}) =>
  solved([
    carcass(
      fitted('opening-1', {
        kind: 'valuables',
        slide: 'slide-45',
        slideLengthMm: 400,
        boxMaterial: 'birch-ply-12',
        bottomMaterial: 'birch-ply-6',
        lock: 'latch-cam-lock',
        pull: 'pull-flush-small',
        liner: 'mat-foam-10',
        coverMaterial: 'birch-ply-9',
        inside: empty('opening-2'),
        ...rest,
      }),
      { size: { width: 900, height: 200, depth: 600 } },
    ),
  ]);
const bodyOf = (fitOut: ReturnType<typeof box>, id: string) =>
  bodyBox(fitOut.bodies.find((body) => body.id === id) as Body);

describe('a locked slide-out', () => {
  it('lies under a fixed cover that is housed in both sides', () => {
    const fitOut = box();
    expect(fitOut.problems).toEqual([]);
    const cover = panelOf(fitOut, 'opening-1/cover');
    // 864.6 + 2 × 6 long, as deep as the opening, under the top.
    expect(cover.length).toBeCloseTo(876.6, 9);
    expect(cover.width).toBeCloseTo(581.6, 9);
    expect(cover.mover).toBeNull();
    expect(bodyOf(fitOut, 'opening-1/cover').max[2]).toBeCloseTo(200 - 17.7, 9);
    // The box keeps 12 under it: its sides end at 182.3 − 9.2 (birch 9 as measured) − 12.
    const thick = cover.thickness;
    expect(bodyOf(fitOut, 'opening-1/box-side-left').max[2]).toBeCloseTo(182.3 - thick - 12, 9);
  });

  it('is lined by the metre of the roll, and what is inside stands on the lining', () => {
    const [lined, bare] = [box(), box({ liner: null })];
    const [on, under] = [lined, bare].map((fitOut) => openingOf(fitOut, 'opening-2'));
    expect((under?.size[2] ?? 0) - (on?.size[2] ?? 0)).toBeCloseTo(10, 9);
    // Inside across × deep of a roll 1 m wide; 0.5 kg a metre.
    const area = ((on?.size[0] ?? 0) * (on?.size[1] ?? 0)) / 1e6;
    expect(lined.masses.find(({ id }) => id === 'opening-1/liner')?.massKg).toBeCloseTo(0.5 * area, 9);
  });

  it('has its lock in the middle of the front and its pull to the left of it', () => {
    const fitOut = box();
    const [lock, pull] = ['latch', 'pull'].map((role) => bodyOf(fitOut, `opening-1/${role}`));
    expect([lock?.min[0], lock?.max[0]]).toEqual([430, 470]);
    // 3 of gap, 90 of pull.
    expect(pull?.max[0]).toBeCloseTo(427, 9);
    expect(pull?.min[0]).toBeCloseTo(337, 9);
    expect(fitOut.movers.map(({ origin }) => origin)).toEqual(['opening-1']);
  });

  it('asks for a drawer, its lining and its cover', () => {
    const [with9, without] = [box(), box({ coverMaterial: null })].map(
      (fitOut) => openingOf(fitOut, 'opening-1').least,
    );
    const thick = panelOf(box(), 'opening-1/cover').thickness;
    expect((with9?.[2] ?? 0) - (without?.[2] ?? 0)).toBeCloseTo(thick, 9);
    // Lock 40, pull and gap 93 on either side of it, reveals of 2.
    expect(with9?.[0]).toBeCloseTo(40 + 2 * 93 + 4, 9);
  });

  it('says when nothing closes it above', () => {
    const open = solved([
      carcass({
        id: 'opening-1',
        content: {
          kind: 'divided',
          along: 'rows',
          divider: 'none',
          parts: [
            { size: { rule: 'share', weight: 1 }, opening: empty('opening-3') },
            {
              size: { rule: 'share', weight: 1 },
              opening: fitted('opening-4', {
                kind: 'valuables',
                boxMaterial: 'birch-ply-12',
                bottomMaterial: 'birch-ply-6',
                lock: 'latch-cam-lock',
                inside: empty('opening-5'),
              }),
            },
          ],
        },
      }),
    ]);
    expect(open.problems).toMatchObject([{ code: 'bad-joint', because: ['nothing closes the locked box above'] }]);
  });
});

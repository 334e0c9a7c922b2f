import { describe, expect, it } from 'vitest';
import { carcass, divided, empty, fitted, fixed, hug, openingOf, share, solved } from './designs.ts';

type Plain = Readonly<Record<string, unknown>>;
const tenth = (values: readonly number[]): readonly number[] => values.map((value) => Math.round(value * 10) / 10);

/** Clear 864.6 × 581.6 × 664.6 (across × deep × up) at [17.7, 0, 17.7]. */
const inside = (opening: Plain, rest: Plain = {}) => solved([carcass(opening)], rest);

const bag = (opening: string, rest: Plain = {}): Plain => ({
  id: 'gear-1',
  name: 'Bag',
  sizeMm: [400, 300, 200],
  massKg: 8,
  massFrom: 'measured',
  place: { opening, level: 0, at: [10, 0, 0], ...rest },
});

describe('a divided opening', () => {
  it('runs columns from the viewer’s left, rows from the top, layers from the face', () => {
    const columns = inside(
      divided('opening-1', 'columns', [
        [fixed(200), empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    );
    expect(openingOf(columns, 'opening-2').from[0]).toBeCloseTo(17.7, 9);
    // 17.7 + 200 + 17.7 divider.
    expect(openingOf(columns, 'opening-3').from[0]).toBeCloseTo(235.4, 9);
    const rows = inside(
      divided('opening-1', 'rows', [
        [fixed(200), empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    );
    // 17.7 + 664.6 − 200.
    expect(openingOf(rows, 'opening-2').from[2]).toBeCloseTo(482.3, 9);
    expect(openingOf(rows, 'opening-3').from[2]).toBeCloseTo(17.7, 9);
    const layers = inside(
      divided('opening-1', 'layers', [
        [fixed(200), empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    );
    expect(openingOf(layers, 'opening-2').from[1]).toBe(0);
  });

  it('takes no room for a division without panels', () => {
    const fitOut = inside(
      divided(
        'opening-1',
        'columns',
        [
          [fixed(200), empty('opening-2')],
          [share(), empty('opening-3')],
        ],
        'none',
      ),
    );
    expect(tenth(openingOf(fitOut, 'opening-3').size)).toEqual([664.6, 581.6, 664.6]);
    expect(fitOut.panels.filter(({ role }) => role === 'divider')).toEqual([]);
  });

  it('hugs the gear in it with the spare of the house rules', () => {
    const fitOut = inside(
      divided('opening-1', 'rows', [
        [hug, empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
      {
        gear: [bag('opening-2')],
      },
    );
    expect(fitOut.problems).toEqual([]);
    // 200 high and 15 of hand room.
    expect(openingOf(fitOut, 'opening-2').size[2]).toBeCloseTo(215, 9);
    // Across 10 + 300 + 3; deep 400 + 3.
    expect(openingOf(fitOut, 'opening-2').least).toEqual([313, 403, 215]);
  });

  it('hugs through divisions and fittings down to what is inside', () => {
    const drawer: Plain = {
      kind: 'drawer',
      slide: 'slide-45',
      boxMaterial: 'birch-ply-12',
      bottomMaterial: 'birch-ply-6',
      inside: divided('opening-4', 'columns', [
        [share(), empty('opening-5')],
        [share(), empty('opening-6')],
      ]),
    };
    const fitOut = inside(
      divided('opening-1', 'rows', [
        [hug, fitted('opening-2', drawer)],
        [share(), empty('opening-3')],
      ]),
      { gear: [bag('opening-5')] },
    );
    // 6 below + 12 groove + 6.4 bottom + 200 + 15 hand room + 12 above.
    expect(openingOf(fitOut, 'opening-2').size[2]).toBeCloseTo(251.4, 9);
    expect(openingOf(fitOut, 'opening-5').size[2]).toBeCloseTo(215, 9);
    // Both columns must be as wide as the needier: 2 × 313 + divider 12, + 2 × 12 sides + 2 × 12.9.
    expect(openingOf(fitOut, 'opening-2').least[0]).toBeCloseTo(687.8, 9);
  });

  it('names the rules that fight and shows the parts all the same', () => {
    const fitOut = inside(
      divided('opening-1', 'rows', [
        [fixed(300), empty('opening-2')],
        [fixed(190), empty('opening-3')],
        [hug, empty('opening-4')],
      ]),
      { gear: [bag('opening-4')] },
    );
    expect(fitOut.problems).toEqual([
      {
        code: 'rules-fight',
        at: 'opening-1',
        axis: 'up',
        needMm: 705,
        haveMm: expect.closeTo(629.2, 9),
        because: ['row 1 fixed 300 mm', 'row 2 fixed 190 mm', 'row 3 hugs 215 mm', 'there are 629.2 mm'],
      },
    ]);
    const sum = ['opening-2', 'opening-3', 'opening-4'].reduce((total, id) => total + openingOf(fitOut, id).size[2], 0);
    expect(sum).toBeCloseTo(629.2, 9);
  });

  it('drops dividers that do not fit and shows the parts in even shares', () => {
    const many = Array.from({ length: 40 }, (_, i) => [share(), empty(`opening-${i + 2}`)] as const);
    const fitOut = inside(divided('opening-1', 'rows', many));
    // 39 × 17.7 = 690.3 is more than 664.6.
    expect(fitOut.problems).toMatchObject([{ code: 'rules-fight', at: 'opening-1' }]);
    expect(fitOut.panels.filter(({ role }) => role === 'shelf')).toEqual([]);
    expect(openingOf(fitOut, 'opening-9').size[2]).toBeCloseTo(664.6 / 40, 9);
  });

  it('says when nothing holds a divider', () => {
    const shelf = divided('opening-2', 'rows', [
      [share(), empty('opening-4')],
      [share(), empty('opening-5')],
    ]);
    const fitOut = inside(
      divided(
        'opening-1',
        'columns',
        [
          [share(), shelf],
          [share(), empty('opening-3')],
        ],
        'none',
      ),
    );
    expect(fitOut.problems).toMatchObject([
      { code: 'bad-joint', at: 'opening-2', because: ['shelf meets no panel at its right'] },
    ]);
  });

  it('solves trees forty openings deep', () => {
    const deep = Array.from({ length: 39 }).reduce<Plain>(
      (opening, _, i) =>
        divided(
          `opening-${3 * i + 2}`,
          i % 2 ? 'rows' : 'columns',
          [
            [share(9), opening],
            [share(1), empty(`opening-${3 * i + 3}`)],
          ],
          'none',
        ),
      empty('opening-1'),
    );
    const fitOut = inside(deep);
    expect(Math.max(...fitOut.openings.map(({ depth }) => depth))).toBe(39);
    expect(fitOut.problems).toEqual([]);
  });
});

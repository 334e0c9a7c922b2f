import { describe, expect, it } from 'vitest';
import { assembliesOf } from '../../../src/shop/assembly/index.ts';
import { viewPlaces } from '../../../src/shop/drawing/assembly-drawing.ts';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import type { Drawing } from '../../../src/shop/drawing/drawing.ts';
import { projectionSign, titleFoot } from '../../../src/shop/drawing/title-foot.ts';
import { createDrawings } from '../../../src/shop/drawings.ts';
import { catalog, design, rules, twoColumns } from '../fixture.ts';

const drawn = (projection: 'third' | 'first', name: string): readonly Drawing[] => {
  const drawings = createDrawings({
    design: { ...design(), projection },
    fitout: twoColumns(),
    catalog,
    rules,
    space: null,
  });
  return drawings.draw(name) ?? [];
};
const wordsAt = (page: Drawing | undefined, words: string): readonly [number, number] => {
  const found = page && resolved(page).shapes.find((shape) => shape.kind === 'text' && shape.text === words);
  if (found?.kind !== 'text') throw new Error(`no "${words}"`);
  return [found.at[0], found.at[1]];
};

describe('the views of an assembly', () => {
  it('stand in third angle with the plan above and the right side at the right, in first angle the other way', () => {
    // 900 across, 600 deep, 700 up at 1:10, 16 between: the face is 90 × 70.
    const size = [900, 600, 700] as const;
    expect(viewPlaces('third', { size }, 0.1)).toMatchObject({
      places: { face: [0, 0], plan: [0, 86], right: [106, 0] },
      whole: [166, 146],
    });
    expect(viewPlaces('first', { size }, 0.1)).toMatchObject({
      places: { face: [76, 76], plan: [76, 0], right: [0, 76] },
      whole: [166, 146],
    });
  });

  it('are turned as the design says', () => {
    const [third] = drawn('third', 'assembly-carcass-1');
    const [first] = drawn('first', 'assembly-carcass-1');
    expect(wordsAt(third, 'from above')[1]).toBeGreaterThan(wordsAt(third, 'face')[1]);
    expect(wordsAt(third, 'from the right')[0]).toBeGreaterThan(wordsAt(third, 'face')[0]);
    expect(wordsAt(first, 'from above')[1]).toBeLessThan(wordsAt(first, 'face')[1]);
    expect(wordsAt(first, 'from the right')[0]).toBeLessThan(wordsAt(first, 'face')[0]);
    wordsAt(first, 'first angle');
  });

  it('list every panel of the assembly with its mark, once a mark', () => {
    const fitout = twoColumns();
    expect(assembliesOf(fitout).map(({ id }) => id)).toEqual(['carcass-1']);
    const [page] = drawn('third', 'assembly-carcass-1');
    for (const mark of ['A1', 'A2', 'A3', 'A4', 'A5', 'A6']) wordsAt(page, mark);
  });

  it('are drawn apart with a mark at each panel', () => {
    const [page] = drawn('third', 'exploded-carcass-1');
    // Two panels are cut alike and share A3; all others have a mark each.
    const marks = page
      ? resolved(page).shapes.flatMap((shape) =>
          shape.kind === 'text' && /^A\d$/.test(shape.text) ? [shape.text] : [],
        )
      : [];
    expect(new Set(marks).size).toBeGreaterThanOrEqual(5);
  });
});

describe('the lowest row of a title block', () => {
  it('has the newest two letters with what they changed, and room for who signs', () => {
    const letter = (name: string) => ({ letter: name, why: `why ${name}`, who: 'R. Mapp', on: '2031-05-02' });
    const cells = titleFoot({ projection: 'first', revisions: [letter('C'), letter('B'), letter('A')] });
    expect(cells.map(({ caption, value }) => `${caption}|${value}`)).toEqual([
      'first angle|',
      'letter C: R. Mapp, 2031-05-02|why C',
      'letter B: R. Mapp, 2031-05-02|why B',
      'drawn|',
      'checked|',
      'approved|',
      'date|',
    ]);
  });

  it('shows the end of the cone on its own side in third angle, beyond it in first', () => {
    for (const [projection, sign] of [
      ['third', -1],
      ['first', 1],
    ] as const) {
      const rings = projectionSign(projection, [0, 0], 4).flatMap((shape) => (shape.kind === 'circle' ? [shape] : []));
      expect(rings).toHaveLength(2);
      for (const { at } of rings) expect(Math.sign(at[0])).toBe(sign);
    }
  });
});

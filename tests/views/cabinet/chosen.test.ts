import { describe, expect, test } from 'vitest';
import { chosenOf } from '../../../src/views/editor/sheets/cabinet/chosen.ts';
import { NOTHING_SOLVED, workedFace } from './solved-face.ts';

const { design, carcass } = workedFace();
const content = carcass.opening.content;
const left = content.kind === 'divided' ? content.parts[0]?.opening : undefined;
if (!left) throw new Error('not divided');

const fitOut = {
  ...NOTHING_SOLVED,
  movers: [
    {
      id: `${left.id}/drawer`,
      origin: left.id,
      name: 'drawer',
      motion: { kind: 'slide', direction: [-1, 0, 0], travel: 1 },
      carriedBy: null,
      rests: [],
    },
  ],
} as const;

describe('chosenOf', () => {
  test('an opening by its own id brings its carcass', () => {
    const chosen = chosenOf(design, NOTHING_SOLVED, [left.id], null);
    expect(chosen.opening?.id).toBe(left.id);
    expect(chosen.carcass?.id).toBe(carcass.id);
  });

  test('a part of a fitting means the opening that it is fitted in', () => {
    expect(chosenOf(design, fitOut, [`${left.id}/drawer`], null).opening?.id).toBe(left.id);
  });

  test('the last of several counts', () => {
    expect(chosenOf(design, NOTHING_SOLVED, [left.id, carcass.id], null).opening).toBeNull();
  });

  test('nothing selected leaves the carcass that is shown, or the first', () => {
    expect(chosenOf(design, NOTHING_SOLVED, [], null).carcass?.id).toBe(carcass.id);
    expect(chosenOf(design, NOTHING_SOLVED, [], 'no-such-carcass').carcass?.id).toBe(carcass.id);
  });

  test('an id that nobody knows selects nothing', () => {
    const chosen = chosenOf(design, NOTHING_SOLVED, ['gone-7'], null);
    expect(chosen.opening).toBeNull();
    expect(chosen.gear).toBeNull();
  });
});

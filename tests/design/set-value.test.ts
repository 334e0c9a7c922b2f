import { describe, expect, it } from 'vitest';
import { setValue, typedValue } from '../../src/design/index.ts';

const document = {
  title: 'Marrow Hill',
  rooms: [
    { id: 'opening-1', size: { width: 600 }, net: null },
    { id: 'opening-2', size: { width: 300 }, stops: [30, 75] },
  ],
};

describe('a value by its path', () => {
  it.each([
    ['title', 'Ostrel 12', 'Marrow Hill', 'Ostrel 12'],
    ['rooms[1].size.width', '250', 300, 250],
    // 9 27/32 × 25.4 = 9.84375 × 25.4 = 250.03125
    ['rooms[opening-2].size.width', '9 27/32 in', 300, 250.03125],
    // 1 ft 6 in = 18 × 25.4 = 457.2
    ['rooms[opening-1].size.width', '1\' 6"', 600, 457.2],
    ['rooms[opening-2].stops[1]', '80', 75, 80],
    ['rooms[opening-2].stops', '[20,40]', [30, 75], [20, 40]],
    ['rooms[opening-1].net', 'true', null, true],
    ['rooms[opening-1].latch', 'latch-slam', undefined, 'latch-slam'],
  ])('%s = %s', (path, text, before, after) => {
    const set = setValue(document, path, text, 'mm');
    if (!set.ok) throw new Error(JSON.stringify(set.error));
    expect(set.value.before).toEqual(before);
    expect(set.value.after).toEqual(after);
    const again = setValue(set.value.document, path, text, 'mm');
    expect(again.ok && again.value.before).toEqual(after);
  });

  it('leaves the document it was given alone', () => {
    const text = JSON.stringify(document);
    setValue(document, 'rooms[0].size.width', '1', 'mm');
    expect(JSON.stringify(document)).toBe(text);
  });

  it.each([
    ['rooms[7].size', '', 'rooms', ['opening-1', 'opening-2']],
    ['rooms[opening-9].size', '', 'rooms', ['opening-1', 'opening-2']],
    ['rooms[0].lid.width', '', 'rooms[0]', ['id', 'size', 'net']],
    ['title.length', '', 'title', []],
    ['', '', '', ['title', 'rooms']],
    ['__proto__.polluted', 'true', '', ['title', 'rooms']],
  ])('says what there is where %s leads nowhere', (path, text, at, there) => {
    expect(setValue(document, path, text, 'mm')).toEqual({ ok: false, error: { at, there } });
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('a bare number is as in the file, a fraction as the design measures', () => {
    expect(typedValue('14', 0, 'in')).toBe(14);
    // 14 3/8 in = 14.375 × 25.4
    expect(typedValue('14 3/8', 0, 'in')).toBeCloseTo(365.125, 9);
    expect(typedValue('14 3/8', 'was text', 'in')).toBe('14 3/8');
  });
});

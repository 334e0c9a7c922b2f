import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatInches,
  formatLength,
  formatLengthUnit,
  formatMass,
  formatMillimetres,
  type LengthUnits,
  parseLength,
} from '../../src/base/index.ts';

const SEEDED = { seed: 20261, numRuns: 2000 } as const;

const read = (text: string, units: LengthUnits): number | null => {
  const result = parseLength(text, units);
  return result.ok ? result.value : null;
};

describe('parseLength', () => {
  // 25.4 mm an inch, 12 inches a foot; the sum stands beside each.
  test.each<[string, LengthUnits, number]>([
    ['14 3/8', 'in', 14.375 * 25.4],
    ['14-3/8', 'in', 14.375 * 25.4],
    ['14-3/8"', 'mm', 14.375 * 25.4],
    ['14 3/8 in', 'mm', 14.375 * 25.4],
    ['14 3/8 INCHES', 'mm', 14.375 * 25.4],
    ['14.375', 'in', 14.375 * 25.4],
    ['.375', 'in', 0.375 * 25.4],
    ['3/8', 'in', 0.375 * 25.4],
    ['9/8', 'in', 1.125 * 25.4],
    ['14⅜', 'in', 14.375 * 25.4],
    ['14 ⅜', 'in', 14.375 * 25.4],
    ['14-½', 'in', 14.5 * 25.4],
    ['½', 'in', 0.5 * 25.4],
    ['1⁄2', 'in', 0.5 * 25.4],
    ['1\' 6 1/2"', 'mm', 18.5 * 25.4],
    ["1' 6 1/2", 'mm', 18.5 * 25.4],
    ['1\'6"', 'mm', 18 * 25.4],
    ['1\'-6"', 'mm', 18 * 25.4],
    ['1\'-6 1/2"', 'mm', 18.5 * 25.4],
    ['1\'-6-1/2"', 'mm', 18.5 * 25.4],
    ['1’ 6”', 'mm', 18 * 25.4],
    ['1′ 6″', 'mm', 18 * 25.4],
    ["1' 6''", 'mm', 18 * 25.4],
    ['1 ft 6 in', 'mm', 18 * 25.4],
    ['2 feet', 'mm', 24 * 25.4],
    ["1 1/2'", 'in', 18 * 25.4],
    ['365', 'mm', 365],
    ['365 mm', 'in', 365],
    ['365mm', 'in', 365],
    ['36.5 cm', 'in', 365],
    ['0.365 m', 'in', 365],
    ['36,5 cm', 'in', 365],
    ['0,125', 'in', 0.125 * 25.4],
    ['  600  ', 'mm', 600],
    ['14 3/8 + 1/4', 'in', 14.625 * 25.4],
    ['14 3/8 - 1/4', 'in', 14.125 * 25.4],
    ['600 − 18 − 18', 'mm', 600 - 18 - 18],
    ['600-18+2', 'mm', 600 - 18 + 2],
    ['24" - 18 mm', 'in', 24 * 25.4 - 18],
    ['1\' + 6"', 'mm', 18 * 25.4],
    ['1\' 6" + 1\' 6"', 'mm', 36 * 25.4],
    ['-1\' 6"', 'mm', -18 * 25.4],
    ['-5', 'mm', -5],
    ['−5', 'mm', -5],
    ['+5', 'mm', 5],
    ['5 - 10', 'mm', -5],
  ])('%s in %s', (text, units, mm) => {
    expect(read(text, units)).toBeCloseTo(mm, 9);
  });

  test.each([
    ['nothing', ''],
    ['blanks', '   '],
    ['a word', 'wide'],
    ['a unit alone', 'mm'],
    ['an unknown unit', '5 yd'],
    ['a unit and more', '5 mmm'],
    ['two numbers', '5 6'],
    ['two fractions', '1/2 1/4'],
    ['two units', '5 mm 6 mm'],
    ['inches before more inches', '6" 1/2'],
    ['feet before millimetres', "1' 6 mm"],
    ['feet before feet', "1' 2'"],
    ['no bottom', '1/'],
    ['no top', '/8'],
    ['division by zero', '1/0'],
    ['division by zero after a whole', '14 1/0'],
    ['a fraction of one or more after a whole', '14 9/8'],
    ['a whole as a fraction after a whole', '14 16/16'],
    ['a thousands comma, or decimals', '1,200'],
    ['a thousands comma with decimals', '1,200.5'],
    ['two commas', '1,200,000'],
    ['a spaced dash after feet', '1\' - 6"'],
    ['a dash leaning on the inches', '1\' -6"'],
    ['a sum without an end', '5 +'],
    ['two signs', '5 + - 3'],
    ['a doubled sign', '--5'],
    ['a product', '5 * 3'],
    ['an exponent', '1e3'],
    ['two points', '1.2.3'],
    ['a point at the end', '14.'],
    ['infinity', 'Infinity'],
    ['more than a number holds', '9'.repeat(400)],
    ['not a number', 'NaN'],
  ])('refuses %s', (_, text) => {
    for (const units of ['in', 'mm'] as const)
      expect(parseLength(text, units)).toEqual({ ok: false, error: { got: text } });
  });

  test('never throws, and gives a finite number or the text back', () => {
    const piece = fc.constantFrom(
      '1',
      '14',
      '3/8',
      ' ',
      '-',
      '+',
      "'",
      '"',
      'mm',
      'in',
      'ft',
      '½',
      ',',
      '.',
      '/',
      '0',
      'x',
    );
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 12 }),
        fc.constantFrom('in' as const, 'mm' as const),
        (pieces, units) => {
          const text = pieces.join('');
          const result = parseLength(text, units);
          return result.ok ? Number.isFinite(result.value) : result.error.got === text;
        },
      ),
      SEEDED,
    );
  });
});

describe('printing', () => {
  test.each([
    [365.125, '14 3/8'], // 365.125 / 25.4 = 14.375
    [25.4, '1'],
    [12.7, '1/2'],
    [0, '0'],
    [0.5, '0'], // 0.0197 in is 0.3 sixteenths
    [1.5875, '1/16'],
    [25.3, '1'], // 0.996 in is 15.94 sixteenths
    [-365.125, '−14 3/8'],
    [-0.5, '0'],
  ])('%d mm in inches is %s', (mm, text) => {
    expect(formatInches(mm)).toBe(text);
  });

  test('inches in other parts', () => {
    expect(formatInches(365.125, 32)).toBe('14 3/8');
    expect(formatInches(25.4 * (1 + 1 / 32), 32)).toBe('1 1/32');
    expect(formatInches(25.4 * 0.9, 1)).toBe('1');
  });

  test.each([
    [365.1, 1, '365.1'],
    [365, 1, '365'],
    [100, 1, '100'],
    [100, 0, '100'],
    [0.04, 1, '0'],
    [-0.04, 1, '0'],
    [-12.5, 1, '−12.5'],
    [12.34, 2, '12.34'],
    [12.3, 2, '12.3'],
  ])('%d mm with %d places is %s', (mm, decimals, text) => {
    expect(formatMillimetres(mm, decimals)).toBe(text);
  });

  test('figures with and without their unit', () => {
    expect(formatLength(365.125, 'in')).toBe('14 3/8');
    expect(formatLength(365.125, 'mm')).toBe('365.1');
    expect(formatLengthUnit(365.125, 'in')).toBe('14 3/8 in');
    expect(formatLengthUnit(18, 'mm')).toBe('18 mm');
  });

  test.each<[number, LengthUnits, string]>([
    [10, 'mm', '10.0 kg'],
    [10, 'in', '22.0 lb'], // 10 / 0.45359237 = 22.046
    [100, 'mm', '100 kg'],
    [-3.25, 'mm', '−3.3 kg'],
    [-0.01, 'mm', '0.0 kg'],
  ])('%d kg for a reader of %s', (kg, units, text) => {
    expect(formatMass(kg, units)).toBe(text);
  });
});

describe('what is printed reads back', () => {
  test('sixteenths of an inch, exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: -16 * 400, max: 16 * 400 }), (sixteenths) => {
        const mm = (sixteenths / 16) * 25.4;
        return read(formatInches(mm), 'in') === mm + 0 && read(formatLengthUnit(mm, 'in'), 'mm') === mm + 0;
      }),
      SEEDED,
    );
  });

  test('tenths of a millimetre, exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), (tenths) => {
        const mm = tenths / 10;
        return read(formatMillimetres(mm), 'mm') === mm + 0 && read(formatLengthUnit(mm, 'mm'), 'in') === mm + 0;
      }),
      SEEDED,
    );
  });

  test('any length, to half of the last part printed', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (mm) => {
        const inches = Math.abs((read(formatInches(mm), 'in') ?? Number.NaN) - mm);
        const tenths = Math.abs((read(formatMillimetres(mm), 'mm') ?? Number.NaN) - mm);
        return inches <= (25.4 / 32) * (1 + Number.EPSILON * 1000) && tenths <= 0.05 * (1 + Number.EPSILON * 1e6);
      }),
      SEEDED,
    );
  });

  test('every spelling of feet, inches and a fraction agrees', () => {
    fc.assert(
      fc.property(fc.nat(9), fc.nat(11), fc.integer({ min: 1, max: 15 }), (feet, inches, sixteenths) => {
        const mm = (feet * 12 + inches + sixteenths / 16) * 25.4;
        const spellings = [
          `${feet}' ${inches} ${sixteenths}/16"`,
          `${feet}'${inches}-${sixteenths}/16"`,
          `${feet}'-${inches} ${sixteenths}/16"`,
          `${feet} ft ${inches} ${sixteenths}/16 in`,
          `${feet}′ ${inches} ${sixteenths}⁄16″`,
          `${feet * 12 + inches} ${sixteenths}/16"`,
          `${feet}' + ${inches}" + ${sixteenths}/16"`,
        ];
        for (const spelling of spellings) expect(read(spelling, 'mm'), spelling).toBeCloseTo(mm, 9);
      }),
      { ...SEEDED, numRuns: 300 },
    );
  });
});

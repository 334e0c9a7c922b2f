import { partScene, problemScene, TOO_SMALL } from '../scenes/making.ts';
import { example, worked } from './example.ts';

/** What can be built and cut. */
export const MAKING = [
  example('cabinet-solves', [
    worked({
      given: { need: 320, have: 280 },
      run: ({ need, have }) => problemScene([{ ...TOO_SMALL, needMm: need, haveMm: have }]),
      words: 'a slide and a box want 320 across, 280 are there: 280 of 320: stop',
      expects: { severity: 'stop', value: '280', limit: '320' },
    }),
  ]),
  example(
    'part-too-small',
    [
      worked({
        given: { length: 50, width: 39 },
        run: ({ length, width }) => partScene(length, width),
        words: '50 × 39: 60 − 50 = 10 short on the long side, 40 − 39 = 1 on the other; the worse, 50 of 60: caution',
        expects: { severity: 'caution', value: '50', limit: '60' },
      }),
      worked({
        given: { length: 200, width: 39 },
        run: ({ length, width }) => partScene(length, width),
        words: '200 × 39: 39 of 40: caution',
        expects: { severity: 'caution', value: '39', limit: '40' },
      }),
    ],
    { house: ['min-part-width'] },
  ),
  example(
    'part-too-big',
    [
      worked({
        given: { length: 2421, width: 500, sheet: 2440 },
        run: ({ length, width, sheet }) => partScene(length, width, 'length', { lengthMm: sheet }),
        words: '2,421 × 500 on a sheet of 2,440, 10 off each end: 2,421 of 2,440 − 2 · 10 = 2,420: stop',
        expects: { severity: 'stop', value: '2,421', limit: '2,420', facts: { trim: '10' } },
      }),
      worked({
        given: { length: 500, width: 1300, sheet: 1220 },
        run: ({ length, width, sheet }) => partScene(length, width, 'length', { widthMm: sheet }),
        words:
          '500 × 1,300, which its grain keeps from turning, on a sheet 1,220 wide: 1,300 of 1,220 − 2 · 10 = 1,200: stop',
        expects: { severity: 'stop', value: '1,300', limit: '1,200' },
      }),
      worked({
        given: { length: 2435, width: 500, sheet: 2440 },
        run: ({ length, width, sheet }) =>
          partScene(length, width, 'length', { lengthMm: sheet, material: 'aluminium-32' }),
        words: 'metal, 2,435 × 500 on 2,440: of 2,440 − 2 · 3 = 2,434: stop',
        expects: { severity: 'stop', value: '2,435', limit: '2,434', facts: { trim: '3' } },
      }),
    ],
    { formula: [2] },
  ),
];

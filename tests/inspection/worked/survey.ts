import { inspectScene, vehicleWith } from '../fixture.ts';
import { edgeScene, offsetScene } from '../scenes/survey.ts';
import { example, worked } from './example.ts';

const slipScene = (slip: object) => inspectScene({ design: { vehicle: vehicleWith({ slip }) } });

/** Readings, label and slip. */
export const SURVEY = [
  example(
    'survey-misread',
    [
      worked({
        given: { first: 600, second: 601, third: 640 },
        run: ({ first, second, third }) => offsetScene({ value: first }, { value: second }, { value: third }),
        words:
          '600 and 601 against 640: the two make it (600 + 601) / 2 = 600.5, known to 2 · 1.5 / √2 = 2.1; 640 − 600.5 = 39.5, over 6: stop',
        expects: {
          severity: 'stop',
          value: '39.5',
          limit: '6',
          facts: { made: '600.5', spread: '2.1' },
        },
      }),
    ],
    { formula: [2], house: ['tape-sigma'] },
  ),
  example(
    'survey-closure-error',
    [
      worked({
        given: { sigma: 4, first: 600, second: 609 },
        run: ({ sigma, first, second }) => offsetScene({ value: first, sigma }, { value: second, sigma }),
        words: '600 and 609 by a tape good to 4: each lies (609 − 600) / 2 = 4.5 from their middle, over 3: caution',
        expects: { severity: 'caution', value: '4.5', limit: '3', of: 'reading-1' },
      }),
      worked({
        given: { sigma: 4, first: 600, second: 614 },
        run: ({ sigma, first, second }) => offsetScene({ value: first, sigma }, { value: second, sigma }),
        words: '614: (614 − 600) / 2 = 7, over 6: stop',
        expects: { severity: 'stop', value: '7', limit: '6', of: 'reading-2' },
      }),
      worked({
        given: { hinge: 900, floor: 800, taped: 1760 },
        run: ({ hinge, floor, taped }) => edgeScene(taped, floor, hinge),
        words:
          'a level hatch with its hinge 900 over a floor at 800, its edge taped at 1,760: 1,760 − (900 + 800) = 60 of 25: caution',
        expects: { severity: 'caution', value: '60', limit: '25' },
      }),
    ],
    { formula: [2] },
  ),
  example('survey-single-reading', [
    worked({
      given: { readings: 1 },
      run: ({ readings }) => offsetScene(...Array.from({ length: readings }, () => ({ value: 600 }))),
      words: '1 reading of a mark and nothing else: 1 alone, of 0: note',
      expects: { severity: 'note', value: '1', limit: '0' },
    }),
    worked({
      given: { readings: 2 },
      run: ({ readings }) => offsetScene(...Array.from({ length: readings }, () => ({ value: 600 }))),
      words: '2 readings of it: nothing',
      expects: { severity: 'nothing' },
    }),
  ]),
  example('ratings-contradict', [
    worked({
      given: { front: 1500, rear: 1600, gross: 3200 },
      run: ({ front, rear, gross }) =>
        inspectScene({
          design: { vehicle: vehicleWith({ ratings: { grossKg: gross, frontAxleKg: front, rearAxleKg: rear } }) },
        }),
      words: 'a gross rating of 3,200 on axles of 1,500 and 1,600: over 1,500 + 1,600 = 3,100: stop',
      expects: { severity: 'stop', value: '3,200', limit: '3,100' },
    }),
    worked({
      given: { front: 1200, rear: 1000, left: 1100, right: 1121 },
      run: ({ front, rear, left, right }) => slipScene({ frontKg: front, rearKg: rear, leftKg: left, rightKg: right }),
      words:
        'a slip of 1,200 and 1,000 by axles, 1,100 and 1,121 by sides: 1,100 + 1,121 − (1,200 + 1,000) = 21 of 20: stop',
      expects: { severity: 'stop', value: '21', limit: '20' },
    }),
    worked({
      given: {},
      run: () => slipScene({ frontKg: 1200, rearKg: 1000, leftKg: 1100 }),
      words: 'the left side alone, 1 of 2 sides: caution',
      expects: { severity: 'caution', value: '1', limit: '2' },
    }),
  ]),
];

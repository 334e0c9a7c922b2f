import type { Inspection } from '../../../src/inspection/index.ts';
import { addedScene, FIGURES, loadScene, weighedScene } from '../scenes/loads.ts';
import { example, worked } from './example.ts';

const [DRIVER, CREW] = FIGURES.seats;

interface Load {
  readonly front?: number;
  readonly rear?: number;
  readonly load: number;
  readonly driver?: number;
  readonly ratings?: object;
  readonly wheelbase?: number;
  readonly behind?: number;
  readonly track?: number;
  /** Forward of the sill, to the left, and up from the floor. */
  readonly at?: readonly [number, number, number];
  readonly floor?: number;
  readonly height?: number;
  readonly crew?: boolean;
}

/** The vehicle of the tests of loads with what a case gives in its place. */
const loaded = (own: Load): Inspection =>
  loadScene(
    own.load,
    {
      slip: { frontKg: own.front ?? FIGURES.slip.frontKg, rearKg: own.rear ?? FIGURES.slip.rearKg },
      ratings: { grossKg: null, frontAxleKg: null, rearAxleKg: null, ...own.ratings },
      wheelbaseMm: own.wheelbase ?? FIGURES.wheelbaseMm,
      sillBehindRearAxleMm: own.behind ?? FIGURES.sillBehindRearAxleMm,
      trackMm: own.track ?? FIGURES.trackMm,
      floorAboveGroundMm: own.floor ?? FIGURES.floorAboveGroundMm,
      cgHeightAsReceivedMm: own.height ?? FIGURES.cgHeightAsReceivedMm,
      seats: own.driver === undefined ? [] : [{ ...DRIVER, occupantKg: own.driver }, CREW],
    },
    own.at,
  );

const RECEIVED = { front: 1200, rear: 1000 };

/** Ratings, axles, sides, height. */
export const WEIGHT = [
  example(
    'payload',
    [
      worked({
        given: { ...RECEIVED, driver: 100, load: 590, gross: 3000 },
        run: ({ gross, ...own }) => loaded({ ...own, ratings: { grossKg: gross } }),
        words:
          '1,200 + 1,000 as received, a driver of 100, a rider of 114, 590 of gear: 1,200 + 1,000 + 100 + 114 + 590 = 3,004 of 3,000: stop',
        expects: { severity: 'stop', value: '3,004', limit: '3,000' },
      }),
      worked({
        given: { ...RECEIVED, driver: 100, load: 507, gross: 3000 },
        run: ({ gross, ...own }) => loaded({ ...own, ratings: { grossKg: gross } }),
        words:
          '507 of gear: 1,200 + 1,000 + 100 + 114 + 507 = 2,921 of 3,000 − 0.1 · (3,000 − 1,200 − 1,000) = 2,920: caution',
        expects: { severity: 'caution', value: '2,921', limit: '2,920' },
      }),
    ],
    { house: ['rider-mass-kg', 'payload-reserve-share'] },
  ),
  example(
    'front-axle',
    [
      worked({
        given: { front: 1200, driver: 100, load: 200, wheelbase: 3000, behind: 900, forward: 3900, rating: 1500 },
        run: ({ forward, rating, ...own }) =>
          loaded({ ...own, at: [forward, 0, 300], ratings: { frontAxleKg: rating } }),
        words:
          'front: sill 900 behind the rear axle, wheelbase 3,000; 1,200 on the front axle as received; people of 100 and 114 half way between the axles, 200 kg 3,900 forward of the sill: 1,200 + (100 + 114) / 2 + 200 · (3,900 − 900) / 3,000 = 1,507 of 1,500: stop',
        expects: { severity: 'stop', value: '1,507', limit: '1,500' },
      }),
    ],
    { formula: [2], house: ['rider-mass-kg'] },
  ),
  example(
    'rear-axle',
    [
      worked({
        given: { rear: 1000, driver: 100, load: 495, wheelbase: 3000, behind: 900, forward: 300, rating: 1700 },
        run: ({ forward, rating, ...own }) =>
          loaded({ ...own, at: [forward, 0, 300], ratings: { rearAxleKg: rating } }),
        words:
          'rear: 1,000 as received, sill 900 behind the axle, wheelbase 3,000, people of 100 and 114 half way, 495 kg 300 forward of the sill: 1,000 + (100 + 114) / 2 + 495 · (3,000 + 900 − 300) / 3,000 = 1,701 of 1,700: stop',
        expects: { severity: 'stop', value: '1,701', limit: '1,700' },
      }),
      worked({
        given: { rear: 1000, driver: 100, load: 424, wheelbase: 3000, behind: 900, forward: 300, rating: 1700 },
        run: ({ forward, rating, ...own }) =>
          loaded({ ...own, at: [forward, 0, 300], ratings: { rearAxleKg: rating } }),
        words:
          '424 kg: 1,000 + (100 + 114) / 2 + 424 · (3,000 + 900 − 300) / 3,000 = 1,615.8 of (1 − 0.05) · 1,700 = 1,615: caution',
        expects: { severity: 'caution', value: '1,615.8', limit: '1,615' },
      }),
    ],
    { formula: [2, 1], house: ['rider-mass-kg', 'axle-reserve-share'] },
  ),
  example(
    'side-to-side',
    [
      worked({
        given: { ...RECEIVED, load: 200, left: 400, track: 1600 },
        run: ({ left, ...own }) => loaded({ ...own, at: [300, left, 300] }),
        words:
          '1,200 + 1,000 as received, 200 kg at 400 left: ȳ = 200 · 400 / (1,200 + 1,000 + 200) = 33.3; track 1,600: 2 · 33.3 / 1,600 = 4.2 % of 4 %: caution',
        expects: { severity: 'caution', value: '4.2 %', limit: '4 %' },
      }),
      worked({
        given: { ...RECEIVED, load: 200, left: 700, track: 1600 },
        run: ({ left, ...own }) => loaded({ ...own, at: [300, left, 300] }),
        words: 'at 700 left: 2 · 200 · 700 / (1,200 + 1,000 + 200) / 1,600 = 7.3 % of 7 %: stop',
        expects: { severity: 'stop', value: '7.3 %', limit: '7 %' },
      }),
    ],
    { formula: [2] },
  ),
  example('front-unload', [
    worked({
      given: { front: 1200, load: 610, behind: 600, wheelbase: 3000 },
      run: ({ behind, ...own }) => loaded({ ...own, behind: 900, at: [900 - behind, 0, 300] }),
      words:
        '610 kg 600 behind the rear axle, wheelbase 3,000, take 610 · 600 / 3,000 = 122 of the 1,200 off the front axle: 122 / 1,200 = 10.2 % of 10 %: caution',
      expects: { severity: 'caution', value: '10.2 %', limit: '10 %' },
    }),
  ]),
  example('front-share', [
    worked({
      given: { ...RECEIVED, load: 540, behind: 600, wheelbase: 3000 },
      run: ({ behind, ...own }) => loaded({ ...own, behind: 900, at: [900 - behind, 0, 300] }),
      words:
        '540 kg 600 behind the rear axle, wheelbase 3,000, take 540 · 600 / 3,000 = 108 off; (1,200 − 108) / (1,200 + 1,000 + 540) = 39.9 % of 40 %: caution',
      expects: { severity: 'caution', value: '39.9 %', limit: '40 %' },
    }),
  ]),
  example(
    'stability',
    [
      worked({
        given: { ...RECEIVED, load: 400, up: 1000, floor: 750, height: 700, track: 1600 },
        run: ({ up, ...own }) => loaded({ ...own, at: [300, 0, up] }),
        words:
          '1,200 + 1,000 as received at 700, 400 kg 1,000 above a floor at 750: h = ((1,200 + 1,000) · 700 + 400 · (750 + 1,000)) / (1,200 + 1,000 + 400) = 861.5; track 1,600: 1,600 / 2 / 861.5 = 0.93, ± 0.05, of 1: caution',
        expects: { severity: 'caution', value: '0.93', limit: '1', u: '0.05' },
      }),
    ],
    { formula: [2] },
  ),
  example(
    'stability-loss',
    [
      worked({
        given: { ...RECEIVED, load: 400, up: 1000, floor: 750, height: 700, track: 1600 },
        run: ({ up, ...own }) => loaded({ ...own, at: [300, 0, up] }),
        words:
          '1,200 + 1,000 as received at 700, track 1,600: 1,600 / 2 / 700 = 1.143; with 400 kg 1,000 above a floor at 750 h = ((1,200 + 1,000) · 700 + 400 · (750 + 1,000)) / (1,200 + 1,000 + 400) = 861.5 and 1,600 / 2 / 861.5 = 0.929; 1.143 − 0.929 = 0.214 of 0.05: caution',
        expects: { severity: 'caution', value: '0.214', limit: '0.05', facts: { before: '1.143', after: '0.929' } },
      }),
    ],
    { formula: [2] },
  ),
  example('figures-missing', [
    worked({
      given: {},
      run: () => loadScene(0, { floorAboveGroundMm: null }),
      words: 'no height of the floor, 0 of 1 figure: a note that names stability, lifting and what else is silent',
      expects: {
        severity: 'note',
        value: '0',
        limit: '1',
        of: 'floor-height',
        told: {
          silent:
            'stability low-roof lifting control-height reading-angle head-clear pull-height see-in write-height mount-height rf-distance',
        },
      },
    }),
  ]),
  example(
    'disclosure',
    [
      worked({
        given: { cabinet: 27, gross: 2000 },
        run: ({ cabinet, gross }) => addedScene(cabinet, gross),
        words:
          'a cabinet of 27 listed: 27 · (1 + 0.15) = 31.05; gross rating 2,000: 0.015 · 2,000 = 30, the lesser of that and 45.4: note',
        expects: { severity: 'note', value: '31.05', limit: '30' },
      }),
      worked({
        given: { cabinet: 40, gross: 3200 },
        run: ({ cabinet, gross }) => addedScene(cabinet, gross),
        words:
          '40 under a gross rating of 3,200: 40 · (1 + 0.15) = 46 of 45.4, the lesser of that and 0.015 · 3,200 = 48: note',
        expects: { severity: 'note', value: '46', limit: '45.4' },
      }),
      worked({
        given: { cabinet: 90 },
        run: ({ cabinet }) => addedScene(cabinet, null, { sale: 'in-service' }),
        words: 'in service 90: 90 · (1 + 0.15) = 103.5 of 100: note',
        expects: { severity: 'note', value: '103.5', limit: '100', told: { sale: 'in-service' } },
      }),
      worked({
        given: { cabinet: 90 },
        run: ({ cabinet }) => addedScene(cabinet, null, { region: 'eu' }),
        words: 'outside the United States 103.5 of 100: note',
        expects: { severity: 'note', value: '103.5', limit: '100', told: { sale: 'other' } },
      }),
    ],
    { formula: [1], house: ['contingency-share', 'disclosure-mass-share', 'disclosure-mass-kg'] },
  ),
  example(
    'weigh-difference',
    [
      worked({
        given: { ...RECEIVED, cabinet: 100, bag: 120, kit: 65, builtFront: 1200, builtRear: 1320 },
        run: ({ front, rear, cabinet, bag, kit, builtFront, builtRear }) =>
          weighedScene(builtFront, builtRear, 'fitted', {
            slip: { frontKg: front, rearKg: rear },
            cabinetKg: cabinet,
            bagKg: bag,
            kitKg: kit,
          }),
        words:
          '1,200 + 1,000 as received; 100 · (1 + 0.15) + 120 + 65 = 300 added; the scale says 1,200 + 1,320: 1,200 + 1,320 − (1,200 + 1,000 + 300) = 20; 20 / 300 = 6.7 % of 5 %: caution',
        expects: { severity: 'caution', value: '6.7 %', limit: '5 %', facts: { moreKg: '20', addedKg: '300' } },
      }),
    ],
    { formula: [1], house: ['contingency-share'] },
  ),
];

import { allowedSlideLoadKg } from '../../../src/fitout/index.ts';
import { scoresOf } from '../../../src/inspection/arrange/goals.ts';
import { plateSag, shelfSag } from '../../../src/inspection/carry/index.ts';
import { centreOf } from '../../../src/inspection/loads/index.ts';
import { wireDrop } from '../../../src/inspection/power/index.ts';
import { liftIndex, liftLimitKg } from '../../../src/inspection/reach/index.ts';
import { catalog, findingsOf, inspectScene, rules } from '../fixture.ts';
import { lidScene } from '../scenes/lid.ts';
import { weighedScene } from '../scenes/loads.ts';
import { apart, hotBayScene, power } from '../scenes/power.ts';
import { sliderScene } from '../scenes/sliders.ts';
import { type PageSum, pageSum } from './example.ts';
import { HOLD_SUMS } from './hold-sums.ts';

const G = rules.value('standard-gravity');
const SLIDE = catalog.slides.get('slide-100-lock');
const SPRING = catalog.hardware.get('gas-spring-200');
const RADIO = catalog.devices.get('radio-50');

/** Two items that lean one loading case, of which each may lean it the other way. */
const leaning = (rest: number, first: number, second: number, changed: 0 | 1): number => {
  const item = (id: string, lean: number) => {
    const choice = (leans: number, berth: number) => ({ berth, leans: [leans], index: 0, motions: 0, arms: 0 });
    return { id, choices: [choice(lean, 0), choice(-lean, 1)] } as const;
  };
  const table = {
    items: [item('first', first), item('second', second)],
    leans: [rest],
    staying: { index: 0, motions: 0, arms: 0 },
  };
  return scoresOf(table, [changed, changed]).side;
};

/** Worked sums of the pages beside the page of checks, each with the function that it describes. */
export const PAGE_SUMS: readonly PageSum[] = [
  pageSum({
    page: 'loads.md',
    words:
      '100 kg known to 1 kg, 1,000 from 300 kg: x̄ = 100 · 1,000 / (100 + 300) = 250; (1,000 − 250) · 1 / (100 + 300) = 1.9 mm.',
    given: { kg: 100, sigma: 1, far: 1000, other: 300 },
    run: ({ kg, sigma, far, other }) => {
      const item = (own: number, x: number, sigmaKg: number) =>
        ({ kg: own, sigmaKg, at: [x, 0, 0], sigmaMm: [0, 0, 0] }) as const;
      const { at, sigmaMm } = centreOf([item(other, 0, 0), item(kg, far, sigma)]);
      return { at: at[0], sigma: sigmaMm[0] };
    },
    expects: { at: '250', sigma: '1.9' },
  }),
  pageSum(
    {
      page: 'loads.md',
      words:
        'a cabinet of 100 listed with a contingency of 0.15, 20 more on the scale: (100 · (1 + 0.15) + 20) / 100 − 1 = 0.35; two items known to 8 and 6 kg, four axle weights to 5 each: 20 · 8² / (8² + 6² + 4 · 5²) = 6.4 and 20 · 6² / (8² + 6² + 4 · 5²) = 3.6.',
      given: { cabinet: 100, more: 20, bagSigma: 8, kitSigma: 6 },
      run: ({ cabinet, more, bagSigma, kitSigma }) => {
        const added = cabinet * (1 + rules.value('contingency-share')) + 120 + 65;
        const { weighed } = weighedScene(1200, 1000 + added + more, 'fitted', {
          cabinetKg: cabinet,
          bagSigmaKg: bagSigma,
          kitSigmaKg: kitSigma,
        });
        const moreOf = (id: string): number => weighed?.items.find((own) => own.id === id)?.moreKg ?? Number.NaN;
        return { contingency: weighed?.contingencyShare ?? Number.NaN, bag: moreOf('bag'), kit: moreOf('kit') };
      },
      expects: { contingency: '0.35', bag: '6.4', kit: '3.6' },
    },
    { house: ['contingency-share', 'slip-sigma-kg'], formula: [1, 4] },
  ),
  pageSum({
    page: 'loads.md',
    words:
      'rest 0.2 %, one item +2 %, another −0.2 %: 0.2 % + 2 % − 0.2 % = 2.0 % as it stands, abs(0.2 % − 2 % + 0.2 %) = 1.6 % the other way with the two changed over.',
    given: { rest: 0.002, first: 0.02, second: -0.002 },
    run: ({ rest, first, second }) => ({
      stands: leaning(rest, first, second, 0),
      changed: leaning(rest, first, second, 1),
    }),
    expects: { stands: '2.0 %', changed: '1.6 %' },
  }),
  ...HOLD_SUMS,
  pageSum(
    {
      page: 'loads.md',
      words: '100 kg, 500 long, 826 wide: 100 · 0.5 · 500 / 826 = 30.3 kg',
      given: { long: 500, wide: 826 },
      run: ({ long, wide }) => ({ allowed: SLIDE ? allowedSlideLoadKg(SLIDE, long, wide, rules) : Number.NaN }),
      expects: { allowed: '30.3' },
    },
    { house: ['slide-vehicle-factor'], looked: { rating: SLIDE?.ratingKg ?? Number.NaN } },
  ),
  pageSum(
    {
      page: 'loads.md',
      words: '75 kg, s 500, c 250, P 1,000 N: (75 · 9.80665 · (500 − 250) + 1,000 · 500) / 2 / 1,000 = 342 N m',
      given: { kg: 75, travel: 500, middle: 250 },
      run: (own) => ({ root: Number(findingsOf(sliderScene(own), 'tray-leg')[0]?.facts.rootNm) }),
      expects: { root: '342' },
    },
    { house: ['standard-gravity', 'slide-out-lean'], formula: [2, 1000] },
  ),
  pageSum(
    {
      page: 'loads.md',
      words:
        '800 × 400 × 12, E 8,500, 25 kg, short-term: 5 · 25 · 9.80665 · 800³ / (384 · 8,500 · 400 · 12³ / 12) = 3.34 mm',
      given: { long: 800, deep: 400, thick: 12, young: 8500, kg: 25 },
      run: ({ long, deep, thick, young, kg }) => ({
        sag: shelfSag({ spanMm: long, depthMm: deep, thicknessMm: thick, youngMPa: young }, kg * G),
      }),
      expects: { sag: '3.34' },
    },
    { house: ['standard-gravity'], formula: [5, 384, 12] },
  ),
  pageSum(
    {
      page: 'loads.md',
      words:
        '500 × 500 × 6.4, E 4,800, 10 kg, short-term: 0.0443 · 10 · 9.80665 / 500² · 500⁴ / (4,800 · 6.4³) = 0.86 mm',
      given: { side: 500, thick: 6.4, young: 4800, kg: 10 },
      run: ({ side, thick, young, kg }) => ({
        sag: plateSag({ spanMm: side, depthMm: side, thicknessMm: thick, youngMPa: young }, kg * G),
      }),
      expects: { sag: '0.86' },
    },
    { house: ['standard-gravity'], formula: [0.0443] },
  ),
  pageSum(
    {
      page: 'loads.md',
      words:
        '8 kg with its middle 300 out, two of 200 N at a lever of 100 · 210 / 350 = 60, −20 °C: (2 · 200 · 0.86 · 60 − 8 · 9.80665 · 300) / 1,000 = −2.9 N m',
      given: { kg: 8, middle: 300, arm: 100, below: 210 },
      run: (own) => ({ moment: findingsOf(lidScene({ ...own, forward: 180 }), 'gas-spring')[0]?.value ?? Number.NaN }),
      expects: { moment: '−2.9' },
    },
    {
      house: ['standard-gravity', 'gas-spring-cold', 'gas-spring-cold-factor'],
      looked: { force: SPRING?.ratedN ?? Number.NaN, full: SPRING?.sizeMm?.[0] ?? Number.NaN },
      formula: [2, 1000],
    },
  ),
  pageSum(
    {
      page: 'reach.md',
      words:
        '20 kg, H 35, V 96.8, D 21.8, fair: 23 · 25 / 35 · (1 − 0.003 · (96.8 − 75)) · 1 = 15.35 kg, index 20 / 15.35 = 1.30.',
      given: { kg: 20, out: 35, up: 96.8, travel: 21.8 },
      run: ({ kg, out, up, travel }) => {
        const limit = liftLimitKg({
          horizontalCm: out,
          verticalCm: up,
          travelCm: travel,
          asymmetryDeg: 0,
          frequencyFactor: rules.value('lifting-frequency-factor'),
          coupling: 'fair',
        });
        return { limit, index: liftIndex(kg, limit) ?? Number.NaN };
      },
      expects: { limit: '15.35', index: '1.30' },
    },
    { house: ['lifting-load-constant', 'lifting-frequency-factor'], formula: [25, 1, 0.003, 75] },
  ),
  pageSum(
    {
      page: 'power.md',
      words: '10 Ah, 40 radios of 0.05 A: 10 · 0.5 / (40 · 0.05) = 2.5 h.',
      given: { ah: 10, radios: 40 },
      run: ({ ah, radios }) => {
        const fitout = { devices: apart(radios, 'radio-50') };
        const [found] = findingsOf(
          inspectScene({ survey: null, design: power({ batteryAh: ah }), fitout }),
          'battery-hours',
        );
        return { hours: found?.value ?? Number.NaN };
      },
      expects: { hours: '2.5' },
    },
    { house: ['battery-use-share'], looked: { standby: RADIO?.amps.standby ?? Number.NaN } },
  ),
  pageSum(
    {
      page: 'power.md',
      words: '20 A, 6 m, 5.3 mm²: 0.0172 · 20 · 6 / 5.3 = 0.389 V, 0.389 / 12 = 3.2 %',
      given: { amps: 20, loop: 6, area: 5.3 },
      run: ({ amps, loop, area }) => {
        const volts = wireDrop(rules.value('copper-resistivity'), amps, loop, area);
        return { volts, share: volts / rules.value('parked-volts') };
      },
      expects: { volts: '0.389', share: '3.2 %' },
    },
    { house: ['copper-resistivity', 'parked-volts'] },
  ),
  pageSum(
    {
      page: 'power.md',
      words:
        '2 radios of 50 W at 13.8 V that send with 12 A for 0.2 of the time and listen with 0.45 A: 2 · (0.2 · (13.8 · 12 − 50) + (1 − 0.2) · 13.8 · 0.45) = 56.2 W; behind a plate of 500 × 200 aluminium, 12 W/m²K: 56.2 / (12 · 500 · 200 / 1,000²) = 46.8 K; 3.1 · 56.2 / 10 = 17.4 m³/h for 10 K.',
      given: { radios: 2, run: 0.45, transmit: 12, wide: 500, high: 200 },
      run: (own) => {
        const [found] = findingsOf(hotBayScene([], own), 'bay-heat');
        const { watts, fanM3h } = found?.facts ?? {};
        return { watts: Number(watts), rise: found?.value ?? Number.NaN, fan: Number(fanM3h) };
      },
      expects: { watts: '56.2', rise: '46.8', fan: '17.4' },
    },
    {
      house: ['supply-volts', 'heat-loss-aluminium', 'fan-air', 'heat-rise'],
      looked: { radiated: RADIO?.radiatedW ?? Number.NaN, share: RADIO?.transmitShare ?? Number.NaN },
      formula: [1, 1000, 2],
    },
  ),
];

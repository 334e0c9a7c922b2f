import { describe, expect, test } from 'vitest';
import { houseRules, sourceTags, standardCatalog } from '../../src/catalog/index.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const value = (id: string): number => rules.value(id);

/** The limits that checks read by id, with the figures of the trade notes. */
const EXPECTED: readonly (readonly [string, number, string])[] = [
  ['gap-trim', 6, 'mm'],
  ['gap-hatch-trim', 15, 'mm'],
  ['gap-hatch-glass', 20, 'mm'],
  ['gap-pass-through', 10, 'mm'],
  ['gap-airbag', 50, 'mm'],
  ['gap-between-carcasses', 3, 'mm'],
  ['gap-moving-parts', 3, 'mm'],
  ['gap-gear', 3, 'mm'],
  ['hand-room-gear', 15, 'mm'],
  ['reveal-front', 2, 'mm'],
  ['vehicle-allowance-sigma', 2, 'mm'],
  ['build-sigma', 1, 'mm'],
  ['tape-sigma', 1.5, 'mm'],
  ['payload-reserve-share', 0.1, 'share'],
  ['axle-reserve-share', 0.05, 'share'],
  ['side-imbalance-share', 0.04, 'share'],
  ['contingency-share', 0.15, 'share'],
  ['rider-mass-kg', 114, 'kg'],
  ['driver-mass-kg', 114, 'kg'],
  ['cable-allowance-share', 0.03, 'share'],
  ['finish-mass', 0.25, 'kg/m2'],
  ['slide-vehicle-factor', 0.5, 'factor'],
  ['slide-flat-mount-factor', 0.5, 'factor'],
  ['slide-over-travel-factor', 0.75, 'factor'],
  ['drawer-bottom-groove-up', 12, 'mm'],
  ['drawer-clear-above', 12, 'mm'],
  ['dado-depth-share', 0.333, 'share'],
  ['min-part-length', 60, 'mm'],
  ['min-part-width', 40, 'mm'],
  ['min-web-cutout', 10, 'mm'],
  ['cutout-edge', 15, 'mm'],
  ['back-clear', 20, 'mm'],
  ['bracket-release-stroke', 150, 'mm'],
  ['hand-bare-depth', 50, 'mm'],
  ['hand-bare-width', 115, 'mm'],
  ['hand-glove-depth', 75, 'mm'],
  ['hand-glove-width', 135, 'mm'],
  ['finger-gap', 40, 'mm'],
  ['pull-height-max', 1750, 'mm'],
  ['head-clear', 1900, 'mm'],
  ['lifting-index', 1, 'factor'],
  ['heat-rise', 10, 'K'],
  ['wire-drop-share', 0.03, 'share'],
  ['fuse-factor', 1.25, 'factor'],
  ['disclosure-mass-kg', 45.4, 'kg'],
  ['disclosure-mass-share', 0.015, 'share'],
  ['hold-road-forward', 0.8, 'g'],
  ['hold-road-rear', 0.5, 'g'],
  ['hold-road-side', 0.5, 'g'],
  ['hold-crew-long', 9, 'g'],
  ['hold-crew-other', 3, 'g'],
  ['hold-apparatus', 9, 'g'],
  ['hold-ambulance', 10, 'g'],
  ['closure-error-remeasure', 3, 'mm'],
  ['closure-error-stop', 6, 'mm'],
  ['first-due-motions', 2, 'count'],
];

describe('the limits', () => {
  test.each(EXPECTED)('%s is %d %s', (id, expected, unit) => {
    expect(rules.record(id).value).toBe(expected);
    expect(rules.record(id).unit).toBe(unit);
  });

  test('there are at least 120, and shares lie between 0 and 1', () => {
    expect(catalog.rules.size).toBeGreaterThanOrEqual(120);
    const outside = [...catalog.rules.values()].filter(
      (rule) => rule.unit === 'share' && (rule.value < 0 || rule.value > 1),
    );
    expect(outside.map((rule) => rule.id)).toEqual([]);
  });

  test('only a defined unit counts as standard; what rests on judgement alone is a shop habit', () => {
    const all = [...catalog.rules.values()];
    const standard = all.filter((rule) => rule.status === 'standard');
    expect(standard.map((rule) => rule.id)).toEqual(['standard-gravity']);
    const judged = all.filter((rule) => sourceTags(rule.source).every((tag) => tag === 'shop judgement'));
    expect(judged.filter((rule) => rule.status !== 'shop habit').map((rule) => rule.id)).toEqual([]);
  });

  test('no limit about the same thing asks for more than it allows', () => {
    const pairs = [
      ['slide-spare-min', 'slide-spare-max'],
      ['control-height-min', 'control-height-max'],
      ['write-height-min', 'write-height-max'],
      ['heavy-height-min', 'heavy-height-max'],
      ['dado-depth-share', 'dado-depth-max-share'],
      ['closure-error-remeasure', 'closure-error-stop'],
      ['side-imbalance-share', 'side-imbalance-stop-share'],
      ['shelf-sag-aim', 'shelf-sag-visible'],
      ['parked-volts', 'supply-volts'],
      ['lifting-reach-best', 'lifting-reach-max'],
    ] as const;
    for (const [low, high] of pairs) expect([low, value(low) < value(high)]).toEqual([low, true]);
  });
});

describe('limits that work together', () => {
  test('a back groove in the thinnest 12 mm plywood (11.5) leaves the web asked for: 11.5 − 6 = 5.5 ≥ 5', () => {
    const thinnest = catalog.materials.get('birch-ply-12')?.thicknessRangeMm[0] ?? 0;
    expect(thinnest - value('back-groove-depth')).toBeGreaterThanOrEqual(value('groove-web-min'));
  });
});

describe('limits that follow from others', () => {
  // Tension 0.9 · f_ub · A_s / 1.25 with A_s from the ISO thread: 36.6 mm² for M8, so 0.9 · 800 · 36.6 / 1.25 = 21 082 N.
  test.each([
    [6, 20.1],
    [8, 36.6],
    [10, 58.0],
    [12, 84.3],
  ])('bolt M%d of %d mm² resists what the coefficients say', (size, areaMm2) => {
    const perArea = (value('bolt-ultimate') * areaMm2) / value('anchor-partial-factor');
    const roundedTo100N = 100;
    const tension = value('anchor-tension-coefficient') * perArea;
    const shear = value('anchor-shear-coefficient') * perArea;
    expect(Math.abs(value(`bolt-tension-m${size}`) - tension)).toBeLessThan(roundedTo100N);
    expect(Math.abs(value(`bolt-shear-m${size}`) - shear)).toBeLessThan(roundedTo100N);
  });

  test('M8 in the floor skin bears 2.5 · 270 · 8 · 0.8 / 1.25 = 3456 N', () => {
    const bearing =
      (value('bearing-factor-max') * value('floor-skin-ultimate') * 8 * value('floor-skin-thickness')) /
      value('anchor-partial-factor');
    expect(bearing).toBeCloseTo(3456, 6);
  });

  test('gas springs follow absolute temperature: 253/293 = 0.863, 323/293 = 1.102', () => {
    const kelvin = (celsius: number): number => celsius + 273.15;
    expect(value('gas-spring-cold-factor')).toBeCloseTo(kelvin(value('gas-spring-cold')) / kelvin(20), 2);
    expect(value('gas-spring-hot-factor')).toBeCloseTo(kelvin(value('gas-spring-hot')) / kelvin(20), 2);
  });

  test('56 W at 10 K want 17 m³/h', () => {
    // 3.1 m³/h for each watt and kelvin: 3.1 · 56 / 10 = 17.4.
    expect((value('fan-air') * 56) / value('heat-rise')).toBeCloseTo(17.4, 1);
  });

  test('more copper carries more, and the engine bay always less', () => {
    const gauges = [18, 16, 14, 12, 10];
    gauges.forEach((gauge, row) => {
      expect(value(`wire-amps-engine-${gauge}`)).toBeLessThan(value(`wire-amps-${gauge}`));
      const thinner = gauges[row - 1];
      if (thinner === undefined) return;
      expect(value(`wire-area-${gauge}`)).toBeGreaterThan(value(`wire-area-${thinner}`));
      expect(value(`wire-amps-${gauge}`)).toBeGreaterThan(value(`wire-amps-${thinner}`));
    });
  });

  test('distance from the antenna grows with power', () => {
    const steps = ['7w', '15w', '39w', '110w'];
    const distances = steps.map((step) => value(`rf-distance-${step}`));
    expect(distances).toEqual([200, 300, 600, 900]);
    expect(steps.map((step) => value(`rf-power-${step}`))).toEqual([7, 15, 39, 110]);
  });

  test('a large person is larger than a small one in every size', () => {
    for (const size of ['stature', 'eye', 'shoulder', 'elbow', 'fingertip', 'reach', 'reach-extended'])
      expect([size, value(`${size}-small`) < value(`${size}-large`)]).toEqual([size, true]);
  });
});

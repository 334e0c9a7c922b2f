import { describe, expect, test } from 'vitest';
import { findingsOf, inspectScene, linesOf, mass, vehicleWith } from '../fixture.ts';
import { addedScene, FIGURES, loadScene } from '../scenes/loads.ts';

const TANK = { tankLitres: 80, atSlipShare: 0.5, kgPerLitre: 0.75, at: [1200, 0, 0] };

describe('loading cases', () => {
  test('each adds to the one before', () => {
    const inspection = loadScene(200, { fuel: TANK });
    // 200 at 600 behind the rear axle: −40 front, +240 rear. Driver 100 at 1,500 forward of it: half each.
    // Crew 114 by the house rule: 57 each. Fuel 80 × ½ × 0.75 = 30 kg, 300 forward: 3 front, 27 rear.
    expect(inspection.cases.map(({ id, frontKg, rearKg }) => [id, Math.round(frontKg), Math.round(rearKg)])).toEqual([
      ['received', 1200, 1000],
      ['fitted', 1160, 1240],
      ['driver', 1210, 1290],
      ['crew', 1267, 1347],
      ['crew-fuel', 1270, 1374],
    ]);
    // (2,200 × 700 + 200 × (300 + 750)) / 2,400 = 729.17 above ground.
    expect(inspection.cases[1]?.cgHeightMm).toBeCloseTo(729.1667, 4);
    expect(inspection.cases[1]?.ssf).toBeCloseTo(1600 / (2 * 729.1667), 6);
    // Forward of the rear axle 1,160 × 3,000 / 2,400 = 1,450, which is 2,350 forward of the sill.
    expect(inspection.cases[1]?.cg[0]).toBeCloseTo(2350, 9);
    expect(inspection.cases[1]?.margins).toEqual({
      frontKg: expect.closeTo(340),
      rearKg: expect.closeTo(460),
      grossKg: 600,
    });
  });

  test('no tank, no case with fuel; no track, no balance; no height, no stability; no slip, no case', () => {
    expect(loadScene(0).cases.map(({ id }) => id)).toEqual(['received', 'fitted', 'driver', 'crew']);
    expect(loadScene(0, { trackMm: null }).cases[0]).toMatchObject({ leftShare: null, ssf: null, ssfWorstSide: null });
    expect(loadScene(0, { cgHeightAsReceivedMm: null }).cases[0]).toMatchObject({
      cgHeightMm: null,
      ssf: null,
      leftShare: 0.5,
    });
    expect(loadScene(0, { slip: null }).cases).toEqual([]);
    expect(loadScene(0, { wheelbaseMm: null }).cases).toEqual([]);
  });

  test('the cabinet weighs more until it has been on the scale, gear does not', () => {
    const inspection = inspectScene({
      survey: null,
      design: { vehicle: vehicleWith(FIGURES) },
      fitout: { masses: [mass('side', 100, [300, 0, 300]), mass('bag', 50, [300, 0, 300], { kind: 'gear' })] },
    });
    // 2,200 + 1.15 × 100 + 50.
    expect(inspection.cases[1]?.totalKg).toBeCloseTo(2365, 9);
  });
});

describe('payload', () => {
  // As received 2,200, people 214, rating 3,000: 586 for the load. Wanted free: 10 % of the payload of 800, 80.
  test.each<[number, readonly string[]]>([
    [506, []],
    [507, ['caution crew 2921']],
    [586, ['caution crew 3000']],
    [590, ['stop crew 3004']],
  ])('%d kg of gear', (kg, expected) => {
    const inspection = loadScene(kg, { ratings: { grossKg: 3000, frontAxleKg: null, rearAxleKg: null } });
    expect(linesOf(inspection, 'payload')).toEqual(expected);
  });

  test('says the case, what is left and where the limit comes from', () => {
    const [finding] = findingsOf(loadScene(590), 'payload');
    expect(finding).toMatchObject({
      limit: 3000,
      unit: 'kg',
      source: 'rating label of the vehicle',
      margin: 'payload',
    });
    expect(finding?.facts).toMatchObject({ case: 'crew', casesOver: 'crew', leftKg: -4 });
    expect(findingsOf(loadScene(520), 'payload')[0]).toMatchObject({ limit: 2920, source: 'shop judgement' });
  });

  test('masses that are only known roughly make a caution before the rating is reached', () => {
    const rough = inspectScene({
      survey: null,
      design: {
        vehicle: vehicleWith(FIGURES),
        houseRules: [{ rule: 'payload-reserve-share', value: 0, who: 'A', why: '' }],
      },
      fitout: { masses: [mass('bag', 560, [1500, 0, 300], { kind: 'gear', sigmaKg: 15 })] },
    });
    // Two axles weighed to 5 each, the bag to 15, a rider that nobody stated to 10: 2,974 ± 2 √(25 + 25 + 225 + 100) = 38.7:
    // the rating of 3,000 lies within it.
    expect(findingsOf(rough, 'payload')).toMatchObject([
      { severity: 'caution', value: 2974, uncertainty: expect.closeTo(38.7298, 4) },
    ]);
  });
});

describe('axles', () => {
  test('rear: the load behind the axle counts more than its mass', () => {
    // With the crew 1,000 + 107 + 1.2 m: 1,615 is 95 % of 1,700, reached at 423.3 kg; 1,700 at 494.2 kg.
    expect(linesOf(loadScene(423), 'rear-axle')).toEqual([]);
    expect(linesOf(loadScene(424), 'rear-axle')).toEqual(['caution crew 1615.8']);
    expect(linesOf(loadScene(495), 'rear-axle')).toEqual(['stop crew 1701']);
    expect(
      loadScene(495)
        .measured.filter(({ rule }) => rule === 'rear-axle')
        .map(({ parts, slack }) => [parts[0], Math.round(slack)]),
    ).toEqual([
      ['received', 700],
      ['fitted', 106],
      ['driver', 56],
      ['crew', -1],
    ]);
  });

  test('front: a heavy load between the axles', () => {
    // At 3,900 forward of the sill it stands over the front axle: 1,307 + m.
    expect(linesOf(loadScene(200, {}, [3900, 0, 300]), 'front-axle')).toEqual(['stop crew 1507']);
    expect(linesOf(loadScene(120, {}, [3900, 0, 300]), 'front-axle')).toEqual(['caution crew 1427']);
  });

  test('the front axle losing more than a tenth, or carrying less than two fifths, is a caution', () => {
    // −0.2 m of 1,200 with nobody aboard: a tenth is 120, at 600 kg.
    expect(linesOf(loadScene(590), 'front-unload')).toEqual([]);
    expect(linesOf(loadScene(610), 'front-unload')).toEqual(['caution  0.1']);
    // (1,200 − 0.2 m) / (2,200 + m) = 0.4 at m = 533.3.
    expect(linesOf(loadScene(533), 'front-share')).toEqual([]);
    expect(linesOf(loadScene(540), 'front-share')).toEqual(['caution  0.4']);
  });
});

describe('side-to-side', () => {
  // m at y left of the middle with nobody aboard: |2 ȳ / T| = 2 m y / (T (2,200 + m)).
  test.each<[number, readonly string[]]>([
    // 200 × 380 / 2,400 = 31.67 mm: 2 × 31.67 / 1,600 = 3.96 %.
    [380, []],
    // 200 × 400 / 2,400 = 33.33 mm: 4.17 %.
    [400, ['caution fitted 0.04']],
    // 200 × 700 / 2,400 = 58.33 mm: 7.29 %.
    [700, ['stop fitted 0.07']],
  ])('200 kg %d mm to the left', (left, expected) => {
    expect(linesOf(loadScene(200, { seats: [] }, [300, left, 300]), 'side-to-side')).toEqual(expected);
  });

  test('says which side is heavy and whether the sides were weighed', () => {
    const facts = findingsOf(loadScene(200, { seats: [] }, [300, -700, 300]), 'side-to-side')[0]?.facts;
    expect(facts).toEqual({ case: 'fitted', heavy: 'right', weighed: 'no' });
  });
});

describe('stability', () => {
  test('below the least factor, and a loss over the limit', () => {
    // (2,200 × 700 + 400 × 1,750) / 2,600 = 861.5; 800 / 861.5 = 0.929; as received 800 / 700 = 1.143.
    const inspection = loadScene(400, { seats: [] }, [300, 0, 1000]);
    expect(linesOf(inspection, 'stability')).toEqual(['caution  0.93']);
    expect(linesOf(inspection, 'stability-loss')).toEqual(['caution  0.21']);
    // Up: three per cent of 700 on 2,200 of 2,600, 17.77; the load's place 10 · 400 / 2,600, 1.54; each axle 5 kg at 161.5
    // below the middle, 0.31: 17.84. Aside: 15 · 0.846 and 1.54, 12.79. √((12.79 / 861.5)² + (0.929 · 17.84 / 861.5)²) = 0.0243, twice.
    expect(findingsOf(inspection, 'stability')[0]?.uncertainty).toBeCloseTo(0.0486, 4);
  });
  test('a low load costs little', () => {
    // (2,200 × 700 + 400 × 800) / 2,600 = 715.4; 800 / 715.4 = 1.118: a loss of 0.025.
    const inspection = loadScene(400, { seats: [] }, [300, 0, 50]);
    expect([...linesOf(inspection, 'stability'), ...linesOf(inspection, 'stability-loss')]).toEqual([]);
  });
});

describe('figures-missing', () => {
  test('an empty vehicle names everything that is needed and guesses nothing', () => {
    const inspection = inspectScene({ survey: null });
    expect(linesOf(inspection, 'figures-missing')).toEqual(
      [
        'cg-height',
        'floor-height',
        'front-axle-rating',
        'gross-rating',
        'rear-axle-rating',
        'seats',
        'sill-behind-rear-axle',
        'slip',
        'track',
        'wheelbase',
      ].map((figure) => `note ${figure} 0`),
    );
    expect(inspection.cases).toEqual([]);
    expect(inspection.measured).toEqual([]);
  });
  test('a known vehicle has none', () => {
    expect(linesOf(loadScene(0, { fuel: TANK }), 'figures-missing')).toEqual([]);
  });
  test('a slip without the fuel that it was weighed with is named', () => {
    expect(linesOf(loadScene(0), 'figures-missing')).toEqual(['note fuel 0']);
    expect(linesOf(loadScene(0, { slip: null }), 'figures-missing')).toEqual(['note slip 0']);
  });
});

describe('disclosure', () => {
  test('the lesser of 45.4 kg and 1.5 % of the gross rating, the cabinet with its contingency, gear not counted', () => {
    // 39 × 1.15 = 44.85; 40 × 1.15 = 46.
    expect(linesOf(addedScene(39, null), 'disclosure')).toEqual([]);
    expect(linesOf(addedScene(40, null), 'disclosure')).toEqual(['note  46']);
    expect(linesOf(addedScene(40, 3200), 'disclosure')).toEqual(['note  46']);
    // 1.5 % of 2,000 is 30 kg; 27 × 1.15 = 31.05.
    expect(findingsOf(addedScene(27, 2000), 'disclosure')).toMatchObject([{ severity: 'note', limit: 30, unit: 'kg' }]);
  });
});

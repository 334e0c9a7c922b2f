import { describe, expect, it } from 'vitest';
import { liftsOf } from '../../../src/inspection/index.ts';
import { HATCH } from '../../envelope/surveys.ts';
import { empty, fitted } from '../../fitout/designs.ts';
import { catalog, findingsOf, inspectScene, linesOf, rules, vehicleWith } from '../fixture.ts';
import { BAY, generator, reachScene } from '../scenes/reach.ts';

type Plain = Readonly<Record<string, unknown>>;

const tray = (rest: Plain = {}) =>
  fitted('opening-1', {
    kind: 'slide-out',
    slide: 'slide-100-lock',
    slideLengthMm: 500,
    deckMaterial: 'birch-ply-18',
    lipMaterial: 'birch-ply-12',
    inside: empty('opening-2'),
    ...rest,
  });

describe('slides', () => {
  it('carry half of their rating in a vehicle, less where the tray is wide', () => {
    // 900 − 2 · 17.7 − 2 · 19.3 wide on slides of 500: 100 · 0.5 · 500 / 826 = 30.27 kg
    const { inspection } = reachScene(tray(), generator(40, 'opening-2'));
    const [heavy] = findingsOf(inspection, 'slide-load');
    expect(heavy?.severity).toBe('caution');
    expect(heavy?.limit).toBeCloseTo((50 * 500) / (900 - 35.4 - 38.6), 6);
    expect(findingsOf(reachScene(tray(), generator(120, 'opening-2')).inspection, 'slide-load')[0]?.severity).toBe(
      'stop',
    );
    expect(findingsOf(reachScene(tray(), generator(5, 'opening-2')).inspection, 'slide-load')).toEqual([]);
  });

  it('want a leg under 70 kg and more', () => {
    const [leg] = findingsOf(reachScene(tray(), generator(75, 'opening-2')).inspection, 'tray-leg');
    expect(leg).toMatchObject({ severity: 'caution', limit: 70, unit: 'kg' });
    // With a lean of 1000 N at 500 each slide takes 250 N m and its share of the load.
    expect(Number(leg?.facts.rootNm)).toBeGreaterThan(250);
    expect(findingsOf(reachScene(tray(), generator(20, 'opening-2')).inspection, 'tray-leg')).toEqual([]);
  });

  it('do not tip a carcass that is bolted down', () => {
    const anchors = ['left', 'right'].flatMap((left) =>
      ['face', 'back'].map((face) => ({
        id: `anchor-${left}-${face}`,
        on: 'floor',
        across: { from: left, mm: 80 },
        deep: { from: face, mm: 80 },
        bolt: 'bolt-m8x40',
      })),
    );
    const { inspection } = reachScene(tray(), generator(30, 'opening-2'), { anchors });
    const tip = inspection.measured.find(({ rule }) => rule === 'tray-tip');
    // 1000 N at 500 and some 40 kg a little out turn it: well under the pull that four bolts bear.
    expect(tip?.value).toBeGreaterThan(0);
    expect(tip?.value).toBeLessThan(0.5);
    expect(findingsOf(inspection, 'tray-tip')).toEqual([]);
    // A lean of 10,000 N more at 500 out of the face: 5,000 N m more, on anchors 80 and 520 behind it.
    const leaning = (value: number) =>
      findingsOf(
        reachScene(
          tray(),
          { ...generator(30, 'opening-2'), houseRules: [{ rule: 'slide-out-lean', value, who: 'x', why: 'x' }] },
          { anchors },
        ).inspection,
        'tray-tip',
      )[0];
    const [some, more] = [leaning(60_000), leaning(70_000)];
    expect(some).toMatchObject({ severity: 'stop', parts: ['carcass-1'] });
    expect(Number(more?.facts.momentNm) - Number(some?.facts.momentNm)).toBeCloseTo(5000, 6);
    expect(Number(some?.facts.pullN)).toBeCloseTo(
      (Number(some?.facts.momentNm) * 1000 * 520) / (2 * (80 ** 2 + 520 ** 2)),
      6,
    );
  });
});

describe('gas springs', () => {
  const door = (stay: string, panelMaterial: string) =>
    fitted('opening-1', {
      kind: 'door',
      hinge: 'hinge-piano-32',
      hung: 'top',
      opensDeg: 90,
      stay,
      material: panelMaterial,
      inside: empty('opening-2'),
    });

  it('too weak for their leaf on the coldest day: caution, with the moment that is short', () => {
    const freezing = { houseRules: [{ rule: 'gas-spring-cold-factor', value: 0.1, who: 'x', why: 'x' }] };
    const [weak] = findingsOf(reachScene(door('gas-spring-200', 'birch-ply-18'), freezing).inspection, 'gas-spring');
    expect(weak).toMatchObject({ severity: 'caution', facts: { day: 'cold' }, unit: 'N.m' });
    expect(weak?.value ?? 0).toBeLessThan(0);
  });

  it('too strong for a hand on the hottest day: caution, with the force of the hand', () => {
    const found = findingsOf(reachScene(door('gas-spring-650', 'birch-ply-12')).inspection, 'gas-spring');
    const strong = found.find(({ facts }) => facts.day === 'hot');
    expect(strong).toMatchObject({ severity: 'caution', limit: 130 });
    expect(strong?.value ?? 0).toBeGreaterThan(130);
  });
});

describe('shelves and bottoms', () => {
  const bay = (shelfMaterial: string) =>
    fitted('opening-1', { kind: 'open-storage', shelvesUpMm: [300], shelfMaterial, restraint: 'strap-quick-50' });

  it('sag by the beam formula with creep', () => {
    const { inspection } = reachScene(bay('birch-ply-9'), generator(25, 'opening-1', { place: { level: 1 } }));
    const [sag] = findingsOf(inspection, 'shelf-sag');
    expect(sag).toMatchObject({ severity: 'caution', unit: 'mm' });
    expect(
      findingsOf(
        reachScene(bay('birch-ply-18'), generator(12, 'opening-1', { place: { level: 1 } })).inspection,
        'shelf-sag',
      ),
    ).toEqual([]);
  });

  it('a thin shelf under a heavy load would break', () => {
    const { inspection } = reachScene(bay('birch-ply-6'), generator(90, 'opening-1', { place: { level: 1 } }));
    expect(findingsOf(inspection, 'shelf-sag')[0]).toMatchObject({ severity: 'stop', unit: 'MPa' });
  });

  it('a wide drawer with a thin bottom sags', () => {
    const drawer = fitted('opening-1', {
      kind: 'drawer',
      slideLengthMm: 500,
      boxMaterial: 'birch-ply-12',
      bottomMaterial: 'birch-ply-6',
      boxHeightMm: 200,
      inside: empty('opening-2'),
    });
    expect(findingsOf(reachScene(drawer, generator(60, 'opening-2')).inspection, 'drawer-bottom-sag')[0]).toMatchObject(
      {
        severity: 'caution',
        limit: 4,
      },
    );
    expect(findingsOf(reachScene(drawer, generator(5, 'opening-2')).inspection, 'drawer-bottom-sag')).toEqual([]);
  });
});

describe('lifting', () => {
  it('takes the reach from the bumper and the height from the ground', () => {
    const { made, fitout } = reachScene(BAY, generator(20, 'opening-1'));
    const [lift] = liftsOf({ design: made, fitout, catalog, rules });
    // 400 long from the face: 200 in the middle, and 150 for sill and bumper; 800 + 17.7 + 150 above ground.
    expect(lift).toMatchObject({ reachMm: 350, coupling: 'fair', over: 'bumper' });
    expect(lift?.heightMm).toBeCloseTo(967.7, 9);
    // 23 · 25/35 · (1 − 0.003 · 21.77) · 1 · 1 = 15.36; 20 / 15.36 = 1.30
    expect(lift?.index).toBeCloseTo(20 / (23 * (25 / 35) * (1 - 0.003 * 21.77)), 6);
  });

  it('a tray brings it nearer, to a quarter of a metre at best', () => {
    const { made, fitout } = reachScene(tray(), generator(20, 'opening-2'));
    const [lift] = liftsOf({ design: made, fitout, catalog, rules });
    expect(lift?.reachMm).toBe(250);
    expect(lift?.stowedReachMm).toBeGreaterThan(300);
    expect(lift?.stowedIndex ?? 0).toBeGreaterThan(lift?.index ?? 9);
  });

  it('says what is too heavy there, and what is out of reach', () => {
    expect(linesOf(reachScene(BAY, generator(20, 'opening-1')).inspection, 'lifting')).toEqual(['caution gear-1 1.3']);
    const deep = reachScene(BAY, generator(20, 'opening-1', { place: { at: [0, 300, 0] } })).inspection;
    // 300 + 200 + 150 = 650, beyond 630.
    expect(findingsOf(deep, 'lifting')[0]?.facts.outside).toBe('yes');
    expect(linesOf(reachScene(BAY, generator(2, 'opening-1')).inspection, 'lifting')).toEqual([]);
  });

  it('is not told without the height of the floor', () => {
    const blind = reachScene(BAY, { ...generator(40, 'opening-1'), vehicle: vehicleWith({}) });
    expect(linesOf(blind.inspection, 'lifting')).toEqual([]);
    expect(findingsOf(blind.inspection, 'figures-missing').map(({ facts }) => facts.figure)).toContain('floor-height');
  });

  it('heavy gear stands between knee and waist, and not deep', () => {
    const deep = reachScene(BAY, generator(25, 'opening-1', { place: { at: [0, 150, 0] } })).inspection;
    expect(findingsOf(deep, 'heavy-gear')[0]?.facts.what).toBe('deep');
    expect(findingsOf(reachScene(BAY, generator(25, 'opening-1')).inspection, 'heavy-gear')).toEqual([]);
  });

  it('first-due gear within a stretched arm of a small person', () => {
    const at = (deep: number) =>
      reachScene(BAY, generator(5, 'opening-1', { firstDue: true, place: { at: [0, deep, 0] } })).inspection;
    // Shoulder 1140 + 30; hands at 967.7: 202.3 below. 350 out: 404; 700 + 200 … out of the room: 300 deep is 650, 681.
    expect(linesOf(at(0), 'reach-far')).toEqual([]);
    expect(linesOf(at(300), 'reach-far')).toEqual([]);
    // 380 deep: 730 out, √(730² + 202²) = 757 of 735.
    expect(linesOf(at(380), 'reach-far')).toEqual(['caution gear-1 757.51']);
  });
});

describe('the open hatch', () => {
  it('is not judged without the height of the floor', () => {
    expect(HATCH).toBeDefined();
    expect(findingsOf(inspectScene({}), 'head-clear')).toEqual([]);
  });
});

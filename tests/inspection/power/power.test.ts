import { describe, expect, it, test } from 'vitest';
import { powerPlan } from '../../../src/inspection/index.ts';
import { fuseFor, wireDrop } from '../../../src/inspection/power/index.ts';
import reference from '../../reference/wire-drop.json' with { type: 'json' };
import { catalog, designWith, findingsOf, fitOut, inspectScene, linesOf, rules } from '../fixture.ts';
import { apart, device, hotBayScene, power, winchScene } from '../scenes/power.ts';

describe('wire', () => {
  it('holds to the published tolerance', () => expect(reference.tolerance).toBe(0.0001));

  test.each(reference.cases)('$currentA A over $loopM m of $areaMm2 mm²', (one) => {
    const drop = wireDrop(0.0172, one.currentA, one.loopM, one.areaMm2);
    expect(Math.abs(drop - one.expect.dropV)).toBeLessThanOrEqual(reference.tolerance);
    expect(Math.abs(drop / 12 - one.expect.dropShareOf12V)).toBeLessThanOrEqual(reference.tolerance);
  });

  it('21 ft of loop at 10 A and 3 % of 12 V want 6,271 circular mils', () => {
    // 6.4 m; 0.0172 · 10 · 6.4008 / 0.36 = 3.058 mm²; one circular mil is 5.067e-4 mm²: 6,035. The page reckons
    // with 10.75 ohm-mil per foot, warm copper, 0.01787 ohm mm² / m: 3.177 mm², 6,271.
    const warm = 0.01787;
    const area = (warm * 10 * 6.4008) / 0.36;
    expect(area / 5.067e-4).toBeCloseTo(6271, -1);
    expect(wireDrop(warm, 10, 6.4008, area)).toBeCloseTo(0.36, 9);
  });

  it('a fuse is 1.25 times the current and no more than the wire carries', () => {
    expect(fuseFor(11.5, 1.25, 20)).toBe(15);
    expect(fuseFor(17, 1.25, 20)).toBeNull();
  });
});

describe('power of a 25 W and a 50 W radio', () => {
  const devices = [device('a', 'radio-25'), device('b', 'radio-50')];

  it('adds up', () => {
    const design = designWith(power({ batteryAh: 80 }));
    const plan = powerPlan({ design, fitout: fitOut({ devices }), catalog, rules });
    // Standby 0.05 + 0.05; run 0.5 + 0.7; most 1.2 + (11.5 − 0.7); mean 0.2 · 7 + 0.8 · 0.5 + 0.2 · 11.5 + 0.8 · 0.7.
    expect(plan.standbyA).toBeCloseTo(0.1, 9);
    expect(plan.runA).toBeCloseTo(1.2, 9);
    expect(plan.mostA).toBeCloseTo(12, 9);
    expect(plan.meanA).toBeCloseTo(4.66, 9);
    // 80 · 0.5 / 0.1 = 400 h
    expect(plan.parkedHours).toBeCloseTo(400, 9);
    // 7 · 1.25 = 8.75: 10 A; 11.5 · 1.25 = 14.4: 15 A; gauge 18 carries both while the loop is unknown.
    expect(plan.circuits.map(({ fuseA, wire, dropShare }) => [fuseA, wire?.gauge, dropShare])).toEqual([
      [10, '18', null],
      [15, '18', null],
    ]);
  });

  it('a long feed takes a thicker wire, and says when none is thick enough', () => {
    const plan = (feedLoopM: number) =>
      powerPlan({ design: designWith(power({ feedLoopM })), fitout: fitOut({ devices }), catalog, rules });
    // 0.0172 · 11.5 · 6 / A ≤ 0.36 wants 3.3 mm²: gauge 10 with 4.7.
    expect(plan(6).circuits[1]?.wire?.gauge).toBe('10');
    // 0.0172 · 11.5 · 10 / 4.7 / 12 = 3.5 %
    const scene = inspectScene({ survey: null, design: power({ feedLoopM: 10 }), fitout: { devices } });
    expect(findingsOf(scene, 'wire-drop')[0]?.value).toBeCloseTo(0.0351, 4);
  });

  it('a small battery, a small alternator, and figures that nobody brought', () => {
    const scene = inspectScene({
      survey: null,
      design: power({ batteryAh: 10, alternatorSpareA: 50, feedLoopM: 3 }),
      fitout: { devices: apart(40, 'radio-50') },
    });
    // 10 · 0.5 / (40 · 0.05) = 2.5 h; 40 · (0.2 · 11.5 + 0.8 · 0.7) = 114.4 A
    expect(linesOf(scene, 'battery-hours')).toEqual(['caution  2.5']);
    expect(linesOf(scene, 'alternator')).toEqual(['caution  114.4']);
    const unknown = inspectScene({ survey: null, fitout: { devices } });
    expect(findingsOf(unknown, 'power-unknown')[0]?.facts.missing).toBe('battery alternator feed');
    expect(linesOf(unknown, 'battery-hours')).toEqual([]);
  });

  it('a large inverter-like load finds no fuse', () => {
    expect(linesOf(winchScene(90), 'wire-fuse')).toEqual(['caution w 90']);
  });
});

describe('bay-heat', () => {
  it('two radios of 50 W at a fifth of the time: 56 W of heat', () => {
    // 13.8 V · 12 A − 50 W = 115.6 sending, 13.8 · 0.45 = 6.2 listening: 0.2 · 115.6 + 0.8 · 6.2 = 28.1 each.
    // Only the plate stands in free air: 0.5 · 0.2 m² · 12 = 1.2 W/K; 56.2 / 1.2 = 46.8 K; fan 3.1 · 56.2 / 10 = 17.4.
    const [hot] = findingsOf(hotBayScene([]), 'bay-heat');
    expect(hot?.facts.watts).toBeCloseTo(56.2, 1);
    expect(hot?.value).toBeCloseTo(46.8, 1);
    expect(hot?.facts.fanM3h).toBeCloseTo(17.4, 1);
    // One vent of 60 cm² is half of it low and half high: 5 W/K · 30 / 60 more; 56.2 / 3.7 = 15.2 K: too little.
    const [warm] = findingsOf(hotBayScene(['vent-louvre-60']), 'bay-heat');
    expect(warm?.value).toBeCloseTo(56.2 / 3.7, 1);
    expect(warm?.facts.freeMm2).toBe(6000);
    // A pair: 56.2 / 6.2 = 9.1 K.
    expect(findingsOf(hotBayScene(['vent-louvre-60', 'vent-louvre-60']), 'bay-heat')).toEqual([]);
  });
});

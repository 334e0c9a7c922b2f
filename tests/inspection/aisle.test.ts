import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { standsInAisle } from '../../src/inspection/aisle.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';

const rules = houseRules(standardCatalog(), []);
const flow = await wholeFlow();
const [LEFT, RIGHT, REAR]: readonly Vec3[] = [
  [0, 1, 0],
  [0, -1, 0],
  [-1, 0, 0],
];

describe('who stands in an aisle', () => {
  it('works at a face that looks aside where no closure opens', () => {
    // The van has two doors at the rear and none at its sides.
    const van = standsInAisle(demoDesign('ostrel-moor'), rules);
    expect([LEFT, RIGHT, REAR].map((way) => way && van(way))).toEqual([true, true, false]);
    // Nobody stands up in the bed of the pickup, 985 mm high.
    const pickup = standsInAisle(demoDesign('skerrow-gap'), rules);
    expect([LEFT, REAR].map((way) => way && pickup(way))).toEqual([false, false]);
    // Nobody is taken to stand inside a vehicle that has no closure yet.
    const measured = demoDesign('ostrel-moor');
    const bare = standsInAisle({ ...measured, survey: { ...measured.survey, closures: [] } }, rules);
    expect(LEFT && bare(LEFT)).toBe(false);
  });

  it('lifts and reads from the floor of the vehicle', () => {
    const judged = new Set(['lifting', 'reach-far', 'control-height', 'reading-angle']);
    const { findings } = flow.inspection(demoDesign('ostrel-moor'));
    // The irons stand deep in the rear stores, which are worked from the ground behind the doors.
    expect(findings.filter(({ rule }) => judged.has(rule)).map(({ rule, parts }) => [rule, parts[0]])).toEqual([
      ['lifting', 'gear-16'],
    ]);
  });
});

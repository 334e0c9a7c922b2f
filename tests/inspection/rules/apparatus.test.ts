import { describe, expect, it } from 'vitest';
import { houseRules, standardCatalog } from '../../../src/catalog/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { inspect } from '../../../src/inspection/index.ts';
import { nameOfPart, sayFinding } from '../../../src/says/index.ts';
import { carcass, designOf, fitted } from '../../fitout/designs.ts';

type Plain = Readonly<Record<string, unknown>>;

const catalog = standardCatalog();
const rules = houseRules(catalog, []);

const found = (rule: string, fitting: Plain, width = 420) => {
  const set = {
    id: 'gear-1',
    name: 'Set',
    sizeMm: [350, 240, 630],
    massKg: 11.6,
    massFrom: 'measured',
    needs: ['bracket', 'locked'],
    place: { opening: 'opening-1', level: 0, at: [0, 0, 0] },
  };
  const opening = fitted('opening-1', { kind: 'apparatus-bracket', bracket: 'cradle-pack-plate', ...fitting });
  const design = designOf([carcass(opening, { size: { width, height: 740, depth: 640 } })], { gear: [set] });
  const fitout = solveFitOut(design, catalog, rules);
  const { findings } = inspect({ design, space: null, fitout, catalog, rules });
  return findings
    .filter((finding) => finding.rule === rule)
    .map((finding) => sayFinding(finding, 'mm', nameOfPart(design, fitout)).title);
};

describe('a breathing set in its bracket', () => {
  it('wants a strap over it and a positive lock', () => {
    const both = { strap: 'strap-quick-50', lock: 'lock-pack-lever' };
    expect(found('gear-needs-bracket', both)).toEqual([]);
    expect(found('gear-needs-bracket', { ...both, lock: null })).toEqual([
      'Set can leave its bracket: no positive lock holds it',
    ]);
    expect(found('gear-needs-bracket', {})).toEqual([
      'Set can leave its bracket: no strap goes over it and no positive lock holds it',
    ]);
  });

  it('is said to have no room for the next larger cylinder where that is to go on', () => {
    // 420 − 2 × 17.7 = 384.6 across takes 260, 285.6 − 35.4 = 250.2 does not: 9.8 short.
    expect(found('gear-in-room', { nextSizeUp: true })).toEqual([]);
    expect(found('gear-in-room', { nextSizeUp: true }, 285.6)).toEqual([
      'Set has no room in opening-1 for the next larger cylinder',
    ]);
    expect(found('gear-in-room', { nextSizeUp: false }, 285.6)).toEqual([]);
  });
});

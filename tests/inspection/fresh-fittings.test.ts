import { describe, expect, it } from 'vitest';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { FITTING_KINDS, type FittingKind, freshFitting, type NodeId } from '../../src/design/index.ts';
import { solveFitOut } from '../../src/fitout/index.ts';
import { inspect } from '../../src/inspection/index.ts';
import { carcass, designOf, fitted } from '../fitout/designs.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);

/** Rules that look at the cabinet itself and not at the vehicle around it, which is not measured here. */
const OF_THE_CABINET =
  /^(cabinet-solves|body-body|moving-gap|carcass-gap|gear-in-room|mover-travel|part-too-small|part-too-big)$/;

const asItComes = (kind: FittingKind) => {
  let count = 1;
  return freshFitting(kind, (prefix) => `${prefix}-${++count}` as NodeId) as unknown as Readonly<
    Record<string, unknown>
  >;
};

describe('a fitting as it comes, alone in an empty carcass', () => {
  it.each(FITTING_KINDS)('%s draws no finding', (kind) => {
    const design = designOf([carcass(fitted('opening-1', asItComes(kind)))]);
    const fitout = solveFitOut(design, catalog, rules);
    const { findings } = inspect({ design, space: null, fitout, catalog, rules });
    expect(findings.filter(({ rule }) => OF_THE_CABINET.test(rule))).toEqual([]);
  });
});

import { describe, expect, test } from 'vitest';
import { standardCatalog } from '../../src/catalog/index.ts';
import { type Design, moveDivider } from '../../src/design/index.ts';
import { buildSolids, createSolidBuilder, type SolidSources, triangulate } from '../../src/shop/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';

const catalog = standardCatalog();
const flow = await wholeFlow();
const large = demoDesign('harrow-fell');

const sourcesOf = (design: Design): SolidSources => ({
  fitOut: flow.fitOut(design),
  gear: design.gear,
  catalog,
  triangulate,
});

/** The first division of the cabinet into rows or columns, with the sizes of its first two rooms. */
const firstDivision = (design: Design) => {
  const solved = new Map(flow.fitOut(design).openings.map((opening) => [opening.id as string, opening]));
  for (const { opening } of design.cabinet.carcasses) {
    const { content } = opening;
    if (content.kind !== 'divided' || content.along === 'layers') continue;
    const [a, b] = content.parts.map((part) => solved.get(part.opening.id)?.size[content.along === 'rows' ? 2 : 0]);
    if (a !== undefined && b !== undefined) return { parent: opening.id, first: a, second: b };
  }
  throw new Error('the demo has no carcass that is divided at its face');
};

const numbersOf = (sources: SolidSources, build = buildSolids) =>
  build(sources).map(({ mover, meshes, lines }) => ({
    mover,
    lines: [...lines],
    meshes: Object.entries(meshes).map(([finish, mesh]) => [finish, [...mesh.positions], [...mesh.colours]]),
  }));

describe('a builder that remembers', () => {
  test('draws every step of a drag exactly as one that starts anew', () => {
    const { parent, first, second } = firstDivision(large);
    const builder = createSolidBuilder();
    for (const by of [0, 5, 10, 10, -20, 0]) {
      const sources = sourcesOf(moveDivider(large, parent, 0, first + by, second - by));
      expect(numbersOf(sources, builder)).toEqual(numbersOf(sources));
    }
  });

  test('draws anew what stands in another light though the part itself is the same object', () => {
    const builder = createSolidBuilder();
    const sources = sourcesOf(large);
    const before = numbersOf(sources, builder);
    const deeper = {
      ...sources,
      fitOut: {
        ...sources.fitOut,
        carcasses: sources.fitOut.carcasses.map((each) => ({
          ...each,
          size: [each.size[0], each.size[1] * 2, each.size[2]] as const,
        })),
      },
    };
    const after = numbersOf(deeper, builder);
    expect(after).toEqual(numbersOf(deeper));
    expect(after).not.toEqual(before);
  });
});

import { describe, expect, it } from 'vitest';
import {
  addCarcass,
  addStructure,
  CHAMFER_EDGES,
  chamferAt,
  changeStructure,
  type Design,
  duplicateCarcass,
  emptyDesign,
  freshCarcass,
  type NodeId,
  printDesign,
  readDesign,
  removeStructure,
} from '../../src/design/index.ts';

const LISTS = ['chamfers', 'chases', 'wheelhouses'] as const;
const start = (): Design => {
  const empty = emptyDesign('Marrow Hill', 'in');
  return addCarcass(empty, freshCarcass(empty));
};
const ID = 'carcass-1' as NodeId;
const ownOf = (design: Design) => {
  const [carcass] = design.cabinet.carcasses;
  if (!carcass) throw new Error('no carcass');
  return carcass;
};
const sound = (design: Design): Design => {
  const read = readDesign(printDesign(design));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  expect(read.value).toEqual(design);
  return design;
};

describe('corners and holes of a carcass', () => {
  it('are added with ids of their own, changed, and removed again', () => {
    for (const list of LISTS) {
      const first = addStructure(start(), ID, list);
      const second = addStructure(first.design, ID, list);
      sound(second.design);
      expect(ownOf(second.design)[list].map(({ id }) => id)).toEqual([first.id, second.id]);
      const left = removeStructure(second.design, ID, list, first.id);
      expect(ownOf(left)[list].map(({ id }) => id)).toEqual([second.id]);
      expect(() => removeStructure(left, ID, list, first.id)).toThrow(RangeError);
    }
    const { design, id } = addStructure(start(), ID, 'wheelhouses');
    const [own] = ownOf(design).wheelhouses;
    if (!own) throw new Error('no wheelhouse');
    const changed = changeStructure(design, ID, 'wheelhouses', { ...own, upMm: 310 });
    expect(ownOf(changed).wheelhouses).toEqual([{ ...own, id, upMm: 310 }]);
  });

  it('begin at an edge and a side that are free, no larger than the carcass', () => {
    const both = addStructure(addStructure(start(), ID, 'chamfers').design, ID, 'chamfers').design;
    expect(ownOf(both).chamfers).toMatchObject([
      { corner: 'top-left', acrossMm: 80, upMm: 80 },
      { corner: 'top-right' },
    ]);
    const wheels = addStructure(addStructure(start(), ID, 'wheelhouses').design, ID, 'wheelhouses').design;
    // 700 deep: 300 long in the middle begins at 200; a quarter of 600 is more than 120; half of 500 more than 220.
    expect(ownOf(wheels).wheelhouses).toMatchObject([
      { side: 'left', fromMm: 200, lengthMm: 300, inMm: 120, upMm: 220 },
      { side: 'right' },
    ]);
  });

  it('keep their legs at another edge, and have ids of their own in a copy', () => {
    const chamfer = chamferAt({ id: 'chamfer-1' as NodeId, acrossMm: 60, upMm: 90 }, 'top-left');
    expect(chamferAt(chamfer, 'bottom-right')).toMatchObject({ along: 'deep', acrossMm: 60, upMm: 90 });
    expect(chamferAt(chamfer, 'back-left')).toEqual({
      id: 'chamfer-1',
      along: 'up',
      corner: 'back-left',
      acrossMm: 60,
      deepMm: 90,
    });
    for (const edge of CHAMFER_EDGES) expect(chamferAt(chamfer, edge).corner).toBe(edge);
    const whole = LISTS.reduce((design, list) => addStructure(design, ID, list).design, start());
    const copy = sound(duplicateCarcass(whole, ID).design);
    const ids = copy.cabinet.carcasses.flatMap((carcass) => LISTS.flatMap((list) => carcass[list].map(({ id }) => id)));
    expect(new Set(ids).size).toBe(6);
  });
});

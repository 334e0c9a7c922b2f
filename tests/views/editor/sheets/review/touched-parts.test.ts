import { describe, expect, it } from 'vitest';
import { standardCatalog } from '../../../../../src/catalog/index.ts';
import { changeCarcass, changeGear, type Design, placeGear, removeCarcass } from '../../../../../src/design/index.ts';
import { createFlow } from '../../../../../src/flow.ts';
import { changedPanels, compareDesigns } from '../../../../../src/revision/index.ts';
import { touchedBodies } from '../../../../../src/views/editor/sheets/review/compare/touched-parts.ts';
import { demoDesign } from '../../../../golden/flow.ts';

const flow = createFlow({ catalog: standardCatalog(), solids: null });
const demo = demoDesign('harrow-fell');
const [gear] = demo.gear.filter(({ place }) => place !== null);
const [carcass, other] = demo.cabinet.carcasses;
if (!gear?.place || !carcass || !other) throw new Error('the demo is too small');

/** Bodies marked in the picture of the later design. */
const marked = (after: Design, shown: Design = after): readonly string[] =>
  touchedBodies(
    flow.fitOut(shown),
    compareDesigns(demo, after),
    changedPanels(flow.fitOut(demo), flow.fitOut(after)),
  ).map(({ id }) => id);

describe('what is marked in the picture of a comparison', () => {
  it('is nothing where nothing differs, or only a name', () => {
    expect(marked(demo)).toEqual([]);
    expect(marked(changeGear(demo, gear.id, { name: 'another' }))).toEqual([]);
  });

  it('is gear that was moved, and that alone', () => {
    const [x, y, z] = gear.place?.at ?? [0, 0, 0];
    const after = placeGear(demo, gear.id, { ...gear.place, at: [x + 5, y, z] } as typeof gear.place);
    const bodies = flow.fitOut(after).bodies.filter(({ origin }) => origin === gear.id);
    expect(marked(after)).toEqual(bodies.map(({ id }) => id));
    expect(bodies.length).toBeGreaterThan(0);
  });

  it('is the panels that are cut otherwise where a carcass is wider, not its gear', () => {
    const after = changeCarcass(demo, carcass.id, { size: { ...carcass.size, width: carcass.size.width + 10 } });
    const cut = changedPanels(flow.fitOut(demo), flow.fitOut(after)).map(({ id }) => id);
    const ids = marked(after);
    expect(cut.length).toBeGreaterThan(2);
    expect(ids).toEqual(expect.arrayContaining(cut));
    const kinds = new Set(
      flow
        .fitOut(after)
        .bodies.filter(({ id }) => ids.includes(id))
        .map(({ kind }) => kind),
    );
    expect(kinds.has('gear')).toBe(false);
  });

  it('is all of a carcass that moved or is gone', () => {
    const inIt = (design: Design): number =>
      flow.fitOut(design).bodies.filter(({ carcass: at, kind }) => at === carcass.id && kind !== 'plug-room').length;
    const moved = changeCarcass(demo, carcass.id, { place: { ...carcass.place, x: { rule: 'at', mm: 60 } } });
    expect(marked(moved).length).toBe(inIt(moved));
    const gone = removeCarcass(demo, carcass.id);
    // In the picture of before, where it still stands; its gear lost its place and is marked with it.
    expect(marked(gone, demo).length).toBeGreaterThanOrEqual(inIt(demo));
    expect(marked(gone, demo).some((id) => id.startsWith(`${other.id}/`))).toBe(false);
  });
});

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardCatalog } from '../../src/catalog/index.ts';
import {
  changeCarcass,
  changeDocument,
  changeGear,
  type Design,
  designNodes,
  duplicateCarcass,
  findOpening,
  type NodeId,
  openingsFrom,
  placeGear,
  printDesign,
  readDesign,
  removeGear,
} from '../../src/design/index.ts';
import { createFlow } from '../../src/flow.ts';
import {
  bareDesign,
  type Change,
  changedPanels,
  compareDesigns,
  compareFigures,
  figuresOf,
} from '../../src/revision/index.ts';
import { randomDesign } from '../laws/arbitrary.ts';
import { editBy } from '../laws/random-edit.ts';

const SEED = 20310402;
const read = readDesign(readFileSync('assets/designs/harrow-fell.json', 'utf8'));
if (!read.ok) throw new Error('the demo does not read');
const demo = read.value;
const flow = createFlow({ catalog: standardCatalog(), solids: null });

const kindsAt = (changes: readonly Change[], id: string): readonly string[] =>
  changes.filter((change) => change.id === id).map(({ kind }) => kind);

const placed = demo.gear.find(({ place }) => place !== null);
const [carcass] = demo.cabinet.carcasses;
const place = placed?.place;
if (!placed || !place || !carcass) throw new Error('the demo holds no placed gear');
const otherRoom = demo.cabinet.carcasses
  .flatMap(({ opening }) => openingsFrom(opening))
  .find(({ id, content }) => id !== place.opening && content.kind === 'empty');
if (!otherRoom) throw new Error('the demo holds no empty room');

describe('comparing two designs', () => {
  it('calls each kind of change by its name', () => {
    const cases: readonly (readonly [Design, string, string])[] = [
      [placeGear(demo, placed.id, { ...place, opening: otherRoom.id }), placed.id, 'rehoused'],
      [placeGear(demo, placed.id, null), placed.id, 'rehoused'],
      [placeGear(demo, placed.id, { ...place, at: [place.at[0] + 10, place.at[1], place.at[2]] }), placed.id, 'moved'],
      [changeGear(demo, placed.id, { name: 'another name' }), placed.id, 'renamed'],
      [changeGear(demo, placed.id, { sizeMm: [1, 2, 3] }), placed.id, 'resized'],
      [changeGear(demo, placed.id, { massKg: placed.massKg + 1 }), placed.id, 'changed'],
      [removeGear(demo, placed.id), placed.id, 'removed'],
      [changeCarcass(demo, carcass.id, { size: { ...carcass.size, width: 700 } }), carcass.id, 'resized'],
      [
        changeCarcass(demo, carcass.id, { place: { ...carcass.place, x: { rule: 'at', mm: 77 } } }),
        carcass.id,
        'moved',
      ],
      [changeDocument(demo, { title: 'another title' }), '', 'renamed'],
      [changeDocument(demo, { notes: 'another note' }), '', 'changed'],
    ];
    for (const [after, id, kind] of cases) {
      const changes = compareDesigns(demo, after);
      expect(changes).toHaveLength(1);
      expect(kindsAt(changes, id)).toEqual([kind]);
    }
  });

  it('tells of a carcass that came, and not of every opening in it', () => {
    const { design, id } = duplicateCarcass(demo, carcass.id);
    expect(compareDesigns(demo, design).map(({ kind, id: at }) => [kind, at])).toEqual([['added', id]]);
    expect(compareDesigns(design, demo).map(({ kind, id: at }) => [kind, at])).toEqual([['removed', id]]);
  });

  it('sees gear and carcasses that only changed places in their list', () => {
    const turned = { ...demo, gear: demo.gear.toReversed() };
    expect(compareDesigns(demo, turned).map(({ kind }) => kind)).toEqual(['reordered']);
  });

  it('counts the panels to cut again: a longer name is none, a wider carcass is', () => {
    const before = flow.fitOut(demo);
    expect(changedPanels(before, flow.fitOut(changeGear(demo, placed.id, { name: 'x' })))).toEqual([]);
    const wider = changeCarcass(demo, carcass.id, { size: { ...carcass.size, width: carcass.size.width + 10 } });
    const changed = changedPanels(before, flow.fitOut(wider));
    // Top, bottom and back at least are 10 mm longer; the two sides are not cut otherwise.
    const roles = flow.fitOut(wider).panels.filter(({ id }) => changed.some((each) => each.id === id));
    expect(roles.map(({ role }) => role)).toEqual(expect.arrayContaining(['top', 'bottom', 'back']));
    const sides = before.panels.filter(({ carcass: at, role }) => at === carcass.id && role === 'side-left');
    expect(changed.some(({ id }) => sides.some((side) => side.id === id))).toBe(false);
  });

  it('compares by number: 1 kg more gear is 1 kg more', () => {
    const figures = (design: Design) =>
      figuresOf({ fitout: flow.fitOut(design), inspection: null, sheets: null, price: null });
    const heavier = changeGear(demo, placed.id, { massKg: placed.massKg + 1 });
    const changes = compareFigures(figures(demo), figures(heavier));
    expect(changes.map(({ id }) => id)).toEqual(['gear-mass']);
    expect((changes[0]?.after ?? 0) - (changes[0]?.before ?? 0)).toBeCloseTo(1, 9);
    expect(compareFigures(figures(demo), figures(demo))).toEqual([]);
  });
});

describe('laws of comparing', () => {
  it('compare(a, a) is empty, also when a went through its file', () => {
    fc.assert(
      fc.property(randomDesign(fc), (design) => {
        expect(compareDesigns(design, design)).toEqual([]);
        const again = readDesign(printDesign(design));
        expect(again.ok && compareDesigns(design, again.value)).toEqual([]);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('every edit of a random run is named, and an empty comparison means the same document', () => {
    fc.assert(
      fc.property(
        randomDesign(fc),
        fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { minLength: 1, maxLength: 6 }),
        (start, picks) => {
          let design = start;
          for (const [which, where] of picks) {
            const edit = editBy(design, which, where);
            if (!edit) continue;
            const changes = compareDesigns(design, edit.after);
            const same = printDesign(bareDesign(design)) === printDesign(bareDesign(edit.after));
            expect(changes.length === 0).toBe(same);
            const named = new Set(changes.map(({ id }) => id));
            // A drawer fitted where a drawer was, columns put into columns: what is new are the rooms inside.
            const around = edit.about.flatMap((id) => {
              const found = findOpening(edit.after, id as NodeId);
              return found ? openingsFrom(found.opening).map((opening) => opening.id as string) : [id];
            });
            if (!same) expect(around.some((id) => named.has(id))).toBe(true);
            design = edit.after;
          }
          // Over the whole run: what came, went or changed is named, itself or with what it came and went in.
          const was = new Map(designNodes(start).map((node) => [node.id as string, node]));
          const is = new Map(designNodes(design).map((node) => [node.id as string, node]));
          const changes = compareDesigns(start, design);
          expect(compareDesigns(design, start).length === 0).toBe(changes.length === 0);
          for (const gear of design.gear) {
            const then = start.gear.find(({ id }) => id === gear.id);
            if (JSON.stringify(then) !== JSON.stringify(gear)) expect(kindsAt(changes, gear.id)).not.toEqual([]);
          }
          for (const box of start.cabinet.carcasses)
            if (!is.has(box.id)) expect(kindsAt(changes, box.id)).toEqual(['removed']);
          for (const box of design.cabinet.carcasses)
            if (!was.has(box.id)) expect(kindsAt(changes, box.id)).toEqual(['added']);
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });
});

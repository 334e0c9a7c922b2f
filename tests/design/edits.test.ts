import { describe, expect, it } from 'vitest';
import {
  acceptanceOf,
  acceptFinding,
  addCarcass,
  addGear,
  addSurveyItem,
  changeCarcass,
  clearOpening,
  type Design,
  designNodes,
  divideOpening,
  duplicateCarcass,
  emptyDesign,
  fillBoxWith,
  findOpening,
  fitOpening,
  freshCarcass,
  moveDivider,
  type NodeId,
  openingsFrom,
  pasteContent,
  placeGear,
  printDesign,
  readDesign,
  removeCarcass,
  removePart,
  removeSurveyItem,
  setPartSize,
} from '../../src/design/index.ts';

const id = (text: string): NodeId => text as NodeId;
const withCarcass = (): Design => {
  const empty = emptyDesign('Marrow Hill', 'in');
  return addCarcass(empty, freshCarcass(empty));
};
const rows = (design: Design) => {
  const content = design.cabinet.carcasses[0]?.opening.content;
  if (content?.kind !== 'divided') throw new Error('not divided');
  return content.parts;
};
const sound = (design: Design): Design => {
  const read = readDesign(printDesign(design));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  expect(read.value).toEqual(design);
  return design;
};
const item = {
  name: 'axe',
  kind: null,
  sizeMm: [900, 300, 40],
  massKg: 4,
  massFrom: 'estimated',
  massSigmaKg: 0,
  needs: [],
  firstDue: false,
  user: '',
  note: '',
  place: null,
} as const;

describe('edits', () => {
  it('never touch the design they are given, and leave a sound one', () => {
    const before = withCarcass();
    const text = printDesign(before);
    const after = sound(divideOpening(before, id('opening-1'), 'rows', 3));
    expect(printDesign(before)).toBe(text);
    expect(rows(after).map((part) => part.opening.id)).toEqual(['opening-2', 'opening-3', 'opening-4']);
  });

  it('share what they do not change, so that later stages can tell by identity', () => {
    const two = duplicateCarcass(withCarcass(), id('carcass-1')).design;
    const changed = divideOpening(two, id('opening-1'), 'columns', 2);
    expect(changed.cabinet.carcasses[1]).toBe(two.cabinet.carcasses[1]);
    expect(changed.survey).toBe(two.survey);
    expect(changed.cabinet.carcasses[0]).not.toBe(two.cabinet.carcasses[0]);
  });

  it('a moved divider fixes one room and lets the only share take up the rest', () => {
    const two = divideOpening(withCarcass(), id('opening-1'), 'rows', 2);
    expect(rows(moveDivider(two, id('opening-1'), 0, 140, 310)).map((part) => part.size)).toEqual([
      { rule: 'fixed', mm: 140 },
      { rule: 'share', weight: 1 },
    ]);
  });

  it('with a third sharing room, both rooms beside the divider become fixed, so that the third stays', () => {
    const three = divideOpening(withCarcass(), id('opening-1'), 'rows', 3);
    expect(rows(moveDivider(three, id('opening-1'), 0, 140, 160)).map((part) => part.size)).toEqual([
      { rule: 'fixed', mm: 140 },
      { rule: 'fixed', mm: 160 },
      { rule: 'share', weight: 1 },
    ]);
  });

  it('a share above a fixed room keeps its share: the fixed room takes the new size', () => {
    const two = setPartSize(divideOpening(withCarcass(), id('opening-1'), 'rows', 2), id('opening-1'), 1, {
      rule: 'fixed',
      mm: 200,
    });
    expect(rows(moveDivider(two, id('opening-1'), 0, 240, 190)).map((part) => part.size)).toEqual([
      { rule: 'share', weight: 1 },
      { rule: 'fixed', mm: 190 },
    ]);
  });

  it('gear never disappears: it goes back to the list when its opening goes', () => {
    const divided = divideOpening(withCarcass(), id('opening-1'), 'rows', 2);
    const { design } = addGear(divided, [item]);
    const placed = sound(
      placeGear(design, id('gear-1'), {
        opening: id('opening-3'),
        level: 0,
        at: [0, 0, 0],
        stance: 'upright',
        turnDeg: 0,
      }),
    );
    for (const without of [
      clearOpening(placed, id('opening-1')),
      removePart(placed, id('opening-1'), 1),
      removeCarcass(placed, id('carcass-1')),
    ])
      expect(sound(without).gear).toMatchObject([{ id: 'gear-1', place: null }]);
  });

  it('gear follows what it stands in when an opening is divided, and when the division is taken back', () => {
    const { design } = addGear(fitOpening(withCarcass(), id('opening-1'), 'open-storage'), [item]);
    const placed = placeGear(design, id('gear-1'), {
      opening: id('opening-1'),
      level: 0,
      at: [0, 0, 0],
      stance: 'upright',
      turnDeg: 0,
    });
    const divided = sound(divideOpening(placed, id('opening-1'), 'columns', 2));
    expect(divided.gear[0]?.place?.opening).toBe('opening-2');
    const back = sound(removePart(divided, id('opening-1'), 1));
    expect(back.gear[0]?.place?.opening).toBe('opening-1');
    expect(findOpening(back, id('opening-1'))?.opening.content).toEqual(
      findOpening(placed, id('opening-1'))?.opening.content,
    );
  });

  it('gear moves into the fitting that is put round it, and from one fitting into the next', () => {
    const { design } = addGear(withCarcass(), [item]);
    const at = { level: 0, at: [0, 0, 0], stance: 'upright', turnDeg: 0 } as const;
    const placed = placeGear(design, id('gear-1'), { opening: id('opening-1'), ...at });
    const insideOf = (now: Design): NodeId | undefined => {
      const opening = findOpening(now, id('opening-1'))?.opening;
      return opening && openingsFrom(opening)[1]?.id;
    };
    const drawer = sound(fitOpening(placed, id('opening-1'), 'drawer'));
    expect(drawer.gear[0]?.place?.opening).toBe(insideOf(drawer));
    const tray = sound(fitOpening(drawer, id('opening-1'), 'slide-out'));
    expect(tray.gear[0]?.place?.opening).toBe(insideOf(tray));
    // Open storage holds its gear itself.
    const bay = sound(fitOpening(tray, id('opening-1'), 'open-storage'));
    expect(bay.gear[0]?.place?.opening).toBe('opening-1');
  });

  it('copies get ids of their own all the way down', () => {
    const full = fitOpening(divideOpening(withCarcass(), id('opening-1'), 'rows', 2), id('opening-2'), 'drawer');
    const twice = sound(duplicateCarcass(full, id('carcass-1')).design);
    const content = findOpening(twice, id('opening-1'))?.opening.content;
    if (!content) throw new Error('lost');
    const pasted = sound(pasteContent(twice, id('opening-3'), content));
    const ids = designNodes(pasted).map((node) => node.id);
    expect(new Set(ids).size).toBe(ids.length);
    // carcass 1: its opening, two rows, the drawer's inside, and the pasted content's three; carcass 2: four.
    expect(pasted.cabinet.carcasses.map((carcass) => openingsFrom(carcass.opening).length)).toEqual([7, 4]);
  });

  it('stations stay in order of depth, and what moved with a closure that goes stands still', () => {
    const empty = emptyDesign('Marrow Hill', 'in');
    const far = addSurveyItem(empty, 'stations', { xMm: 900, left: [], right: [] }).design;
    const near = addSurveyItem(far, 'stations', { xMm: 0, left: [], right: [] }).design;
    expect(near.survey.stations.map((station) => station.xMm)).toEqual([0, 900]);
    const { design, id: hatch } = addSurveyItem(near, 'closures', {
      name: 'hatch',
      kind: 'lift-hatch',
      hinge: { from: [0, -500, 900], to: [0, 500, 900] },
      outward: 'rear',
      hangs: 'down',
      innerProfile: [
        [0, 0],
        [900, 0],
      ],
      thicknessMm: 40,
      opensDeg: 85,
      carriedBy: null,
    });
    const strut = addSurveyItem(design, 'obstacles', {
      name: 'strut',
      kind: 'strut',
      movesWith: hatch,
      solid: { shape: 'capsule', from: [0, 500, 500], to: [0, 500, 900], radiusMm: 14 },
    }).design;
    expect(sound(removeSurveyItem(strut, 'closures', hatch)).survey.obstacles).toMatchObject([{ movesWith: null }]);
  });

  it('a finding is accepted with a name and a reason or not at all', () => {
    const design = withCarcass();
    const finding = { rule: 'rear-axle', parts: ['full-crew'] };
    expect(() => acceptFinding(design, { ...finding, who: ' ', why: 'x', on: '' })).toThrow(/name and a reason/);
    const accepted = acceptFinding(design, {
      ...finding,
      who: 'R. Vane',
      why: 'weighed at 20 kg less',
      on: '2031-05-02',
    });
    expect(acceptanceOf(accepted, finding)?.who).toBe('R. Vane');
    expect(acceptanceOf(accepted, { rule: 'rear-axle', parts: ['driver'] })).toBeNull();
  });

  it('name the node when it is not there', () => {
    expect(() => changeCarcass(withCarcass(), id('carcass-9'), { name: 'x' })).toThrow(
      'no carcass has the id carcass-9',
    );
    expect(() => divideOpening(withCarcass(), id('opening-1'), 'rows', 1)).toThrow('1 is not a number of parts');
  });

  it('a carcass fills a box of the vehicle within whole millimetres, whichever way it faces', () => {
    const box = { min: [10.2, -300.7, 0], max: [910.9, 299.4, 500.5] } as const;
    const fresh = sound(fillBoxWith(emptyDesign('Marrow Hill', 'mm'), null, box).design);
    // From 11 to 910 deep, −300 to 299 across, 0 to 500 up.
    expect(fresh.cabinet.carcasses[0]).toMatchObject({
      place: { x: { mm: 11 }, y: { mm: -300 }, z: { mm: 0 } },
      size: { width: 599, height: 500, depth: 899 },
    });
    const own = fresh.cabinet.carcasses[0]?.id ?? null;
    const turned = changeCarcass(fresh, own ?? id('none'), { facing: 'left' });
    const filled = fillBoxWith(turned, own, box);
    expect(filled.id).toBe(own);
    expect(filled.design.cabinet.carcasses[0]?.size).toEqual({ width: 899, height: 500, depth: 599 });
  });
});

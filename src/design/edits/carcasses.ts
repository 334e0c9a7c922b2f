import type { Box } from '../../base/index.ts';
import { type Anchor, freshAnchors, freshFloorAnchor, freshWallAnchor } from '../anchors.ts';
import type { Carcass } from '../cabinet.ts';
import type { Design } from '../design.ts';
import { freshIds, openingsFrom } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import { itemOf } from './change.ts';
import { copyOpening } from './openings.ts';

const withCarcasses = (design: Design, carcasses: readonly Carcass[]): Design => ({
  ...design,
  cabinet: { ...design.cabinet, carcasses },
});

/** A carcass of ordinary make, standing on the floor at the sill. */
export const freshCarcass = (design: Design): Carcass => {
  const newId = freshIds(design);
  return {
    id: newId('carcass'),
    name: `carcass ${design.cabinet.carcasses.length + 1}`,
    place: { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: -300 }, z: { rule: 'at', mm: 0 } },
    facing: 'rear',
    size: { width: 600, height: 500, depth: 700 },
    material: 'birch-ply-18',
    backMaterial: 'birch-ply-6',
    joints: { corner: 'dado', dadoDepthMm: 6, back: { kind: 'groove', grooveDepthMm: 6, setbackMm: 12 } },
    edgeBand: null,
    anchors: freshAnchors(newId),
    chamfers: [],
    chases: [],
    wheelhouses: [],
    stand: { kind: 'none' },
    opening: { id: newId('opening'), name: '', content: { kind: 'empty' } },
  };
};

export const addCarcass = (design: Design, carcass: Carcass): Design =>
  withCarcasses(design, [...design.cabinet.carcasses, carcass]);

export const changeCarcass = (design: Design, id: NodeId, change: Partial<Omit<Carcass, 'id' | 'opening'>>): Design => {
  itemOf(design.cabinet.carcasses, id, 'carcass');
  return withCarcasses(
    design,
    design.cabinet.carcasses.map((carcass) => (carcass.id === id ? { ...carcass, ...change } : carcass)),
  );
};

/**
 * Takes a carcass out, with the braces at it and what was mounted on its outside. Its gear goes back to the list; carcasses that stood beside
 * it stay at the sill or the floor.
 */
export const removeCarcass = (design: Design, id: NodeId): Design => {
  const carcass = itemOf(design.cabinet.carcasses, id, 'carcass');
  const openings = new Set<string>(openingsFrom(carcass.opening).map((opening) => opening.id));
  const freed = (place: Carcass['place']): Carcass['place'] => {
    const loose = (axis: Carcass['place']['x']): Carcass['place']['x'] =>
      axis.rule === 'beside' && axis.carcass === id ? { rule: 'at', mm: 0 } : axis;
    return { x: loose(place.x), y: loose(place.y), z: loose(place.z) };
  };
  const kept = design.cabinet.carcasses.filter((other) => other.id !== id);
  const left = withCarcasses(
    design,
    kept.map((other) => ({ ...other, place: freed(other.place) })),
  );
  const braces = left.cabinet.braces.filter(({ from, to }) => from.carcass !== id && to.carcass !== id);
  return {
    ...left,
    cabinet: { ...left.cabinet, braces },
    gear: design.gear.map((gear) => (gear.place && openings.has(gear.place.opening) ? { ...gear, place: null } : gear)),
    mounts: design.mounts.filter((mount) => mount.on !== id),
  };
};

/** A second carcass like the first, beside it on the vehicle's right, empty of gear. */
export const duplicateCarcass = (design: Design, id: NodeId): { readonly design: Design; readonly id: NodeId } => {
  const carcass = itemOf(design.cabinet.carcasses, id, 'carcass');
  const newId = freshIds(design);
  const copyId = newId('carcass');
  const copy: Carcass = {
    ...carcass,
    id: copyId,
    name: `${carcass.name}, copy`,
    place: { ...carcass.place, y: { rule: 'beside', carcass: id, side: 'minus', gapMm: 3 } },
    anchors: carcass.anchors.map((anchor) => ({ ...anchor, id: newId('anchor') })),
    chamfers: carcass.chamfers.map((chamfer) => ({ ...chamfer, id: newId('chamfer') })),
    chases: carcass.chases.map((chase) => ({ ...chase, id: newId('chase') })),
    wheelhouses: carcass.wheelhouses.map((own) => ({ ...own, id: newId('wheelhouse') })),
    opening: copyOpening(design, carcass.opening),
  };
  return { design: addCarcass(design, copy), id: copyId };
};

const withAnchors = (design: Design, id: NodeId, change: (anchors: readonly Anchor[]) => readonly Anchor[]): Design =>
  changeCarcass(design, id, { anchors: change(itemOf(design.cabinet.carcasses, id, 'carcass').anchors) });

/** Adds an anchor with a new id to a carcass: in the middle of the far end of its floor, or half way up its left side. */
export const addAnchor = (
  design: Design,
  carcass: NodeId,
  on: Anchor['on'],
): { readonly design: Design; readonly id: NodeId } => {
  const { size } = itemOf(design.cabinet.carcasses, carcass, 'carcass');
  const id = freshIds(design)('anchor');
  const floor = freshFloorAnchor(id, 'left', 'back');
  const anchor: Anchor =
    on === 'floor'
      ? { ...floor, across: { from: 'left', mm: size.width / 2 } }
      : freshWallAnchor(id, Math.round(size.height / 2));
  return { design: withAnchors(design, carcass, (anchors) => [...anchors, anchor]), id };
};

export const changeAnchor = (design: Design, carcass: NodeId, anchor: Anchor): Design =>
  withAnchors(design, carcass, (anchors) => {
    itemOf(anchors, anchor.id, 'anchor');
    return anchors.map((own) => (own.id === anchor.id ? anchor : own));
  });

export const removeAnchor = (design: Design, carcass: NodeId, id: NodeId): Design =>
  withAnchors(design, carcass, (anchors) => {
    itemOf(anchors, id, 'anchor');
    return anchors.filter((own) => own.id !== id);
  });

/** Whole millimetres within: a carcass that is to fit never takes the part of one that it was not given. */
const wholeWithin = ({ min, max }: Box): Box => ({
  min: [Math.ceil(min[0]), Math.ceil(min[1]), Math.ceil(min[2])],
  max: [Math.floor(max[0]), Math.floor(max[1]), Math.floor(max[2])],
});

/** A carcass that fills a box of the vehicle: the one with the id, moved and sized, or a fresh one where it is null. */
export const fillBoxWith = (
  design: Design,
  id: NodeId | null,
  box: Box,
): { readonly design: Design; readonly id: NodeId } => {
  const carcass = id === null ? freshCarcass(design) : itemOf(design.cabinet.carcasses, id, 'carcass');
  const { min, max } = wholeWithin(box);
  const [x, y, height] = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
  const along = carcass.facing === 'rear' || carcass.facing === 'front';
  const [place, size] = [
    { x: { rule: 'at', mm: min[0] }, y: { rule: 'at', mm: min[1] }, z: { rule: 'at', mm: min[2] } } as const,
    { width: along ? y : x, height, depth: along ? x : y },
  ];
  return {
    id: carcass.id,
    design:
      id === null
        ? addCarcass(design, { ...carcass, place, size })
        : changeCarcass(design, carcass.id, { place, size }),
  };
};

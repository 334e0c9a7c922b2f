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

/** Takes a carcass out. Its gear goes back to the list; carcasses that stood beside it stay at the sill or the floor. */
export const removeCarcass = (design: Design, id: NodeId): Design => {
  const carcass = itemOf(design.cabinet.carcasses, id, 'carcass');
  const openings = new Set<string>(openingsFrom(carcass.opening).map((opening) => opening.id));
  const freed = (place: Carcass['place']): Carcass['place'] => {
    const loose = (axis: Carcass['place']['x']): Carcass['place']['x'] =>
      axis.rule === 'beside' && axis.carcass === id ? { rule: 'at', mm: 0 } : axis;
    return { x: loose(place.x), y: loose(place.y), z: loose(place.z) };
  };
  const kept = design.cabinet.carcasses.filter((other) => other.id !== id);
  return {
    ...withCarcasses(
      design,
      kept.map((other) => ({ ...other, place: freed(other.place) })),
    ),
    gear: design.gear.map((gear) => (gear.place && openings.has(gear.place.opening) ? { ...gear, place: null } : gear)),
  };
};

/** A second carcass like the first, beside it on the vehicle's right, empty of gear. */
export const duplicateCarcass = (design: Design, id: NodeId): { readonly design: Design; readonly id: NodeId } => {
  const carcass = itemOf(design.cabinet.carcasses, id, 'carcass');
  const copyId = freshIds(design)('carcass');
  const copy: Carcass = {
    ...carcass,
    id: copyId,
    name: `${carcass.name}, copy`,
    place: { ...carcass.place, y: { rule: 'beside', carcass: id, side: 'minus', gapMm: 3 } },
    opening: copyOpening(design, carcass.opening),
  };
  return { design: addCarcass(design, copy), id: copyId };
};

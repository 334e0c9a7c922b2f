import type { GearKind } from '../../catalog/index.ts';
import type { Design } from '../design.ts';
import type { Gear, GearPlace, Mount } from '../gear.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import { itemOf } from './change.ts';

/** A gear item of the generic kind, as the catalog has it, without a place. */
export const gearOfKind = (design: Design, kind: GearKind): Gear => ({
  id: freshIds(design)('gear'),
  name: kind.name,
  kind: kind.id,
  sizeMm: kind.sizeMm,
  massKg: kind.massKg,
  massFrom: 'catalogue',
  massSigmaKg: kind.massSigmaKg,
  needs: kind.needs,
  firstDue: false,
  user: '',
  note: '',
  place: null,
});

export const addGear = (
  design: Design,
  gear: readonly Omit<Gear, 'id'>[],
): { readonly design: Design; readonly ids: readonly NodeId[] } => {
  const newId = freshIds(design);
  const added = gear.map((item) => ({ ...item, id: newId('gear') }));
  return { design: { ...design, gear: [...design.gear, ...added] }, ids: added.map((item) => item.id) };
};

export const changeGear = (design: Design, id: NodeId, change: Partial<Omit<Gear, 'id'>>): Design => {
  itemOf(design.gear, id, 'gear');
  return { ...design, gear: design.gear.map((gear) => (gear.id === id ? { ...gear, ...change } : gear)) };
};

export const placeGear = (design: Design, id: NodeId, place: GearPlace | null): Design =>
  changeGear(design, id, { place });

export const removeGear = (design: Design, id: NodeId): Design => {
  itemOf(design.gear, id, 'gear');
  return { ...design, gear: design.gear.filter((gear) => gear.id !== id) };
};

export const addMount = (
  design: Design,
  mount: Omit<Mount, 'id'>,
): { readonly design: Design; readonly id: NodeId } => {
  const id = freshIds(design)('mount');
  return { design: { ...design, mounts: [...design.mounts, { ...mount, id }] }, id };
};

export const changeMount = (design: Design, id: NodeId, change: Partial<Omit<Mount, 'id'>>): Design => {
  itemOf(design.mounts, id, 'mount');
  return { ...design, mounts: design.mounts.map((mount) => (mount.id === id ? { ...mount, ...change } : mount)) };
};

export const removeMount = (design: Design, id: NodeId): Design => {
  itemOf(design.mounts, id, 'mount');
  return { ...design, mounts: design.mounts.filter((mount) => mount.id !== id) };
};

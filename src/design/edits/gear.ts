import type { GearKind } from '../../catalog/index.ts';
import type { Design } from '../design.ts';
import type { Gear, GearPlace, Mount } from '../gear.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import { itemOf } from './change.ts';

const BELOW_HINGE_MM = 200;
const FRESH_UP_MM = 900;

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

/** A device where ordinary ones hang: in the middle of the first closure, a little below its hinge, else at the sill. */
export const freshMount = (design: Design, device: Mount['device']): Omit<Mount, 'id'> => {
  const [closure] = design.survey.closures;
  const { from, to } = closure?.hinge ?? { from: [0, 0, FRESH_UP_MM], to: [0, 0, FRESH_UP_MM] };
  const middle = (axis: 0 | 1 | 2): number => Math.round((from[axis] + to[axis]) / 2);
  const down = closure?.hangs === 'down' ? BELOW_HINGE_MM : 0;
  return {
    name: '',
    device,
    on: closure?.id ?? null,
    at: [middle(0), middle(1), middle(2) - down],
    looks: 'front',
    onEnd: false,
    letIn: false,
    bracket: null,
    offMm: null,
  };
};

export const changeMount = (design: Design, id: NodeId, change: Partial<Omit<Mount, 'id'>>): Design => {
  itemOf(design.mounts, id, 'mount');
  return { ...design, mounts: design.mounts.map((mount) => (mount.id === id ? { ...mount, ...change } : mount)) };
};

export const removeMount = (design: Design, id: NodeId): Design => {
  itemOf(design.mounts, id, 'mount');
  return { ...design, mounts: design.mounts.filter((mount) => mount.id !== id) };
};

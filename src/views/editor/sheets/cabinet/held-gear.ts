import { type Design, type Gear, openingsFrom } from '../../../../design/index.ts';

/** Gear that stands in an opening or anywhere inside it. */
export const heldGear = (design: Design, openingId: string): readonly Gear[] => {
  const found = design.cabinet.carcasses
    .flatMap((carcass) => openingsFrom(carcass.opening))
    .find((opening) => opening.id === openingId);
  if (!found) return [];
  const inside = new Set<string>(openingsFrom(found).map((opening) => opening.id));
  return design.gear.filter((gear) => gear.place !== null && inside.has(gear.place.opening));
};

export const massOf = (gear: readonly Gear[]): number => gear.reduce((sum, item) => sum + item.massKg, 0);

/**
 * How figures are rounded on paper. A sixteenth of an inch could be 0.8 mm off, more than a sawn edge may be; the
 * nearest 1/32 is at most 0.4 mm off, the nearest 1/64 at most 0.2 mm, which is what a bored pattern may be.
 */
export const SHOP_FRACTION = 32;
export const BORE_FRACTION = 64;

const toPlaces = (value: number, places: number): number => {
  const rounded = Number(value.toFixed(places));
  return rounded === 0 ? 0 : rounded;
};

/** Millimetres to a tenth. */
export const toTenth = (mm: number): number => toPlaces(mm, 1);
/** Kilograms to a gram. */
export const toKilogram = (kg: number): number => toPlaces(kg, 3);
/** Money to a cent. */
export const toCent = (money: number): number => toPlaces(money, 2);

import { KG_PER_POUND, type LengthUnits } from '../base/index.ts';

/** What is engraved on the plate of a tray: in the reader's units and in the others, neither rounded up. */
export const sayLoadPlate = (kg: number, units: LengthUnits): string => {
  const pounds = `${Math.floor(kg / KG_PER_POUND)} lb`;
  const kilograms = `${Math.floor(kg)} kg`;
  const [first, second] = units === 'in' ? [pounds, kilograms] : [kilograms, pounds];
  return `Safe load ${first} (${second}), spread evenly. Lock it shut before driving.`;
};

import type { Vec3 } from '../../base/index.ts';
import type { HouseRules } from '../../catalog/index.ts';
import type { Design, Seat, Vehicle } from '../../design/index.ts';
import type { FitOut } from '../../fitout/index.ts';

/** A mass aboard in vehicle axes, with its standard deviation. */
export interface AboardItem {
  readonly id: string;
  readonly what: 'cabinet' | 'gear' | 'person' | 'fuel';
  readonly kg: number;
  readonly sigmaKg: number;
  readonly at: Vec3;
}

/**
 * Cabinet and gear as solved. Until the vehicle has been on the scale again, everything of the cabinet weighs more by
 * the house rule's contingency; gear counts as listed.
 */
export const fittedItems = (fitout: FitOut, rules: HouseRules): readonly AboardItem[] => {
  const factor = 1 + rules.value('contingency-share');
  return fitout.masses.map((item): AboardItem => {
    const { id, at } = item;
    return item.kind === 'gear'
      ? { id, what: 'gear', kg: item.massKg, sigmaKg: item.sigmaKg, at }
      : { id, what: 'cabinet', kg: item.massKg * factor, sigmaKg: item.sigmaKg * factor, at };
  });
};

const OCCUPANT_RULE: Readonly<Record<Seat['occupant'], string>> = { driver: 'driver-mass-kg', crew: 'rider-mass-kg' };

/** A person in each of the seats, at the hip point, as heavy as the seat says or the house rule for riders in gear. */
export const peopleIn = (seats: readonly Seat[], rules: HouseRules): readonly AboardItem[] =>
  seats.map((seat) => ({
    id: seat.id,
    what: 'person',
    kg: seat.occupantKg ?? rules.value(OCCUPANT_RULE[seat.occupant]),
    sigmaKg: 0,
    at: seat.at,
  }));

/** The fuel that was not in the tank when the vehicle was weighed; nothing where the tank is not described. */
export const missingFuel = (fuel: Vehicle['fuel']): readonly AboardItem[] =>
  fuel === null
    ? []
    : [
        {
          id: 'fuel',
          what: 'fuel',
          kg: fuel.tankLitres * (1 - fuel.atSlipShare) * fuel.kgPerLitre,
          sigmaKg: 0,
          at: fuel.at,
        },
      ];

export const CASE_IDS = ['received', 'fitted', 'driver', 'crew', 'crew-fuel'] as const;
export type CaseId = (typeof CASE_IDS)[number];

/** Who and what is aboard beside the vehicle as it was weighed. */
export interface LoadingCase {
  readonly id: CaseId;
  readonly items: readonly AboardItem[];
}

/**
 * The standard loading cases, lightest first: as received; cabinet and gear with nobody aboard; the driver; every seat
 * taken; every seat taken and the tank full, which is there only when the tank is described.
 */
export const loadingCases = (design: Design, fitout: FitOut, rules: HouseRules): readonly LoadingCase[] => {
  const { seats, fuel } = design.vehicle;
  const fitted = fittedItems(fitout, rules);
  const drivers = peopleIn(
    seats.filter((seat) => seat.occupant === 'driver'),
    rules,
  );
  const everyone = peopleIn(seats, rules);
  const cases: LoadingCase[] = [
    { id: 'received', items: [] },
    { id: 'fitted', items: fitted },
    { id: 'driver', items: [...fitted, ...drivers] },
    { id: 'crew', items: [...fitted, ...everyone] },
  ];
  if (fuel) cases.push({ id: 'crew-fuel', items: [...fitted, ...everyone, ...missingFuel(fuel)] });
  return cases;
};

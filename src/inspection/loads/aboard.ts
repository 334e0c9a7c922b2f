import { add, ORIGIN, scale, type Vec3 } from '../../base/index.ts';
import type { HouseRules } from '../../catalog/index.ts';
import type { Design, OwnCase, Seat, Vehicle } from '../../design/index.ts';
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
    sigmaKg: seat.occupantKg === null ? rules.value('rider-sigma-kg') : 0,
    at: seat.at,
  }));

/** The fuel that was not in the tank when the vehicle was weighed, or less where the tank is emptier; nothing where it is not described. */
export const fuelAt = (fuel: Vehicle['fuel'], share: number, rules: HouseRules): readonly AboardItem[] => {
  if (fuel === null || share === fuel.atSlipShare) return [];
  const kg = fuel.tankLitres * (share - fuel.atSlipShare) * fuel.kgPerLitre;
  return [{ id: 'fuel', what: 'fuel', kg, sigmaKg: Math.abs(kg) * rules.value('fuel-sigma-share'), at: fuel.at }];
};

/** How far everything on a mover travels when it and what carries it stand all the way out. */
export const travelsOf = (movers: FitOut['movers']): ReadonlyMap<string, Vec3> => {
  const byId = new Map(movers.map((mover) => [mover.id, mover]));
  const travel = (id: string | null): Vec3 => {
    const mover = id === null ? undefined : byId.get(id);
    if (!mover) return ORIGIN;
    const { motion, carriedBy } = mover;
    const own = motion.kind === 'slide' ? scale(motion.direction, motion.travel) : ORIGIN;
    return add(own, travel(carriedBy));
  };
  return new Map(movers.map(({ id }) => [id, travel(id)]));
};

/** Cabinet and gear with every drawer and tray all the way out; what turns stays stowed. */
export const drawnOut = (fitout: FitOut, rules: HouseRules): readonly AboardItem[] => {
  const travels = travelsOf(fitout.movers);
  return fittedItems(fitout, rules).map((item, i) => {
    const mover = fitout.masses[i]?.mover ?? null;
    return { ...item, at: add(item.at, (mover === null ? null : travels.get(mover)) ?? ORIGIN) };
  });
};

export const CASE_IDS = ['received', 'fitted', 'trays-out', 'driver', 'crew', 'crew-fuel'] as const;
export type CaseId = (typeof CASE_IDS)[number];

/** Who and what is aboard beside the vehicle as it was weighed. */
export interface LoadingCase {
  /** A usual case, or the id of one of the design's own. */
  readonly id: string;
  readonly items: readonly AboardItem[];
  /** Drawers and trays stand all the way out. */
  readonly drawn: boolean;
}

const ownCase = (own: OwnCase, design: Design, fitout: FitOut, rules: HouseRules): LoadingCase => {
  const { seats, fuel } = design.vehicle;
  return {
    id: own.id,
    drawn: own.traysOut,
    items: [
      ...(own.traysOut ? drawnOut(fitout, rules) : fittedItems(fitout, rules)),
      ...peopleIn(
        seats.filter(({ id }) => own.seats.includes(id)),
        rules,
      ),
      ...(own.fuelShare === null ? [] : fuelAt(fuel, own.fuelShare, rules)),
      ...own.extras.map(
        ({ kg, sigmaKg, at }, i): AboardItem => ({ id: `${own.id}/${i + 1}`, what: 'gear', kg, sigmaKg, at }),
      ),
    ],
  };
};

/**
 * The usual loading cases: as received; cabinet and gear with nobody aboard; parked with every drawer and tray out,
 * where there is one; the driver; every seat taken; every seat taken and the tank full, which is there only when the
 * tank is described. Then the design's own.
 */
export const loadingCases = (design: Design, fitout: FitOut, rules: HouseRules): readonly LoadingCase[] => {
  const { seats, fuel, ownCases } = design.vehicle;
  const fitted = fittedItems(fitout, rules);
  const drivers = peopleIn(
    seats.filter((seat) => seat.occupant === 'driver'),
    rules,
  );
  const everyone = peopleIn(seats, rules);
  const slides = fitout.movers.some(({ motion }) => motion.kind === 'slide');
  return [
    { id: 'received', drawn: false, items: [] },
    { id: 'fitted', drawn: false, items: fitted },
    ...(slides ? [{ id: 'trays-out', drawn: true, items: drawnOut(fitout, rules) }] : []),
    { id: 'driver', drawn: false, items: [...fitted, ...drivers] },
    { id: 'crew', drawn: false, items: [...fitted, ...everyone] },
    ...(fuel ? [{ id: 'crew-fuel', drawn: false, items: [...fitted, ...everyone, ...fuelAt(fuel, 1, rules)] }] : []),
    ...ownCases.map((own) => ownCase(own, design, fitout, rules)),
  ];
};

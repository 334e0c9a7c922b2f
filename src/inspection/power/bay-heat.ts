import type { InspectionInput } from '../job.ts';

/** Warming of one closed bay of devices. */
export interface BayHeat {
  readonly opening: string;
  readonly watts: number;
  /** Heat through its walls in free air, its vents and by its fans for each kelvin (W/K). */
  readonly lossWK: number;
  readonly riseK: number;
  /** Air that holds the limit (m³/h), and the free area of each of two vents (mm²). */
  readonly fanM3h: number;
  readonly ventMm2: number;
  /** Free area of all vents and slots that are fitted there, half of it low and half high (mm²). */
  readonly freeMm2: number;
  /** Air that the fans there move, where there are vents for it (m³/h). */
  readonly movedM3h: number;
}

const MM2_PER_M2 = 1e6;
/** What a low and a high vent of the house rule's area are for. */
const PAIR_W = 50;
/** Walls of a carcass count as outer up to this much beyond the opening: the panel and its set-back (mm). */
const WALL_MM = 40;

type Input = Pick<InspectionInput, 'design' | 'fitout' | 'catalog' | 'rules'>;

const LOSS_RULE: Readonly<Record<string, string>> = {
  plywood: 'heat-loss-plywood',
  'faced-plywood': 'heat-loss-plywood',
  plastic: 'heat-loss-plastic',
  aluminium: 'heat-loss-aluminium',
  composite: 'heat-loss-aluminium',
};

/** Heat of everything in a bay: what radios draw when they send less what leaves by the antenna, and what all draw besides. */
const wattsIn = ({ fitout, catalog, rules }: Input, opening: string): number =>
  fitout.devices.reduce((sum, placed) => {
    const record = placed.opening === opening ? catalog.devices.get(placed.device) : undefined;
    if (!record) return sum;
    const volts = rules.value('supply-volts');
    const { amps, transmitShare, radiatedW } = record;
    const sending = amps.transmit > 0 ? transmitShare * Math.max(0, volts * amps.transmit - radiatedW) : 0;
    return sum + sending + (1 - (amps.transmit > 0 ? transmitShare : 0)) * volts * amps.run;
  }, 0);

/** Heat for each kelvin through the face of a bay and through the walls of the carcass that it stands at. */
const lossOf = (input: Input, opening: InspectionInput['fitout']['openings'][number]): number => {
  const { fitout, catalog, rules } = input;
  const carcass = fitout.carcasses.find(({ id }) => id === opening.carcass);
  if (!carcass) return 0;
  const [w, d, h] = opening.size;
  const kOf = (material: string | undefined): number => {
    const kind = material === undefined ? undefined : catalog.materials.get(material)?.kind;
    return rules.value(LOSS_RULE[kind ?? 'plywood'] ?? 'heat-loss-plywood');
  };
  const panel = (role: string): string | undefined =>
    fitout.panels.find((each) => each.carcass === carcass.id && each.role === role)?.material;
  const plate = fitout.panels.find(({ origin, role }) => origin === opening.id && role === 'plate')?.material;
  const high = (axis: 0 | 1 | 2): boolean => opening.from[axis] + opening.size[axis] >= carcass.size[axis] - WALL_MM;
  const low = (axis: 0 | 1 | 2): boolean => opening.from[axis] <= WALL_MM;
  const walls: readonly (readonly [free: boolean, area: number, k: number])[] = [
    [true, w * h, kOf(plate)],
    [low(0), d * h, kOf(panel('side-left'))],
    [high(0), d * h, kOf(panel('side-right'))],
    [high(2), w * d, kOf(panel('top'))],
    [high(1), w * h, kOf(panel('back'))],
  ];
  return walls.reduce((sum, [free, area, k]) => (free ? sum + (k * area) / MM2_PER_M2 : sum), 0);
};

/** Free area of the vents at an opening and of the slots in its plate. */
const freeArea = ({ fitout, catalog }: Input, opening: string): number => {
  const vents = fitout.hardware.reduce((sum, { origin, item, quantity }) => {
    const record = origin === opening ? catalog.hardware.get(item) : undefined;
    return record?.kind === 'vent' ? sum + quantity * (record.freeMm2 ?? 0) : sum;
  }, 0);
  const cuts = fitout.panels.flatMap(({ origin, role, cuts: own }) =>
    origin === opening && role === 'plate' ? own : [],
  );
  return cuts.reduce((sum, cut) => {
    if (cut.kind !== 'cutout' || cut.why !== 'air slot' || cut.outline.shape !== 'rectangle') return sum;
    const { from, to } = cut.outline;
    return sum + (to[0] - from[0]) * (to[1] - from[1]);
  }, vents);
};

/** Every closed opening that holds devices which draw current. */
export const bayHeats = (input: Input): readonly BayHeat[] => {
  const { fitout, catalog, rules } = input;
  const limit = rules.value('heat-rise');
  // Behind a plate, or shut in: air does not pass through what is open.
  const closed = new Set<string>([
    ...fitout.panels.flatMap(({ origin, role }) => (role === 'plate' ? [origin] : [])),
    ...fitout.rooms.flatMap(({ opening, keeps }) => (keeps === 'closed' ? [opening] : [])),
  ]);
  return fitout.openings.flatMap((opening): readonly BayHeat[] => {
    if (!closed.has(opening.id)) return [];
    const watts = wattsIn(input, opening.id);
    const wallsWK = lossOf(input, opening);
    if (watts <= 0 || wallsWK <= 0) return [];
    const freeMm2 = freeArea(input, opening.id);
    const fansM3h = fitout.devices.reduce(
      (sum, placed) => (placed.opening === opening.id ? sum + (catalog.devices.get(placed.device)?.airM3h ?? 0) : sum),
      0,
    );
    // A fan in a bay without a vent stirs the air that is there.
    const movedM3h = freeMm2 > 0 ? fansM3h : 0;
    // A pair of vents of the house rule's area carries 50 W off at the limit, a fan a watt for each of its share of air.
    const ventsWK = (PAIR_W / limit) * (freeMm2 / 2 / rules.value('vent-area-per-50w'));
    const lossWK = wallsWK + ventsWK + movedM3h / rules.value('fan-air');
    return [
      {
        opening: opening.id,
        watts,
        lossWK,
        riseK: watts / lossWK,
        fanM3h: (rules.value('fan-air') * watts) / limit,
        ventMm2: (rules.value('vent-area-per-50w') * watts) / PAIR_W,
        freeMm2,
        movedM3h,
      },
    ];
  });
};

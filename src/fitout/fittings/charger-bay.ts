import { type Box, boxAt, boxMiddle, boxSize, shift, type Vec3 } from '../../base/index.ts';
import { boxShape } from '../../bodies/index.ts';
import type { Device } from '../../catalog/index.ts';
import type { FittingByKind, NodeId } from '../../design/index.ts';
import { largerOf } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import { stockedRoom } from '../gear-size.ts';
import { fastenersOf } from '../hardware.ts';
import type { Body, FitProblem } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { unknown } from '../stock.ts';
import { type BayVents, bayVents, ventNeed, ventParts } from './bay-vents.ts';
import type { FittingSolver } from './solver.ts';

type ChargerBay = FittingByKind['charger-bay'];

const SCREWS_A_FAN = 4;

interface Charger {
  readonly id: NodeId;
  readonly device: Device;
  /** Across × deep × up of the charger itself, and what its plug and cable take behind it. */
  readonly size: Vec3;
  readonly behind: number;
}

interface Row {
  readonly chargers: readonly Charger[];
  readonly behind: number;
  readonly deep: number;
  readonly wide: number;
}

interface Plan {
  readonly rows: readonly Row[];
  readonly fan: Charger | null;
  /** What vents and fan take from the depth of the bay. */
  readonly atBack: number;
  readonly air: number;
  readonly tallest: number;
  readonly vents: BayVents;
}

const chargerOf = (id: NodeId, device: Device): Charger => ({
  id,
  device,
  size: [
    Math.max(device.faceMm.width, device.behindMm.width),
    device.behindMm.body,
    Math.max(device.faceMm.height, device.behindMm.height),
  ],
  behind: device.behindMm.plug + device.behindMm.bend,
});

/** Vents and a fan in the back stand this far into the bay. */
const deepest = (vents: BayVents, fan: Charger | null): number =>
  Math.max(vents.deep, fan ? fan.size[1] + fan.behind : 0);

const planOf = (fitting: ChargerBay, context: CarcassContext): Plan => {
  const rows = fitting.rows.map((row): Row => {
    const chargers = row.flatMap(({ id, device }) => {
      const record = context.catalog.devices.get(device);
      return record ? [chargerOf(id, record)] : [];
    });
    const most = (of: (charger: Charger) => number): number => Math.max(0, ...chargers.map(of));
    return {
      chargers,
      behind: most(({ behind }) => behind),
      deep: most(({ size }) => size[1]),
      wide: chargers.reduce((sum, { size }) => sum + size[0], 0),
    };
  });
  const all = rows.flatMap(({ chargers }) => chargers);
  const blower = fitting.fan === null ? undefined : context.catalog.devices.get(fitting.fan.device);
  const fan = fitting.fan && blower ? chargerOf(fitting.fan.id, blower) : null;
  const vents = bayVents(
    fitting.vent,
    all.reduce((sum, { device }) => sum + device.amps.run, 0),
    fan !== null,
    context,
  );
  return {
    rows,
    fan,
    atBack: deepest(vents, fan),
    air: context.rule('charger-air'),
    tallest: Math.max(0, ...all.map(({ size }) => size[2])),
    vents,
  };
};

/** Every charger of a row with the low corner of its body, shared out evenly over the width; plugs towards the back. */
const placeRow = ({ chargers, wide, behind }: Row, box: Box, rear: number) => {
  const air = (box.max[0] - box.min[0] - wide) / (chargers.length + 1);
  let x = box.min[0] + air;
  return chargers.map((charger) => {
    const at: Vec3 = [x, rear - behind - charger.size[1], box.min[2]];
    x += charger.size[0] + air;
    return { charger, at };
  });
};

/** A device with its low corner, and the room of its plug and cable behind it or, the other way, before it. */
const bodyAndMass = (charger: Charger, at: Vec3, plugs: 1 | -1, room: Room, context: CarcassContext): FittingParts => {
  const { id, device, size, behind } = charger;
  const box = boxAt(at, size);
  const common = { origin: id, carcass: context.carcass.id, name: device.name, mover: room.mover };
  const plug = boxAt([at[0], plugs > 0 ? at[1] + size[1] : at[1] - behind, at[2]], [size[0], behind, size[2]]);
  const bodies: readonly Body[] = [
    { ...common, id: `${id}/body`, kind: 'device', shape: boxShape(box) },
    ...(behind > 0 ? [{ ...common, id: `${id}/plug`, kind: 'plug-room' as const, shape: boxShape(plug) }] : []),
  ];
  const middle = boxMiddle(box);
  const { massKg, massSigmaKg: sigmaKg } = device;
  return {
    ...NO_PARTS,
    bodies,
    masses: [{ ...common, id: `${id}/mass`, kind: 'device', massKg, sigmaKg, at: middle }],
    hardware: [
      { ...common, id: `${id}/device`, from: 'device', item: device.id, quantity: 1, lengthMm: null, at: middle },
    ],
    devices: [
      { id: `${id}/device`, origin: id, device: device.id, at: middle, opening: room.opening.id, mover: room.mover },
    ],
  };
};

/** The fan high in the middle of the back, its cable before it, and the round hole that it blows through. */
const fanParts = (fan: Charger, room: Room, context: CarcassContext): FittingParts => {
  const { min, max } = room.box;
  const [wide, deep, high] = fan.size;
  const x = (min[0] + max[0]) / 2;
  const z = max[2] - context.rule('vent-flange') - high / 2;
  const back = room.fits ? room.walls.back : null;
  const hole = fan.device.holeMm ?? 0;
  const through = back ? back.board.box.max[1] - max[1] : 0;
  const from: Vec3 = [x - wide / 2, max[1] - deep, z - high / 2];
  return together([
    bodyAndMass(fan, from, -1, room, context),
    {
      cutouts:
        back && hole > 0
          ? [
              {
                board: back.board.id,
                origin: room.opening.id,
                box: boxAt([x - hole / 2, max[1], z - hole / 2], [hole, through, hole]),
                shape: 'circle',
                cornerRadius: 0,
                why: 'fan',
              },
            ]
          : [],
    },
    fastenersOf(context, {
      id: `${fan.id}/screws`,
      origin: room.opening.id,
      item: PIECES.hinge,
      quantity: SCREWS_A_FAN,
      mover: room.mover,
    }),
  ]);
};

const unknownDevices = (fitting: ChargerBay, context: CarcassContext): readonly FitProblem[] =>
  fitting.rows
    .flat()
    .concat(fitting.fan ?? [])
    .flatMap(({ id, device }) => (context.catalog.devices.has(device) ? [] : [unknown('unknown-device', id, device)]));

const solveChargerBay = (fitting: ChargerBay, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const plan = planOf(fitting, context);
  const { min, max } = room.box;
  const placed: FittingParts[] = [];
  let rear = max[1] - plan.atBack;
  for (const row of plan.rows) {
    placed.push(...placeRow(row, room.box, rear).map(({ charger, at }) => bodyAndMass(charger, at, 1, room, context)));
    rear -= row.behind + row.deep;
  }
  const over: Box = { min: [min[0], min[1], min[2] + plan.tallest], max: [max[0], max[1] - plan.atBack, max[2]] };
  const own: FittingParts = {
    ...NO_PARTS,
    rooms: [
      {
        opening: id,
        level: 0,
        carcass: context.carcass.id,
        mover: room.mover,
        pose: shift(over.min),
        size: boxSize(over),
        keeps: room.keeps === 'closed' ? 'closed' : 'nothing',
      },
    ],
    problems: [
      ...unknownDevices(fitting, context),
      ...((plan.vents.count > 0 || plan.fan) && room.walls.back === null
        ? [badJoint(id, ['vents meet no panel at the back'])]
        : []),
    ],
  };
  return together([
    own,
    ...placed,
    plan.fan ? fanParts(plan.fan, room, context) : NO_PARTS,
    ventParts(plan.vents, fitting.vent, room, context),
  ]);
};

/**
 * Chargers stand on the floor in rows from the back, with air between them and their plugs behind. Vents low and high
 * in the back have the free area that the house rules ask for the power that the chargers take; a fan takes the place
 * of the high ones. Gear stands above.
 */
export const chargerBaySolver: FittingSolver<ChargerBay> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const { rows, air, tallest, vents, fan, atBack } = planOf(fitting, context);
    const worth = context.rule('least-inside');
    const wide = Math.max(0, ...rows.map((row) => row.wide + (row.chargers.length + 1) * air));
    const deep = rows.reduce((sum, row) => sum + row.behind + row.deep, 0);
    const [ventWide, ventUp] = ventNeed(vents);
    const flange = context.rule('vent-flange');
    const [fanWide, fanUp] = fan
      ? [fan.size[0] + 2 * flange, fan.size[2] + (ventUp > 0 ? flange : 2 * flange)]
      : [0, 0];
    const bare: Vec3 = [
      Math.max(worth, wide, ventWide, fanWide),
      Math.max(worth, deep) + atBack,
      Math.max(tallest + Math.max(worth, fitting.aboveMm), ventUp + fanUp),
    ];
    if (counting === 'built') return bare;
    const stocked = stockedRoom(context, opening.id);
    return largerOf(bare, [stocked[0], stocked[1] + atBack, stocked[2] + tallest]);
  },
  solve: solveChargerBay,
};

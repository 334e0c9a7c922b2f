import {
  type Box,
  boxMiddle,
  boxSize,
  type Pose,
  placed,
  ROUNDING_MM,
  type Vec2,
  type Vec3,
} from '../../base/index.ts';
import { boxShape, shapeAt } from '../../bodies/index.ts';
import type { Device, Material } from '../../catalog/index.ts';
import type { FittingByKind, NodeId } from '../../design/index.ts';
import { DEEP } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, screwsAlong } from '../hardware.ts';
import type { Body, CutoutOutline, FitProblem, PanelCut } from '../parts.ts';
import { platePanel } from '../plate-panel.ts';
import { badJoint, mmWords, tooSmall } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf, unknown } from '../stock.ts';
import { airSlots } from './plate-edges.ts';
import {
  type DevicePlace,
  deepNeed,
  type PlatePlan,
  placeDevices,
  plateHeight,
  plateNeed,
  platePlan,
} from './plate-layout.ts';
import type { FittingSolver } from './solver.ts';
import { grilleHoles } from './speaker-grille.ts';

type Faceplate = FittingByKind['faceplate'];

interface Plate {
  readonly plan: PlatePlan;
  readonly width: number;
  readonly height: number;
  readonly places: readonly DevicePlace[];
  /** From plate coordinates to the carcass: across, up the slope, out of the front; z = 0 is the rear face. */
  readonly pose: Pose;
}

/** Pose of a plate whose foremost edge stands the set-back behind the face and whose lowest edge clears the floor. */
const platePose = ({ lean, gaps }: PlatePlan, { box }: Room, setback: number, height: number): Pose => {
  const { sin, cos, thickness, deep } = lean;
  const front: Vec3 = [
    box.min[0] + gaps.reveal,
    box.min[1] + setback + height * Math.max(0, -sin),
    box.min[2] + gaps.reveal + deep * Math.max(0, sin),
  ];
  return {
    turn: [
      [1, 0, 0],
      [0, sin, cos],
      [0, -cos, sin],
    ],
    at: [front[0], front[1] + thickness * cos, front[2] - thickness * sin],
  };
};

const outlineOf = ({ cutout }: Device, at: Vec2): CutoutOutline | null => {
  if (cutout.shape === 'none') return null;
  if (cutout.shape === 'round') return { shape: 'circle', at, diameter: cutout.diameterMm };
  const [w, h] = [cutout.widthMm / 2, cutout.heightMm / 2];
  return {
    shape: 'rectangle',
    from: [at[0] - w, at[1] - h],
    to: [at[0] + w, at[1] + h],
    cornerRadius: cutout.cornerRadiusMm,
  };
};

const cutouts = ({ places }: Plate, context: CarcassContext): readonly PanelCut[] =>
  places.flatMap(({ item, at }): readonly PanelCut[] => {
    if (item.grille) return grilleHoles(at, item.cutout[0], context);
    const outline = outlineOf(item.device, at);
    return outline ? [{ kind: 'cutout', outline, why: item.device.name }] : [];
  });

/** Screw holes along both upright edges, at the pitch of the house rules. */
const screwHoles = ({ plan, width, height }: Plate, context: CarcassContext): readonly PanelCut[] => {
  const edge = context.rule('plate-screw-edge');
  const rows = screwsAlong(context, height);
  const end = Math.max(edge, plan.flange?.clearMm ?? 0);
  return [edge, width - edge].flatMap((x) =>
    Array.from({ length: rows }, (_, i): PanelCut => {
      const at: Vec2 = [x, end + ((height - 2 * end) * i) / (rows - 1)];
      return {
        kind: 'hole',
        face: 'a',
        at,
        diameter: context.rule('plate-screw-hole'),
        depth: null,
        why: 'plate screw',
      };
    }),
  );
};

/** A box about a point of the plate, from one depth of its z to another. */
const boxOnPlate = ([x, y]: Vec2, [w, h]: Vec2, from: number, to: number): Box => ({
  min: [x - w / 2, y - h / 2, from],
  max: [x + w / 2, y + h / 2, to],
});

/** Face, body, and the room of plug and bend of one device, in plate coordinates. */
const solidsOf = ({ item, at }: DevicePlace, thickness: number) => {
  const { device, face, behind, stand, deep } = item;
  const body = deep > 0 ? device.behindMm.body : 0;
  return [
    { role: 'face', kind: 'device', box: boxOnPlate(at, face, thickness, thickness + stand) },
    { role: 'body', kind: 'device', box: boxOnPlate(at, behind, -body, 0) },
    { role: 'plug', kind: 'plug-room', box: boxOnPlate(at, behind, -deep, -body) },
  ] as const;
};

const deviceParts = (plate: Plate, place: DevicePlace, room: Room, context: CarcassContext): FittingParts => {
  const { item } = place;
  const { device, id } = item;
  const { mover, opening } = room;
  const carcass = context.carcass.id;
  const solids = solidsOf(place, plate.plan.lean.thickness).filter(({ box }) =>
    boxSize(box).every((side) => side > ROUNDING_MM),
  );
  const heaviest = solids.find(({ role }) => role === 'body') ?? solids[0];
  const at = placed(plate.pose, heaviest ? boxMiddle(heaviest.box) : [place.at[0], place.at[1], 0]);
  const common = { origin: id, carcass, name: device.name, mover };
  return {
    ...NO_PARTS,
    bodies: solids.map(({ role, kind, box }): Body => {
      return { ...common, id: `${id}/${role}`, kind, shape: shapeAt(boxShape(box), plate.pose) };
    }),
    masses: [{ ...common, id: `${id}/mass`, kind: 'device', massKg: device.massKg, sigmaKg: device.massSigmaKg, at }],
    hardware: [{ ...common, id: `${id}/device`, from: 'device', item: device.id, quantity: 1, lengthMm: null, at }],
    devices: [{ id: `${id}/device`, origin: id, device: device.id, at, opening: opening.id, mover }],
  };
};

/** Only a speaker with a round cut-out can stand behind the plate. */
const badGrilles = (fitting: Faceplate, context: CarcassContext): readonly FitProblem[] =>
  fitting.rows.flat().flatMap(({ id, device, grille }) => {
    const record = context.catalog.devices.get(device);
    if (!grille || !record || (record.kind === 'speaker' && record.cutout.shape === 'round')) return [];
    return [badJoint(id, [`${record.name} is no speaker to stand behind a grille`])];
  });

const unknownDevices = (fitting: Faceplate, context: CarcassContext): readonly FitProblem[] =>
  fitting.rows
    .flat()
    .flatMap(({ id, device }) => (context.catalog.devices.has(device) ? [] : [unknown('unknown-device', id, device)]));

/** A lean brings higher rows further back, so a room taller than the least may need to be deeper too. */
const tooShallow = (fitting: Faceplate, plate: Plate, room: Room): readonly FitProblem[] => {
  const need = deepNeed(plate.plan, fitting.setbackMm, plate.height, plate.places);
  const have = boxSize(room.box)[DEEP];
  if (!room.fits || need <= have + ROUNDING_MM) return [];
  return [tooSmall(room.opening.id, DEEP, need, have, [fitting.kind])];
};

/** A sheet that is not bent or is bent too sharply, and a flange too short for the die. */
const badFlange = ({ flangeMm }: Faceplate, { plan }: Plate, material: Material, at: NodeId): readonly FitProblem[] => {
  if (flangeMm === null) return [];
  if (plan.flange === null) return [badJoint(at, [`${material.name} is not bent`])];
  const { leastMm, outsideMm, insideRadiusMm, leastRadiusMm } = plan.flange;
  return [
    ...(outsideMm < leastMm ? [badJoint(at, [`flange ${mmWords(outsideMm)}`], leastMm, outsideMm)] : []),
    ...(insideRadiusMm < leastRadiusMm
      ? [
          badJoint(
            at,
            [`${material.name} is bent to a radius of ${mmWords(insideRadiusMm)}`],
            leastRadiusMm,
            insideRadiusMm,
          ),
        ]
      : []),
  ];
};

const solveFaceplate = (fitting: Faceplate, room: Room, context: CarcassContext): FittingParts => {
  const { id, name } = room.opening;
  const stock = stockOf(context.catalog, fitting.material, id);
  const plan = platePlan(fitting, stock.material, context);
  const [across, , up] = boxSize(room.box);
  const [width, height] = [across - 2 * plan.gaps.reveal, plateHeight(plan, up)];
  const places = placeDevices(plan, width, height);
  const pose = platePose(plan, room, fitting.setbackMm, height);
  const plate: Plate = { plan, width, height, places, pose };
  const holes = screwHoles(plate, context);
  const { mover } = room;
  const problems = [
    ...stock.problems,
    ...unknownDevices(fitting, context),
    ...badGrilles(fitting, context),
    ...tooShallow(fitting, plate, room),
    ...badFlange(fitting, plate, stock.material, id),
  ];
  return together([
    { problems },
    platePanel(
      {
        id: `${id}/plate`,
        origin: id,
        role: 'plate',
        name: name === '' ? `${context.carcass.name} plate`.trim() : name,
        sheet: stock.material,
        size: [width, height],
        cuts: [...cutouts(plate, context), ...airSlots(plan.air, width, height), ...holes],
        pose,
        flange: plan.flange,
        mover,
      },
      context,
    ),
    ...places.map((place) => deviceParts(plate, place, room, context)),
    fastenersOf(context, { id: `${id}/plate-screws`, origin: id, item: PIECES.plate, quantity: holes.length, mover }),
  ]);
};

/**
 * A plate across the opening with devices in cut-outs of their true size, its top leaning back by the tilt. What
 * stands behind a device (body, then the room of plug and bend) turns with the plate and must clear the bay.
 */
export const faceplateSolver: FittingSolver<Faceplate> = {
  leastRoom: (fitting, _where, context) => {
    const { material } = stockOf(context.catalog, fitting.material, context.carcass.id);
    const plan = platePlan(fitting, material, context);
    return plateNeed(plan, fitting.setbackMm, context.rule('least-inside'));
  },
  solve: solveFaceplate,
};

import type { Vec2, Vec3 } from '../../base/index.ts';
import type { Device, Material } from '../../catalog/index.ts';
import type { FittingByKind, NodeId } from '../../design/index.ts';
import type { CarcassContext } from '../context.ts';
import { type Line, leastLine, lineUp } from '../line-up.ts';
import { type AirRow, airRow, type PlateFlange, plateFlange, plateTilt } from './plate-edges.ts';

type Faceplate = FittingByKind['faceplate'];

/** A device of a plate with what it takes: its face, its cut-out and what stands behind, each as width × height. */
export interface PlateDevice {
  readonly id: NodeId;
  readonly device: Device;
  readonly face: Vec2;
  readonly cutout: Vec2;
  readonly behind: Vec2;
  /** From the rear face of the plate to the end of body, plug and bend. */
  readonly deep: number;
  /** How far it stands out of the front of the plate. */
  readonly stand: number;
  /** It stands behind the plate, which is drilled before it in place of a cut-out. */
  readonly grille: boolean;
}

/** Distances of the house rules that a plate is laid out with. */
interface Gaps {
  readonly reveal: number;
  readonly web: number;
  readonly edge: number;
  readonly face: number;
  readonly behind: number;
}

const gapsOf = ({ rule }: CarcassContext): Gaps => ({
  reveal: rule('reveal-front'),
  web: rule('min-web-cutout'),
  edge: rule('cutout-edge'),
  face: rule('cutout-face-gap'),
  behind: rule('gap-behind-plate'),
});

/** A device without a cut-out stands on the front of the plate with its whole body: nothing of it is behind. */
export const plateDevice = (id: NodeId, device: Device, faceDepth: number, grille = false): PlateDevice => {
  const { cutout, faceMm, behindMm } = device;
  const face: Vec2 = [faceMm.width, faceMm.height];
  if (grille && cutout.shape === 'round') {
    // Its frame lies against the rear of the plate: nothing stands out, and as much as its face stands behind.
    const frame: Vec2 = [Math.max(face[0], behindMm.width), Math.max(face[1], behindMm.height)];
    const deep = behindMm.body + behindMm.plug + behindMm.bend;
    return { id, device, face, cutout: [cutout.diameterMm, cutout.diameterMm], behind: frame, deep, stand: 0, grille };
  }
  if (cutout.shape === 'none')
    return { id, device, face, cutout: [0, 0], behind: [0, 0], deep: 0, stand: behindMm.body, grille: false };
  const size: Vec2 =
    cutout.shape === 'round' ? [cutout.diameterMm, cutout.diameterMm] : [cutout.widthMm, cutout.heightMm];
  const deep = behindMm.body + behindMm.plug + behindMm.bend;
  const behind: Vec2 = [behindMm.width, behindMm.height];
  return { id, device, face, cutout: size, behind, deep, stand: faceDepth, grille: false };
};

const hasCutout = ({ cutout }: PlateDevice): boolean => cutout[0] > 0;

/** Least distance between the middles of two devices beside (axis 0) or above (axis 1) each other. */
const apart = (a: PlateDevice, b: PlateDevice, axis: 0 | 1, gaps: Gaps): number => {
  const both = hasCutout(a) && hasCutout(b);
  return Math.max(
    (a.face[axis] + b.face[axis]) / 2 + gaps.face,
    both ? (a.cutout[axis] + b.cutout[axis]) / 2 + gaps.web : 0,
    both ? (a.behind[axis] + b.behind[axis]) / 2 + gaps.behind : 0,
  );
};

/** Least distance from the middle of a device to the edge of the plate, and to the wall behind the edge. */
const fromEdge = (each: PlateDevice, axis: 0 | 1, gaps: Gaps): number =>
  hasCutout(each)
    ? Math.max(
        each.face[axis] / 2,
        each.cutout[axis] / 2 + gaps.edge,
        each.behind[axis] / 2 + gaps.behind - gaps.reveal,
      )
    : each.face[axis] / 2;

const rowLine = (row: readonly PlateDevice[], gaps: Gaps): Line => ({
  items: row.map((each) => {
    const edge = fromEdge(each, 0, gaps);
    return { fromStart: edge, fromEnd: edge, face: each.face[0] };
  }),
  apart: row.slice(1).map((each, i) => apart(row[i] ?? each, each, 0, gaps)),
});

/** How a plate leans: positive brings the upper edge back. */
interface Lean {
  readonly sin: number;
  readonly cos: number;
  readonly thickness: number;
  /** From the front of the plate to the rear of its flanges; the thickness of a flat plate. */
  readonly deep: number;
}

/**
 * How far the middle of a device must stay from the lower and the upper edge of a leaning plate, so that the solid
 * behind it and the face in front clear floor and ceiling of the room. Both run square to the plate: for a positive
 * lean what is behind hangs down and what is in front stands up.
 */
const leanMargins = (each: PlateDevice, { sin, cos }: Lean, gaps: Gaps): Vec2 => {
  const steep = Math.abs(sin) / cos;
  const front = each.face[1] / 2 + each.stand * steep;
  const [frontUnder, frontOver] = sin < 0 ? [front, 0] : [0, front];
  if (!hasCutout(each)) return [frontUnder, frontOver];
  const near = each.behind[1] / 2 + (gaps.behind - gaps.reveal) / cos;
  // The rear lower edge of the plate hangs at the reveal already, so only what is behind the plate adds.
  const far = near + each.deep * steep;
  const [under, over] = sin > 0 ? [far, near] : sin < 0 ? [near, far] : [near, near];
  return [Math.max(frontUnder, under), Math.max(frontOver, over)];
};

/** What the ends of the plate keep free of devices: for cut-outs and faces, and for what stands behind the plate. */
interface Ends {
  readonly plate: number;
  readonly behind: number;
}

const atEnds = (each: PlateDevice, { plate, behind }: Ends, gaps: Gaps): number =>
  Math.max(
    plate > 0 ? plate + Math.max(each.face[1], each.cutout[1]) / 2 : 0,
    behind > 0 && hasCutout(each) ? behind + gaps.behind + each.behind[1] / 2 : 0,
  );

/** Rows from the lower edge up. */
const columnLine = (rows: readonly (readonly PlateDevice[])[], lean: Lean, gaps: Gaps, ends: Ends): Line => {
  const upward = rows.toReversed();
  const most = (values: readonly number[]): number => Math.max(0, ...values);
  const fromEnd = (each: PlateDevice, end: 0 | 1): number =>
    Math.max(fromEdge(each, 1, gaps), leanMargins(each, lean, gaps)[end], atEnds(each, ends, gaps));
  return {
    items: upward.map((row) => ({
      fromStart: most(row.map((each) => fromEnd(each, 0))),
      fromEnd: most(row.map((each) => fromEnd(each, 1))),
      face: most(row.map(({ face }) => face[1])),
    })),
    apart: upward.slice(1).map((row, i) => {
      const below = upward[i] ?? [];
      return most(row.flatMap((upper) => below.map((lower) => apart(lower, upper, 1, gaps))));
    }),
  };
};

export interface PlatePlan {
  readonly lean: Lean;
  readonly gaps: Gaps;
  readonly rows: readonly (readonly PlateDevice[])[];
  readonly flange: PlateFlange | null;
  readonly air: AirRow | null;
  readonly ends: Ends;
}

/** The plan of a plate: devices that the catalog has, in rows that hold any. */
export const platePlan = (fitting: Faceplate, material: Material, context: CarcassContext): PlatePlan => {
  const tilt = plateTilt(fitting);
  const flange = plateFlange(fitting, material, context);
  const air = airRow(fitting.airSlots, flange, context);
  const thickness = material.thicknessMm;
  const rows = fitting.rows.map((row) =>
    row.flatMap(({ id, device, grille }) => {
      const record = context.catalog.devices.get(device);
      return record ? [plateDevice(id, record, context.rule('device-face-depth'), grille)] : [];
    }),
  );
  return {
    lean: { sin: Math.sin(tilt), cos: Math.cos(tilt), thickness, deep: flange?.outsideMm ?? thickness },
    gaps: gapsOf(context),
    rows: rows.filter((row) => row.length > 0),
    flange,
    air,
    ends: { plate: air?.takesMm ?? flange?.clearMm ?? 0, behind: flange ? flange.behindMm : 0 },
  };
};

/** Height of the plate along its slope in a room of the height. */
export const plateHeight = ({ lean, gaps }: PlatePlan, up: number): number =>
  (up - 2 * gaps.reveal - lean.deep * Math.abs(lean.sin)) / lean.cos;

export interface DevicePlace {
  readonly item: PlateDevice;
  /** Middle of the device in plate coordinates: from the left edge, and up the slope from the lower edge. */
  readonly at: Vec2;
}

/** Where every device sits on a plate of width × height. */
export const placeDevices = (plan: PlatePlan, width: number, height: number): readonly DevicePlace[] => {
  const { rows, lean, gaps, ends } = plan;
  const ups = lineUp(columnLine(rows, lean, gaps, ends), height);
  return rows.toReversed().flatMap((row, r) => {
    const acrosses = lineUp(rowLine(row, gaps), width);
    return row.map((item, i) => ({ item, at: [acrosses[i] ?? 0, ups[r] ?? 0] as const }));
  });
};

/**
 * How far back from the face everything behind the plate reaches, its gap to the bay included: the foremost edge of
 * the plate stands `setback` behind the face.
 */
export const deepNeed = (plan: PlatePlan, setback: number, height: number, places: readonly DevicePlace[]): number => {
  const { sin, cos, thickness, deep } = plan.lean;
  const foot = setback + height * Math.max(0, -sin);
  const plate = setback + height * Math.abs(sin) + deep * cos;
  const behind = places
    .filter(({ item }) => hasCutout(item))
    .map(({ item, at }) => {
      const end = at[1] + (Math.sign(sin) * item.behind[1]) / 2;
      return foot + end * sin + (thickness + item.deep) * cos + plan.gaps.behind;
    });
  return Math.max(plate, ...behind);
};

/** Least room of the plate: across × deep × up. */
export const plateNeed = (plan: PlatePlan, setback: number, worth: number): Vec3 => {
  const { rows, lean, gaps, ends, air, flange } = plan;
  const width = Math.max(worth, air?.leastWidth ?? 0, ...rows.map((row) => leastLine(rowLine(row, gaps))));
  const bare = 2 * Math.max(air?.takesMm ?? 0, flange?.clearMm ?? 0);
  const height = Math.max(worth, bare, leastLine(columnLine(rows, lean, gaps, ends)));
  const places = placeDevices(plan, width, height);
  return [
    width + 2 * gaps.reveal,
    deepNeed(plan, setback, height, places),
    height * lean.cos + lean.deep * Math.abs(lean.sin) + 2 * gaps.reveal,
  ];
};

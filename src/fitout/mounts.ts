import { add, type Box, boxAround, ORIGIN, scale, type Vec3 } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { Catalog, Device, Hardware, HouseRules } from '../catalog/index.ts';
import type { Mount } from '../design/index.ts';
import type { Body, FitProblem, HardwareUse, MassItem, PlacedDevice } from './parts.ts';
import { unknown } from './stock.ts';

export interface MountParts {
  readonly bodies: readonly Body[];
  readonly masses: readonly MassItem[];
  readonly hardware: readonly HardwareUse[];
  readonly devices: readonly PlacedDevice[];
  readonly problems: readonly FitProblem[];
}

const NO_MOUNT: MountParts = { bodies: [], masses: [], hardware: [], devices: [], problems: [] };

/** Which way each look points in the vehicle, then the width of the face, then its height. */
const FRAMES: { readonly [L in Mount['looks']]: readonly [out: Vec3, wide: Vec3, high: Vec3] } = {
  front: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  rear: [
    [-1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  left: [
    [0, 1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  right: [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  up: [
    [0, 0, 1],
    [0, 1, 0],
    [1, 0, 0],
  ],
  down: [
    [0, 0, -1],
    [0, 1, 0],
    [1, 0, 0],
  ],
};

interface Stance {
  readonly out: Vec3;
  readonly wide: Vec3;
  readonly high: Vec3;
  /** Middle of the device in the vehicle. */
  readonly middle: Vec3;
}

/** A box about a point between two depths along the look, as wide and as high as given. */
const boxOn = (
  { out, wide, high, middle }: Stance,
  [from, to]: readonly [number, number],
  across: number,
  up: number,
): Box => {
  const corner = (depth: number, sign: 1 | -1): Vec3 =>
    add(add(middle, scale(out, depth)), add(scale(wide, (sign * across) / 2), scale(high, (sign * up) / 2)));
  return boxAround([corner(from, -1), corner(to, 1)]);
};

/** What the solver of mounts looks at beside the mounts. */
export interface MountGround {
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  /** Low corner of each carcass on the vehicle's axes. */
  readonly lows: ReadonlyMap<string, Vec3>;
}

const stanceOf = (mount: Mount, { lows }: MountGround): Stance => {
  const [out, first, second] = FRAMES[mount.looks];
  const [wide, high] = mount.onEnd ? [second, first] : [first, second];
  const low = (mount.on === null ? undefined : lows.get(mount.on)) ?? ORIGIN;
  return { out, wide, high, middle: add(mount.at, low) };
};

/** How deep the device is from its back to its front, with what of it can be seen: only the face where it is let in. */
const depthOf = (mount: Mount, { behindMm }: Device, { rules }: MountGround): number =>
  mount.letIn ? rules.value('device-face-depth') : behindMm.body + behindMm.plug;

const bracketParts = (record: Hardware, stance: Stance, back: number, { rules }: MountGround) => {
  const [long, wide, high] = record.sizeMm ?? [0, 0, 0];
  const box = boxOn(stance, [-back - high, -back], long, wide);
  return { box, massKg: record.massKg, sigmaKg: record.massKg * rules.value('hardware-mass-sigma-share') };
};

/**
 * A device fixed to the vehicle, to a closure or to the outside of a carcass: a box about its point, as deep as body
 * and plug along its look, with the bracket that it comes off behind it. It is carried by what the mount names; no
 * mover of the cabinet moves it, and a carcass's anchors hold what hangs on that carcass.
 */
const mountParts = (mount: Mount, ground: MountGround): MountParts => {
  const { catalog, lows } = ground;
  const { id, on } = mount;
  const device = catalog.devices.get(mount.device);
  if (!device) return { ...NO_MOUNT, problems: [unknown('unknown-device', id, mount.device)] };
  const record = mount.bracket === null ? null : catalog.hardware.get(mount.bracket);
  const stance = stanceOf(mount, ground);
  const { faceMm, behindMm } = device;
  const deep = depthOf(mount, device, ground);
  const across = mount.letIn ? faceMm.width : Math.max(faceMm.width, behindMm.width);
  const up = mount.letIn ? faceMm.height : Math.max(faceMm.height, behindMm.height);
  const shape = boxShape(boxOn(stance, [-deep / 2, deep / 2], across, up));
  const name = mount.name === '' ? device.name : mount.name;
  const carcass = mount.on !== null && lows.has(mount.on) ? (mount.on as MassItem['carcass']) : null;
  // Outside every carcass: it is carried in on its own.
  const body = { origin: id, carcass: null, name, mover: null };
  const owned = { ...body, carcass };
  const { massKg, massSigmaKg: sigmaKg } = device;
  const at = stance.middle;
  const bracket = record ? bracketParts(record, stance, deep / 2, ground) : null;
  const off = { along: stance.out, mm: mount.offMm ?? behindMm.body + behindMm.plug };
  const placed = { id: `${id}/device`, origin: id, device: device.id, at, opening: null, off };
  const plain: MountParts = {
    bodies: [{ ...body, id: `${id}/body`, kind: 'device', shape }],
    masses: [{ ...owned, id: `${id}/mass`, kind: 'device', massKg, sigmaKg, at }],
    hardware: [{ ...owned, id: `${id}/device`, from: 'device', item: device.id, quantity: 1, lengthMm: null, at }],
    devices: [{ ...placed, mover: carcass === null ? on : null }],
    problems: record === undefined ? [unknown('unknown-hardware', id, mount.bracket ?? '')] : [],
  };
  if (!record || !bracket) return plain;
  const piece = { ...owned, id: `${id}/bracket`, name: record.name };
  const { box, ...weight } = bracket;
  return {
    ...plain,
    bodies: [...plain.bodies, { ...body, id: piece.id, name: record.name, kind: 'hardware', shape: boxShape(box) }],
    masses: [...plain.masses, { ...piece, ...weight, kind: 'hardware', at }],
    hardware: [...plain.hardware, { ...piece, from: 'hardware', item: record.id, quantity: 1, lengthMm: null, at }],
  };
};

export const solveMounts = (mounts: readonly Mount[], ground: MountGround): MountParts => {
  const parts = mounts.map((mount) => mountParts(mount, ground));
  return {
    bodies: parts.flatMap(({ bodies }) => bodies),
    masses: parts.flatMap(({ masses }) => masses),
    hardware: parts.flatMap(({ hardware }) => hardware),
    devices: parts.flatMap(({ devices }) => devices),
    problems: parts.flatMap(({ problems }) => problems),
  };
};

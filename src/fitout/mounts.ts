import { boxAt, scale, subtract, type Vec3 } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { Catalog, Device } from '../catalog/index.ts';
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

/** Along x as deep as its body and plug; along y and up as large as the larger of its face and its body. */
const mountSize = ({ faceMm, behindMm }: Device): Vec3 => [
  behindMm.body + behindMm.plug,
  Math.max(faceMm.width, behindMm.width),
  Math.max(faceMm.height, behindMm.height),
];

/**
 * A device fixed to the vehicle or to a closure: a plain box about its point in vehicle axes. It is carried by the
 * closure that the mount names; no mover of the cabinet moves it.
 */
const mountParts = (mount: Mount, catalog: Catalog): MountParts => {
  const { id, at, on } = mount;
  const device = catalog.devices.get(mount.device);
  if (!device) return { ...NO_MOUNT, problems: [unknown('unknown-device', id, mount.device)] };
  const size = mountSize(device);
  const name = mount.name === '' ? device.name : mount.name;
  const common = { origin: id, carcass: null, name, mover: null };
  const shape = boxShape(boxAt(subtract(at, scale(size, 1 / 2)), size));
  const { massKg, massSigmaKg: sigmaKg } = device;
  return {
    bodies: [{ ...common, id: `${id}/body`, kind: 'device', shape }],
    masses: [{ ...common, id: `${id}/mass`, kind: 'device', massKg, sigmaKg, at }],
    hardware: [{ ...common, id: `${id}/device`, from: 'device', item: device.id, quantity: 1, lengthMm: null, at }],
    devices: [{ id: `${id}/device`, origin: id, device: device.id, at, opening: null, mover: on }],
    problems: [],
  };
};

export const solveMounts = (mounts: readonly Mount[], catalog: Catalog): MountParts => {
  const parts = mounts.map((mount) => mountParts(mount, catalog));
  return {
    bodies: parts.flatMap(({ bodies }) => bodies),
    masses: parts.flatMap(({ masses }) => masses),
    hardware: parts.flatMap(({ hardware }) => hardware),
    devices: parts.flatMap(({ devices }) => devices),
    problems: parts.flatMap(({ problems }) => problems),
  };
};

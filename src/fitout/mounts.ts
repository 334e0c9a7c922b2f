import { boxAt, scale, subtract, type Vec3 } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { Catalog } from '../catalog/index.ts';
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

/**
 * A device fixed to the vehicle or to a closure: a plain box about its point in vehicle axes, as deep (along x) as
 * its body and plug, as wide (along y) and as high as the larger of its face and its body. It is carried by the
 * closure that the mount names; no mover of the cabinet moves it.
 */
const mountParts = (mount: Mount, catalog: Catalog): MountParts => {
  const device = catalog.devices.get(mount.device);
  if (!device)
    return {
      bodies: [],
      masses: [],
      hardware: [],
      devices: [],
      problems: [unknown('unknown-device', mount.id, mount.device)],
    };
  const { faceMm, behindMm } = device;
  const size: Vec3 = [
    behindMm.body + behindMm.plug,
    Math.max(faceMm.width, behindMm.width),
    Math.max(faceMm.height, behindMm.height),
  ];
  const name = mount.name === '' ? device.name : mount.name;
  const common = { origin: mount.id, carcass: null, name, mover: null };
  const shape = boxShape(boxAt(subtract(mount.at, scale(size, 1 / 2)), size));
  return {
    bodies: [{ ...common, id: `${mount.id}/body`, kind: 'device', shape }],
    masses: [
      {
        ...common,
        id: `${mount.id}/mass`,
        kind: 'device',
        massKg: device.massKg,
        sigmaKg: device.massSigmaKg,
        at: mount.at,
      },
    ],
    hardware: [
      {
        ...common,
        id: `${mount.id}/device`,
        from: 'device',
        item: device.id,
        quantity: 1,
        lengthMm: null,
        at: mount.at,
      },
    ],
    devices: [
      { id: `${mount.id}/device`, origin: mount.id, device: device.id, at: mount.at, opening: null, mover: mount.on },
    ],
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

import { after, type Pose, placed, turned } from '../base/index.ts';
import { shapeAt } from '../bodies/index.ts';
import type { Motion } from './parts.ts';
import type { FittingParts } from './solved.ts';

const motionAt = (motion: Motion, pose: Pose): Motion =>
  motion.kind === 'slide'
    ? { ...motion, direction: turned(pose, motion.direction) }
    : { ...motion, point: placed(pose, motion.point), axis: turned(pose, motion.axis) };

/** Parts of a carcass carried from carcass coordinates to the vehicle. */
export const intoVehicle = <
  P extends Pick<
    FittingParts,
    'panels' | 'bodies' | 'movers' | 'masses' | 'hardware' | 'devices' | 'rooms' | 'anchors'
  >,
>(
  parts: P,
  pose: Pose,
): P => ({
  ...parts,
  panels: parts.panels.map((panel) => ({ ...panel, pose: after(pose, panel.pose) })),
  bodies: parts.bodies.map((body) => ({ ...body, shape: shapeAt(body.shape, pose) })),
  movers: parts.movers.map((mover) => ({ ...mover, motion: motionAt(mover.motion, pose) })),
  masses: parts.masses.map((item) => ({ ...item, at: placed(pose, item.at) })),
  hardware: parts.hardware.map((use) => ({ ...use, at: use.at === null ? null : placed(pose, use.at) })),
  devices: parts.devices.map((device) => ({ ...device, at: placed(pose, device.at) })),
  anchors: parts.anchors.map((anchor) => ({
    ...anchor,
    at: placed(pose, anchor.at),
    into: turned(pose, anchor.into),
  })),
  rooms: parts.rooms.map((room) => ({ ...room, pose: after(pose, room.pose) })),
});

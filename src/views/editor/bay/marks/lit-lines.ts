import { boxCorners, type Pose, placed, type Vec3 } from '../../../../base/index.ts';
import { boxShape } from '../../../../bodies/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import {
  emptyMesh,
  fullLight,
  type LineData,
  NOT_HOUSED,
  pushConvex,
  pushPanel,
  type Triangulate,
} from '../../../../shop/index.ts';
import { frontOf } from './front.ts';
import { reachSphere } from './reach-sphere.ts';

type Panel = FitOut['panels'][number];
type Body = FitOut['bodies'][number];
type Mover = FitOut['movers'][number];

/** Edges to light, stowed, with the mover that carries them. */
export interface LitLines {
  readonly mover: string | null;
  readonly lines: LineData;
}

const noTriangles: Triangulate = () => [];
const WHITE: Vec3 = [1, 1, 1];

export const panelLines = (panel: Panel): LitLines => {
  const lines: LineData = [];
  const mesh = emptyMesh();
  pushPanel(panel, noTriangles, {
    faces: mesh,
    edges: mesh,
    lines,
    colour: WHITE,
    edgeColour: WHITE,
    shadeAt: fullLight,
    grainFrom: [0, 0],
    housed: NOT_HOUSED,
  });
  return { mover: panel.mover, lines };
};

const bodyLines = (body: Pick<Body, 'shape' | 'mover'>): LitLines => {
  const lines: LineData = [];
  pushConvex(body.shape, { mesh: emptyMesh(), lines, colour: WHITE, shadeAt: fullLight });
  return { mover: body.mover, lines };
};

/** The edges of a box that stands in a frame of its own. */
const boxLines = (pose: Pose, from: Vec3, size: Vec3, mover: string | null): LitLines => {
  const max: Vec3 = [from[0] + size[0], from[1] + size[1], from[2] + size[2]];
  const shape = boxShape({ min: from, max });
  const vertices = boxCorners({ min: from, max }).map((corner) => placed(pose, corner));
  return bodyLines({ shape: { ...shape, vertices }, mover });
};

const carcassLines = (fitOut: FitOut, id: string): readonly LitLines[] =>
  fitOut.carcasses
    .filter((carcass) => carcass.id === id)
    .map((carcass) => boxLines(carcass.pose, [0, 0, 0], carcass.size, null));

const openingLines = (fitOut: FitOut, id: string): readonly LitLines[] => {
  const opening = fitOut.openings.find((candidate) => candidate.id === id);
  if (!opening) return [];
  const movers = fitOut.movers.filter((mover) => mover.origin === id);
  if (movers.length > 0) return movers.flatMap((mover) => moverLines(fitOut, mover));
  const pose = fitOut.carcasses.find((carcass) => carcass.id === opening.carcass)?.pose;
  return pose ? [boxLines(pose, opening.from, opening.size, opening.mover)] : [];
};

const moverLines = (fitOut: FitOut, mover: Mover): readonly LitLines[] => frontOf(fitOut, mover.id).map(panelLines);

const vehicleLines = (space: CargoSpace | null, id: string): readonly LitLines[] => [
  ...(space?.bodies ?? [])
    .filter((body) => body.id === id || body.origin === id)
    .map((body) => bodyLines({ shape: body.shape, mover: body.closure })),
  ...(space?.zones ?? []).filter((zone) => zone.id === id).map((zone) => bodyLines({ shape: zone.shape, mover: null })),
];

/** True when both bodies come from one device: its face, its body, the room for its plug. */
const sameDevice = (fitOut: FitOut, body: Body, id: string): boolean =>
  body.kind === 'plug-room' && fitOut.bodies.some((other) => other.id === id && other.origin === body.origin);

/**
 * What lights up for an id: a part by its own name, an opening by its front or its room, a carcass by its outside,
 * gear, devices and obstacles by their bodies. An id of the design and the id of a part of it light the same things.
 * With `plugRooms`, a device also shows the room that its plug needs, and a screen on an arm how far it reaches.
 */
export const litLines = (
  fitOut: FitOut,
  space: CargoSpace | null,
  id: string,
  plugRooms = false,
): readonly LitLines[] => {
  const sphere = plugRooms ? reachSphere(fitOut, id) : [];
  const room = [...carcassLines(fitOut, id), ...openingLines(fitOut, id), ...sphere];
  if (room.length > 0) return room;
  const panel = fitOut.panels.find((candidate) => candidate.id === id);
  if (panel) return [panelLines(panel)];
  const mover = fitOut.movers.find((candidate) => candidate.id === id);
  if (mover) return moverLines(fitOut, mover);
  const bodies = fitOut.bodies.filter(
    (body) =>
      (body.id === id || body.origin === id || (plugRooms && sameDevice(fitOut, body, id))) &&
      body.kind !== 'panel' &&
      (plugRooms || body.kind !== 'plug-room'),
  );
  return [...bodies.map(bodyLines), ...vehicleLines(space, id)];
};

import type { Box, Pose, Vec3 } from '../../base/index.ts';
import type { Catalog } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut, Mover } from '../../fitout/index.ts';
import { buildSolids } from '../solids/build-solids.ts';
import { pushConvex } from '../solids/convex-solid.ts';
import { emptyMesh, type LineData, type MeshNumbers, type Numbers } from '../solids/mesh-data.ts';
import { FINISHES } from '../solids/paints.ts';
import { fullLight } from '../solids/shade.ts';
import { triangulate } from '../solids/triangulate.ts';
import { stationRings } from '../solids/vehicle-lines.ts';
import { packColours, packCoordinates, packDirections } from './pack.ts';

/** Triangles and ink lines of what moves as one; see `pack.ts` for how the numbers are kept. */
export interface PackedSolids {
  /** The mover that carries it, or null. */
  readonly mover: string | null;
  readonly positions: string;
  readonly normals: string;
  readonly colours: string;
  readonly lines: string;
  /** True for hardware, which lies on the face of panels and is drawn over them. */
  readonly onFaces: boolean;
}

/** A closure or a mover of the cabinet, as far as showing it needs. */
export interface ReviewMover {
  readonly id: string;
  /** The node that it comes from. */
  readonly part: string;
  readonly name: string;
  readonly motion: Mover['motion'];
  readonly carriedBy: string | null;
  readonly closure: boolean;
}

/** Something that can be tapped: a box in its own frame, carried by a mover. */
export interface TouchBox {
  readonly id: string;
  readonly kind: 'gear' | 'opening';
  readonly pose: Pose;
  readonly from: Vec3;
  readonly size: Vec3;
  readonly mover: string | null;
}

export interface ReviewScene {
  readonly room: Box;
  readonly floorUpMm: number;
  readonly solids: readonly PackedSolids[];
  readonly vehicleLines: string;
  /** Closures and obstacles as lines and see-through faces, by the closure that carries them. */
  readonly vehicle: readonly PackedSolids[];
  readonly movers: readonly ReviewMover[];
  readonly touch: readonly TouchBox[];
}

/** What is packed of a mesh: it is seen from far, without grain. */
type Seen = Omit<MeshNumbers, 'uvs'>;

const join = (meshes: readonly Seen[]): Seen => ({
  positions: meshes.flatMap(({ positions }) => [...positions]),
  normals: meshes.flatMap(({ normals }) => [...normals]),
  colours: meshes.flatMap(({ colours }) => [...colours]),
});

const packed = (mover: string | null, mesh: Seen, lines: Numbers, onFaces = false): PackedSolids => ({
  mover,
  positions: packCoordinates(mesh.positions),
  normals: packDirections(mesh.normals),
  colours: packColours(mesh.colours),
  lines: packCoordinates(lines),
  onFaces,
});

const vehicleSolids = (space: CargoSpace): readonly PackedSolids[] =>
  [null, ...space.closures.map(({ id }) => id)].map((closure) => {
    const mesh = emptyMesh();
    const lines: LineData = [];
    // A strut does not go as one with its closure, and a picture without it tells as much.
    for (const body of space.bodies)
      if (body.closure === closure && !body.stays)
        pushConvex(body.shape, { mesh, lines, colour: [0.5, 0.52, 0.5], shadeAt: fullLight });
    return packed(closure, mesh, lines);
  });

const moversOf = (fitout: FitOut, space: CargoSpace | null): readonly ReviewMover[] => [
  ...(space?.closures ?? []).map(({ id, name, point, axis, opensRad, carriedBy }) => ({
    id,
    part: id,
    name,
    motion: { kind: 'turn', point, axis, travelRad: opensRad } as const,
    carriedBy,
    closure: true,
  })),
  ...fitout.movers.map(({ id, origin, name, motion, carriedBy }) => ({
    id,
    part: origin,
    name,
    motion,
    carriedBy,
    closure: false,
  })),
];

const touchBoxes = (fitout: FitOut): readonly TouchBox[] => {
  const rooms = new Map(fitout.rooms.map((room) => [`${room.opening} ${room.level}`, room]));
  const poses = new Map(fitout.carcasses.map(({ id, pose }) => [id, pose]));
  return [
    ...fitout.gear.flatMap(({ gear, opening, level, from, size }): readonly TouchBox[] => {
      const room = rooms.get(`${opening} ${level}`);
      return room ? [{ id: gear, kind: 'gear', pose: room.pose, from, size, mover: room.mover }] : [];
    }),
    ...fitout.openings.flatMap(({ id, carcass, content, from, size, mover }): readonly TouchBox[] => {
      const pose = poses.get(carcass);
      return pose && content !== 'divided' ? [{ id, kind: 'opening', pose, from, size, mover }] : [];
    }),
  ];
};

/** Devices that hang on a closure go with it. */
const carried = (fitout: FitOut): FitOut => {
  const carriers = new Map(fitout.devices.map((device) => [device.origin as string, device.mover]));
  return {
    ...fitout,
    bodies: fitout.bodies.map((body) =>
      body.mover === null && body.kind === 'device' ? { ...body, mover: carriers.get(body.origin) ?? null } : body,
    ),
  };
};

const NO_ROOM: Box = { min: [0, -600, 0], max: [1000, 600, 900] };

/** The cabinet in its vehicle for the eye: solids without sizes, materials or anything else of the shop. */
export const reviewScene = (
  design: Design,
  fitout: FitOut,
  catalog: Catalog,
  space: CargoSpace | null,
): ReviewScene => ({
  room: space?.bounds ?? NO_ROOM,
  floorUpMm: design.vehicle.floorAboveGroundMm ?? 700,
  solids: buildSolids({ fitOut: carried(fitout), gear: design.gear, catalog, triangulate }).flatMap(
    ({ mover, meshes, lines }) => [
      packed(mover, join(FINISHES.filter((finish) => finish !== 'fittings').map((finish) => meshes[finish])), lines),
      packed(mover, meshes.fittings, [], true),
    ],
  ),
  vehicleLines: packCoordinates(space ? stationRings(space.sections) : []),
  vehicle: space ? vehicleSolids(space) : [],
  movers: moversOf(fitout, space),
  touch: touchBoxes(fitout),
});

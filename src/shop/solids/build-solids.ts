import type { Vec2, Vec3 } from '../../base/index.ts';
import type { Catalog, Device, GearKind } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { pushConvex } from './convex-solid.ts';
import { pushDeviceFace } from './device-face.ts';
import { pushGear, type StandingGear } from './gear-solid.ts';
import { type Housed, housedParts, NOT_HOUSED } from './housed.ts';
import { emptyMesh, type LineData, type MeshData } from './mesh-data.ts';
import { DEVICE_PAINT, type Finish, GEAR_PAINT, HARDWARE_PAINT, linear, PANEL_FINISH, RAW_EDGE } from './paints.ts';
import { pushPanel, type Triangulate } from './panel-solid.ts';
import { boxShade, carcassShade, fullLight } from './shade.ts';

type Panel = FitOut['panels'][number];
type Body = FitOut['bodies'][number];
type Shade = (point: Vec3, normal: Vec3) => number;

/** Everything that moves as one, ready for the graphics card: one mesh a finish, one set of ink lines. */
export interface RigidSolids {
  /** The mover that carries it, or null for what stands still. */
  readonly mover: string | null;
  readonly meshes: Readonly<Record<Finish, MeshData>>;
  readonly lines: LineData;
}

export interface SolidSources {
  readonly fitOut: FitOut;
  readonly gear: Design['gear'];
  readonly catalog: Catalog;
  readonly triangulate: Triangulate;
}

const emptySolids = (mover: string | null): RigidSolids => ({
  mover,
  meshes: { wood: emptyMesh(), ply: emptyMesh(), plain: emptyMesh(), metal: emptyMesh(), fittings: emptyMesh() },
  lines: [],
});

/** A place on the sheet that depends on the part alone, so that its grain is its own and stays the same. */
const grainFrom = (id: string): Vec2 => {
  let hash = 0;
  for (const letter of id) hash = (hash * 31 + letter.charCodeAt(0)) % 7919;
  return [(hash % 89) * 37, (hash % 53) * 23];
};

/** A little lighter or darker from panel to panel, as sheets are. */
const SHEET_SPREAD = 0.06;

const shadeOf = (sources: SolidSources): ((carcass: string | null, mover: string | null) => Shade) => {
  const shades = new Map(
    sources.fitOut.carcasses.map((carcass) => [carcass.id as string, carcassShade(carcass.pose, carcass.size)]),
  );
  return (carcass, mover) => (mover !== null ? boxShade : (carcass && shades.get(carcass)) || fullLight);
};

const addPanel = (panel: Panel, into: RigidSolids, shade: Shade, housed: Housed, sources: SolidSources): void => {
  const material = sources.catalog.materials.get(panel.material);
  const finish = PANEL_FINISH[material?.kind ?? 'plywood'];
  const base = linear(material?.colour ?? '#d4b689');
  const grain = grainFrom(panel.id);
  const spread = 1 - SHEET_SPREAD * ((grain[0] % 100) / 100);
  pushPanel(panel, sources.triangulate, {
    faces: into.meshes[finish.face],
    edges: into.meshes[finish.edge],
    lines: into.lines,
    colour: [base[0] * spread, base[1] * spread, base[2] * spread],
    edgeColour: finish.edge === 'ply' ? RAW_EDGE : base,
    shadeAt: shade,
    grainFrom: grain,
    housed,
  });
};

const OWN_KIND: Pick<GearKind, 'form' | 'group'> = { form: 'box', group: 'other' };

/** Gear as it stands in its room, by the id of its body. */
export const standingGear = ({
  fitOut,
  gear,
  catalog,
}: Omit<SolidSources, 'triangulate'>): ReadonlyMap<string, StandingGear> => {
  const kinds = new Map(gear.map((item) => [item.id as string, item.kind]));
  const rooms = new Map(fitOut.rooms.map((room) => [`${room.opening} ${room.level}`, room]));
  return new Map(
    fitOut.gear.flatMap((placed) => {
      const room = rooms.get(`${placed.opening} ${placed.level}`);
      if (!room) return [];
      const kindId = kinds.get(placed.gear);
      const kind = (kindId && catalog.gear.get(kindId)) || OWN_KIND;
      const paint = GEAR_PAINT[kind.group];
      const [x, y, z] = placed.from;
      const box = { min: placed.from, max: [x + placed.size[0], y + placed.size[1], z + placed.size[2]] as const };
      return [
        [placed.body, { form: kind.form, box, pose: room.pose, colour: paint.cloth, accent: paint.accent }] as const,
      ];
    }),
  );
};

const deviceKinds = ({ fitOut, catalog }: SolidSources): ReadonlyMap<string, Device['kind']> =>
  new Map(
    fitOut.devices.flatMap((placed) => {
      const device = catalog.devices.get(placed.device);
      return device ? [[placed.origin as string, device.kind] as const] : [];
    }),
  );

/** How the fit-out ends the name of the body that is the face of a device. */
const FACE = '/face';

/** The colour of a body that has no form of its own, and the mesh that it goes to. */
const PLAIN_BODIES = {
  gear: { finish: 'plain', colour: GEAR_PAINT.other.cloth },
  device: { finish: 'plain', colour: DEVICE_PAINT.face },
  hardware: { finish: 'fittings', colour: HARDWARE_PAINT },
} as const;

const addBody = (
  body: Body,
  into: RigidSolids,
  shadeAt: Shade,
  standing: StandingGear | undefined,
  device: Device['kind'] | undefined,
): void => {
  if (body.kind === 'panel' || body.kind === 'plug-room') return;
  const { meshes, lines } = into;
  const { finish, colour } = PLAIN_BODIES[body.kind];
  if (standing) pushGear(standing, { mesh: meshes.plain, lines, shadeAt });
  else pushConvex(body.shape, { mesh: meshes[finish], lines, shadeAt, colour });
  if (device && body.id.endsWith(FACE)) pushDeviceFace(body.shape, device, { mesh: meshes.plain, lines, shadeAt });
};

/**
 * The cabinet as meshes, grouped by the mover that carries each part. Room for plugs is air and is not drawn; panels
 * are drawn from their true outline, not from the bodies that stand for them in checks.
 */
export const buildSolids = (sources: SolidSources): readonly RigidSolids[] => {
  const groups = new Map<string | null, RigidSolids>();
  const groupOf = (mover: string | null): RigidSolids => {
    const known = groups.get(mover) ?? emptySolids(mover);
    groups.set(mover, known);
    return known;
  };
  const shade = shadeOf(sources);
  const housed = housedParts(sources.fitOut.panels);
  const standing = standingGear(sources);
  const kinds = deviceKinds(sources);
  for (const panel of sources.fitOut.panels)
    addPanel(
      panel,
      groupOf(panel.mover),
      shade(panel.carcass, panel.mover),
      housed.get(panel.id) ?? NOT_HOUSED,
      sources,
    );
  for (const body of sources.fitOut.bodies)
    addBody(body, groupOf(body.mover), shade(body.carcass, body.mover), standing.get(body.id), kinds.get(body.origin));
  return [...groups.values()];
};

/** True when there is nothing of that finish to draw. */
export const isBare = (mesh: MeshData): boolean => mesh.positions.length === 0;

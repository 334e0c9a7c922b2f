import type { Vec2, Vec3 } from '../../base/index.ts';
import type { Catalog, Device, GearKind } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { pushConvex } from './convex-solid.ts';
import { pushDeviceFace } from './device-face.ts';
import { pushGear, type StandingGear } from './gear-solid.ts';
import { type Housed, housedParts, NOT_HOUSED } from './housed.ts';
import { emptyMesh, type LineData, type MeshData, type MeshNumbers, type Numbers } from './mesh-data.ts';
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
  readonly meshes: Readonly<Record<Finish, MeshNumbers>>;
  readonly lines: Numbers;
}

/** A part, or several, while they are being drawn. */
interface Drawn {
  readonly meshes: Readonly<Record<Finish, MeshData>>;
  readonly lines: LineData;
}

export interface SolidSources {
  readonly fitOut: FitOut;
  readonly gear: Design['gear'];
  readonly catalog: Catalog;
  readonly triangulate: Triangulate;
}

const nothingDrawn = (): Drawn => ({
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

type CarcassShade = (carcass: FitOut['carcasses'][number]) => Shade;

/** The light of a carcass as the same function while it stands where it stood, as large as it was. */
const rememberedShades = (): CarcassShade => {
  const known = new Map<string, { readonly from: readonly number[]; readonly shade: Shade }>();
  return ({ id, pose, size }) => {
    const from = [...pose.at, ...pose.turn.flat(), ...size];
    const before = known.get(id);
    if (before?.from.every((value, i) => value === from[i])) return before.shade;
    const shade = carcassShade(pose, size);
    known.set(id, { from, shade });
    return shade;
  };
};

const shadeOf = (
  { fitOut }: SolidSources,
  carcassLight: CarcassShade,
): ((carcass: string | null, mover: string | null) => Shade) => {
  const shades = new Map(fitOut.carcasses.map((carcass) => [carcass.id as string, carcassLight(carcass)]));
  return (carcass, mover) => (mover !== null ? boxShade : (carcass && shades.get(carcass)) || fullLight);
};

const addPanel = (panel: Panel, into: Drawn, shade: Shade, housed: Housed, sources: SolidSources): void => {
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
  into: Drawn,
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

/** The numbers of a drawing in lists that are joined by copying memory. */
interface Packed {
  readonly meshes: Readonly<Record<Finish, Readonly<Record<keyof MeshData, Float64Array>>>>;
  readonly lines: Float64Array;
}

const byFinish = <T>(of: (finish: Finish) => T): Readonly<Record<Finish, T>> => ({
  wood: of('wood'),
  ply: of('ply'),
  plain: of('plain'),
  metal: of('metal'),
  fittings: of('fittings'),
});

const NOTHING = new Float64Array(0);

const listOf = (numbers: readonly number[]): Float64Array =>
  numbers.length === 0 ? NOTHING : new Float64Array(numbers);

const packed = ({ meshes, lines }: Drawn): Packed => ({
  meshes: byFinish((finish) => {
    const { positions, normals, uvs, colours } = meshes[finish];
    return { positions: listOf(positions), normals: listOf(normals), uvs: listOf(uvs), colours: listOf(colours) };
  }),
  lines: listOf(lines),
});

const joined = (lists: readonly Float64Array[]): Float64Array => {
  const whole = new Float64Array(lists.reduce((sum, list) => sum + list.length, 0));
  let at = 0;
  for (const list of lists) {
    whole.set(list, at);
    at += list.length;
  }
  return whole;
};

const together = (mover: string | null, parts: readonly Packed[]): RigidSolids => ({
  mover,
  meshes: byFinish((finish) => {
    const used = parts.map(({ meshes }) => meshes[finish]).filter(({ positions }) => positions.length > 0);
    return {
      positions: joined(used.map(({ positions }) => positions)),
      normals: joined(used.map(({ normals }) => normals)),
      uvs: joined(used.map(({ uvs }) => uvs)),
      colours: joined(used.map(({ colours }) => colours)),
    };
  }),
  lines: joined(parts.map(({ lines }) => lines)),
});

/** What one part adds to the picture, and all that it was drawn from besides the part itself. */
interface Sketch {
  readonly from: readonly unknown[];
  readonly numbers: Packed;
}

/** Makes solids, one fit-out after the other. */
export type SolidBuilder = (sources: SolidSources) => readonly RigidSolids[];

/**
 * A builder that remembers what it drew of each panel and body. A part that is the same object again, in the same light
 * and housed alike, is not drawn a second time: while a divider is dragged, most of a carcass is the same.
 */
export const createSolidBuilder = (): SolidBuilder => {
  const sketches = new WeakMap<Panel | Body, Sketch>();
  const shadeAgain = rememberedShades();
  const sketched = (part: Panel | Body, from: readonly unknown[], draw: (into: Drawn) => void): Packed => {
    const known = sketches.get(part);
    if (known?.from.length === from.length && known.from.every((value, i) => Object.is(value, from[i])))
      return known.numbers;
    const drawn = nothingDrawn();
    draw(drawn);
    const numbers = packed(drawn);
    sketches.set(part, { from, numbers });
    return numbers;
  };
  return (sources) => {
    const groups = new Map<string | null, Packed[]>();
    const add = (mover: string | null, part: Packed): void => {
      const group = groups.get(mover);
      if (group) group.push(part);
      else groups.set(mover, [part]);
    };
    const { fitOut, catalog, triangulate } = sources;
    const shade = shadeOf(sources, shadeAgain);
    const housed = housedParts(fitOut.panels);
    const standing = standingGear(sources);
    const kinds = deviceKinds(sources);
    for (const panel of fitOut.panels) {
      const light = shade(panel.carcass, panel.mover);
      const hidden = housed.get(panel.id) ?? NOT_HOUSED;
      const from = [light, hidden.x0, hidden.x1, hidden.y0, hidden.y1, catalog, triangulate];
      const draw = (into: Drawn): void => addPanel(panel, into, light, hidden, sources);
      add(panel.mover, sketched(panel, from, draw));
    }
    for (const body of fitOut.bodies) {
      const light = shade(body.carcass, body.mover);
      const [gear, device] = [standing.get(body.id), kinds.get(body.origin)];
      const place = gear && [gear.form, ...gear.box.min, ...gear.box.max, ...gear.pose.at, ...gear.pose.turn.flat()];
      const from = [light, device, gear?.colour, gear?.accent, ...(place ?? [])];
      const draw = (into: Drawn): void => addBody(body, into, light, gear, device);
      add(body.mover, sketched(body, from, draw));
    }
    return [...groups].map(([mover, parts]) => together(mover, parts));
  };
};

/**
 * The cabinet as meshes, grouped by the mover that carries each part. Room for plugs is air and is not drawn; panels
 * are drawn from their true outline, not from the bodies that stand for them in checks.
 */
export const buildSolids: SolidBuilder = (sources) => createSolidBuilder()(sources);

/** True when there is nothing of that finish to draw. */
export const isBare = (mesh: MeshNumbers): boolean => mesh.positions.length === 0;

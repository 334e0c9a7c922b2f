import loadManifold, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import type { Box, Pose, Vec2, Vec3 } from '../../src/base/index.ts';
import type { FitOut, Panel } from '../../src/fitout/index.ts';
import { byParser } from '../shop/dxf/readers.ts';

/** A solid-modelling kernel as judge of what the solver says: it knows nothing of boards, joints and chamfers. */
export interface Kernel {
  /** The part as the machine cuts it, from its router file alone and the thickness of its sheet; screw holes are filled by screws. */
  readonly cutPart: (panel: Panel, dxf: string, through: 'true' | 'touched') => Manifold;
  /** The wood of a panel in place, from its record: outline, bevels, recesses and cut-outs; screw holes are filled. */
  readonly wood: (panel: Panel) => Manifold;
  /** What is recessed into a panel, in place. */
  readonly recesses: (panel: Panel) => readonly Manifold[];
  /** What is cut right through a panel, in place. */
  readonly cutouts: (panel: Panel) => readonly Manifold[];
  readonly body: (shape: FitOut['bodies'][number]['shape']) => Manifold;
  readonly box: (box: Box) => Manifold;
  readonly union: (solids: readonly Manifold[]) => Manifold;
  /** What of a solid lies where normal · point is less than the offset. */
  readonly beyond: (solid: Manifold, normal: Vec3, offset: number) => Manifold;
  /**
   * What is left of a solid without others, taken off one by one: a union of many solids with faces almost in one
   * plane may lose a piece in this kernel.
   */
  readonly less: (solid: Manifold, others: readonly Manifold[]) => Manifold;
}

/** Column by column, as the kernel takes a placement: the first three columns are the axes. */
const matrixOf = ({ turn: [x, y, z], at }: Pose) =>
  [...x, 0, ...y, 0, ...z, 0, ...at, 1] as unknown as Parameters<Manifold['transform']>[0];

const DEPTH = /-([AB])-([\d_]+)$/;
const PAST = 1;
const DEGREES = 180 / Math.PI;

type Ring = readonly (readonly number[])[];

const rectangle = ([x0 = 0, y0 = 0, x1 = 0, y1 = 0]: readonly number[]): Ring => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];
const round = ([x = 0, y = 0]: readonly number[], radius: number): Ring =>
  Array.from({ length: 256 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 256;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** A rectangle with its corners rounded. */
const rounded = ({ from, to, cornerRadius: r }: { from: Vec2; to: Vec2; cornerRadius: number }): Ring =>
  r === 0
    ? rectangle([...from, ...to])
    : [
        [to[0] - r, to[1] - r],
        [from[0] + r, to[1] - r],
        [from[0] + r, from[1] + r],
        [to[0] - r, from[1] + r],
      ].flatMap(([x = 0, y = 0], quarter) =>
        Array.from({ length: 65 }, (_, i) => {
          const angle = ((quarter + i / 64) * Math.PI) / 2;
          return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
        }),
      );

/** What a tilted blade leaves of a part: up to the line on the face that ends sooner, and to the outline on the other. */
interface Sawn {
  readonly edge: 'l1' | 'l2' | 'w1' | 'w2';
  readonly shortFace: 'a' | 'b';
  readonly setMm: number;
  /** How much of the edge beside the long face stays square. */
  readonly landMm: number;
}

const sawn = (part: Manifold, { edge, shortFace, setMm, landMm }: Sawn, size: Vec2, thickness: number): Manifold => {
  const along = edge === 'l1' || edge === 'l2' ? 1 : 0;
  const high = edge.endsWith('2');
  const end = high ? size[along] : 0;
  const line = high ? end - setMm : setMm;
  const [zShort, zLong] = shortFace === 'a' ? [thickness, landMm] : [0, thickness - landMm];
  // Square to the slope from (line, short) to (end, long), towards the wood.
  const [du, dz] = [end - line, zLong - zShort];
  const sign = high ? -1 : 1;
  const [nu, nz] = [sign * Math.abs(dz), (-sign * Math.abs(dz) * du) / dz];
  const slant = Math.hypot(nu, nz);
  const normal = (along === 1 ? [0, nu / slant, nz / slant] : [nu / slant, 0, nz / slant]) as [number, number, number];
  return part.trimByPlane(normal, (nu * end + nz * zLong) / slant);
};

/** Loads the kernel; every solid that it makes lives in it. */
export const loadKernel = async (): Promise<Kernel> => {
  const kernel: ManifoldToplevel = await loadManifold();
  kernel.setup();
  const prism = (points: Ring, from: number, to: number): Manifold => {
    const flat = new kernel.CrossSection([points.map(([x = 0, y = 0]) => [x, y] as [number, number])], 'Positive');
    return flat.extrude(to - from).translate([0, 0, from]);
  };
  const union = (solids: readonly Manifold[]): Manifold => kernel.Manifold.union([...solids]);
  const box = ({ min, max }: Box): Manifold =>
    kernel.Manifold.cube([max[0] - min[0], max[1] - min[1], max[2] - min[2]]).translate([min[0], min[1], min[2]]);
  const body: Kernel['body'] = (shape) =>
    kernel.Manifold.hull(shape.vertices.map(([x, y, z]) => [x, y, z] as [number, number, number]));

  const cutPart: Kernel['cutPart'] = ({ thickness, pose }, dxf, through) => {
    const read = byParser(dxf);
    const outline = read.outlines.find(({ layer }) => layer === 'OUTLINE');
    if (!outline) throw new Error('no outline');
    const taken = read.outlines.flatMap(({ layer, points, extent }): readonly Manifold[] => {
      if (layer === 'OUTLINE') return [];
      if (layer === 'INNER-CUT')
        return [prism(through === 'true' ? points : rectangle(extent), -PAST, thickness + PAST)];
      const [, face, figure = ''] = DEPTH.exec(layer) ?? [];
      const deep = Number(figure.replace('_', '.'));
      return [face === 'A' ? prism(points, thickness - deep, thickness + PAST) : prism(points, -PAST, deep)];
    });
    const bored = read.circles
      .filter(({ layer }) => layer === 'INNER-CUT')
      .map(({ at: [x = 0, y = 0], radius: r }) =>
        prism(through === 'true' ? round([x, y], r) : rectangle([x - r, y - r, x + r, y + r]), -PAST, thickness + PAST),
      );
    const [, , long = 0, wide = 0] = outline.extent;
    const bevels = read.lines.flatMap(({ layer, points }): readonly Sawn[] => {
      if (!layer.startsWith('BEVEL')) return [];
      const [, face, figure = ''] = DEPTH.exec(layer) ?? [];
      const [[x0 = 0, y0 = 0] = [], [, y1 = 0] = []] = points;
      const level = y0 === y1;
      const [at, end] = level ? [y0, wide] : [x0, long];
      const setMm = Math.min(at, end - at);
      // The blade's tilt from the layer, to a tenth of a degree, and the line say how far down the slope begins.
      const tilt = Number(figure.replace('_', '.')) / DEGREES;
      const [steepest, flattest] = [0.001, -0.001].map((by) => setMm / Math.tan(tilt + by));
      const full = thickness >= (steepest ?? 0) && thickness <= (flattest ?? 0);
      const landMm = full ? 0 : thickness - setMm / Math.tan(tilt);
      if (landMm < 0) throw new Error(`${layer}: a slope of ${setMm} is more than the sheet is thick`);
      const edge = `${level ? 'l' : 'w'}${at < end - at ? 1 : 2}` as Sawn['edge'];
      return [{ edge, shortFace: face === 'A' ? 'a' : 'b', setMm, landMm }];
    });
    return bevels
      .reduce((part, each) => sawn(part, each, [long, wide], thickness), prism(outline.points, 0, thickness))
      .subtract(union([...taken, ...bored]))
      .transform(matrixOf(pose));
  };

  const recessed = ({ cuts, thickness }: Panel): readonly Manifold[] =>
    cuts.flatMap((cut) => {
      if (cut.kind === 'hole' || cut.kind === 'cutout') return [];
      const ring = rectangle([...cut.from, ...cut.to]);
      return cut.face === 'a' ? prism(ring, thickness - cut.depth, thickness) : prism(ring, 0, cut.depth);
    });

  const cutThrough = ({ cuts, thickness }: Panel): readonly Manifold[] =>
    cuts.flatMap((cut): readonly Manifold[] => {
      if (cut.kind !== 'cutout') return [];
      const { outline: hole } = cut;
      if (hole.shape === 'circle') return [prism(round(hole.at, hole.diameter / 2), 0, thickness)];
      const ring = hole.shape === 'polygon' ? hole.corners : rounded(hole);
      return [prism(ring, 0, thickness)];
    });

  const wood: Kernel['wood'] = (panel) => {
    const { outline, length, width, thickness, bevels = [], pose } = panel;
    const blank = prism(outline ?? rectangle([0, 0, length, width]), 0, thickness);
    return bevels
      .reduce(
        (part, { edge, longFace, setMm, landMm = 0 }) =>
          sawn(part, { edge, shortFace: longFace === 'a' ? 'b' : 'a', setMm, landMm }, [length, width], thickness),
        blank,
      )
      .subtract(union([...recessed(panel), ...cutThrough(panel)]))
      .transform(matrixOf(pose));
  };

  const recesses: Kernel['recesses'] = (panel) => recessed(panel).map((solid) => solid.transform(matrixOf(panel.pose)));
  const cutouts: Kernel['cutouts'] = (panel) => cutThrough(panel).map((solid) => solid.transform(matrixOf(panel.pose)));

  const less: Kernel['less'] = (solid, others) => {
    const own = boxOf(solid);
    const meets = (other: Manifold): boolean => {
      const { min, max } = boxOf(other);
      return ([0, 1, 2] as const).every((i) => min[i] < own.max[i] && max[i] > own.min[i]);
    };
    const near = others.filter(meets);
    const left = near.reduce((rest, other) => rest.subtract(other), solid);
    // Where faces lie almost in one plane a piece may stay that is in one of the others: each is asked once more.
    return left.decompose().length === 0
      ? left
      : union(left.decompose().map((piece) => near.reduce((rest, other) => rest.subtract(other), piece)));
  };

  const beyond: Kernel['beyond'] = (solid, [x, y, z], offset) => solid.trimByPlane([-x, -y, -z], -offset);

  return { cutPart, wood, recesses, cutouts, body, box, union, beyond, less };
};

export const boxOf = (solid: Manifold): Box => {
  const { min, max } = solid.boundingBox();
  return { min: [...min] as unknown as Vec3, max: [...max] as unknown as Vec3 };
};

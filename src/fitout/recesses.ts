import { type Box, boxMiddle, boxVolume, ROUNDING_MM, type Vec2, type Vec3 } from '../base/index.ts';
import { boxShape, clippedShape, convexVolume, type HalfSpace } from '../bodies/index.ts';
import { common } from './axes.ts';
import { type Board, boardSize, inPanel } from './board.ts';
import type { PanelCut, PanelFace } from './parts.ts';

/** A recess for the board that sits in it. */
export type Recess = Extract<PanelCut, { readonly kind: 'dado' | 'groove' | 'rabbet' | 'pocket' }>;

/** The recess that `guest` needs in `host`, or null where they only touch, or where it would cut the host in two. */
const recessFor = (host: Board, guest: Board): Recess | null => {
  const shared = common(host.box, guest.box);
  if (!shared) return null;
  const { min, max } = inPanel(host, shared);
  const thickness = boardSize(host)[2];
  const [fromB, fromA] = [min[2] <= ROUNDING_MM, max[2] >= thickness - ROUNDING_MM];
  if (fromA === fromB) return null;
  const face: PanelFace = fromA ? 'a' : 'b';
  const [from, to]: readonly [Vec2, Vec2] = [
    [min[0], min[1]],
    [max[0], max[1]],
  ];
  return { kind: guest.seat, face, from, to, depth: max[2] - min[2], takes: guest.id };
};

/** Every recess of `boards[index]`: one for each later board of the assembly that stands in it, in their order. */
export const recessesOf = (boards: readonly Board[], index: number): readonly Recess[] => {
  const host = boards[index];
  if (!host) throw new RangeError(`recessesOf: no board ${index} among ${boards.length}`);
  return boards.slice(index + 1).flatMap((guest) => recessFor(host, guest) ?? []);
};

const ends = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

/** A rectangle of a panel's face and how deep it is taken away from face a and from face b. */
interface Cell {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly depthA: number;
  readonly depthB: number;
  /** Cut right through, whatever else is taken there. */
  readonly through: boolean;
}

/** A rectangle cut right through a panel, and how much of it (mm²) its rounded corners leave standing. */
export interface Through {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly leftAreaMm2: number;
}

const deepest = (recesses: readonly Recess[], face: PanelFace): number =>
  recesses.reduce((depth, recess) => (recess.face === face ? Math.max(depth, recess.depth) : depth), 0);

/**
 * The face of a panel cut into cells along the ends of all recesses, with what is taken from each. Recesses that
 * overlap on one face count once, at the greater depth. Cells without a recess are left out.
 */
const recessCells = (recesses: readonly Recess[], holes: readonly Through[]): readonly Cell[] => {
  const all = [...recesses, ...holes];
  const xs = ends(all.flatMap(({ from, to }) => [from[0], to[0]]));
  const cells: Cell[] = [];
  xs.slice(0, -1).forEach((left, i) => {
    const right = xs[i + 1] ?? left;
    const inColumn = all.filter(({ from, to }) => from[0] <= left && to[0] >= right);
    const ys = ends(inColumn.flatMap(({ from, to }) => [from[1], to[1]]));
    ys.slice(0, -1).forEach((low, j) => {
      const high = ys[j + 1] ?? low;
      const here = inColumn.filter(({ from, to }) => from[1] <= low && to[1] >= high);
      if (here.length === 0) return;
      const cut = here.filter((each) => 'kind' in each);
      cells.push({
        from: [left, low],
        to: [right, high],
        depthA: deepest(cut, 'a'),
        depthB: deepest(cut, 'b'),
        through: cut.length < here.length,
      });
    });
  });
  return cells;
};

/** A box of wood taken away: its volume and its middle in panel coordinates. */
interface Taken {
  readonly volume: number;
  readonly middle: Vec3;
}

/** A box as far as it lies in a panel that is cut by planes. */
const woodIn = (box: Box, clips: readonly HalfSpace[]): Taken => {
  if (clips.length === 0) return { volume: boxVolume(box), middle: boxMiddle(box) };
  const left = clippedShape(boxShape(box), clips);
  if (!left) return { volume: 0, middle: boxMiddle(box) };
  const { volumeMm3, centre } = convexVolume(left);
  return { volume: volumeMm3, middle: centre };
};

const takenFrom = (
  { from, to, depthA, depthB, through }: Cell,
  thickness: number,
  clips: readonly HalfSpace[],
): readonly Taken[] => {
  const between = (low: number, high: number): readonly Taken[] =>
    high > low ? [woodIn({ min: [...from, low], max: [...to, high] }, clips)] : [];
  if (through) return between(0, thickness);
  return [...between(thickness - depthA, thickness), ...between(0, depthB)];
};

export interface NetSolid {
  readonly volumeMm3: number;
  /** Centre of volume in panel coordinates. */
  readonly centre: Vec3;
  /** The least thickness left anywhere but where it is cut right through. */
  readonly web: number;
}

/** Corners that a rounded cut-out leaves standing, as wood to be given back at its middle. */
const givenBack = ({ from, to, leftAreaMm2 }: Through, thickness: number): Taken => ({
  volume: -leftAreaMm2 * thickness,
  middle: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, thickness / 2],
});

/**
 * A rectangle of length × width × thickness less the union of its recesses and of what is cut right through; exact
 * where no rounded corner lies in a recess. Screw holes are not taken off. `clips` are planes that cut the panel, in
 * panel coordinates.
 */
export const netSolid = (
  [length, width, thickness]: Vec3,
  recesses: readonly Recess[],
  holes: readonly Through[] = [],
  clips: readonly HalfSpace[] = [],
): NetSolid => {
  const cells = recessCells(recesses, holes);
  const taken = [
    ...cells.flatMap((cell) => takenFrom(cell, thickness, clips)),
    ...holes.map((hole) => givenBack(hole, thickness)),
  ];
  const whole = woodIn({ min: [0, 0, 0], max: [length, width, thickness] }, clips);
  const volumeMm3 = taken.reduce((left, { volume }) => left - volume, whole.volume);
  const moment = (axis: 0 | 1 | 2): number =>
    taken.reduce((sum, { volume, middle }) => sum - volume * middle[axis], whole.volume * whole.middle[axis]) /
    volumeMm3;
  return {
    volumeMm3,
    centre: [moment(0), moment(1), moment(2)],
    web: cells.reduce(
      (web, { depthA, depthB, through }) => (through ? web : Math.min(web, thickness - depthA - depthB)),
      thickness,
    ),
  };
};

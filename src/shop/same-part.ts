import { type Polygon, ROUNDING_RAD, sameLength, type Vec2 } from '../base/index.ts';
import type { BendLine, Bevel, CutoutOutline, EdgeBands, Panel, PanelCut, PanelFace } from '../fitout/index.ts';

/**
 * Two panels are one part when one can be laid over the other: as it lies, turned half round in its plane, or turned
 * over along its length or its width. None of these turns makes a mirror image, so a left and a right part stay two.
 */
interface Turn {
  readonly flipX: boolean;
  readonly flipY: boolean;
}

const TURNS: readonly Turn[] = [
  { flipX: false, flipY: false },
  { flipX: true, flipY: true },
  { flipX: false, flipY: true },
  { flipX: true, flipY: false },
];

const turnsOver = (turn: Turn): boolean => turn.flipX !== turn.flipY;

const turnedFace = (face: PanelFace, turn: Turn): PanelFace => (turnsOver(turn) ? (face === 'a' ? 'b' : 'a') : face);

const turnedBands = (bands: EdgeBands, turn: Turn): EdgeBands => ({
  l1: turn.flipY ? bands.l2 : bands.l1,
  l2: turn.flipY ? bands.l1 : bands.l2,
  w1: turn.flipX ? bands.w2 : bands.w1,
  w2: turn.flipX ? bands.w1 : bands.w2,
});

const samePoint = (a: Vec2, b: Vec2): boolean => sameLength(a[0], b[0]) && sameLength(a[1], b[1]);

/** The same ring, wherever it starts and whichever way it runs. */
const sameRing = (a: Polygon, b: Polygon): boolean => {
  if (a.length !== b.length) return false;
  const at = (ring: Polygon, i: number): Vec2 => ring[((i % ring.length) + ring.length) % ring.length] ?? [NaN, NaN];
  return b.some((_, start) =>
    [1, -1].some((step) => a.every((corner, i) => samePoint(corner, at(b, start + step * i)))),
  );
};

type Move = (point: Vec2) => Vec2;

const turnedRectangle = (from: Vec2, to: Vec2, move: Move): readonly [Vec2, Vec2] => {
  const [p, q] = [move(from), move(to)];
  return [
    [Math.min(p[0], q[0]), Math.min(p[1], q[1])],
    [Math.max(p[0], q[0]), Math.max(p[1], q[1])],
  ];
};

const sameCutout = (a: CutoutOutline, b: CutoutOutline, move: Move): boolean => {
  if (a.shape === 'rectangle' && b.shape === 'rectangle') {
    const [from, to] = turnedRectangle(a.from, a.to, move);
    return samePoint(from, b.from) && samePoint(to, b.to) && sameLength(a.cornerRadius, b.cornerRadius);
  }
  if (a.shape === 'circle' && b.shape === 'circle')
    return samePoint(move(a.at), b.at) && sameLength(a.diameter, b.diameter);
  return a.shape === 'polygon' && b.shape === 'polygon' && sameRing(a.corners.map(move), b.corners);
};

const sameDepth = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : sameLength(a, b);

/** What a cut is for, and what it takes, does not change the part. */
const sameCut = (a: PanelCut, b: PanelCut, move: Move, turn: Turn): boolean => {
  if (a.kind === 'cutout') return b.kind === 'cutout' && sameCutout(a.outline, b.outline, move);
  if (b.kind === 'cutout') return false;
  if (a.kind === 'hole' || b.kind === 'hole') {
    if (a.kind !== 'hole' || b.kind !== 'hole') return false;
    const faces = a.depth === null || turnedFace(a.face, turn) === b.face;
    return faces && sameDepth(a.depth, b.depth) && sameLength(a.diameter, b.diameter) && samePoint(move(a.at), b.at);
  }
  const [from, to] = turnedRectangle(a.from, a.to, move);
  return (
    a.kind === b.kind &&
    turnedFace(a.face, turn) === b.face &&
    sameLength(a.depth, b.depth) &&
    samePoint(from, b.from) &&
    samePoint(to, b.to)
  );
};

const sameCuts = (a: Panel, b: Panel, move: Move, turn: Turn): boolean => {
  const left = [...b.cuts];
  return a.cuts.every((cut) => {
    const found = left.findIndex((other) => sameCut(cut, other, move, turn));
    if (found < 0) return false;
    left.splice(found, 1);
    return true;
  });
};

const turnedEdge = (edge: Bevel['edge'], { flipX, flipY }: Turn): Bevel['edge'] => {
  if (edge === 'l1' || edge === 'l2') return flipY ? (edge === 'l1' ? 'l2' : 'l1') : edge;
  return flipX ? (edge === 'w1' ? 'w2' : 'w1') : edge;
};

const sameBevels = (a: readonly Bevel[], b: readonly Bevel[], turn: Turn): boolean =>
  a.length === b.length &&
  a.every((bevel) =>
    b.some(
      (other) =>
        turnedEdge(bevel.edge, turn) === other.edge &&
        turnedFace(bevel.longFace, turn) === other.longFace &&
        sameLength(bevel.setMm, other.setMm) &&
        sameLength(bevel.landMm ?? 0, other.landMm ?? 0),
    ),
  );

const sameBends = (a: readonly BendLine[], b: readonly BendLine[], move: Move, turn: Turn): boolean =>
  a.length === b.length &&
  a.every((bend) =>
    b.some(
      (other) =>
        turnedFace(bend.towards, turn) === other.towards &&
        Math.abs(bend.angleRad - other.angleRad) <= ROUNDING_RAD &&
        sameLength(bend.insideRadiusMm, other.insideRadiusMm) &&
        ((samePoint(move(bend.from), other.from) && samePoint(move(bend.to), other.to)) ||
          (samePoint(move(bend.from), other.to) && samePoint(move(bend.to), other.from))),
    ),
  );

const sameWhenTurned = (a: Panel, b: Panel, turn: Turn): boolean => {
  const move: Move = ([x, y]) => [turn.flipX ? a.length - x : x, turn.flipY ? a.width - y : y];
  const bands = turnedBands(a.bands, turn);
  if (bands.l1 !== b.bands.l1 || bands.l2 !== b.bands.l2 || bands.w1 !== b.bands.w1 || bands.w2 !== b.bands.w2)
    return false;
  if (a.outline !== null && b.outline !== null && !sameRing(a.outline.map(move), b.outline)) return false;
  if (!sameBevels(a.bevels ?? [], b.bevels ?? [], turn)) return false;
  if (!sameBends(a.bends ?? [], b.bends ?? [], move, turn)) return false;
  return sameCuts(a, b, move, turn);
};

/** True when both panels are cut and worked alike, so that one drawing and one mark serve for both. */
export const samePart = (a: Panel, b: Panel): boolean =>
  a.material === b.material &&
  sameLength(a.thickness, b.thickness) &&
  sameLength(a.length, b.length) &&
  sameLength(a.width, b.width) &&
  a.grain === b.grain &&
  a.hand === b.hand &&
  (a.outline === null) === (b.outline === null) &&
  a.cuts.length === b.cuts.length &&
  TURNS.some((turn) => sameWhenTurned(a, b, turn));

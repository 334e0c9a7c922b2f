import {
  boxAround,
  boxCorners,
  boxesMeet,
  boxGrown,
  ORIGIN,
  type Polygon,
  placed,
  type Vec2,
  type Vec3,
} from '../../base/index.ts';
import type { Catalog, HouseRules } from '../../catalog/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut, SolvedCarcass } from '../../fitout/index.ts';
import { convexOutline } from '../drawing/projection.ts';

/** Seen from above with the hatch at the foot, from the middle of the sill: x to the vehicle's right, y forward. */
const fromAbove = ([x, y]: Vec3): Vec2 => [-y, x];

export interface TemplateHole {
  /** Short, beside the hole and in the table: `h1`. */
  readonly tag: string;
  readonly at: Vec2;
  /** The bore through the panel and the floor, mm; what an insert needs is its maker's to say. */
  readonly diameter: number;
  /** Width of the plate behind the sheet, or null. */
  readonly plateMm: number | null;
  readonly bolt: string;
  readonly insert: string | null;
  /** What breaks the insert, N·m, where the house rules know it. */
  readonly breakingNm: number | null;
  /** Least distance from the middle of the hole to where no hole may be; negative inside; null where no place is known. */
  readonly clearMm: number | null;
  readonly zone: string;
}

export interface TemplateZone {
  readonly name: string;
  readonly ring: Polygon;
}

export interface WallAnchor {
  readonly tag: string;
  readonly side: 'left' | 'right' | 'front' | 'rear';
  readonly forwardMm: number;
  readonly leftMm: number;
  readonly upMm: number;
  readonly diameter: number;
  readonly bracket: string;
}

/** What is drilled for one carcass, in the plane of the floor. */
export interface TemplateFigure {
  readonly carcass: SolvedCarcass;
  readonly foot: Polygon;
  readonly holes: readonly TemplateHole[];
  readonly zones: readonly TemplateZone[];
  readonly walls: readonly WallAnchor[];
}

/** From a point to the edge of a convex ring, anticlockwise; negative inside. */
const clearOf = (ring: Polygon, [px, py]: Vec2): number => {
  let [inside, nearest] = [true, Number.POSITIVE_INFINITY];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
    const long = ux * ux + uy * uy;
    const share = long > 0 ? Math.min(1, Math.max(0, ((px - a[0]) * ux + (py - a[1]) * uy) / long)) : 0;
    nearest = Math.min(nearest, Math.hypot(px - a[0] - ux * share, py - a[1] - uy * share));
    if (ux * (py - a[1]) - uy * (px - a[0]) < 0) inside = false;
  });
  return inside ? -nearest : nearest;
};

const sideOf = ([x, y]: Vec3): WallAnchor['side'] =>
  Math.abs(y) > Math.abs(x) ? (y > 0 ? 'left' : 'right') : x > 0 ? 'front' : 'rear';

/** Zones so near to a carcass are drawn with it: a drill wanders, a plate reaches. */
const NEAR_MM = 150;

export interface TemplateInput {
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly space: CargoSpace | null;
}

const BREAKING = /^rivet-nut-(steel|aluminium)-(m\d+)$/;

/** What breaks an insert, where the house rules have a figure for it. */
const breakingNm = (insert: string | null, rules: HouseRules): number | null => {
  const [, metal, thread] = BREAKING.exec(insert ?? '') ?? [];
  const id = `rivet-nut-${metal}-torque-${thread}`;
  return metal === undefined || !rules.all.has(id) ? null : rules.value(id);
};

/** What is drilled for a carcass: its foot, its holes in the floor, its anchors in walls, and where no hole may be. */
export const templateFigure = (carcass: SolvedCarcass, input: TemplateInput): TemplateFigure => {
  const { fitout, catalog, rules, space } = input;
  const corners = boxCorners({ min: ORIGIN, max: carcass.size }).map((corner) => placed(carcass.pose, corner));
  const zones = (space?.zones ?? [])
    .filter(({ rule }) => rule === 'no-hole')
    .map(({ name, shape }): TemplateZone => ({ name, ring: convexOutline(shape.vertices.map(fromAbove)) }));
  const own = fitout.anchors.filter((anchor) => anchor.carcass === carcass.id);
  const bore = (bolt: string): number => (catalog.hardware.get(bolt)?.threadMm ?? 0) + rules.value('anchor-hole-spare');
  const holes = own
    .filter(({ on }) => on === 'floor')
    .map((anchor) => ({ anchor, at: fromAbove(anchor.at) }))
    .sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0])
    .map(({ anchor, at }, i): TemplateHole => {
      const near = zones
        .map(({ name, ring }) => ({ name, clear: clearOf(ring, at) }))
        .reduce<{ name: string; clear: number } | null>(
          (best, each) => (best === null || each.clear < best.clear ? each : best),
          null,
        );
      return {
        tag: `h${i + 1}`,
        at,
        diameter: bore(anchor.bolt),
        plateMm: anchor.plate === null ? null : (catalog.hardware.get(anchor.plate)?.sizeMm?.[0] ?? null),
        bolt: catalog.hardware.get(anchor.bolt)?.name ?? anchor.bolt,
        insert: anchor.insert === null ? null : (catalog.hardware.get(anchor.insert)?.name ?? anchor.insert),
        breakingNm: breakingNm(anchor.insert, rules),
        clearMm: near?.clear ?? null,
        zone: near?.name ?? '',
      };
    });
  const walls = own
    .filter(({ on }) => on === 'wall')
    .map(
      (anchor, i): WallAnchor => ({
        tag: `w${i + 1}`,
        side: sideOf(anchor.into),
        forwardMm: anchor.at[0],
        leftMm: anchor.at[1],
        upMm: anchor.at[2],
        diameter: bore(anchor.bolt),
        bracket: anchor.bracket === null ? '' : (catalog.hardware.get(anchor.bracket)?.name ?? anchor.bracket),
      }),
    );
  const foot = convexOutline(corners.map(fromAbove));
  const points = [...foot, ...holes.map(({ at }) => at)].map(([x, y]): Vec3 => [x, y, 0]);
  const around = boxGrown(boxAround(points), NEAR_MM);
  const nearby = zones.filter(({ ring }) => boxesMeet(around, boxAround(ring.map(([x, y]): Vec3 => [x, y, 0]))));
  return { carcass, foot, holes, zones: nearby, walls };
};

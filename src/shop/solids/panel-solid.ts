import { type Polygon, signedArea, type Vec2, type Vec3 } from '../../base/index.ts';
import { type FitOut, foldedPanels, GRILLE_HOLE } from '../../fitout/index.ts';
import type { Housed } from './housed.ts';
import {
  type Colour,
  type Corner,
  carrier,
  FAN_OF_FOUR,
  type LineData,
  type MeshData,
  pushLine,
  pushQuad,
  pushTriangles,
} from './mesh-data.ts';

type Panel = FitOut['panels'][number];
type Cutout = Extract<Panel['cuts'][number], { readonly kind: 'cutout' }>['outline'];

/** Corners of a round cut-out or a rounded corner: a 40 mm hole then errs by less than a third of a millimetre. */
const ROUND_STEPS = 24;

const arc = (at: Vec2, radius: number, from: number, to: number, steps: number): readonly Vec2[] =>
  Array.from({ length: steps + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / steps;
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)] as const;
  });

const roundedRectangle = (from: Vec2, to: Vec2, radius: number): Polygon => {
  const r = Math.min(radius, (to[0] - from[0]) / 2, (to[1] - from[1]) / 2);
  if (r <= 0) return [from, [to[0], from[1]], to, [from[0], to[1]]];
  const quarter = Math.PI / 2;
  const steps = ROUND_STEPS / 4;
  return [
    ...arc([to[0] - r, from[1] + r], r, -quarter, 0, steps),
    ...arc([to[0] - r, to[1] - r], r, 0, quarter, steps),
    ...arc([from[0] + r, to[1] - r], r, quarter, 2 * quarter, steps),
    ...arc([from[0] + r, from[1] + r], r, 2 * quarter, 3 * quarter, steps),
  ];
};

const anticlockwise = (ring: Polygon): Polygon => (signedArea(ring) < 0 ? ring.toReversed() : ring);

/** The ring of a cut-out in panel coordinates, anticlockwise. */
export const cutoutRing = (outline: Cutout): Polygon => {
  if (outline.shape === 'polygon') return anticlockwise(outline.corners);
  if (outline.shape === 'circle')
    return arc(outline.at, outline.diameter / 2, 0, 2 * Math.PI, ROUND_STEPS).slice(0, ROUND_STEPS);
  return roundedRectangle(outline.from, outline.to, outline.cornerRadius);
};

/** The outer edge of a panel as it is seen, anticlockwise seen from face a: a full rectangle without what is housed. */
export const panelRing = (panel: Panel, housed: Housed): Polygon =>
  panel.outline
    ? anticlockwise(panel.outline)
    : [
        [housed.x0, housed.y0],
        [panel.length - housed.x1, housed.y0],
        [panel.length - housed.x1, panel.width - housed.y1],
        [housed.x0, panel.width - housed.y1],
      ];

/** What can be seen through a panel: its cut-outs and the holes of a grille. Screws fill the other holes. */
const seenThrough = (cut: Panel['cuts'][number]): readonly Polygon[] => {
  if (cut.kind === 'cutout') return [cutoutRing(cut.outline)];
  const isOpen = cut.kind === 'hole' && cut.why === GRILLE_HOLE;
  return isOpen ? [cutoutRing({ shape: 'circle', at: cut.at, diameter: cut.diameter })] : [];
};

/** Cuts a flat piece with holes into triangles, as indices into the outer ring followed by the holes. */
export type Triangulate = (outer: Polygon, holes: readonly Polygon[]) => readonly (readonly [number, number, number])[];

/** How a panel is painted: faces and edges go to meshes of their own, since edges show the plies. */
export interface PanelPaint {
  readonly faces: MeshData;
  readonly edges: MeshData;
  readonly lines: LineData;
  readonly colour: Colour;
  readonly edgeColour: Colour;
  /** How bright a point of the panel is, from where it stands and which way its face looks, 0 to 1. */
  readonly shadeAt: (point: Vec3, normal: Vec3) => number;
  /** Where on the sheet the panel's grain was cut, so that two panels do not look alike. */
  readonly grainFrom: Vec2;
  /** What is not seen of the panel because it stands in others. */
  readonly housed: Housed;
}

/** Below this turn two edge pieces belong to one round: no line is drawn between them. */
const ROUND_TURN_COS = 0.9;

/** The rim between the rings of face b and face a, which differ where an edge is bevelled. */
const pushRim = (panel: Panel, ring: Polygon, outward: 1 | -1, paint: PanelPaint, above = ring): void => {
  const { point, way } = carrier(panel.pose);
  const t = panel.thickness;
  let run = 0;
  const directions = ring.map((from, i): Vec2 => {
    const to = ring[(i + 1) % ring.length] ?? from;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    return [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  });
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length] ?? from;
    const [dx, dy] = directions[i] ?? [1, 0];
    const normal = way([dy * outward, -dx * outward, 0]);
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const [fromAbove, toAbove] = [above[i] ?? from, above[(i + 1) % above.length] ?? to];
    const corner = ([x, y]: Vec2, z: number, u: number): Corner => {
      const at = point([x, y, z]);
      return { at, uv: [u, z], shade: paint.shadeAt(at, normal) };
    };
    const [a, b, c, d] = [
      corner(from, 0, run),
      corner(to, 0, run + long),
      corner(toAbove, t, run + long),
      corner(fromAbove, t, run),
    ] as const;
    pushQuad(paint.edges, outward > 0 ? [a, b, c, d] : [b, a, d, c], normal, paint.edgeColour);
    pushLine(paint.lines, a.at, b.at);
    pushLine(paint.lines, d.at, c.at);
    const before = directions[(i + ring.length - 1) % ring.length] ?? [1, 0];
    if (before[0] * dx + before[1] * dy < ROUND_TURN_COS) pushLine(paint.lines, a.at, d.at);
    run += long;
  });
};

/** The outer edge drawn in on one face by the bevels whose other face is the longer. */
const bevelledRing = (panel: Panel, ring: Polygon, face: 'a' | 'b'): Polygon => {
  const set = (edge: 'l1' | 'l2' | 'w1' | 'w2'): number =>
    panel.bevels?.find((bevel) => bevel.edge === edge && bevel.longFace !== face)?.setMm ?? 0;
  const [l1, l2, w1, w2] = [set('l1'), set('l2'), set('w1'), set('w2')];
  if (l1 + l2 + w1 + w2 === 0) return ring;
  return ring.map(([x, y]) => [
    Math.min(panel.length - w2, Math.max(w1, x)),
    Math.min(panel.width - l2, Math.max(l1, y)),
  ]);
};

/**
 * Adds a panel with its true outline, its bevels, its bends and its cut-outs to the meshes. Recesses that another panel
 * fills are left out.
 */
export const pushPanel = (panel: Panel, triangulate: Triangulate, paint: PanelPaint): void => {
  if (panel.bends) {
    for (const piece of foldedPanels(panel)) pushPanel(piece, triangulate, paint);
    return;
  }
  // The four corners of a panel, cut square or slanting, never turn in.
  const outer = panelRing(panel, paint.housed);
  const [ringA, ringB] = [bevelledRing(panel, outer, 'a'), bevelledRing(panel, outer, 'b')];
  const holes = panel.cuts.flatMap(seenThrough);
  const { point, way } = carrier(panel.pose);
  const triangles = outer.length === 4 && holes.length === 0 ? FAN_OF_FOUR : triangulate(outer, holes);
  const face = (
    z: number,
    ring: Polygon,
    normal: Vec3,
    turn: (t: readonly [number, number, number]) => readonly [number, number, number],
  ) => {
    const corners = [...ring, ...holes.flat()].map(([x, y]): Corner => {
      const at = point([x, y, z]);
      return { at, uv: [x + paint.grainFrom[0], y + paint.grainFrom[1]], shade: paint.shadeAt(at, normal) };
    });
    pushTriangles(paint.faces, corners, triangles.map(turn), normal, paint.colour);
  };
  face(panel.thickness, ringA, way([0, 0, 1]), (t) => t);
  face(0, ringB, way([0, 0, -1]), ([a, b, c]) => [a, c, b]);
  pushRim(panel, ringB, 1, paint, ringA);
  for (const hole of holes) pushRim(panel, hole, -1, paint);
};

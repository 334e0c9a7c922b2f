import type { Vec2, Vec3 } from '../../base/index.ts';
import { type ClassSizes, STATION_NAMES } from './class-sizes.ts';
import type { FigureView, PlanFigure, PlanMark, PlanStation, PlanStep } from './plan.ts';

const VIEWS: Readonly<Record<FigureView, (at: Vec3) => Vec2>> = {
  section: ([, y, z]) => [-y, z],
  plan: ([x, y]) => [-y, x],
  side: ([x, , z]) => [x, z],
};

type Line = PlanFigure['lines'][number];

const polyline = (points: readonly Vec2[], role: Line['role'], closed: boolean): readonly Line[] =>
  points.flatMap((from, i) => {
    const to = points[i + 1] ?? (closed ? points[0] : undefined);
    return to ? [{ from, to, role }] : [];
  });

interface Scene {
  readonly sizes: ClassSizes;
  readonly marks: ReadonlyMap<string, PlanMark>;
  readonly stations: readonly PlanStation[];
}

const at = ({ marks }: Scene, id: string): Vec3 => marks.get(id)?.at ?? [0, 0, 0];

const sectionOutline = (scene: Scene, station: PlanStation): readonly Line[] => {
  const ring = [...station.right, ...station.left.toReversed()].map((id) => VIEWS.section(at(scene, id)));
  const top = scene.sizes.height;
  return [...polyline(ring, 'outline', true), { from: [0, 0], to: [0, top], role: 'centre' }];
};

const planOutline = ({ sizes }: Scene): readonly Line[] => {
  const half = sizes.betweenWheelhouses / 2 + sizes.wheelhouse.inward;
  const [start, end] = [(sizes.depth - sizes.wheelhouse.length) / 2, (sizes.depth + sizes.wheelhouse.length) / 2];
  const inner = sizes.betweenWheelhouses / 2;
  const side: readonly Vec2[] = [
    [half, 0],
    [half, start],
    [inner, start],
    [inner, end],
    [half, end],
    [half, sizes.depth],
  ];
  const ring = [...side, ...side.toReversed().map(([u, v]): Vec2 => [-u, v])];
  return [...polyline(ring, 'outline', true), { from: [0, 0], to: [0, sizes.depth], role: 'centre' }];
};

const sideOutline = (scene: Scene): readonly Line[] => {
  const { sizes } = scene;
  const seat = at(scene, 'mark-seat-belt-centre');
  const rake = seat[2] === 0 ? 0 : (sizes.depth - seat[0]) / seat[2];
  const ring: readonly Vec2[] = [
    [0, 0],
    [sizes.depth, 0],
    [sizes.depth - rake * sizes.height, sizes.height],
    [0, sizes.height],
  ];
  return polyline(ring, 'outline', true);
};

const openingOutline = (scene: Scene): readonly Line[] => {
  const ids = [...scene.marks.keys()].filter((id) => id.startsWith('mark-opening-'));
  const [left, right] = ['left', 'right'].map((side) => ids.filter((id) => id.endsWith(side)));
  const ring = [...(right ?? []), ...(left ?? []).toReversed()].map((id) => VIEWS.section(at(scene, id)));
  return [...polyline(ring, 'outline', true), { from: [0, 0], to: [0, scene.sizes.openingHeight], role: 'centre' }];
};

/** Where along its line a number stands: not in the middle, where diagonals cross. */
const LABEL_SHARE = 0.6;

const readingLines = (scene: Scene, figure: string, view: FigureView, steps: readonly PlanStep[]) =>
  steps.flatMap((step) => {
    if (step.figure !== figure || !step.reading) return [];
    const { kind, from, to } = step.reading;
    const [a, b] = [at(scene, from), to === null ? null : at(scene, to)];
    // A width, height, depth or offset is drawn along its own axis, beside the mark that it ends at.
    const end = b ?? a;
    const start: Vec3 =
      kind === 'offset'
        ? [end[0], 0, end[2]]
        : kind === 'height'
          ? [end[0], end[1], a[2]]
          : kind === 'along'
            ? [a[0], end[1], end[2]]
            : a;
    const [p, q] = [VIEWS[view](start), VIEWS[view](end)];
    const text = String(step.number);
    const label: Vec2 = [p[0] + (q[0] - p[0]) * LABEL_SHARE, p[1] + (q[1] - p[1]) * LABEL_SHARE];
    return [{ line: { from: p, to: q, role: 'reading' as const }, label: { at: label, text } }];
  });

/** The small drawings of a plan: a section a station, the opening, the floor from above, the side. */
export const planFigures = (scene: Scene, steps: readonly PlanStep[]): readonly PlanFigure[] => {
  const draw = (id: string, title: string, view: FigureView, outline: readonly Line[]): PlanFigure => {
    const read = readingLines(scene, id, view, steps);
    return {
      id,
      title,
      view,
      lines: [...outline, ...read.map(({ line }) => line)],
      labels: read.map(({ label }) => label),
    };
  };
  const sections = STATION_NAMES.flatMap((name) => {
    const station = scene.stations.find((own) => own.name === name);
    return station ? [draw(`section-${name}`, `section, ${name}`, 'section', sectionOutline(scene, station))] : [];
  });
  return [
    draw('plan', 'floor from above', 'plan', planOutline(scene)),
    ...sections,
    draw('opening', 'opening from the rear', 'section', openingOutline(scene)),
    draw('side', 'from the right side', 'side', sideOutline(scene)),
  ];
};

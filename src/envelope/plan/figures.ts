import type { Vec2, Vec3 } from '../../base/index.ts';
import { type ClassSizes, STATION_NAMES } from './class-sizes.ts';
import { type DrawnReading, drawReading, placeLabels, type Segment, settled } from './figure-lines.ts';
import type { FigureLabel, FigureLine, FigureView, PlanFigure, PlanMark, PlanStation, PlanStep } from './plan.ts';
import { straightFigure } from './plan-steps.ts';

const VIEWS: Readonly<Record<FigureView, (at: Vec3) => Vec2>> = {
  section: ([, y, z]) => [-y, z],
  plan: ([x, y]) => [x, y],
  side: ([x, , z]) => [x, z],
};

interface Scene {
  readonly sizes: ClassSizes;
  readonly marks: ReadonlyMap<string, PlanMark>;
  readonly stations: readonly PlanStation[];
}

/** What stands still in a drawing: the outline, the centre line, and words that say which end is which. */
interface Backdrop {
  readonly title: string;
  readonly view: FigureView;
  readonly ring: readonly Vec2[];
  readonly centre: Segment | null;
  /** Words with the point of the outline beside which they stand, and which way out of it. */
  readonly words: readonly { readonly at: Vec2; readonly out: Vec2; readonly text: string }[];
}

const at = ({ marks }: Scene, id: string): Vec3 => marks.get(id)?.at ?? [0, 0, 0];

const acrossWords = (half: number, z: number): Backdrop['words'] => [
  { at: [-half, z], out: [-1, 0], text: 'left' },
  { at: [half, z], out: [1, 0], text: 'right' },
];

const sectionBackdrop = (scene: Scene, station: PlanStation): Backdrop => {
  const { height, widthAtBelt } = scene.sizes;
  return {
    title: `section, ${station.name}, from behind`,
    view: 'section',
    ring: [...station.right, ...station.left.toReversed()].map((id) => VIEWS.section(at(scene, id))),
    centre: { from: [0, 0], to: [0, height] },
    words: acrossWords(widthAtBelt / 2, height / 2),
  };
};

const planBackdrop = ({ sizes }: Scene, title: string): Backdrop => {
  const half = sizes.betweenWheelhouses / 2 + sizes.wheelhouse.inward;
  const [start, end] = [(sizes.depth - sizes.wheelhouse.length) / 2, (sizes.depth + sizes.wheelhouse.length) / 2];
  const inner = sizes.betweenWheelhouses / 2;
  const side: readonly Vec2[] = [
    [0, half],
    [start, half],
    [start, inner],
    [end, inner],
    [end, half],
    [sizes.depth, half],
  ];
  return {
    title: `${title}, from above`,
    view: 'plan',
    ring: [...side, ...side.toReversed().map(([u, v]): Vec2 => [u, -v])],
    centre: { from: [0, 0], to: [sizes.depth, 0] },
    words: [
      { at: [0, 0], out: [-1, 0], text: 'sill' },
      { at: [sizes.depth, 0], out: [1, 0], text: 'seat' },
      { at: [sizes.depth / 2, half], out: [0, 1], text: 'left' },
      { at: [sizes.depth / 2, -half], out: [0, -1], text: 'right' },
    ],
  };
};

const sideBackdrop = (scene: Scene, title: string): Backdrop => {
  const { depth, height } = scene.sizes;
  const seat = at(scene, 'mark-seat-belt-centre');
  const rake = seat[2] === 0 ? 0 : (depth - seat[0]) / seat[2];
  return {
    title: `${title}, from the right side`,
    view: 'side',
    ring: [
      [0, 0],
      [depth, 0],
      [depth - rake * height, height],
      [0, height],
    ],
    centre: null,
    words: [
      { at: [0, 0], out: [0, -1], text: 'sill' },
      { at: [depth, 0], out: [0, -1], text: 'seat' },
    ],
  };
};

const openingBackdrop = (scene: Scene): Backdrop => {
  const ids = [...scene.marks.keys()].filter((id) => id.startsWith('mark-opening-'));
  const [left, right] = ['left', 'right'].map((side) => ids.filter((id) => id.endsWith(side)));
  const { openingHeight, openingAtMiddle } = scene.sizes;
  return {
    title: 'opening, from behind',
    view: 'section',
    ring: [...(right ?? []), ...(left ?? []).toReversed()].map((id) => VIEWS.section(at(scene, id))),
    centre: { from: [0, 0], to: [0, openingHeight] },
    words: acrossWords(openingAtMiddle / 2, openingHeight * 0.75),
  };
};

/** How large a drawing is on paper (mm) and its figures with it; a screen scales the whole. */
const PAPER: Vec2 = [86, 60];
const PAPER_LETTER = 1.9;

const extent = (points: readonly Vec2[]): readonly [Vec2, Vec2] => {
  const of = (pick: (...values: number[]) => number): Vec2 => [
    pick(...points.map(([u]) => u)),
    pick(...points.map(([, v]) => v)),
  ];
  return [of(Math.min), of(Math.max)];
};

/** How far a word stands off the outline, in letters, on either axis. */
const wordSpot = ({ at: [u, v], out, text }: Backdrop['words'][number], letter: number): FigureLabel => ({
  at: [u + out[0] * letter * (1.2 + text.length * 0.32), v + out[1] * letter * 1.6],
  text,
  step: null,
});

const figureOf = (scene: Scene, id: string, backdrop: Backdrop, steps: readonly PlanStep[]): PlanFigure => {
  const view = VIEWS[backdrop.view];
  const own = steps.filter((step) => step.figure === id && step.reading !== null);
  const touched = [
    ...new Set(own.flatMap(({ reading }) => (reading ? [reading.from, reading.to, reading.at] : []))),
  ].flatMap((mark) => (mark === null ? [] : [view(at(scene, mark))]));
  const [low, high] = extent([...backdrop.ring, ...touched]);
  const letter = PAPER_LETTER / Math.min(PAPER[0] / (high[0] - low[0]), PAPER[1] / (high[1] - low[1]));
  const outline = backdrop.ring.map(
    (from, i): Segment => ({ from, to: backdrop.ring[(i + 1) % backdrop.ring.length] ?? from }),
  );
  const still = [...outline, ...(backdrop.centre ? [backdrop.centre] : [])];
  const drawn: DrawnReading[] = [];
  for (const step of own) {
    if (!step.reading) continue;
    const made = drawReading(step.reading, (mark) => at(scene, mark), view);
    const others = drawn.flatMap(({ path }) => path);
    drawn.push({ step: step.number, ...settled(made, still, others, letter) });
  }
  const words = backdrop.words.map((word) => wordSpot(word, letter));
  const { lines, labels } = placeLabels(drawn, words, outline, letter);
  const all: readonly FigureLine[] = [
    ...outline.map((each): FigureLine => ({ ...each, role: 'outline', step: null })),
    ...(backdrop.centre ? [{ ...backdrop.centre, role: 'centre', step: null } as const] : []),
    ...lines,
  ];
  const spans = [...labels, ...words].flatMap(({ at: [u, v], text }): readonly Vec2[] => [
    [u - text.length * letter * 0.4, v - letter],
    [u + text.length * letter * 0.4, v + letter],
  ]);
  const [from, to] = extent([...all.flatMap((each) => [each.from, each.to]), ...spans]);
  return {
    id,
    title: id === straightFigure(baseOf(id)) ? `${backdrop.title}: straight, mark to mark` : backdrop.title,
    view: backdrop.view,
    lines: all,
    marks: touched,
    labels: [...labels, ...words],
    letter,
    from,
    to,
  };
};

const baseOf = (id: string): string => id.replace(new RegExp(`${straightFigure('')}$`), '');

const backdropOf = (scene: Scene, id: string): Backdrop | null => {
  const base = baseOf(id);
  if (base === 'opening') return openingBackdrop(scene);
  const [kind, ...rest] = base.split('-');
  const what = rest.join(' ');
  if (kind === 'plan') return planBackdrop(scene, what === 'frame' ? 'string' : what);
  if (kind === 'side') return sideBackdrop(scene, what === 'gate' ? 'tailgate' : what);
  const station = scene.stations.find(({ name }) => name === what && STATION_NAMES.includes(name as never));
  return station ? sectionBackdrop(scene, station) : null;
};

/** The small drawings of a plan in the order of its steps: each shows the readings of the steps that name it. */
export const planFigures = (scene: Scene, steps: readonly PlanStep[]): readonly PlanFigure[] =>
  [...new Set(steps.flatMap(({ figure }) => (figure === null ? [] : baseOf(figure))))]
    .flatMap((base) => [base, straightFigure(base)])
    .filter((id) => steps.some(({ figure }) => figure === id))
    .flatMap((id) => {
      const backdrop = backdropOf(scene, id);
      return backdrop ? [figureOf(scene, id, backdrop, steps)] : [];
    });

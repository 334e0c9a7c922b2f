import {
  distanceToSegment,
  dot,
  inverse,
  type Polygon,
  placed,
  polygonHolds,
  ROUNDING_MM,
  scale,
  subtract,
  type Vec2,
} from '../base/index.ts';
import type { Catalog, Hardware, HouseRules } from '../catalog/index.ts';
import type { BraceLay, LaidBolt } from './brace-lay.ts';
import { boltLengthMm } from './hardware.ts';
import type { FitProblem, Panel, PanelCut, PlacedBrace } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';
import { PIECES } from './standard-pieces.ts';
import { unknown } from './stock.ts';

/** How thick the bar is where its bolts go through: one leg of an angle. */
export const barThickness = ({ legMm, sizeMm }: Hardware): number => legMm ?? sizeMm?.[2] ?? 0;

/** From a point to the nearest edge of a panel; negative beside the panel. */
const edgeOf = ({ outline, length, width }: Panel, point: Vec2): number => {
  const ring: Polygon = outline ?? [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ];
  const away = Math.min(
    ...ring.map((corner, i) => distanceToSegment(point, corner, ring[(i + 1) % ring.length] ?? corner)),
  );
  return polygonHolds(ring, point) ? away : -away;
};

const fromRectangle = ([x, y]: Vec2, from: Vec2, to: Vec2): number =>
  Math.hypot(Math.max(from[0] - x, 0, x - to[0]), Math.max(from[1] - y, 0, y - to[1]));

const fromPolygon = (point: Vec2, corners: Polygon): number =>
  polygonHolds(corners, point)
    ? 0
    : Math.min(
        ...corners.map((corner, i) => distanceToSegment(point, corner, corners[(i + 1) % corners.length] ?? corner)),
      );

/** From a point of a panel to what is cut into it. */
const fromCut = (point: Vec2, cut: PanelCut): number => {
  if (cut.kind === 'hole') return Math.hypot(point[0] - cut.at[0], point[1] - cut.at[1]) - cut.diameter / 2;
  if (cut.kind !== 'cutout') return fromRectangle(point, cut.from, cut.to);
  const { outline } = cut;
  if (outline.shape === 'rectangle') return fromRectangle(point, outline.from, outline.to);
  if (outline.shape === 'polygon') return fromPolygon(point, outline.corners);
  return Math.hypot(point[0] - outline.at[0], point[1] - outline.at[1]) - outline.diameter / 2;
};

const cutWords = (cut: PanelCut): string => (cut.kind === 'hole' || cut.kind === 'cutout' ? cut.why : `a ${cut.kind}`);

/** The bolt, washer and nut of every bolt of braces. */
export interface BraceFixings {
  readonly bolt: Hardware;
  readonly washer: Hardware;
  readonly nut: Hardware;
}

/** Something that is less than it has to be, with the least in its words. */
const short = (id: FitProblem['at'], what: string, need: number, have: number): FitProblem =>
  badJoint(
    id,
    [what, have < 0 ? `needs ${mmWords(need)}` : `needs ${mmWords(need)}, has ${mmWords(have)}`],
    need,
    have,
  );

/** The shortest bolt that reaches through bar, panel, washer and nut, or why there is none. */
const fixingsFor = (catalog: Catalog, id: FitProblem['at'], gripMm: number): BraceFixings | FitProblem => {
  const [washer, nut] = [catalog.hardware.get(PIECES.braceWasher), catalog.hardware.get(PIECES.braceNut)];
  if (!washer) return unknown('unknown-hardware', id, PIECES.braceWasher);
  if (!nut) return unknown('unknown-hardware', id, PIECES.braceNut);
  const bolts = [PIECES.brace, PIECES.braceLong].flatMap((item) => catalog.hardware.get(item) ?? []);
  const need = gripMm + (washer.sizeMm?.[2] ?? 0) + (nut.sizeMm?.[2] ?? 0);
  const bolt = bolts.find((record) => boltLengthMm(record) >= need - ROUNDING_MM);
  if (bolt) return { bolt, washer, nut };
  const longest = bolts.at(-1);
  if (!longest) return unknown('unknown-hardware', id, PIECES.brace);
  return short(id, 'no bolt is long enough for the bar and the panel', need, boltLengthMm(longest));
};

export interface BoltedBrace {
  readonly bolts: PlacedBrace['bolts'];
  readonly fixings: BraceFixings | null;
  readonly problems: readonly FitProblem[];
}

/** Whether the bar itself leaves metal round its bolts and room between those of its two ends. */
const barProblems = ({ brace, record, holeMm, a, b, along }: BraceLay, rules: HouseRules): readonly FitProblem[] => {
  const [count, pitch, end] = [rules.value('brace-bolts'), rules.value('brace-bolt-pitch'), rules.value('brace-end')];
  const metal = rules.value('brace-metal-edge') * holeMm;
  const wide = record.sizeMm?.[1] ?? 0;
  const apart = dot(along, subtract(b, a));
  const need = (2 * count - 1) * pitch;
  return [
    ...(wide < 2 * metal ? [short(brace.id, 'the bar is too narrow for its bolts', 2 * metal, wide)] : []),
    ...(end < metal ? [short(brace.id, 'the bar ends too near its outer bolt', metal, end)] : []),
    ...(apart < need - ROUNDING_MM
      ? [short(brace.id, `the bar is too short between its outer bolts for ${2 * count} bolts`, need, apart)]
      : []),
  ];
};

interface Found {
  readonly bolt: PlacedBrace['bolts'][number];
  readonly problems: readonly FitProblem[];
}

const inPanelOf = (panel: Panel, at: LaidBolt['at']): readonly [Vec2, number] => {
  const [x, y, z] = placed(inverse(panel.pose), at);
  return [[x, y], Math.max(-z, z - panel.thickness)];
};

const foundBolt = (lay: BraceLay, laid: LaidBolt, panel: Panel, washerMm: number, rules: HouseRules): Found => {
  const { id } = lay.brace;
  const [point, before] = inPanelOf(panel, laid.at);
  const edgeMm = edgeOf(panel, point);
  const [edge, flush] = [rules.value('brace-bolt-edge'), rules.value('brace-flush')];
  // Its own hole is the one hole in its middle; a second one there is another brace's.
  const own = panel.cuts.findIndex(
    (cut) => cut.kind === 'hole' && cut.why === 'brace' && fromCut(point, cut) <= -cut.diameter / 2 + ROUNDING_MM,
  );
  const met = panel.cuts.find((cut, i) => i !== own && fromCut(point, cut) < washerMm / 2 - ROUNDING_MM);
  return {
    bolt: {
      id: laid.id,
      carcass: laid.carcass,
      panel: panel.id,
      at: laid.at,
      into: scale(lay.out, -1),
      edgeMm,
      gripMm: panel.thickness,
    },
    problems: [
      ...(before > flush
        ? [badJoint(id, [`${panel.name} stands ${mmWords(before)} in from the bar`], flush, before)]
        : []),
      ...(edgeMm < edge - ROUNDING_MM
        ? [
            short(
              id,
              `a bolt of the brace ${edgeMm < 0 ? 'lies beside' : 'is too near the edge of'} ${panel.name}`,
              edge,
              edgeMm,
            ),
          ]
        : []),
      ...(met
        ? [
            short(
              id,
              `the washer of a bolt of the brace meets ${cutWords(met)} in ${panel.name}`,
              washerMm / 2,
              Math.max(0, fromCut(point, met)),
            ),
          ]
        : []),
    ],
  };
};

/** One problem of a kind at each end is enough: the worst. */
const worstOfEach = (problems: readonly FitProblem[]): readonly FitProblem[] => {
  const worst = new Map<string, FitProblem>();
  for (const problem of problems) {
    const key = problem.because[0] ?? '';
    const before = worst.get(key);
    const short = ({ needMm, haveMm }: FitProblem): number => Math.abs((needMm ?? 0) - (haveMm ?? 0));
    if (!before || short(problem) > short(before)) worst.set(key, problem);
  }
  return [...worst.values()];
};

/** The bolts of a brace in the panels that are made, and why they do not hold where they do not. */
export const boltBrace = (
  lay: BraceLay,
  panels: ReadonlyMap<string, Panel>,
  catalog: Catalog,
  rules: HouseRules,
): BoltedBrace => {
  const { brace, record, bolts } = lay;
  const problems: FitProblem[] = [...barProblems(lay, rules)];
  const washerMm = catalog.hardware.get(PIECES.braceWasher)?.sizeMm?.[0] ?? 0;
  const placedBolts: PlacedBrace['bolts'][number][] = [];
  for (const laid of bolts) {
    const panel = laid.panel === null ? undefined : panels.get(laid.panel);
    if (!panel) {
      problems.push(badJoint(brace.id, [`no panel of ${laid.name} lies under the brace`]));
      continue;
    }
    const found = foundBolt(lay, laid, panel, washerMm, rules);
    placedBolts.push(found.bolt);
    problems.push(...found.problems);
  }
  const grip = barThickness(record) + Math.max(0, ...placedBolts.map(({ gripMm }) => gripMm));
  const fixings = fixingsFor(catalog, brace.id, grip);
  const found = 'bolt' in fixings;
  return {
    bolts: placedBolts,
    fixings: found ? fixings : null,
    problems: worstOfEach(found ? problems : [...problems, fixings]),
  };
};

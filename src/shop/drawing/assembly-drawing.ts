import {
  add,
  compareMarks,
  dot,
  formatMass,
  type LengthUnits,
  ORIGIN,
  scale as scaleBy,
  subtract,
  type Vec2,
  type Vec3,
} from '../../base/index.ts';
import type { FitOut, SolvedCarcass } from '../../fitout/index.ts';
import { type Assembly, prismsOf } from '../assembly/index.ts';
import type { CutListRow } from '../cut-list.ts';
import type { Marks } from '../marks.ts';
import type { Block } from './blocks.ts';
import type { Drawing, Shape } from './drawing.ts';
import { drawnPanel, middleOfPanel } from './drawn-panel.ts';
import { asideFrom } from './exploded-view.ts';
import { obliqueSight } from './oblique.ts';
import { scaleText, sizeText, unitsText } from './paper-words.ts';
import { type Sight, seenAt } from './projection.ts';
import { lookAt } from './seen-edges.ts';
import { line, type OnSheet, onSheet, TEXT_MM, text } from './shapes.ts';
import { type Area, areaSize, type Cell, reductionFor } from './sheet.ts';
import { seenExtent, spaceShapes } from './space-picture.ts';
import { centred, tableSheets } from './table-sheet.ts';
import { textWidth } from './text-width.ts';
import { type Projection, titleFoot } from './title-foot.ts';
import { dimension, type ViewWords } from './view-sheet.ts';

export interface AssemblyDrawingInput extends Pick<ViewWords, 'designTitle' | 'customer' | 'signed' | 'foot'> {
  readonly fitout: FitOut;
  readonly assembly: Assembly;
  readonly carcass: SolvedCarcass;
  readonly marks: Marks;
  readonly rows: readonly CutListRow[];
  readonly name: string;
  readonly hardware: readonly { readonly name: string; readonly quantity: string }[];
  readonly units: LengthUnits;
}

/** Across × deep × up of the assembly, from its lowest corner seen from the face of its carcass. */
interface Extent {
  readonly low: readonly [number, number, number];
  readonly size: readonly [number, number, number];
}

const extentOf = ({ panels }: Assembly, { pose }: SolvedCarcass): Extent => {
  const corners = panels.flatMap((panel) => prismsOf(panel).flatMap(({ vertices }) => vertices));
  const along = (axis: 0 | 1 | 2): Vec2 => {
    const values = corners.map((corner) => dot(subtract(corner, pose.at), pose.turn[axis]));
    return [Math.min(...values), Math.max(...values)];
  };
  const [x, y, z] = [along(0), along(1), along(2)];
  return { low: [x[0], y[0], z[0]], size: [x[1] - x[0], y[1] - y[0], z[1] - z[0]] };
};

type ViewName = 'face' | 'plan' | 'right';

/** Looking at the face, down on the top, and at the right side, as who stands before the face sees them. */
const sightsOf = ({ pose }: SolvedCarcass): Readonly<Record<ViewName, Sight>> => {
  const [across, deep, up] = pose.turn;
  const minus = (v: typeof up): typeof up => [-v[0], -v[1], -v[2]];
  return {
    face: { origin: pose.at, right: across, up, away: deep },
    plan: { origin: pose.at, right: across, up: deep, away: minus(up) },
    right: { origin: pose.at, right: deep, up, away: minus(across) },
  };
};

/** Low corner and size of each view as it is seen. */
const framesOf = ({ low, size }: Extent): Readonly<Record<ViewName, { readonly low: Vec2; readonly size: Vec2 }>> => ({
  face: { low: [low[0], low[2]], size: [size[0], size[2]] },
  plan: { low: [low[0], low[1]], size: [size[0], size[1]] },
  right: { low: [low[1], low[2]], size: [size[1], size[2]] },
});

const BETWEEN_MM = 16;
/** Where along a panel its mark may stand. */
const ALONG_PANEL = [0.5, 0.35, 0.65, 0.2, 0.8] as const;
const AROUND = { left: 16, bottom: 16, right: 4, top: 4 } as const;
const DIMENSION_OFF = 7;

/**
 * Where the views stand, their low corners on paper from the low corner of the whole: the plan above the face and the
 * right side at its right in third angle; in first angle the plan below and the right side at the left. The corner that
 * is left, as large as the depth both ways, has room for a picture in space.
 */
export const viewPlaces = (
  projection: Projection,
  { size }: Pick<Extent, 'size'>,
  scale: number,
): { readonly places: Readonly<Record<ViewName, Vec2>>; readonly whole: Vec2; readonly corner: Vec2 } => {
  const [w, d, h] = [size[0] * scale, size[1] * scale, size[2] * scale];
  const whole: Vec2 = [w + BETWEEN_MM + d, h + BETWEEN_MM + d];
  return projection === 'third'
    ? {
        whole,
        corner: [w + BETWEEN_MM, h + BETWEEN_MM],
        places: { face: [0, 0], plan: [0, h + BETWEEN_MM], right: [w + BETWEEN_MM, 0] },
      }
    : {
        whole,
        corner: [0, 0],
        places: { face: [d + BETWEEN_MM, d + BETWEEN_MM], plan: [d + BETWEEN_MM, 0], right: [0, d + BETWEEN_MM] },
      };
};

const VIEW_TITLES: Readonly<Record<ViewName, string>> = { face: 'face', plan: 'from above', right: 'from the right' };

/** The mark of each panel on the largest face that a view shows of it, where it is in sight and has room. */
const marksOnView = (
  { assembly, marks }: AssemblyDrawingInput,
  sees: (point: Vec3, item: string) => boolean,
  sight: Sight,
  move: OnSheet,
): readonly Shape[] =>
  assembly.panels.flatMap((panel): readonly Shape[] => {
    const mark = marks.markOf.get(panel.id);
    const corners = prismsOf(panel).flatMap(({ vertices }) => vertices);
    const seen = corners.map((corner) => move(seenAt(sight, corner)));
    const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
    const [width, height] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    const size = TEXT_MM.caption;
    const long = textWidth(mark ?? '', size) + 0.6;
    if (mark === undefined || Math.min(width, height) < size + 0.4 || Math.max(width, height) < long) return [];
    const nearest = corners.toSorted((a, b) => dot(a, sight.away) - dot(b, sight.away))[0] ?? ORIGIN;
    const upright = width < long;
    return ALONG_PANEL.flatMap((share): readonly Shape[] => {
      const [x, y] = [
        Math.min(...xs) + width * (upright ? 0.5 : share),
        Math.min(...ys) + height * (upright ? share : 0.5),
      ];
      const middle = middleOfPanel(panel);
      const [mx, my] = move(seenAt(sight, middle));
      const scale = move([1, 0])[0] - move([0, 0])[0];
      const point = add(
        add(middle, scaleBy(sight.right, (x - mx) / scale)),
        add(scaleBy(sight.up, (y - my) / scale), scaleBy(sight.away, dot(subtract(nearest, middle), sight.away))),
      );
      if (!sees(point, panel.id)) return [];
      return [
        upright
          ? text([x + size / 2, y], mark, { height: size, align: 'middle', turnRad: Math.PI / 2 })
          : text([x, y - size / 2], mark, { height: size, align: 'middle' }),
      ];
    }).slice(0, 1);
  });

const viewShapes = (input: AssemblyDrawingInput, name: ViewName, scale: number, at: Vec2): readonly Shape[] => {
  const { assembly, carcass, units } = input;
  const sight = sightsOf(carcass)[name];
  const { low, size } = framesOf(extentOf(assembly, carcass))[name];
  const move = onSheet(scale, [at[0] - low[0] * scale, at[1] - low[1] * scale]);
  const look = lookAt(
    assembly.panels.flatMap((panel) => drawnPanel(panel, ORIGIN)),
    sight,
  );
  const high: Vec2 = [low[0] + size[0], low[1] + size[1]];
  const words = (mm: number): string => sizeText(mm, units);
  const up = dimension('up', move(low), move([low[0], high[1]]), at[0] - DIMENSION_OFF, words(size[1]));
  const across = dimension('across', move(low), move([high[0], low[1]]), at[1] - DIMENSION_OFF, words(size[0]));
  return [
    ...look.edges.map((edge) => line('seen', move(edge.from), move(edge.to))),
    ...(name === 'right' ? [across] : name === 'plan' ? [up] : [up, across]),
    ...marksOnView(input, look.sees, sight, move),
    text([at[0], at[1] + size[1] * scale + 1.2], VIEW_TITLES[name], { height: TEXT_MM.caption }),
  ];
};

/** Leaders and marks at both sides of the picture in space. */
const LEADER_MM = 16;
/** A smaller picture shows nothing. */
const LEAST_PICTURE_MM = 24;

/** The panels drawn apart in the corner that the views leave. */
const apartShapes = ({ assembly, carcass, marks }: AssemblyDrawingInput, corner: Area): readonly Shape[] => {
  const by = asideFrom(assembly.panels, null);
  const picture = {
    solids: assembly.panels.flatMap((panel) => drawnPanel(panel, by.get(panel.id) ?? ORIGIN)),
    sight: obliqueSight(carcass),
    heavy: new Set<string>(),
    names: new Map(assembly.panels.map(({ id }) => [id, marks.markOf.get(id) ?? id])),
  };
  const size = areaSize(seenExtent(picture));
  const [width, height] = areaSize(corner);
  const room: Vec2 = [width - 2 * LEADER_MM, height];
  if (Math.min(...room) < LEAST_PICTURE_MM) return [];
  const scale = Math.min(room[0] / size[0], room[1] / size[1]);
  const at: Vec2 = [
    corner.from[0] + LEADER_MM + (room[0] - size[0] * scale) / 2,
    corner.from[1] + (room[1] - size[1] * scale) / 2,
  ];
  return spaceShapes(picture, scale, at);
};

const column = (title: string, width: number, align: 'left' | 'right' = 'left') => ({ title, width, align });

/** Panels by mark, and what is fetched for the assembly. */
const blocksOf = ({ assembly, marks, rows, units, hardware }: AssemblyDrawingInput): readonly Block[] => {
  const counts = new Map<string, number>();
  for (const { id } of assembly.panels) {
    const mark = marks.markOf.get(id) ?? id;
    counts.set(mark, (counts.get(mark) ?? 0) + 1);
  }
  const parts = rows.flatMap((row): readonly (readonly string[])[] => {
    const count = counts.get(row.mark);
    const size = `${sizeText(row.finishedLength, units)} × ${sizeText(row.finishedWidth, units)}`;
    return count === undefined ? [] : [[row.mark, String(count), row.name, size]];
  });
  const inOrder = parts.toSorted(([a = ''], [b = '']) => compareMarks(a, b));
  const columns = [
    column('mark', 10),
    column('qty', 7, 'right'),
    column('part', 33),
    column('length × width', 26, 'right'),
  ];
  const pieces = hardware.map(({ name, quantity }) => [quantity, name]);
  return [
    { kind: 'table', title: 'Parts', columns, rows: inOrder },
    ...(pieces.length === 0
      ? []
      : [
          {
            kind: 'table' as const,
            title: 'Hardware',
            columns: [column('qty', 9, 'right'), column('piece', 67)],
            rows: pieces,
          },
        ]),
  ];
};

const titleRows = (input: AssemblyDrawingInput, reduction: number): readonly (readonly Cell[])[] => {
  const { assembly, units } = input;
  const cell = (caption: string, share: number, value: string): Cell => ({ caption, share, value });
  const massKg = assembly.panels.reduce((sum, panel) => sum + panel.massKg, 0);
  return [
    [cell('design', 5, input.designTitle), cell('customer', 3.5, input.customer), cell('revision', 4.5, input.signed)],
    [
      cell('assembly', 6, input.name),
      cell('panels', 2, String(assembly.panels.length)),
      cell('mass of the panels', 3, formatMass(massKg, units)),
    ],
    [
      cell('scale', 2, scaleText(reduction)),
      cell('units', 2, unitsText(units)),
      cell('sizes', 7, 'outside of the panels put together; sizes of each on its own drawing'),
    ],
    titleFoot(input.foot),
  ];
};

/**
 * One assembly on paper: its face, from above and from the right, turned by the angle of projection of the design, with
 * outside sizes and marks, and its parts and hardware in tables.
 */
export const assemblyDrawing = (input: AssemblyDrawingInput): readonly Drawing[] => {
  const { assembly, carcass, units, foot } = input;
  const extent = extentOf(assembly, carcass);
  const [w, d, h] = extent.size;
  return tableSheets({
    title: `${input.designTitle}: ${input.name}, put together`,
    mark: input.marks.letterOf.get(assembly.carcass) ?? '',
    units,
    surround: AROUND,
    blocks: blocksOf(input),
    figure: (room) => {
      const free = areaSize(room);
      const reduction = reductionFor([w + d, h + d], [free[0] - BETWEEN_MM, free[1] - BETWEEN_MM], units);
      const { places, whole, corner } = viewPlaces(foot.projection, extent, 1 / reduction);
      const low = centred(room, whole);
      const on = ([x, y]: Vec2): Vec2 => [low[0] + x, low[1] + y];
      const views = (['face', 'plan', 'right'] as const).flatMap((name) =>
        viewShapes(input, name, 1 / reduction, on(places[name])),
      );
      const left: Area =
        foot.projection === 'third'
          ? { from: on(corner), to: room.to }
          : { from: room.from, to: on([d / reduction, d / reduction]) };
      const apart = assembly.panels.length > 1 ? apartShapes(input, left) : [];
      return { reduction, shapes: [...views, ...apart], rows: (each) => titleRows(input, each) };
    },
  });
};

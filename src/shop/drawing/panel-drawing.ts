import { formatInches, formatMass, formatMillimetres, groupBy, type LengthUnits, type Vec2 } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { MarkedPart } from '../marks.ts';
import { SHOP_FRACTION } from '../rounding.ts';
import { type Block, COLUMN_GAP, continuations, fillColumns } from './blocks.ts';
import type { Drawing, Shape } from './drawing.ts';
import { edgeSections } from './edge-sections.ts';
import { edgeTables } from './edge-tables.ts';
import {
  dimensionRoom,
  noteAreas,
  type PlacedPanel,
  panelBands,
  panelDimensions,
  panelMarks,
  panelTags,
} from './panel-annotations.ts';
import { panelEmblem } from './panel-emblem.ts';
import { panelFigure } from './panel-figure.ts';
import { type NoteTable, noteTables } from './panel-notes.ts';
import { PAPER_CAUTION, scaleText, unitsText } from './paper-words.ts';
import { recessSections, SECTION_WIDTH, sectionExtent, sectionShapes } from './recess-sections.ts';
import { onSheet, placedStroke } from './shapes.ts';
import { type Area, areaSize, type Cell, reductionFor, type Sheet, sheetFor, sheetShapes } from './sheet.ts';
import { type TitleFoot, titleFoot } from './title-foot.ts';
import { writtenAreas } from './written-areas.ts';

/** What the title block says of a part beside what the panel itself holds. */
export interface PartWords {
  readonly designTitle: string;
  /** Letter, hash and who approved it. */
  readonly signed: string;
  readonly foot: TitleFoot;
  readonly name: string;
  readonly where: string;
  readonly materialName: string;
  readonly cutLength: number;
  readonly cutWidth: number;
  readonly note: string;
  /** Tolerances of a sawn size and of a bored pattern, mm. */
  readonly cutToleranceMm: number;
  readonly boreToleranceMm: number;
}

const PAD = 3;
const PART_ROWS = 4;

/** A size with its unit, and in millimetres as well where inches are shown. */
const sizePair = (length: number, width: number, units: LengthUnits): string => {
  const mm = `${formatMillimetres(length)} × ${formatMillimetres(width)} mm`;
  const inch = (value: number): string => formatInches(value, SHOP_FRACTION);
  return units === 'mm' ? mm : `${inch(length)} × ${inch(width)} in (${mm})`;
};

/** `L1 L2 W1 band-1`: edges with the same band together. */
const bandsText = ({ bands }: Panel): string => {
  const banded = (['l1', 'l2', 'w1', 'w2'] as const).filter((edge) => bands[edge] !== null);
  const named = [...groupBy(banded, (edge) => bands[edge] ?? '')].map(
    ([band, edges]) => `${edges.map((edge) => edge.toUpperCase()).join(' ')} ${band}`,
  );
  return named.length === 0 ? 'none' : named.join(', ');
};

const cell = (caption: string, share: number, value: string): Cell => ({ caption, value, share });

const titleRows = (
  part: MarkedPart,
  words: PartWords,
  units: LengthUnits,
  reduction: number,
): readonly (readonly Cell[])[] => {
  const { panel, panels } = part;
  const thickness = `${formatMillimetres(panel.thickness, 2)} mm`;
  const tolerance = `± ${formatMillimetres(words.cutToleranceMm, 2)} cut, ± ${formatMillimetres(words.boreToleranceMm, 2)} bored, mm`;
  return [
    [
      cell('design', 4.4, words.designTitle),
      cell('revision', 4.6, words.signed),
      cell('part', 4, words.name),
      cell('goes in', 4.6, words.where),
      cell('quantity', 1.6, String(panels.length)),
      cell('hand', 1.6, panel.hand ?? 'either'),
    ],
    [
      cell('material', 4.6, words.materialName),
      cell('thickness', 2, thickness),
      cell('finished, length × width', 5.4, sizePair(panel.length, panel.width, units)),
      cell('saw to', 5.4, sizePair(words.cutLength, words.cutWidth, units)),
      cell('mass', 1.8, formatMass(panel.massKg, units)),
    ],
    [
      cell('edge bands', 4.4, bandsText(panel)),
      cell('grain', 2.4, panel.grain === 'length' ? 'along length' : 'any'),
      cell('drawn', 3.6, 'face a up, 0 at low left'),
      cell('scale', 1.4, scaleText(reduction)),
      cell('units', 2, unitsText(units)),
      cell('tolerance', 4.4, tolerance),
      cell('note', 4.4, words.note),
      cell('cut by', 1.6, ''),
    ],
    titleFoot(words.foot),
  ];
};

const tableBlock = ({ title, columns, notes }: NoteTable): Block => ({
  kind: 'table',
  title,
  columns,
  rows: notes.map(({ cells }) => cells),
});

/** Recess table, then the pictures of its sections, then the other tables. */
const blocksOf = (
  panel: Panel,
  units: LengthUnits,
): { readonly blocks: readonly Block[]; readonly tables: readonly NoteTable[] } => {
  const { sections, sectionOf } = recessSections(panel);
  const tables = noteTables(panel, sectionOf, units);
  const pictures = sections.map((section): Block => {
    const { height } = sectionExtent(section, panel.thickness);
    return { kind: 'picture', height, shapes: (at) => sectionShapes(section, panel, at, units) };
  });
  const [first, ...rest] = tables.map(tableBlock);
  const cuts = first === undefined ? [] : sections.length > 0 ? [first, ...pictures, ...rest] : [first, ...rest];
  return { blocks: [...edgeTables(panel, units), ...edgeSections(panel, units), ...cuts], tables };
};

interface Placement {
  readonly reduction: number;
  readonly at: Vec2;
}

/** The part in the middle of the room that dimensions leave, at the largest standard scale. */
const placePanel = (panel: Panel, room: Area, units: LengthUnits): Placement => {
  const around = dimensionRoom(panel);
  const [width, height] = areaSize(room);
  const free: Vec2 = [width - around.left - around.right, height - around.bottom - around.top];
  const reduction = reductionFor([panel.length, panel.width], free, units);
  const at: Vec2 = [
    room.from[0] + around.left + (free[0] - panel.length / reduction) / 2,
    room.from[1] + around.bottom + (free[1] - panel.width / reduction) / 2,
  ];
  return { reduction, at };
};

const partShapes = (
  part: MarkedPart,
  tables: readonly NoteTable[],
  { reduction, at }: Placement,
  units: LengthUnits,
): readonly Shape[] => {
  const scale = 1 / reduction;
  const placed: PlacedPanel = { panel: part.panel, move: onSheet(scale, at), scale, units };
  const notes = tables.flatMap((each) => each.notes);
  const cuts = noteAreas(notes, placed);
  const bands = panelBands(placed, cuts);
  const named = writtenAreas(bands);
  const emblem = panelEmblem(placed, part.mark, [...cuts, ...named]);
  return [
    ...panelFigure(part.panel).map((stroke) => placedStroke(stroke, scale, at)),
    ...panelMarks(placed),
    ...bands,
    ...panelDimensions(placed),
    ...emblem.shapes,
    ...panelTags(notes, placed, [emblem.area, ...named]),
  ];
};

const insetRoom = ({ room }: Sheet): Area => ({
  from: [room.from[0] + PAD, room.from[1] + PAD],
  to: [room.to[0] - PAD, room.to[1] - PAD],
});

/**
 * The drawing of one part, on as many sheets as its tables need: the part on face a from one datum corner, overall and
 * running dimensions, a tag at every cut, tables, sections of its recesses, the title block and the caution.
 */
export const panelDrawing = (part: MarkedPart, words: PartWords, units: LengthUnits): readonly Drawing[] => {
  const sheet = sheetFor(units, PART_ROWS);
  const room = insetRoom(sheet);
  const { blocks, tables } = blocksOf(part.panel, units);
  const split = blocks.length > 0 ? room.to[0] - SECTION_WIDTH : room.to[0];
  const figureRoom: Area = { from: room.from, to: [blocks.length > 0 ? split - COLUMN_GAP : split, room.to[1]] };
  const placement = placePanel(part.panel, figureRoom, units);
  const first = fillColumns(blocks, [{ from: [split, room.from[1]], to: room.to }]);
  const pages = [
    [...partShapes(part, tables, placement, units), ...first.shapes],
    ...continuations(first.left, room, SECTION_WIDTH),
  ];
  return pages.map((shapes, i): Drawing => {
    const block = {
      mark: part.mark,
      sheet: `sheet ${i + 1} of ${pages.length}`,
      rows: titleRows(part, words, units, placement.reduction),
      caution: PAPER_CAUTION,
    };
    return {
      title: `${part.mark} ${words.name}`,
      size: sheet.size,
      scale: 1 / placement.reduction,
      shapes: [...sheetShapes(sheet, block), ...shapes],
    };
  });
};

import type { LengthUnits } from '../base/index.ts';
import { PLAN_GROUPS, type PlanFigure, type PlanGroup, type PlanStep, type SurveyPlan } from '../envelope/index.ts';
import type { Drawing } from './drawing/drawing.ts';
import { planFigureHeight, planFigureShapes } from './drawing/plan-figure.ts';
import type { PaperCell, PaperPiece } from './paper/paper.ts';
import { paperPages } from './paper/paper-pages.ts';

export interface SurveySheetInput {
  readonly plan: SurveyPlan;
  /** A4 where millimetres are used, Letter where inches are. */
  readonly units: LengthUnits;
  /** What the design is called, where there is one already. */
  readonly designTitle?: string;
  readonly customer?: string;
}

const words = (id: string): string => id.replaceAll('-', ' ');

const CAUTION =
  'A blank sheet: its drawings are of no vehicle. Keep belts, airbags and their covers untouched; look under the floor before any hole.';

const HOW_TO: readonly string[] = [
  'Write every reading as it stands on the tape, and take it a second time without looking at the first: the second goes under "again". Do not correct one to suit another; the readings are weighed against each other later.',
  'Depths, widths and heights are read square to the string and the floor; "straight" is from mark to mark, the tape pulled taut. Left and right are the vehicle’s own. A reading marked "check" may be left out; a wrong one elsewhere then goes unseen.',
];

/** Room for handwriting: a row of one figure, a row of notes, mm. */
const FIGURE_ROW = 6.2;
const NOTE_ROW = 13;
const CURVE_ROW = 7.5;
const CURVE_POINTS = 5;

const FIGURE_GAP = 6;
const TALLEST_FIGURE = 58;
/** The narrower page, A4, leaves this width to each of two. */
const HALF_WIDTH = 89;

/** Drawings two side by side. */
const picturesOf = (figures: readonly PlanFigure[]): readonly PaperPiece[] =>
  Array.from({ length: Math.ceil(figures.length / 2) }, (_, row): PaperPiece => {
    const pair = figures.slice(2 * row, 2 * row + 2);
    return {
      kind: 'picture',
      height: Math.max(...pair.map((figure) => planFigureHeight(figure, HALF_WIDTH, TALLEST_FIGURE))),
      shapes: ([x, y], width) => {
        const half = (width - FIGURE_GAP) / 2;
        return pair.flatMap((figure, i) =>
          planFigureShapes(figure, [x + i * (half + FIGURE_GAP), y], Math.min(half, HALF_WIDTH), TALLEST_FIGURE),
        );
      },
    };
  });

const readingRow = ({ number, name, instrument, must }: PlanStep): readonly PaperCell[] => [
  String(number),
  name,
  `${words(instrument)}${must ? '' : ', check'}`,
  '',
  '',
];

const tableOf = (steps: readonly PlanStep[], units: LengthUnits): readonly PaperPiece[] =>
  steps.length === 0
    ? []
    : [
        {
          kind: 'table',
          columns: [
            { title: 'no.', share: 6 },
            { title: 'what', share: 56 },
            { title: 'with', share: 20 },
            { title: units === 'in' ? 'reading, in or °' : 'reading, mm or °', share: 24, ruled: true },
            { title: 'again', share: 24, ruled: true },
          ],
          rows: steps.map(readingRow),
          rowMm: FIGURE_ROW,
        },
      ];

const curveOf = (step: PlanStep): readonly PaperPiece[] => [
  {
    kind: 'table',
    columns: [
      { title: `${step.number}  ${step.name}`, share: 62 },
      ...Array.from({ length: CURVE_POINTS }, (_, i) => ({ title: String(i + 1), share: 16, ruled: true })),
    ],
    rows: (step.points ?? []).map((point) => [point]),
    rowMm: CURVE_ROW,
  },
];

const notesOf = (steps: readonly PlanStep[]): readonly PaperPiece[] =>
  steps.length === 0
    ? []
    : [
        {
          kind: 'table',
          columns: [
            { title: 'no.', share: 6 },
            { title: 'what', share: 52 },
            { title: 'done', share: 8 },
            { title: 'notes', share: 64, ruled: true },
          ],
          rows: steps.map(({ number, name, into }): readonly PaperCell[] => [
            String(number),
            name,
            into === 'photo' ? { tick: true } : '',
            '',
          ]),
          rowMm: NOTE_ROW,
        },
      ];

/** Figures of the label and the scales, each with its line. */
const LABEL_CAPTIONS: readonly string[] = [
  'Gross vehicle rating',
  'Front axle rating',
  'Rear axle rating',
  'Slip, front axle',
  'Slip, rear axle',
  'Slip, left wheels',
  'Slip, right wheels',
  'Fuel, share of the tank',
  'Aboard when weighed',
  'Wheelbase',
  'Track',
  'Sill behind rear axle',
  'Floor above ground',
  'Bumper behind sill',
];

const GROUP_TITLES: Readonly<Record<PlanGroup, string>> = {
  frame: 'String and marks',
  'section rear': 'Section at the rear, at the sill',
  'section middle': 'Section in the middle',
  'section front': 'Section at the front',
  seat: 'Seat-back',
  opening: 'Opening',
  closure: 'Closures',
  obstacles: 'What stands in the room',
  'under the floor': 'Under the floor',
  labels: 'Label and weigh slip',
};

const groupPieces = (group: PlanGroup, { plan, units }: SurveySheetInput): readonly PaperPiece[] => {
  const steps = plan.steps.filter((step) => step.group === group);
  if (steps.length === 0) return [];
  const shown = new Set(steps.map(({ figure }) => figure));
  const read = steps.filter(({ reading }) => reading !== null);
  const noted = steps.filter(({ reading, points }) => reading === null && points === null);
  const first = read[0]?.number ?? 0;
  return [
    { kind: 'heading', words: GROUP_TITLES[group] },
    ...picturesOf(plan.figures.filter(({ id }) => shown.has(id))),
    ...notesOf(noted.filter(({ number }) => number < first)),
    ...tableOf(read, units),
    ...steps.filter(({ points }) => points !== null).flatMap(curveOf),
    ...(group === 'labels'
      ? [{ kind: 'blanks', captions: LABEL_CAPTIONS, across: 2 } as const]
      : notesOf(noted.filter(({ number }) => number >= first))),
  ];
};

const depthCaptions = ({ plan }: SurveySheetInput): readonly string[] =>
  plan.stations
    .filter(({ name }) => name !== 'rear')
    .map(({ name }) => `${name[0]?.toUpperCase() ?? ''}${name.slice(1)} section, depth from the sill`);

/**
 * The blank survey sheet for a kind of closure and a class of vehicle: what to measure, in order, with the drawings that
 * show where, and room to write. Black lines on white, upright, so that it goes on a clipboard.
 */
export const surveySheet = (input: SurveySheetInput): readonly Drawing[] => {
  const { plan, units } = input;
  return paperPages(
    {
      title: 'Survey sheet',
      designTitle: input.designTitle ?? '',
      customer: input.customer ?? '',
      revision: `${words(plan.closureKind)}, ${words(plan.vehicleClass)}`,
      units,
      caution: CAUTION,
    },
    [
      {
        kind: 'blanks',
        captions: [
          'Vehicle',
          'For',
          'Measured by',
          'On',
          'Tape and stick used',
          'Checked against',
          ...depthCaptions(input),
        ],
        across: 2,
      },
      ...HOW_TO.map((line): PaperPiece => ({ kind: 'words', words: line })),
      ...PLAN_GROUPS.flatMap((group) => groupPieces(group, input)),
    ],
  );
};

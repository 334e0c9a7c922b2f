import { formatMass } from '../../base/index.ts';
import { sayCase } from '../../says/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { type PaperColumn, type PaperPiece, paperPages } from '../paper/index.ts';
import { namesOf, type PapersInput, paperHead } from './paper.ts';

const COMPARE: readonly PaperColumn[] = [
  { title: '', share: 20 },
  { title: 'rating', share: 15, align: 'right' },
  { title: 'predicted', share: 15, align: 'right' },
  { title: 'on the scale', share: 18, align: 'right' },
  { title: 'scale less predicted', share: 18, align: 'right' },
  { title: 'left to the rating', share: 18, align: 'right' },
];

const WRITING_MM = 9;

/** Predicted and blank: for each loading case one table to fill in at the scale. */
const casePieces = ({ design, inspection }: PapersInput): readonly PaperPiece[] => {
  const { frontAxleKg, rearAxleKg, grossKg } = design.vehicle.ratings;
  const mass = (kg: number | null): string => (kg === null ? 'unknown' : formatMass(kg, design.units));
  return inspection.cases.flatMap((load): readonly PaperPiece[] => {
    const { totalKg, leftShare } = load;
    const side = (share: number | null): string => mass(share === null ? null : share * totalKg);
    return [
      { kind: 'heading', words: sayCase(load.id) },
      {
        kind: 'table',
        columns: COMPARE,
        rowMm: WRITING_MM,
        rows: [
          ['front axle', mass(frontAxleKg), mass(load.frontKg), '', '', ''],
          ['rear axle', mass(rearAxleKg), mass(load.rearKg), '', '', ''],
          ['left wheels', '', side(leftShare), '', '', ''],
          ['right wheels', '', side(leftShare === null ? null : 1 - leftShare), '', '', ''],
          ['all', mass(grossKg), mass(totalKg), '', '', ''],
        ],
      },
    ];
  });
};

const earlierPieces = ({ design }: PapersInput): readonly PaperPiece[] => {
  const { weighed } = design.record;
  if (weighed.length === 0) return [];
  return [
    { kind: 'heading', words: 'Weighed before' },
    {
      kind: 'table',
      columns: [
        { title: 'on', share: 16 },
        { title: 'who', share: 24 },
        { title: 'front', share: 14, align: 'right' },
        { title: 'rear', share: 14, align: 'right' },
        { title: 'note', share: 40 },
      ],
      rows: weighed.map(({ on, who, frontKg, rearKg, note }) => [
        on,
        who,
        formatMass(frontKg, design.units),
        formatMass(rearKg, design.units),
        note,
      ]),
    },
  ];
};

const slipPieces = (input: PapersInput): readonly PaperPiece[] => {
  const { design, inspection } = input;
  const told = inspection.weighed;
  if (told === null) return [];
  const names = namesOf(input);
  const mass = (kg: number): string => formatMass(kg, design.units);
  return [
    { kind: 'heading', words: `The slip in the design: ${sayCase(told.case)}` },
    {
      kind: 'words',
      words: `Predicted ${mass(told.predicted.totalKg)}, weighed ${mass(told.weighed.totalKg)}: ${told.moreKg < 0 ? '−' : '+'}${mass(Math.abs(told.moreKg))}, ${(told.share * 100).toFixed(1)} % of what was to be added. Known worst: ${told.items.map(({ id }) => names(id.replace(/\/mass$/, ''))).join(', ')}.`,
    },
  ];
};

/** What is written down at the scale, beside what was predicted. */
export const weighPaper = (input: PapersInput): readonly Drawing[] => {
  const { design, inspection } = input;
  return paperPages(
    paperHead(
      design,
      'Weigh record',
      'Under the gross rating and under each axle rating with everyone aboard: the scale decides, not the prediction.',
    ),
    [
      {
        kind: 'words',
        words:
          'Weigh front and rear axle, and each side where the scale can, on level ground with the engine off. Keep this sheet with the vehicle and enter the slip in the design: the next one starts from it.',
      },
      {
        kind: 'blanks',
        captions: ['Scale, its number', 'Date', 'Weighed by', 'Fuel in the tank', 'Persons aboard', 'Gear aboard'],
        across: 2,
      },
      ...slipPieces(input),
      ...earlierPieces(input),
      ...(inspection.cases.length === 0
        ? [
            {
              kind: 'words',
              strong: true,
              words:
                'Nothing is predicted: the weigh slip, the wheelbase or the place of the rear axle is missing in the design. The table is for the scale alone.',
            } as const,
            {
              kind: 'table',
              columns: COMPARE,
              rowMm: WRITING_MM,
              rows: ['front axle', 'rear axle', 'left wheels', 'right wheels', 'all'].map((what) => [what]),
            } as const,
          ]
        : casePieces(input)),
      { kind: 'heading', words: 'Signed' },
      { kind: 'blanks', captions: ['Weighed by', 'date'], across: 2 },
    ],
  );
};

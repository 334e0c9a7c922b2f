import { formatLengthUnit, formatMass } from '../../../base/index.ts';
import type { Design } from '../../../design/index.ts';
import {
  type Inspection,
  type LoadingCaseResult,
  type MarginName,
  missingFigures,
  openStops,
} from '../../../inspection/index.ts';
import { nameOfPart, sayCase, sayFigure } from '../../../says/index.ts';
import { type MassTable, markParts, massTable } from '../../../shop/index.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { type TextColumn, textTable } from '../text-table.ts';

/** Stops of these margins are about weight; others do not concern this verb. */
const WEIGHT: readonly MarginName[] = ['payload', 'axle', 'side'];

const caseJson = ({ id, ...load }: LoadingCaseResult): unknown => ({ name: id, says: sayCase(id), ...load });

const right = (title: string): TextColumn => ({ title, align: 'right' });
const CASE_COLUMNS: readonly TextColumn[] = [
  { title: 'loading case', align: 'left' },
  ...[
    'front',
    'rear',
    'all',
    'left share',
    'front left over',
    'rear left over',
    'gross left over',
    'cg height',
    'ssf',
  ].map(right),
];
const SUM_COLUMNS: readonly TextColumn[] = [{ title: 'what', align: 'left' }, right('mass'), right('± at 95 %')];

const UNKNOWN = '?';
/** Half width at 95 % of a normal spread, in standard deviations. */
const SIGMAS = 2;

const caseRow = (load: LoadingCaseResult, { units }: Design): readonly string[] => {
  const kg = (value: number | null): string => (value === null ? UNKNOWN : formatMass(value, units));
  return [
    sayCase(load.id),
    kg(load.frontKg),
    kg(load.rearKg),
    kg(load.totalKg),
    load.leftShare === null ? UNKNOWN : `${(load.leftShare * 100).toFixed(1)} %`,
    kg(load.margins.frontKg),
    kg(load.margins.rearKg),
    kg(load.margins.grossKg),
    load.cgHeightMm === null ? UNKNOWN : formatLengthUnit(load.cgHeightMm, units),
    load.ssf === null ? UNKNOWN : load.ssf.toFixed(2),
  ];
};

const sumRows = ({ kinds, carcasses, total }: MassTable, { units }: Design): readonly (readonly string[])[] =>
  [...kinds, ...carcasses, total].map(({ name, massKg, sigmaKg }) => [
    name,
    formatMass(massKg, units),
    formatMass(SIGMAS * sigmaKg, units),
  ]);

const caseLines = (design: Design, { cases }: Inspection): readonly string[] => {
  if (cases.length > 0)
    return textTable(
      CASE_COLUMNS,
      cases.map((load) => caseRow(load, design)),
    );
  const missing = missingFigures(design.vehicle);
  return [
    `no axle loads: ${missing.length > 0 ? `not known yet: ${missing.map(sayFigure).join(', ')}` : 'no weigh slip'}`,
  ];
};

/** Until the vehicle has been on the scale again, the cases count the cabinet somewhat heavier than its parts. */
const contingencyLine = (share: number): readonly string[] =>
  share === 0
    ? []
    : ['', `the cases count everything but gear ${Number((share * 100).toFixed(1))} % heavier, for what nobody listed`];

/** `weigh DESIGN`: masses of everything fitted and stowed, and what the axles carry in each loading case. */
export const weigh = async (path: string): Promise<Outcome> => {
  const design = readDesignFile(path);
  const flow = await openFlow();
  const inspection = flow.inspection(design);
  const fitout = flow.fitOut(design);
  const table = massTable(fitout, markParts(fitout), nameOfPart(design, fitout));
  const share = flow.rules(design).value('contingency-share');
  const stops = openStops(inspection).filter(({ margin }) => margin !== null && WEIGHT.includes(margin));
  return {
    lines: [
      design.title,
      '',
      ...caseLines(design, inspection),
      ...contingencyLine(share),
      '',
      ...textTable(SUM_COLUMNS, sumRows(table, design)),
    ],
    json: {
      cases: inspection.cases.map(caseJson),
      masses: table.rows.map(({ id, mark, name, kind, massKg, at, sigmaKg }) => ({
        id,
        mark,
        name,
        kind,
        kg: massKg,
        at,
        sigmaKg,
      })),
      contingencyShare: share,
      total: { kg: table.total.massKg, sigmaKg: table.total.sigmaKg, at: table.total.at },
    },
    exitCode: stops.length > 0 ? 1 : 0,
  };
};

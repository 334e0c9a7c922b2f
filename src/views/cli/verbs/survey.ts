import { formatLength, formatLengthUnit, type LengthUnits } from '../../../base/index.ts';
import type { Design } from '../../../design/index.ts';
import { type ReportedReading, type SurveyReport, surveyReport } from '../../../envelope/index.ts';
import { type Finding, openStops } from '../../../inspection/index.ts';
import { sayProblem, sayReading } from '../../../says/index.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { type Sayer, sayer } from '../sayer.ts';
import { type TextColumn, textTable } from '../text-table.ts';

/** Rules about the measured vehicle; stops of others do not concern this verb. */
const SURVEY_RULES: ReadonlySet<string> = new Set([
  'space-missing',
  'start-values',
  'survey-misread',
  'survey-closure-error',
  'survey-single-reading',
  'ratings-contradict',
]);

const right = (title: string): TextColumn => ({ title, align: 'right' });
const columnsIn = (units: LengthUnits): readonly TextColumn[] => [
  right('no.'),
  { title: 'reading', align: 'left' },
  right(`read, ${units}`),
  right('adjusted'),
  right('difference'),
  right('w'),
  { title: '', align: 'left' },
];

const SUSPECT_WORDS = { named: 'likely misread', doubt: 'in doubt' } as const;

const rowOf = (row: ReportedReading, { survey, units }: Design): readonly string[] => {
  const at = survey.readings.findIndex(({ id }) => id === row.id);
  const reading = survey.readings[at];
  const shown = (value: number): string =>
    row.unit === 'deg' ? `${value.toFixed(1).replace('-', '−')}°` : formatLength(value, units);
  return [
    String(at + 1),
    reading ? sayReading(survey, reading) : row.id,
    shown(row.readMm),
    shown(row.adjustedMm),
    shown(row.residualMm),
    row.w.toFixed(1).replace('-', '−'),
    row.suspect === false ? '' : SUSPECT_WORDS[row.suspect],
  ];
};

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

const summary = ({ readings, redundancy, consistent }: SurveyReport, { survey }: Design): string => {
  if (readings.length === 0) return 'no readings: sections count as they were typed';
  const out = survey.readings.filter(({ leftOut }) => leftOut !== null).length;
  const aside = out === 0 ? '' : `, ${out} left out`;
  return `${counted(readings.length, 'reading', 'readings')}${aside}, ${redundancy} to spare; ${consistent ? 'all agree' : 'they do not agree'}`;
};

const floorLine = ({ floor, freeVolumeM3 }: SurveyReport, { units }: Design): readonly string[] => {
  const length = (mm: number): string => formatLengthUnit(mm, units);
  return [
    ...(floor
      ? [
          `floor ${length(floor.depthMm)} deep, ${length(Math.min(...floor.widthsMm))} to ${length(Math.max(...floor.widthsMm))} wide, slope ${floor.slopeDeg.toFixed(1)}°, roll ${floor.rollDeg.toFixed(1)}°`,
        ]
      : []),
    ...(freeVolumeM3 === null ? [] : [`free room ${freeVolumeM3.toFixed(3)} m³`]),
  ];
};

const sentences = (findings: readonly Finding[], say: Sayer): readonly string[] =>
  findings.map((finding) => {
    const { title, detail } = say.finding(finding);
    return `${finding.severity.toUpperCase()}: ${title}${detail === '' ? '' : `. ${detail}`}`;
  });

const table = ({ readings }: SurveyReport, design: Design): readonly string[] =>
  readings.length === 0
    ? []
    : [
        '',
        ...textTable(
          columnsIn(design.units),
          readings.map((row) => rowOf(row, design)),
        ),
      ];

/**
 * `survey DESIGN`: adjusts the readings and says which of them is likely wrong, or which further one would tell. Exit
 * code 1 where a stop about the survey or the ratings stands.
 */
export const survey = async (path: string): Promise<Outcome> => {
  const design = readDesignFile(path);
  const flow = await openFlow();
  const space = flow.space(design);
  const report = surveyReport(design, flow.rules(design), space.ok ? space.value : null);
  const inspection = flow.inspection(design);
  const findings = inspection.findings.filter(({ rule }) => SURVEY_RULES.has(rule));
  const problems = [...report.problems, ...(space.ok ? [] : space.error)].map(sayProblem);
  const says = [...sentences(findings, sayer(design, flow.fitOut(design))), ...problems];
  return {
    lines: [
      `${design.title}: ${summary(report, design)}`,
      ...floorLine(report, design),
      ...(says.length === 0 ? [] : ['', ...says]),
      ...table(report, design),
    ],
    json: {
      readings: report.readings,
      redundancy: report.redundancy,
      consistent: report.consistent,
      floor: report.floor,
      freeVolumeM3: report.freeVolumeM3,
      marks: report.marks,
      says,
    },
    exitCode: openStops(inspection).some(({ rule }) => SURVEY_RULES.has(rule)) ? 1 : 0,
  };
};

import { formatLengthUnit, formatMass, type LengthUnits } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import type { FitOut } from '../fitout/index.ts';
import type { Finding, Inspection, LoadingCaseResult, Severity } from '../inspection/index.ts';
import { CAUTIONS } from './cautions.ts';
import { findingWords } from './finding-words.ts';
import type { Marks } from './marks.ts';

export interface InspectionSheetInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly inspection: Inspection;
  readonly marks: Marks;
}

const SEVERITIES: readonly Severity[] = ['stop', 'caution', 'note'];
const WIDTH = 100;

/** Words broken into lines of at most WIDTH characters, later lines indented. */
const wrapped = (words: string, first: string, later: string): readonly string[] => {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of words.split(/\s+/).filter((each) => each !== '')) {
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = later + word;
    } else line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
};

const heading = (words: string): readonly string[] => ['', words, '-'.repeat(words.length)];

/** A value with its unit as the reader of this design writes it. */
const amount = (value: number, unit: string, units: LengthUnits): string => {
  if (unit === 'mm') return formatLengthUnit(value, units);
  if (unit === 'kg') return formatMass(value, units);
  const text = String(Number(value.toFixed(3)));
  return unit === '' || unit === 'share' || unit === 'factor' ? text : `${text} ${unit}`;
};

const findingLines = (finding: Finding, number: number, input: InspectionSheetInput): readonly string[] => {
  const { units } = input.design;
  const value = amount(finding.value, finding.unit, units);
  const spread = finding.uncertainty > 0 ? ` ± ${amount(finding.uncertainty, finding.unit, units)}` : '';
  const marks = finding.parts.flatMap((part) => input.marks.markOf.get(part) ?? []);
  const lead = `${String(number).padStart(3)}  ${finding.severity.toUpperCase()}: `;
  const facts = [
    `value ${value}${spread}`,
    `limit ${amount(finding.limit, finding.unit, units)}`,
    `source: ${finding.source} (${finding.status})`,
    ...(marks.length > 0 ? [`marks: ${[...new Set(marks)].join(', ')}`] : []),
    `rule ${finding.rule}`,
  ];
  const let_stand = finding.accepted;
  return [
    ...wrapped(findingWords(finding, input), lead, '     '),
    ...wrapped(facts.join('; '), '     ', '     '),
    ...(let_stand === null
      ? []
      : wrapped(
          `accepted by ${let_stand.who}${let_stand.on === '' ? '' : ` on ${let_stand.on}`}: ${let_stand.why}`,
          '     ',
          '     ',
        )),
  ];
};

const counts = (findings: readonly Finding[]): string =>
  SEVERITIES.map((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  }).join(', ');

const margin = (kg: number | null, units: LengthUnits): string => (kg === null ? 'unknown' : formatMass(kg, units));

const caseLines = (load: LoadingCaseResult, units: LengthUnits): readonly string[] => [
  `  ${load.id}: front ${formatMass(load.frontKg, units)}, rear ${formatMass(load.rearKg, units)}, all ${formatMass(load.totalKg, units)}`,
  `      left to the rating: front ${margin(load.margins.frontKg, units)}, rear ${margin(load.margins.rearKg, units)}, gross ${margin(load.margins.grossKg, units)}`,
];

/** The inspection sheet as plain text: every finding with its value, limit and source, then loads, then cautions. */
export const inspectionSheet = (input: InspectionSheetInput): string => {
  const { design, inspection } = input;
  const { checked, findings, cases } = inspection;
  const lines = [
    'INSPECTION SHEET',
    design.title,
    ...(design.customer === '' ? [] : [design.customer]),
    '',
    `${counts(findings)}.`,
    `Checked: ${checked.rules} rules, ${checked.bodies} bodies, ${checked.pairs} pairs, ${checked.movers} movers, ${checked.moverPairs} pairs of movers.`,
    ...heading('Findings'),
    ...(findings.length === 0 ? ['none'] : []),
    ...findings.flatMap((finding, i) => findingLines(finding, i + 1, input)),
    ...(cases.length === 0 ? [] : heading('Loading cases')),
    ...cases.flatMap((load) => caseLines(load, design.units)),
    ...heading('Cautions'),
    ...CAUTIONS.flatMap((caution, i) => wrapped(caution, `${String(i + 1).padStart(3)}  `, '     ')),
  ];
  return `${lines.join('\n')}\n`;
};

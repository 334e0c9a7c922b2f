import { formatMass, type LengthUnits } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import type { FitOut } from '../fitout/index.ts';
import type { Finding, Inspection, LoadingCaseResult, OpeningOrder, Severity } from '../inspection/index.ts';
import type { CutAgain } from '../revision/index.ts';
import { CAUTIONS, nameOfPart, sayAmount, sayCase, sayCutWarning, sayFinding, sayRule } from '../says/index.ts';
import type { Marks } from './marks.ts';
import { orderLines } from './order-lines.ts';
import { NOT_RELEASED, releaseLines } from './release.ts';
import { signOffOf } from './sign-off.ts';

export interface InspectionSheetInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly inspection: Inspection;
  readonly marks: Marks;
  /** What has changed since sheets were cut from a released letter; left out where nothing is known of it. */
  readonly cutAgain?: CutAgain | null;
  readonly order: OpeningOrder;
}

const SEVERITIES: readonly Severity[] = ['stop', 'caution', 'note'];
const WIDTH = 100;
const LATER = ' '.repeat(5);

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

type Naming = (id: string) => string;

/** Marks of the cut parts among what the finding is about. */
const marksText = ({ parts }: Finding, { markOf }: Marks): readonly string[] => {
  const marks = [...new Set(parts.flatMap((part) => markOf.get(part) ?? []))];
  return marks.length === 0 ? [] : [`marks: ${marks.join(', ')}`];
};

const findingLines = (
  finding: Finding,
  number: number,
  input: InspectionSheetInput,
  names: Naming,
): readonly string[] => {
  const { units } = input.design;
  const said = sayFinding(finding, units, names);
  const spread = finding.uncertainty > 0 ? ` ± ${sayAmount(finding.uncertainty, finding.unit, units)}` : '';
  const lead = `${String(number).padStart(3)}  ${finding.severity.toUpperCase()}: `;
  const facts = [
    ...(said.valueText === '' ? [] : [`value ${said.valueText}${spread}`]),
    ...(said.limitText === '' ? [] : [`limit ${said.limitText.replace(/^of /, '')}`]),
    `source: ${finding.source} (${finding.status})`,
    ...marksText(finding, input.marks),
    `checked: ${sayRule(finding.rule)}`,
  ];
  const stands = finding.accepted;
  const onDay = stands === null || stands.on === '' ? '' : ` on ${stands.on}`;
  return [
    ...wrapped(said.title, lead, LATER),
    ...(said.detail === '' ? [] : wrapped(said.detail, LATER, LATER)),
    ...wrapped(facts.join('; '), LATER, LATER),
    ...(stands === null ? [] : wrapped(`accepted by ${stands.who}${onDay}: ${stands.why}`, LATER, LATER)),
  ];
};

/** `1 stop, 2 cautions, 0 notes; 1 of them accepted` */
export const findingCounts = (findings: readonly Finding[]): string => {
  const bySeverity = SEVERITIES.map((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  });
  const accepted = findings.filter((finding) => finding.accepted !== null).length;
  return `${bySeverity.join(', ')}${accepted === 0 ? '' : `; ${accepted} of them accepted`}`;
};

const margin = (kg: number | null, units: LengthUnits): string => (kg === null ? 'unknown' : formatMass(kg, units));

const caseLines = (load: LoadingCaseResult, units: LengthUnits): readonly string[] => [
  `  ${sayCase(load.id)}: front ${formatMass(load.frontKg, units)}, rear ${formatMass(load.rearKg, units)}, all ${formatMass(load.totalKg, units)}`,
  `      left to the rating: front ${margin(load.margins.frontKg, units)}, rear ${margin(load.margins.rearKg, units)}, gross ${margin(load.margins.grossKg, units)}`,
];

/** The record of letters and signatures, and what sheets already cut no longer fit; nothing before letter A. */
const revisionLines = ({ design, cutAgain }: InspectionSheetInput): readonly string[] => {
  if (design.revisions.length === 0) return [];
  const warning = cutAgain ? sayCutWarning(cutAgain.letter, cutAgain.panels) : '';
  return [
    ...heading('Revisions'),
    ...signOffOf(design).record.flatMap((line) => wrapped(line, '', LATER)),
    ...(warning === '' ? [] : wrapped(warning, 'CAUTION: ', LATER)),
  ];
};

/** The inspection sheet as plain text: every finding with its value, limit and source, then the
 * opening order, then loads, then cautions. */
export const inspectionSheet = (input: InspectionSheetInput): string => {
  const { design, inspection } = input;
  const { checked, findings, cases } = inspection;
  const names = nameOfPart(design, input.fitout);
  const held = releaseLines(design, inspection, names);
  const lines = [
    'INSPECTION SHEET',
    design.title,
    ...(design.customer === '' ? [] : [design.customer]),
    ...revisionLines(input),
    ...(held.length === 0 ? [] : ['', NOT_RELEASED, ...held.flatMap((line) => wrapped(line, LATER, LATER))]),
    '',
    `${findingCounts(findings)}.`,
    `Checked: ${checked.rules} rules, ${checked.bodies} bodies, ${checked.pairs} pairs, ${checked.movers} movers, ${checked.moverPairs} pairs of movers.`,
    ...heading('Findings'),
    ...(findings.length === 0 ? ['none'] : []),
    ...findings.flatMap((finding, i) => findingLines(finding, i + 1, input, names)),
    ...heading('Opening order'),
    ...orderLines(input.order, names).flatMap((line) => (line === '' ? [''] : wrapped(line, '', LATER))),
    ...(cases.length === 0 ? [] : heading('Loading cases')),
    ...cases.flatMap((load) => caseLines(load, design.units)),
    ...heading('Cautions'),
    ...CAUTIONS.flatMap(({ long }, i) => wrapped(long, `${String(i + 1).padStart(3)}  `, LATER)),
  ];
  return `${lines.join('\n')}\n`;
};

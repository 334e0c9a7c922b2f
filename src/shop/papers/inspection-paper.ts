import { formatMass } from '../../base/index.ts';
import type { Finding, Severity } from '../../inspection/index.ts';
import { CAUTIONS, sayAmount, sayCase, sayCutWarning, sayFinding, sayRule } from '../../says/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { findingCounts } from '../inspection-sheet.ts';
import { orderLines } from '../order-lines.ts';
import { type PaperCell, type PaperColumn, type PaperPiece, paperPages } from '../paper/index.ts';
import { NOT_RELEASED, releaseLines } from '../release.ts';
import { signOffOf } from '../sign-off.ts';
import { type CheckedRule, checkedRules } from './checked-rules.ts';
import { namesOf, type PapersInput, paperHead, SCREENING } from './paper.ts';

const FINDINGS: readonly PaperColumn[] = [
  { title: 'no.', share: 4, align: 'right' },
  { title: 'severity', share: 9 },
  { title: 'finding', share: 52 },
  { title: 'value', share: 13, align: 'right' },
  { title: 'limit', share: 13, align: 'right' },
  { title: 'source of the limit', share: 20 },
];

const CHECKS: readonly PaperColumn[] = [
  { title: 'what is checked', share: 32 },
  { title: 'came to', share: 22 },
  { title: 'measured', share: 10, align: 'right' },
  { title: 'nearest value', share: 15, align: 'right' },
  { title: 'its limit', share: 15, align: 'right' },
  { title: 'source of the limit', share: 24 },
];

const LOADS: readonly PaperColumn[] = [
  { title: 'aboard', share: 34 },
  { title: 'front axle', share: 13, align: 'right' },
  { title: 'left to rating', share: 13, align: 'right' },
  { title: 'rear axle', share: 13, align: 'right' },
  { title: 'left to rating', share: 13, align: 'right' },
  { title: 'all', share: 13, align: 'right' },
  { title: 'left to rating', share: 13, align: 'right' },
];

const day = (on: string): string => (on === '' ? '' : ` on ${on}`);

const findingCells = (
  finding: Finding,
  number: number,
  { design, drawings }: PapersInput,
  names: (id: string) => string,
): readonly PaperCell[] => {
  const { title, detail, valueText, limitText } = sayFinding(finding, design.units, names);
  const marks = [...new Set(finding.parts.flatMap((part) => drawings.marks.markOf.get(part) ?? []))];
  const spread = finding.uncertainty > 0 ? ` ± ${sayAmount(finding.uncertainty, finding.unit, design.units)}` : '';
  const stands = finding.accepted;
  return [
    String(number),
    finding.severity.toUpperCase(),
    [
      `${title}.`,
      detail,
      ...(marks.length === 0 ? [] : [`Marks: ${marks.join(', ')}.`]),
      ...(stands === null ? [] : [`\nACCEPTED by ${stands.who}${day(stands.on)}: ${stands.why}`]),
    ]
      .filter((words) => words !== '')
      .join(' '),
    valueText === '' ? '' : `${valueText}${spread}`,
    limitText.replace(/^of /, ''),
    `${finding.source} (${finding.status})`,
  ];
};

const SEVERITIES: readonly Severity[] = ['stop', 'caution', 'note'];

/** `clear`, or `1 stop, 2 cautions`. */
const outcomeText = ({ findings }: CheckedRule): string => {
  const counts = SEVERITIES.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? '' : 's'}`];
  });
  return counts.length === 0 ? 'nothing found' : counts.join(', ');
};

/** As many limits as a person reads in one cell. */
const MOST_LIMITS = 4;

/** What a rule that measured nothing would have held things against: the limits that it looked up. */
const limitsOf = (
  { rule }: CheckedRule,
  { rules, inspection, design }: PapersInput,
): { readonly limits: string; readonly sources: string } => {
  const met = (inspection.consulted[rule] ?? []).map((id) => rules.record(id)).filter(({ sense }) => sense !== 'value');
  const shown = met.slice(0, MOST_LIMITS);
  return {
    limits: shown.map(({ sense, value, unit }) => `${sense} ${sayAmount(value, unit, design.units)}`).join('; '),
    sources: [...new Set(shown.map(({ source, status }) => `${source} (${status})`))].join('; '),
  };
};

const checkCells = (checked: CheckedRule, input: PapersInput): readonly PaperCell[] => {
  const { rule, checks, worst, findings } = checked;
  const { units } = input.design;
  const lead = [sayRule(rule), outcomeText(checked), checks === 0 ? '–' : String(checks)];
  if (worst !== null) {
    const amount = (value: number): string => sayAmount(value, worst.unit, units);
    const spread = worst.uncertainty > 0 ? ` ± ${amount(worst.uncertainty)}` : '';
    return [...lead, `${amount(worst.value)}${spread}`, amount(worst.limit), `${worst.source} (${worst.status})`];
  }
  const [first] = findings;
  if (first !== undefined) {
    const { valueText, limitText } = sayFinding(first, units, namesOf(input));
    return [...lead, valueText, limitText.replace(/^of /, ''), `${first.source} (${first.status})`];
  }
  const { limits, sources } = limitsOf(checked, input);
  return [...lead, '–', limits === '' ? '–' : limits, sources];
};

const words = (text: string, strong = false): PaperPiece => ({ kind: 'words', words: text, strong });

/** The record of letters and signatures, and what sheets already cut no longer fit. */
const revisionPieces = ({ design, cutAgain }: PapersInput): readonly PaperPiece[] => {
  const warning = cutAgain ? sayCutWarning(cutAgain.letter, cutAgain.panels) : '';
  return [...signOffOf(design).record.map((line) => words(line)), ...(warning === '' ? [] : [words(warning, true)])];
};

const loadPieces = ({ design, inspection }: PapersInput): readonly PaperPiece[] => {
  const mass = (kg: number | null): string => (kg === null ? 'unknown' : formatMass(kg, design.units));
  if (inspection.cases.length === 0)
    return [
      words(
        'No loading case could be worked out: the weigh slip, the wheelbase or the place of the rear axle is missing.',
      ),
    ];
  return [
    {
      kind: 'table',
      columns: LOADS,
      rows: inspection.cases.map((load) => [
        sayCase(load.id),
        mass(load.frontKg),
        mass(load.margins.frontKg),
        mass(load.rearKg),
        mass(load.margins.rearKg),
        mass(load.totalKg),
        mass(load.margins.grossKg),
      ]),
    },
  ];
};

/** Every finding with value, limit, source and who accepted it; then every check made; opening order, loads, cautions. */
export const inspectionPaper = (input: PapersInput): readonly Drawing[] => {
  const { design, inspection, order } = input;
  const names = namesOf(input);
  const { checked, findings } = inspection;
  const held = releaseLines(design, inspection, names);
  return paperPages(paperHead(design, 'Inspection sheet', SCREENING, 'across'), [
    words(`${findingCounts(findings)}.`, true),
    ...(held.length === 0 ? [] : [words(NOT_RELEASED, true), ...held.map((line) => words(line))]),
    ...revisionPieces(input),
    words(
      `Checked: ${checked.rules} rules, ${checked.bodies} bodies, ${checked.pairs} pairs, ${checked.movers} movers, ${checked.moverPairs} pairs of movers.`,
    ),
    { kind: 'heading', words: 'Findings' },
    ...(findings.length === 0
      ? [words('Nothing was found.')]
      : [
          {
            kind: 'table',
            columns: FINDINGS,
            rows: findings.map((finding, i) => findingCells(finding, i + 1, input, names)),
          } as const,
        ]),
    { kind: 'heading', words: 'Every check' },
    words(
      'Of all that a rule measured, the check with the least to spare is shown. A dash is a rule that answers yes or no, or that had nothing of its kind to measure in this design.',
    ),
    { kind: 'table', columns: CHECKS, rows: checkedRules(inspection).map((each) => checkCells(each, input)) },
    { kind: 'heading', words: 'Loading cases' },
    ...loadPieces(input),
    { kind: 'heading', words: 'Opening order' },
    ...orderLines(order, names).flatMap((line) => (line === '' ? [] : [words(line)])),
    { kind: 'heading', words: 'Cautions' },
    ...CAUTIONS.map(({ long }, i) => words(`${i + 1}. ${long}`)),
    { kind: 'heading', words: 'Signed' },
    { kind: 'blanks', captions: ['Fabricator', 'date', 'For the department', 'date'], across: 2 },
  ]);
};

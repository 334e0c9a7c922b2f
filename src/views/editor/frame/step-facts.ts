import { type Design, designNodes, type NodeKind } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Finding, Severity } from '../../../inspection/index.ts';
import type { StepName } from '../state/store.ts';
import type { Judgement } from '../worker/api.ts';

/** What a step says of itself: how much is done, and what stands against it. */
export interface StepFact {
  readonly step: StepName;
  readonly says: string;
  readonly against: Readonly<Record<Severity, number>>;
}

const STEP_OF_KIND: Readonly<Partial<Record<NodeKind, StepName>>> = {
  gear: 'gear',
  carcass: 'cabinet',
  opening: 'cabinet',
  device: 'cabinet',
  mount: 'cabinet',
};

export const STEP_TITLES: Readonly<Record<StepName, string>> = {
  survey: 'Survey',
  gear: 'Gear',
  cabinet: 'Cabinet',
  inspect: 'Inspect',
  shop: 'Shop',
  review: 'Review',
};

/** The node that a solved part comes from: `opening-4/side-left` → `opening-4`. */
export const nodeOfPart = (part: string): string => part.split('/')[0] ?? part;

/** The steps at which a finding can be cleared: by the kind of what it is about. Every finding stands at Inspect too. */
export const stepsOfFinding = (kinds: ReadonlyMap<string, NodeKind>, finding: Finding): ReadonlySet<StepName> => {
  const steps = finding.parts.flatMap((part) => {
    const kind = kinds.get(nodeOfPart(part));
    const step = kind && STEP_OF_KIND[kind];
    return step ? [step] : [];
  });
  return new Set([...steps.slice(0, 1), 'inspect']);
};

const plural = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** What the readings come to in a word or two: the worst first. */
const SURVEY_STATES: readonly (readonly [string, string])[] = [
  ['survey-misread', 'one is off'],
  ['survey-closure-error', 'they disagree'],
  ['start-values', 'start values left'],
];

const surveySays = ({ survey }: Design, judgement: Judgement | null): string => {
  const { readings, stations, startValues } = survey;
  if (stations.length === 0 && readings.length === 0) return 'not measured yet';
  if (readings.length === 0) return startValues ? 'start values' : plural(stations.length, 'station');
  const open = new Set(judgement?.inspection.findings.flatMap(({ rule, accepted }) => (accepted ? [] : [rule])));
  const state = SURVEY_STATES.find(([rule]) => open.has(rule))?.[1] ?? (judgement ? 'all agree' : null);
  const count = plural(readings.length, 'reading');
  return state === null ? count : `${count}, ${state}`;
};

const says = (step: StepName, design: Design, fitOut: FitOut, judgement: Judgement | null): string => {
  const placed = design.gear.filter((gear) => gear.place !== null).length;
  switch (step) {
    case 'survey':
      return surveySays(design, judgement);
    case 'gear':
      return design.gear.length === 0 ? 'no gear yet' : `${placed} of ${design.gear.length} stowed`;
    case 'cabinet':
      return fitOut.carcasses.length === 0
        ? 'nothing built yet'
        : plural(fitOut.carcasses.length, 'carcass', 'carcasses');
    case 'inspect':
      return (judgement?.inspection.measured.length ?? 0) === 0
        ? 'nothing to check yet'
        : plural(judgement?.inspection.measured.length ?? 0, 'check');
    case 'shop':
      return fitOut.panels.length === 0 ? 'nothing to cut yet' : plural(fitOut.panels.length, 'panel');
    case 'review':
      return reviewFact(design);
  }
};

/** The newest letter and what people asked for on it. */
const reviewFact = ({ revisions, replies }: Design): string => {
  const letter = revisions.at(-1)?.letter;
  const open = replies.flatMap(({ remarks }) => remarks).filter(({ outcome }) => outcome.state === 'open').length;
  if (letter === undefined) return 'draft, not sent';
  return open === 0 ? `${letter} released` : `${letter} released, ${plural(open, 'remark')} open`;
};

/** Findings that stand against each step; accepted ones no longer do. */
export type StepCounts = ReadonlyMap<StepName, Readonly<Record<Severity, number>>>;

const NONE: Readonly<Record<Severity, number>> = { stop: 0, caution: 0, note: 0 };

/** Counts the findings about a design by the steps at which they can be cleared. */
export const countByStep = (findings: readonly Finding[], design: Design): StepCounts => {
  const kinds = new Map<string, NodeKind>(designNodes(design).map((node) => [node.id, node.kind]));
  const counts = new Map<StepName, Record<Severity, number>>();
  for (const finding of findings) {
    if (finding.accepted !== null) continue;
    for (const step of stepsOfFinding(kinds, finding)) {
      const count = counts.get(step) ?? { ...NONE };
      count[finding.severity] += 1;
      counts.set(step, count);
    }
  }
  return counts;
};

/** The facts of all six steps. */
export const stepFacts = (
  steps: readonly StepName[],
  design: Design,
  fitOut: FitOut,
  judgement: Judgement | null,
  counts: StepCounts,
): readonly StepFact[] => {
  const spaceFails = judgement !== null && !judgement.space.ok && design.survey.stations.length > 0;
  return steps.map((step) => {
    const { stop, caution, note } = counts.get(step) ?? NONE;
    const own = step === 'survey' && spaceFails ? 1 : step === 'cabinet' ? fitOut.problems.length : 0;
    return { step, says: says(step, design, fitOut, judgement), against: { stop: stop + own, caution, note } };
  });
};

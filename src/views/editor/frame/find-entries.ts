import { type Design, designNodes } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Finding } from '../../../inspection/index.ts';
import { SURVEY_PART_TITLES, SURVEY_PARTS, type SurveyPart } from '../sheets/survey/view.ts';
import { STEPS, type StepName } from '../state/store.ts';
import { STEP_TITLES } from './step-facts.ts';

/** What an entry does when it is taken. */
export type FindPlan =
  | { readonly kind: 'step'; readonly step: StepName }
  | {
      readonly kind: 'select';
      readonly step: StepName;
      readonly ids: readonly string[];
      readonly feeler: number | null;
    }
  | { readonly kind: 'survey'; readonly part: SurveyPart }
  | { readonly kind: 'command'; readonly command: FindCommand };

export const FIND_COMMANDS = ['undo', 'redo', 'save', 'open', 'new', 'designs', 'stow-all', 'help', 'print'] as const;
export type FindCommand = (typeof FIND_COMMANDS)[number];

const COMMAND_TITLES: Readonly<Record<FindCommand, string>> = {
  undo: 'Undo',
  redo: 'Redo',
  save: 'Save to a file',
  open: 'Open a file',
  new: 'New design',
  designs: 'Designs kept here, demo designs',
  'stow-all': 'Close everything that slides or turns',
  help: 'Help',
  print: 'Print this sheet',
};

export interface FindEntry {
  readonly key: string;
  /** What kind of thing it is, said beside it. */
  readonly kind: string;
  readonly title: string;
  readonly aside: string;
  readonly plan: FindPlan;
}

interface FindInput {
  readonly design: Design;
  readonly fitOut: FitOut;
  readonly findings: readonly Finding[];
  readonly sayFinding: (finding: Finding) => string;
  readonly nameOf: (id: string) => string;
}

const selects = (step: StepName, id: string): FindPlan => ({ kind: 'select', step, ids: [id], feeler: null });

const surveyEntries = (design: Design): readonly FindEntry[] =>
  designNodes(design)
    .filter((node) => ['obstacle', 'closure', 'zone', 'mount'].includes(node.kind))
    .map((node) => ({
      key: node.id,
      kind: node.kind,
      title: node.name === '' ? node.id : node.name,
      aside: '',
      plan: selects(node.kind === 'mount' ? 'cabinet' : 'survey', node.id),
    }));

const cabinetEntries = ({ fitOut, nameOf }: FindInput): readonly FindEntry[] => {
  const carcasses = new Map<string, string>(fitOut.carcasses.map((carcass) => [carcass.id, carcass.name]));
  return [
    ...fitOut.carcasses.map((carcass) => ({
      key: carcass.id,
      kind: 'carcass',
      title: carcass.name,
      aside: '',
      plan: selects('cabinet', carcass.id),
    })),
    ...fitOut.openings.map((opening) => ({
      key: opening.id,
      kind: 'opening',
      title: nameOf(opening.id),
      aside: carcasses.get(opening.carcass) ?? '',
      plan: selects('cabinet', opening.id),
    })),
    ...fitOut.panels.map((panel) => ({
      key: panel.id,
      kind: 'panel',
      title: panel.name,
      aside: carcasses.get(panel.carcass) ?? '',
      plan: selects('shop', panel.id),
    })),
  ];
};

/** Everything that can be gone to, in the order of the job. */
export const findEntries = (input: FindInput): readonly FindEntry[] => [
  ...STEPS.map((step, i) => ({
    key: `step-${step}`,
    kind: 'step',
    title: STEP_TITLES[step],
    aside: String(i + 1),
    plan: { kind: 'step', step } as const,
  })),
  ...SURVEY_PARTS.map((part) => ({
    key: `survey-${part}`,
    kind: 'survey',
    title: SURVEY_PART_TITLES[part],
    aside: 'part of step 1',
    plan: { kind: 'survey', part } as const,
  })),
  ...FIND_COMMANDS.map((command) => ({
    key: `command-${command}`,
    kind: 'command',
    title: COMMAND_TITLES[command],
    aside: '',
    plan: { kind: 'command', command } as const,
  })),
  ...input.findings.map((finding, i) => ({
    key: `finding-${i}`,
    kind: finding.severity,
    title: input.sayFinding(finding),
    aside: '',
    plan: { kind: 'select', step: 'inspect', ids: finding.parts, feeler: i } as const,
  })),
  ...surveyEntries(input.design),
  ...cabinetEntries(input),
  ...input.design.gear.map((gear) => ({
    key: gear.id,
    kind: 'gear',
    title: gear.name,
    aside: gear.place ? '' : 'no place yet',
    plan: selects('gear', gear.id),
  })),
];

/** 3 begins with it, 2 a word begins with it, 1 holds it, 0 does not. */
const closeness = (text: string, word: string): number => {
  if (text.startsWith(word)) return 3;
  if (text.includes(` ${word}`)) return 2;
  return text.includes(word) ? 1 : 0;
};

/** As many as stand in the dialog without scrolling; more letters find the rest. */
const MOST_SHOWN = 15;

/** The entries that hold every word, the best first; with nothing typed, steps and commands. */
export const ranked = (entries: readonly FindEntry[], typed: string): readonly FindEntry[] => {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return entries.filter(({ kind }) => kind === 'step' || kind === 'command');
  return entries
    .map((entry, place) => {
      const text = `${entry.title} ${entry.kind} ${entry.aside}`.toLowerCase();
      const fits = words.map((word) => closeness(text, word));
      return { entry, place, score: fits.includes(0) ? 0 : fits.reduce((sum, one) => sum + one, 0) / words.length };
    })
    .filter(({ score }) => score > 0)
    .toSorted((a, b) => b.score - a.score || a.place - b.place)
    .slice(0, MOST_SHOWN)
    .map(({ entry }) => entry);
};

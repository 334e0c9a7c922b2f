/** Every rule of the inspection, in the order in which the inspection sheet lists what was checked. */
export const RULE_IDS = [
  'cabinet-solves',
  'space-missing',
  'start-values',
  'survey-misread',
  'survey-closure-error',
  'survey-single-reading',
  'ratings-contradict',
  'body-in-space',
  'body-obstacle',
  'body-zone',
  'body-body',
  'moving-gap',
  'carcass-gap',
  'gear-in-room',
  'gear-unplaced',
  'hatch-closed',
  'mover-travel',
  'payload',
  'front-axle',
  'rear-axle',
  'side-to-side',
  'front-unload',
  'front-share',
  'stability',
  'stability-loss',
  'figures-missing',
  'disclosure',
  'part-too-small',
  'part-too-big',
] as const;
export type RuleId = (typeof RULE_IDS)[number];

const KNOWN: ReadonlySet<string> = new Set(RULE_IDS);
export const isRuleId = (id: string): id is RuleId => KNOWN.has(id);

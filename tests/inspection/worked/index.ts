import { RULE_IDS } from '../../../src/inspection/index.ts';
import { ACCESS } from './access.ts';
import type { WorkedExample } from './example.ts';
import { FIT } from './fit.ts';
import { HOLD } from './hold.ts';
import { MAKING } from './making.ts';
import { MOTION } from './motion.ts';
import { POWER } from './power.ts';
import { REACH } from './reach.ts';
import { SLIDES } from './slides.ts';
import { SURVEY } from './survey.ts';
import { WEIGHT } from './weight.ts';

const order = new Map<string, number>(RULE_IDS.map((id, i) => [id, i]));
const all = [FIT, SURVEY, MOTION, ACCESS, WEIGHT, HOLD, SLIDES, REACH, POWER, MAKING].flat();

/** The worked examples of the page of checks, in the order of the rules. */
export const EXAMPLES: readonly WorkedExample[] = all.toSorted(
  (a, b) => (order.get(a.rule) ?? 0) - (order.get(b.rule) ?? 0),
);

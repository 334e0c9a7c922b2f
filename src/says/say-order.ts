import type { GearReach, OrderRow, OrderStep } from '../inspection/index.ts';
import { sentence } from './words.ts';

type Naming = (id: string) => string;

/** Names of rests that need no place said: a mover that goes there is simply open or closed. */
const WHOLE: ReadonlySet<string> = new Set(['open', 'closed', 'stowed', 'out']);

const restWords = (rest: string | null): string => (rest === null || WHOLE.has(rest) ? '' : ` to ${rest}`);

const STEP_WORDS: { readonly [Act in OrderStep['act']]: (step: OrderStep, name: string) => string } = {
  open: ({ rest }, name) => `open ${name}${restWords(rest)}`,
  close: ({ rest }, name) =>
    rest === null || WHOLE.has(rest) ? `close ${name}` : `bring ${name} back${restWords(rest)}`,
  undo: ({ mover }, name) => (mover === null ? `undo the restraint in ${name}` : `undo the latch of ${name}`),
  'lift-away': (_, name) => `set ${name} aside`,
  take: (_, name) => `take ${name}`,
};

/** One motion, as the middle of a sentence: `undo the latch of small drawer`. */
export const sayOrderStep = (step: OrderStep, names: Naming): string => STEP_WORDS[step.act](step, names(step.part));

/** `3 motions`, or that no way was found. */
export const sayMotions = ({ count }: Pick<GearReach, 'count'>): string =>
  count === null ? 'not found' : `${count} ${count === 1 ? 'motion' : 'motions'}`;

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/**
 * How an item comes to hand in one sentence: `Open hatch, undo the latch of small drawer, open small drawer, take
 * flashlight.` Where nothing was found, what was in the way; that is not to say that there is no way.
 */
export const sayReach = ({ steps, stuck }: GearReach, names: Naming): string => {
  if (stuck === null) return `${sentence(steps.map((step) => sayOrderStep(step, names)).join(', '))}.`;
  const met = [...stuck.parts.map(names), ...(stuck.fixed === null ? [] : [stuck.fixed])];
  const inTheWay = met.length === 0 ? '' : ` In the way: ${listed([...new Set(met)])}.`;
  return `No straight way out was found.${inTheWay}`;
};

/** What one mover asks of another: `Before small drawer moves, hatch must be open.` */
export const sayOrderRow = ({ part, otherPart, at, notAt }: OrderRow, names: Naming): string => {
  const [mover, other] = [names(part), names(otherPart)];
  if (at.length === 0) return sentence(`${mover} cannot go its whole way past ${other}, wherever that stands.`);
  const where =
    at.length <= notAt.length
      ? listed(at).replace(' and ', ' or ')
      : `anywhere but ${listed(notAt).replace(' and ', ' or ')}`;
  return sentence(`Before ${mover} moves, ${other} must be ${where}.`);
};

import type { Finding, OrderStep } from '../../inspection/index.ts';
import { sayOrderStep } from '../say-order.ts';
import { factNumber, factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

const ACTS: ReadonlySet<string> = new Set(['open', 'close', 'undo', 'lift-away', 'take']);
const isAct = (act: string): act is OrderStep['act'] => ACTS.has(act);

/** The motions of a finding in a row: `open hatch, undo the latch of drawer, open drawer`. */
const motions = (finding: Finding, speech: Speech): string => {
  const [acts, done] = [factText(finding, 'acts').split(' '), factText(finding, 'done').split(' ')];
  const held = factText(finding, 'held');
  return acts
    .flatMap((act, i) => {
      const part = done[i];
      if (part === undefined || !isAct(act)) return [];
      const mover = act === 'undo' && part === held ? null : part;
      return [sayOrderStep({ act, part, mover, rest: null, share: null, count: 0 }, speech.name)];
    })
    .join(', ');
};

export const sayFirstDue: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'gear')} takes ${finding.value} motions to reach`),
  detail: `From the closed vehicle: ${motions(finding, speech)}. ${finding.limit} are wanted for first-due gear.`,
  valueText: `${finding.value} motions`,
  limitText: `of ${finding.limit}`,
});

export const sayGearOut: SayRule = (finding, speech) => {
  const met = [
    ...factText(finding, 'met')
      .split(' ')
      .filter((id) => id !== '')
      .map(speech.name),
    ...[factText(finding, 'fixed')].filter((name) => name !== ''),
  ];
  const inTheWay = met.length === 0 ? '' : ` In the way: ${[...new Set(met)].join(', ')}.`;
  return {
    title: sentence(`no straight way out was found for ${factText(finding, 'gear')}`),
    detail: `Tried straight out of ${partName(finding, 1, speech)} and lifted first, with all open that opens and what stands before it set aside.${inTheWay} It may still come out tilted.`,
    valueText: 'not found',
    limitText: '',
  };
};

export const sayHandRoom: SayRule = (finding, speech) => ({
  title: sentence(
    `a gloved hand does not fit at ${factText(finding, 'grip')} of ${partName(finding, 0, speech)}: ${factText(finding, 'body')} is before it`,
  ),
  detail: `${speech.length(finding.value)} free before the face; a glove wants ${speech.length(finding.limit)}, and ${speech.length(factNumber(finding, 'wideMm'))} across.`,
});

export const sayDeviceOut: SayRule = (finding) => ({
  title: sentence(
    `${factText(finding, 'device')} cannot be drawn out of its plate: ${factText(finding, 'body')} is before it`,
  ),
  detail: 'For service a device comes straight out through the face, by its own depth.',
  valueText: 'blocked',
  limitText: '',
});

export const sayMountOff: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'device')} does not come off: ${factText(finding, 'body')} is before it`),
  detail: `For service it comes straight off the way that it looks, with the closures open and the cabinet stowed; it needs ${speech.length(finding.limit)}. Hang it elsewhere, or let it look another way.`,
});

export const sayMountHeight: SayRule = (finding, speech) => ({
  title: sentence(
    `${factText(finding, 'device')} is ${speech.length(finding.value)} above ground with the closures open`,
  ),
  detail: `A short person's raised hand comes to about ${speech.length(finding.limit)}. Hang it lower, or on the trim.`,
});

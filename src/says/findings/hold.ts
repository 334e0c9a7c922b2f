import type { Finding } from '../../inspection/index.ts';
import { type FindingWords, factNumber, factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

const KILO = 1000;

/** A force as shops read it: newtons up to a thousand, then kilonewtons. */
const force = (newtons: number): string =>
  newtons < KILO ? `${Math.round(newtons)} N` : `${(newtons / KILO).toFixed(newtons < 10 * KILO ? 2 : 1)} kN`;

const THROWN: Readonly<Record<string, string>> = {
  forward: 'forward',
  rear: 'to the rear',
  left: 'to the left',
  right: 'to the right',
  up: 'up',
};

const thrown = (finding: Finding): string =>
  `thrown ${THROWN[factText(finding, 'way')] ?? ''} at ${factNumber(finding, 'g')} g`;

const LINK_WORDS: Readonly<Record<string, string>> = {
  'panel-bearing': 'the bolt tears through the panel of the carcass',
  'panel-punching': 'the head pulls through the panel of the carcass',
  bracket: 'the bracket gives way',
  bolt: 'the bolt gives way',
  insert: 'the insert in the floor gives way',
  'sheet-bearing': 'the bolt tears through the sheet of the vehicle',
  'sheet-punching': 'the plate pulls through the sheet of the vehicle',
  plate: 'the plate behind the sheet bends',
  bond: 'the bond of the plate gives way',
  'below-bearing': 'the bolt tears through the carcass below',
  'below-punching': 'the nut pulls through the carcass below',
};

const BRACE_LINK_WORDS: Readonly<Record<string, string>> = {
  'brace-panel-bearing': 'a bolt of the brace tears through its panel',
  'brace-panel-punching': 'a washer of the brace pulls through its panel',
  'brace-bolt': 'a bolt of the brace gives way',
  'brace-bar-bearing': 'a bolt of the brace tears through the bar',
  'brace-bar': 'the bar bends or buckles',
  'brace-turn':
    'the bolts of the brace stand on one line, and the load turns about it: set a second brace apart from it',
  loose: 'the group is in no balance on what it stands on',
};

const hangsOn = (finding: Finding): boolean => factText(finding, 'group') === 'holds';

/** The braces that a carcass hangs on: they follow it among the parts. */
const braceNames = ({ parts }: Finding, speech: Speech): string => parts.slice(1).map(speech.name).join(' and ');

/** What the carcasses that braces tie together hold as one: empty where nothing is tied. */
const asGroup = (finding: Finding, speech: Speech): string => {
  if (factText(finding, 'group') === '') return '';
  const group = `Tied by braces, ${factNumber(finding, 'groupCount')} carcasses of ${speech.amount(factNumber(finding, 'groupKg'), 'kg')} as one rigid body`;
  const missing = factText(finding, 'groupMissing');
  if (missing !== '') return ` ${group} are not counted on: no strength is given for ${speech.name(missing)}.`;
  const link = factText(finding, 'groupLink');
  const words = LINK_WORDS[link] ?? BRACE_LINK_WORDS[link] ?? 'an anchor gives way';
  const use =
    'groupUse' in finding.facts ? ` use ${speech.amount(factNumber(finding, 'groupUse'), 'share')}` : ' do not hold';
  const way = `thrown ${THROWN[factText(finding, 'groupWay')] ?? ''} at ${factNumber(finding, 'groupG')} g`;
  const weakest = `the weakest link is at ${speech.name(factText(finding, 'groupPart'))}, where ${words}`;
  return hangsOn(finding)
    ? ` ${group}${use} ${way}; ${weakest}. Without its braces it is not held.`
    : ` ${group}${use} ${way}, which is not enough either: ${weakest}.`;
};

const SCREENING = 'A screening sum, not a crash test.';

export const sayAnchorHold: SayRule = (finding, speech): FindingWords => {
  const link = factText(finding, 'link');
  const mass = speech.amount(factNumber(finding, 'kg'), 'kg');
  const carcass = partName(finding, 0, speech);
  if (link === 'loose')
    return {
      title: sentence(
        hangsOn(finding)
          ? `the anchors of ${carcass} stand on one line: it is held only by ${braceNames(finding, speech)}`
          : `the anchors of ${carcass} stand on one line`,
      ),
      detail: `${mass} ${thrown(finding)} would turn about them. Set anchors apart, in both directions.${asGroup(finding, speech)}`,
      valueText: `${finding.value}`,
      limitText: 'apart',
    };
  return {
    title: sentence(
      hangsOn(finding)
        ? `${carcass} hangs on ${braceNames(finding, speech)}: alone, ${LINK_WORDS[link] ?? 'an anchor gives way'}`
        : `${carcass} is not held: ${LINK_WORDS[link] ?? 'an anchor gives way'}`,
    ),
    detail: `${hangsOn(finding) ? 'Alone, ' : ''}${mass} ${thrown(finding)} put ${force(factNumber(finding, 'shearN'))} across and ${force(factNumber(finding, 'tensionN'))} along the bolt of ${speech.name(factText(finding, 'anchor'))}.${asGroup(finding, speech)} ${SCREENING}`,
    valueText: `${speech.amount(finding.value, 'share')} used${hangsOn(finding) ? ' alone' : ''}`,
  };
};

export const sayAnchorCount: SayRule = (finding, speech) => ({
  title: sentence(
    finding.value === 0
      ? `nothing holds ${partName(finding, 0, speech)} down`
      : `${partName(finding, 0, speech)} has ${finding.value} anchors`,
  ),
  detail: `At least ${finding.limit} anchors are wanted for each carcass.`,
});

export const sayAnchorEdge: SayRule = (finding, speech) => ({
  title: sentence(
    finding.value <= 0
      ? `${partName(finding, 1, speech)} lies beside its panel`
      : `${partName(finding, 1, speech)} is ${speech.length(finding.value)} from the edge of its panel`,
  ),
  detail: `${speech.length(finding.limit)} is wanted, so that the bolt does not split the edge.`,
});

const BRACKET_TITLE: Readonly<Record<string, (bracket: string, anchor: string, gap: string) => string>> = {
  none: (bracket, anchor) => `${bracket} at ${anchor} has no wall of the vehicle before it`,
  far: (bracket, anchor, gap) => `${bracket} at ${anchor} may not reach the wall, ${gap} away`,
  near: (bracket, anchor, gap) => `${bracket} at ${anchor} may not fit before the wall, ${gap} away`,
};

export const sayBracketReach: SayRule = (finding, speech) => {
  const wall = factText(finding, 'wall');
  const gap = speech.length(finding.value);
  const [least, most] = [factNumber(finding, 'leastMm'), factNumber(finding, 'mostMm')].map(speech.length);
  const known = wall === 'none' ? '' : ` The gap is known to ± ${speech.length(finding.uncertainty)}.`;
  const words = BRACKET_TITLE[wall]?.(factText(finding, 'bracket'), partName(finding, 1, speech), gap) ?? '';
  return {
    title: sentence(finding.severity === 'stop' ? words.replace('may not', 'does not') : words),
    detail: `It bridges ${least} to ${most}.${known} Choose another bracket, or move the anchor or the carcass.`,
    ...(wall === 'none' ? { valueText: 'no wall' } : {}),
  };
};

export const sayAnchorNoHole: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 1, speech)} would be drilled into ${factText(finding, 'zone')}`),
  detail: 'The survey says that no hole may be made here. Look and photograph below before any hole.',
  valueText: 'in the zone',
  limitText: 'no hole',
});

export const sayHoldUnknown: SayRule = (finding, speech) => ({
  title: sentence(`how well ${partName(finding, 0, speech)} is held is not fully known`),
  detail: `The catalog gives no strength for ${partName(finding, 1, speech)}: ask its maker, or choose a piece that is rated.`,
  valueText: 'unknown',
  limitText: '',
});

const unknownRating = (finding: Finding, speech: Speech): string => {
  const unrated = factText(finding, 'unrated');
  return unrated === '' ? '' : ` No strength is given for ${speech.name(unrated)}.`;
};

export const sayLatchHold: SayRule = (finding, speech) => ({
  title: sentence(
    finding.limit === 0
      ? `nothing rated keeps ${factText(finding, 'mover')} closed`
      : `the latch of ${factText(finding, 'mover')} holds too little`,
  ),
  detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')} ${thrown(finding)}, the way it opens, pull with ${force(finding.value)}.${unknownRating(finding, speech)} ${SCREENING}`,
  valueText: force(finding.value),
  limitText: `of ${force(finding.limit)}`,
});

export const sayBackStop: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'mover')} would go through the back of its carcass`),
  detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')} ${thrown(finding)} push with ${force(finding.value)}; ${factNumber(finding, 'stops') > 0 ? 'its stops hold' : 'the back panel holds'} ${force(finding.limit)}.${unknownRating(finding, speech)} ${SCREENING}`,
  valueText: force(finding.value),
  limitText: `of ${force(finding.limit)}`,
});

const KEPT_BY: Readonly<Record<string, string>> = {
  net: 'the net',
  strap: 'the strap',
  bracket: 'the bracket',
  lip: 'a lip',
  nothing: 'nothing',
};

export const sayGearHold: SayRule = (finding, speech) => {
  const [keeps, gear] = [factText(finding, 'keeps'), factText(finding, 'gear')];
  if (keeps === 'nothing' || keeps === 'lip')
    return {
      title: sentence(`${keeps === 'lip' ? 'only a lip keeps' : 'nothing keeps'} ${gear} in place`),
      detail: `In ${partName(finding, 0, speech)}. Strap down or shut in what weighs more than ${speech.amount(finding.limit, 'kg')}.`,
      limitText: `over ${speech.amount(finding.limit, 'kg')}`,
    };
  const items = factNumber(finding, 'items');
  const what = items > 1 ? `${items} items` : gear;
  return {
    title: sentence(`${KEPT_BY[keeps] ?? keeps} of ${partName(finding, 0, speech)} holds too little`),
    detail: `${what}, ${speech.amount(factNumber(finding, 'kg'), 'kg')} thrown out at ${factNumber(finding, 'g')} g, pull with ${force(finding.value)}.${unknownRating(finding, speech)} ${SCREENING}`,
    valueText: force(finding.value),
    limitText: `of ${force(finding.limit)}`,
  };
};

const LACKS: Readonly<Record<string, string>> = {
  strap: 'no strap goes over it',
  lock: 'no positive lock holds it',
  'strap lock': 'no strap goes over it and no positive lock holds it',
};

export const sayGearNeedsBracket: SayRule = (finding, speech) => {
  const gear = factText(finding, 'gear');
  const lacks = LACKS[factText(finding, 'lacks')];
  if (lacks !== undefined)
    return {
      title: sentence(`${gear} can leave its bracket: ${lacks}`),
      detail: `In ${partName(finding, 1, speech)}. Brackets for breathing sets are asked to have both; what yours asks, its maker and your authority say.`,
      valueText: 'not held twice',
      limitText: '',
    };
  return {
    title: sentence(`${gear} wants a bracket`),
    detail: `In ${partName(finding, 1, speech)}, ${KEPT_BY[factText(finding, 'keeps')] ?? 'nothing'} keeps it.`,
    valueText: 'no bracket',
    limitText: '',
  };
};

export const saySeatBackLoad: SayRule = (finding, speech) => ({
  title: sentence(`${speech.amount(finding.value, 'kg')} would come against ${factText(finding, 'seat')}`),
  detail: `Nothing holds it forward, and people sit against that seat-back. Seat-backs are tried with ${speech.amount(finding.limit, 'kg')}; they are no part of what holds a cabinet.`,
  limitText: `of ${speech.amount(finding.limit, 'kg')}`,
});

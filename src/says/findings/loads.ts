import { type FigureName, type Finding, isRuleId } from '../../inspection/index.ts';
import { RULE_NAMES } from '../rule-names.ts';
import { sayCase } from '../say-case.ts';
import { type FindingWords, factNumber, factText, type SayRule, type Speech } from '../words.ts';

/** A usual case, or the name of one of the design's own. */
const nameCase = (id: string, speech: Speech): string => {
  const usual = sayCase(id);
  return usual === id ? speech.name(id) : usual;
};

const caseOf = (finding: Finding, speech: Speech): string => nameCase(factText(finding, 'case'), speech);

const otherCases = (finding: Finding, speech: Speech): string => {
  const over = factText(finding, 'casesOver')
    .split(' ')
    .filter((id) => id !== '' && id !== factText(finding, 'case'));
  return over.length === 0 ? '' : ` Over as well: ${over.map((id) => nameCase(id, speech)).join('; ')}.`;
};

/** A weight against a rating: what is over, or what is left of what the shop wants to keep free. */
const rated =
  (what: string): SayRule =>
  (finding, speech): FindingWords => {
    const mass = (kg: number): string => speech.amount(kg, 'kg');
    const left = factNumber(finding, 'leftKg');
    const spread = finding.uncertainty > 0 ? ` Known to ± ${mass(finding.uncertainty)}.` : '';
    const total = `${mass(finding.value)} of ${mass(factNumber(finding, 'ratingKg'))} with ${caseOf(finding, speech)}.`;
    return left < 0
      ? {
          title: `${what}: ${mass(-left)} over its rating`,
          detail: `${total}${otherCases(finding, speech)}${spread}`,
          valueText: `${mass(-left)} over`,
          limitText: `of ${mass(factNumber(finding, 'ratingKg'))}`,
        }
      : {
          title: `${what}: ${mass(left)} left under its rating`,
          detail: `${total} ${mass(factNumber(finding, 'wantedKg'))} is wanted free.${spread}`,
          valueText: `${mass(left)} left`,
          limitText: `of ${mass(factNumber(finding, 'wantedKg'))} wanted`,
        };
  };

export const sayPayload = rated('Whole vehicle');
export const sayFrontAxle = rated('Front axle');
export const sayRearAxle = rated('Rear axle');

export const saySideToSide: SayRule = (finding, speech) => ({
  title: `The ${factText(finding, 'heavy')} side is heavy by ${speech.amount(finding.value, 'share')}`,
  detail:
    `With ${caseOf(finding, speech)}. Move heavy gear across, or a carcass.` +
    (factText(finding, 'weighed') === 'yes' ? '' : ' Left and right were not weighed: the vehicle counts as even.'),
});

export const sayFrontUnload: SayRule = (finding, speech) => ({
  title: `The front axle loses ${speech.amount(finding.value, 'share')} of its load`,
  detail: `${speech.amount(factNumber(finding, 'receivedKg'), 'kg')} as received, ${speech.amount(factNumber(finding, 'frontKg'), 'kg')} with ${caseOf(finding, speech)}. Steering and braking live on it.`,
});

export const sayFrontShare: SayRule = (finding, speech) => ({
  title: `Only ${speech.amount(finding.value, 'share')} of the weight is on the front axle`,
  detail: `${speech.amount(factNumber(finding, 'frontKg'), 'kg')} of ${speech.amount(factNumber(finding, 'totalKg'), 'kg')} with ${caseOf(finding, speech)}.`,
});

export const sayStability: SayRule = (finding, speech) => ({
  title: `Static stability factor ${speech.amount(finding.value, 'factor')}`,
  detail: `With ${caseOf(finding, speech)}, the centre of gravity is ${speech.length(factNumber(finding, 'cgHeightMm'))} above ground. It compares loadings; it is not a chance of rolling over.`,
});

export const sayStabilityLoss: SayRule = (finding, speech) => ({
  title: `The load costs ${speech.amount(finding.value, 'factor')} of the static stability factor`,
  detail: `${speech.amount(factNumber(finding, 'before'), 'factor')} as received, ${speech.amount(factNumber(finding, 'after'), 'factor')} with ${caseOf(finding, speech)}. Stow heavy gear lower.`,
});

const FIGURE_WORDS: { readonly [Name in FigureName]: string } = {
  slip: 'the weigh slip: front and rear axle as received',
  'gross-rating': 'the gross rating from the label',
  'front-axle-rating': 'the front axle rating from the label',
  'rear-axle-rating': 'the rear axle rating from the label',
  wheelbase: 'the wheelbase',
  'sill-behind-rear-axle': 'how far the hatch sill lies behind the rear axle',
  track: 'the track',
  'floor-height': 'the height of the cargo floor above ground',
  'cg-height': 'the height of the centre of gravity as received',
  seats: 'the seats, for who rides along',
  fuel: 'the tank, and how full it was on the scale',
};

const isFigure = (name: string): name is FigureName => name in FIGURE_WORDS;

/** A figure of the vehicle that somebody has to bring, as the end of a sentence. */
export const sayFigure = (name: string): string => (isFigure(name) ? FIGURE_WORDS[name] : name);

/** The checks that wait for the figure. */
const silentRules = (finding: Finding): string =>
  factText(finding, 'silent')
    .split(' ')
    .map((id) => (isRuleId(id) ? RULE_NAMES[id] : id))
    .join(', ');

export const sayFiguresMissing: SayRule = (finding) => ({
  title: `Needs ${sayFigure(factText(finding, 'figure'))}`,
  detail:
    factText(finding, 'figure') === 'fuel'
      ? `Loads count with the fuel of that day. Not checked with a full tank: ${silentRules(finding)}.`
      : `Not checked without it: ${silentRules(finding)}.`,
  valueText: 'unknown',
  limitText: '',
});

const DISCLOSED: Readonly<Record<string, (speech: Speech, finding: Finding) => string>> = {
  'new-untitled': (speech, finding) =>
    `This vehicle is new and untitled. Rules in the United States ask for a load label above ${speech.amount(finding.limit, 'kg')} before the first sale, and whoever fits it answers as an alterer.`,
  'in-service': (speech, finding) =>
    `This vehicle is in service. A written statement of the load capacity that is left is good practice above ${speech.amount(finding.limit, 'kg')}; nothing that makes a safety part inoperative may be done.`,
  other: (speech, finding) =>
    `Above ${speech.amount(finding.limit, 'kg')} the shop asks the local authority what has to be weighed, entered and approved.`,
  ask: (speech, finding) =>
    `Rules in the United States ask for a load label above ${speech.amount(finding.limit, 'kg')} before the first sale. Say once whether the vehicle is new and untitled or in service, and whose rules count.`,
};

export const sayDisclosure: SayRule = (finding, speech: Speech) => ({
  title:
    factText(finding, 'sale') === 'in-service'
      ? 'The load capacity falls: state what is left'
      : 'Added mass may have to be disclosed',
  detail: `The cabinet adds ${speech.amount(finding.value, 'kg')}, gear not counted. ${(DISCLOSED[factText(finding, 'sale')] ?? DISCLOSED.ask)?.(speech, finding) ?? ''}`,
  limitText: `over ${speech.amount(finding.limit, 'kg')}`,
});

export const sayWeighDifference: SayRule = (finding, speech) => {
  const more = factNumber(finding, 'moreKg');
  return {
    title: `The scale says ${speech.amount(Math.abs(more), 'kg')} ${more > 0 ? 'more' : 'less'} than predicted`,
    detail: `With ${caseOf(finding, speech)}, where the fit-out was to add ${speech.amount(factNumber(finding, 'addedKg'), 'kg')}. ${
      Math.abs(factNumber(finding, 'sigmas')) > 2
        ? 'More than chance explains: look for what is missing or counted twice.'
        : 'Within what the masses are known to.'
    }`,
  };
};

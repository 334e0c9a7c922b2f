import { factNumber, factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

const doubt = (uncertainty: number, speech: Speech): string =>
  uncertainty === 0 ? '' : ` Known to ± ${speech.length(uncertainty)}.`;

const UNSOUND_WORDS: Readonly<Record<string, string>> = {
  'no-axis': 'its direction or axis has no length',
  'no-amount': 'how far it goes is not a number',
  'goes-round': 'it turns more than once round',
};

export const sayMoverTravel: SayRule = (finding, speech) => {
  const mover = partName(finding, 0, speech, factText(finding, 'mover'));
  const obstacle = factText(finding, 'obstacle') || partName(finding, 1, speech);
  if (factText(finding, 'what') === 'unsound')
    return {
      title: sentence(
        `${mover} cannot be judged: ${UNSOUND_WORDS[factText(finding, 'why')] ?? 'its travel is unclear'}`,
      ),
      detail: 'It counts as standing still until that is mended.',
      valueText: '',
      limitText: '',
    };
  if (factText(finding, 'what') === 'meets') {
    const short = speech.amount(finding.limit - finding.value, finding.unit);
    return {
      title: sentence(`${mover} opens ${short} short: it meets ${obstacle}`),
      detail: `Out ${speech.amount(finding.value, finding.unit)} of ${speech.amount(finding.limit, finding.unit)}, then ${factText(finding, 'body')} touches ${obstacle}.${finding.uncertainty > 0 ? ` Known to ± ${speech.amount(finding.uncertainty, finding.unit)}.` : ''}`,
      valueText: `${short} short`,
      limitText: `of ${speech.amount(finding.limit, finding.unit)}`,
    };
  }
  const out = speech.amount(factNumber(finding, 'out'), factText(finding, 'outUnit'));
  return {
    title: sentence(`${mover}, coming out, passes ${speech.length(finding.value)} from ${obstacle}`),
    detail: `Nearest when it is out ${out}; ${speech.length(finding.limit)} is wanted between moving parts.${doubt(finding.uncertainty, speech)}`,
  };
};

export const sayClosureSwing: SayRule = (finding, speech) => {
  const [subject, closure] = [partName(finding, 0, speech), factText(finding, 'closure')];
  const open = speech.amount(factNumber(finding, 'openDeg'), 'deg');
  if (factText(finding, 'what') === 'meets')
    return {
      title: sentence(`${closure} meets ${subject} on its swing, at ${open} from closed`),
      detail: `${sentence(factText(finding, 'piece'))} runs ${speech.length(-finding.value)} into ${factText(finding, 'body')}.${doubt(finding.uncertainty, speech)}`,
    };
  return {
    title: sentence(`${closure} passes ${speech.length(Math.abs(finding.value))} from ${subject} on its swing`),
    detail: `Nearest at ${open} from closed, to ${factText(finding, 'body')}; ${speech.length(finding.limit)} is wanted.${doubt(finding.uncertainty, speech)}`,
  };
};

export const sayLowRoof: SayRule = (finding, speech) => {
  const closure = factText(finding, 'closure');
  return {
    title: sentence(`${closure} does not open fully under a roof at ${speech.length(factNumber(finding, 'roofMm'))}`),
    detail: `Its swing reaches ${speech.length(finding.value)} above ground. Under that roof it opens ${speech.amount(factNumber(finding, 'reachesDeg'), 'deg')} of ${speech.amount(factNumber(finding, 'opensDeg'), 'deg')} before it touches.`,
  };
};

const PAIR_WORDS: Readonly<Record<string, (first: string, second: string) => string>> = {
  'either-first': (first, second) => `${first} and ${second} cross: move one at a time`,
  'first-leads': (first, second) => `${first} must open before ${second}`,
  'second-leads': (first, second) => `${second} must open before ${first}`,
  'in-step': (first, second) => `${first} and ${second} only open in step`,
  'never-together': (first, second) => `${first} and ${second} cannot be out together`,
};

export const sayMoverPairs: SayRule = (finding, speech) => {
  const [first, second] = [partName(finding, 0, speech), partName(finding, 1, speech)];
  const words = PAIR_WORDS[factText(finding, 'verdict')];
  return {
    title: sentence(words ? words(first, second) : `${first} and ${second} are in each other's way`),
    detail: 'Judged over all places of both, not at samples. The opening order lists what must stand where.',
    valueText: '',
    limitText: '',
  };
};

export const sayWorkingTriple: SayRule = (finding, speech) => {
  const closures = factText(finding, 'closures');
  const under = closures === '' ? '' : ` under ${closures}`;
  return {
    title: sentence(`${partName(finding, 0, speech)} and ${partName(finding, 1, speech)} do not both come out${under}`),
    detail: 'No order was found in which a working person has all of them out at once.',
    valueText: '',
    limitText: '',
  };
};

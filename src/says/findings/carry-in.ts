import type { Finding } from '../../inspection/index.ts';
import { type FindingWords, factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

type SayWhat = (finding: Finding, name: string, by: string, speech: Speech) => FindingWords;

const NO_FIGURE = { valueText: '', limitText: '' };
const SHUT_IN =
  ' With everything else in its place no way out was found for it: what was carried in later goes out first.';

const WORDS: Readonly<Record<string, SayWhat>> = {
  'not-found': (finding, name, by, speech) => ({
    title: sentence(`no way in was found for ${name}`),
    detail: `That is not to say that there is none. Drawn straight it comes ${speech.length(finding.value)} of ${speech.length(finding.limit)} out of its place${by === '' ? '' : `; what it met most: ${by}`}.`,
  }),
  tight: (finding, name, by, speech) => ({
    title: sentence(`${name} passes ${speech.length(finding.value)} from ${by} when it is carried in`),
    detail: `${speech.length(finding.limit)} is wanted for two people to pass by.${finding.uncertainty > 0 ? ` Known to ± ${speech.length(finding.uncertainty)}.` : ''} The way is proven, and listed step by step under carrying in.${factText(finding, 'alone') === 'no' ? SHUT_IN : ''}`,
  }),
  'shut-in': (_finding, name) => ({
    title: sentence(`${name} is shut in by what is carried in after it`),
    detail: SHUT_IN.trim(),
    ...NO_FIGURE,
  }),
  'mount-in': (_finding, name, by) => ({
    title: sentence(`${name} comes off, but no way out of the vehicle was found for it`),
    detail: `With the closures open and every carcass in its place.${by === '' ? '' : ` What it met most: ${by}.`} It may still come out turned.`,
    ...NO_FIGURE,
  }),
};

export const sayCarryInFinding: SayRule = (finding, speech) => {
  const name = partName(finding, 0, speech);
  const words = WORDS[factText(finding, 'what')];
  return words
    ? words(finding, name, factText(finding, 'by'), speech)
    : { title: sentence(`carrying in ${name}`), detail: '' };
};

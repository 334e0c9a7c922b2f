import { factNumber, factText, partName, type SayRule, sentence } from '../words.ts';

export const sayLifting: SayRule = (finding, speech) => {
  const where = `hands ${speech.length(factNumber(finding, 'reachMm'))} out and ${speech.length(factNumber(finding, 'heightMm'))} above ground`;
  const kg = speech.amount(factNumber(finding, 'kg'), 'kg');
  return factText(finding, 'outside') === 'yes'
    ? {
        title: sentence(`${factText(finding, 'gear')} is out of reach for a lift`),
        detail: `${kg}, ${where}: nothing should be lifted there. Put it on a tray, nearer to the face, or lower.`,
        valueText: 'not allowed',
        limitText: '',
      }
    : {
        title: sentence(`${factText(finding, 'gear')} is heavy where it is lifted`),
        detail: `${kg}, ${where}: ${speech.amount(factNumber(finding, 'limitKg'), 'kg')} is recommended there. Nearer to the face, at waist height, or on a tray it is easier.`,
        valueText: `index ${finding.value.toFixed(2)}`,
        limitText: `of ${finding.limit}`,
      };
};

const HEAVY: Readonly<Record<string, string>> = {
  low: 'lies low for its mass',
  high: 'lies high for its mass',
  deep: 'lies deep in for its mass',
};

export const sayHeavyGear: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'gear')} ${HEAVY[factText(finding, 'what')] ?? ''}`),
  detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')}, lifted at ${speech.length(finding.value)}.`,
});

export const sayReachFar: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'gear')} is beyond a small person's reach`),
  detail: `First-due, ${speech.length(finding.value)} from the shoulder of a person of the 5th percentile in boots, stretched arm.`,
});

export const sayControlHeight: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 0, speech)} is ${speech.length(finding.value)} above ground`),
  detail: `Radios, screens and switches are wanted ${finding.value < finding.limit ? 'at least' : 'at most'} ${speech.length(finding.limit)} up.`,
});

export const sayReadingAngle: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 0, speech)} is read at a slant`),
  detail: 'Seen by the smallest and the tallest user before it, the worse counts. Tilt the plate towards the eye.',
});

export const sayHeadClear: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'closure')}, open, is ${speech.length(finding.value)} above ground`),
  detail: 'A tall person in a helmet strikes it. Mark the edge, or let it open wider.',
});

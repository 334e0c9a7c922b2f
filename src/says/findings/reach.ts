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

export const sayPullHeight: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'what')} is ${speech.length(finding.value)} above ground`),
  detail: 'A small person does not reach it. A pull strap that hangs lower, or a pull further down, brings it to hand.',
});

export const saySeeIn: SayRule = (finding, speech) => ({
  title: sentence(`one cannot look into ${partName(finding, 0, speech)}`),
  detail: `Its upper edge is ${speech.length(finding.value)} above ground. Lower it, or keep there what is found without looking.`,
});

export const sayWriteHeight: SayRule = (finding, speech) => ({
  title: sentence(
    `${partName(finding, 0, speech)} ${factText(finding, 'lies') === 'flat' ? 'is written on' : 'has its middle'} ${speech.length(finding.value)} above ground`,
  ),
  detail: `A working face is wanted ${finding.value < finding.limit ? 'at least' : 'at most'} ${speech.length(finding.limit)} up.`,
});

export const sayMirrorView: SayRule = (finding, speech) => ({
  title: 'The cabinet stands in the view of the inside mirror',
  detail: `${speech.amount(finding.value, 'share')} of the rear glass is covered as the mirror sees it, most of it by ${partName(finding, 0, speech)}. A rear camera and outside mirrors are duties of their own; keep the stop lamp clear.`,
});

export const sayRfDistance: SayRule = (finding, speech) =>
  finding.limit === 0
    ? {
        title: sentence(`no distance is known for ${factText(finding, 'antenna')}`),
        detail: `${speech.amount(factNumber(finding, 'watts'), 'W')} is beyond the table of the house rules. Ask whoever answers for the radios how near people may stand.`,
        valueText: 'unknown',
        limitText: '',
      }
    : {
        title: sentence(
          `${factText(finding, 'antenna')} sends ${speech.length(finding.value)} from people at the open hatch`,
        ),
        detail: `${speech.amount(factNumber(finding, 'watts'), 'W')}, sending up to half of the time: ${speech.length(finding.limit)} are wanted. Move the antenna forward, or send at less power while people work there.`,
      };

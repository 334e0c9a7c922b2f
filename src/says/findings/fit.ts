import { ROUNDING_MM } from '../../base/index.ts';
import type { Finding } from '../../inspection/index.ts';
import { factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

/** How a gap to something stands, as the middle of a sentence: `stands 3/8 in into`, `comes within 1/4 in of`. */
const standing = (finding: Finding, speech: Speech): string => {
  if (finding.value < 0) return `stands ${speech.length(-finding.value)} into`;
  if (finding.value <= ROUNDING_MM) return 'touches';
  const gap = speech.length(finding.value);
  return gap.startsWith('less') ? 'all but touches' : `comes within ${gap} of`;
};

const wanted = (finding: Finding, speech: Speech): string => `${speech.length(finding.limit)} is wanted`;

/** What the uncertainty means for the reader. */
const doubt = (finding: Finding, speech: Speech): string => {
  if (finding.uncertainty === 0) return '';
  const known = `The gap is known to ± ${speech.length(finding.uncertainty)}`;
  return finding.severity === 'caution' ? ` ${known}, too little to tell: measure here again.` : ` ${known}.`;
};

const nearest = (finding: Finding, speech: Speech): string => {
  const body = factText(finding, 'bodyName');
  const subject = partName(finding, 0, speech);
  if (body === '' || body === subject) return sentence(wanted(finding, speech));
  return `${finding.value < 0 ? 'Furthest in the way' : 'Nearest'} is ${body}; ${wanted(finding, speech)}`;
};

const gapDetail = (finding: Finding, speech: Speech): string => `${nearest(finding, speech)}.${doubt(finding, speech)}`;

export const sayBodyInSpace: SayRule = (finding, speech) => ({
  title: sentence(
    finding.value < 0
      ? `${partName(finding, 0, speech)} reaches ${speech.length(-finding.value)} out of the cargo space`
      : `${partName(finding, 0, speech)} ${standing(finding, speech)} the trim`,
  ),
  detail: gapDetail(finding, speech),
});

export const sayBodyObstacle: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 0, speech)} ${standing(finding, speech)} ${factText(finding, 'obstacle')}`),
  detail: gapDetail(finding, speech),
});

export const sayBodyZone: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 0, speech)} ${standing(finding, speech)} ${factText(finding, 'zone')}`),
  detail:
    factText(finding, 'zoneRule') === 'seat-travel'
      ? `The seat comes this far.${doubt(finding, speech)}`
      : factText(finding, 'zoneRule') === 'sight-line'
        ? `It stands in the view to the rear.${doubt(finding, speech)}`
        : `Nothing may stand here; ${wanted(finding, speech)} unless the vehicle builder gives another figure.${doubt(finding, speech)}`,
});

export const sayHatchClosed: SayRule = (finding, speech) => {
  const [subject, closure] = [partName(finding, 0, speech), factText(finding, 'closure')];
  const short = speech.length(Math.abs(finding.value));
  const title =
    finding.value < 0
      ? `${closure} does not close: its trim meets ${subject} ${short} early`
      : `${closure}, closed, comes within ${short} of ${subject}`;
  return { title: sentence(title), detail: gapDetail(finding, speech) };
};

/** Two solids in one place have no limit that could be changed: only the depth is said. */
const shared = { limitText: '' } as const;

export const sayBodyBody: SayRule = (finding, speech) => {
  const [first, second] = [partName(finding, 0, speech), partName(finding, 1, speech)];
  const depth = speech.length(-finding.value);
  const plugs = 'Plugs, the bend of their cables and a hand need this room.';
  if (factText(finding, 'firstKind') === 'plug-room')
    return {
      title: sentence(`${second} stands ${depth} into the room for the plugs of ${first}`),
      detail: plugs,
      ...shared,
    };
  if (factText(finding, 'secondKind') === 'plug-room')
    return {
      title: sentence(`${first} stands ${depth} into the room for the plugs of ${second}`),
      detail: plugs,
      ...shared,
    };
  return {
    title: sentence(`${first} stands ${depth} into ${second}`),
    detail: `${sentence(factText(finding, 'firstName'))} and ${factText(finding, 'secondName')} would be in the same place.`,
    ...shared,
  };
};

export const sayMovingGap: SayRule = (finding, speech) => ({
  title: sentence(
    `${partName(finding, 0, speech)} runs ${speech.length(finding.value)} from ${partName(finding, 1, speech)}`,
  ),
  detail: `${sentence(wanted(finding, speech))} between parts that move past each other.`,
});

export const sayCarcassGap: SayRule = (finding, speech) => ({
  title: sentence(
    `${partName(finding, 0, speech)} and ${partName(finding, 1, speech)} stand ${speech.length(finding.value)} apart`,
  ),
  detail: `${sentence(wanted(finding, speech))} side by side, so that each can be carried in and lined up.`,
});

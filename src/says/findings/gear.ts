import { factText, partName, type SayRule, sentence } from '../words.ts';

const WAY_OUT_OF: Readonly<Record<string, string>> = {
  across: 'sideways',
  deep: 'at the face or the back',
  up: 'above',
};

const SPARE_ON: Readonly<Record<string, string>> = {
  across: 'on each side',
  deep: 'before and behind it',
  up: 'above it',
};

const MISSING_ON: Readonly<Record<string, string>> = { across: 'across', deep: 'in depth', up: 'in height' };

export const sayGearInRoom: SayRule = (finding, speech) => {
  const [gear, opening] = [factText(finding, 'gear'), partName(finding, 1, speech)];
  const axis = WAY_OUT_OF[factText(finding, 'axis')] ?? '';
  if (factText(finding, 'what') === 'next-size')
    return {
      title: sentence(`${gear} has no room in ${opening} for the next larger cylinder`),
      detail: `${speech.length(-finding.value)} is missing ${MISSING_ON[factText(finding, 'axis')] ?? ''}, by the next larger set of the catalog.`,
      valueText: `${speech.length(-finding.value)} short`,
      limitText: '',
    };
  return factText(finding, 'what') === 'sticks-out'
    ? {
        title: sentence(`${gear} sticks ${speech.length(-finding.value)} out of ${opening}`),
        detail: `It does not fit ${axis} where it stands.`,
        valueText: speech.length(finding.value),
        limitText: 'inside',
      }
    : {
        title: sentence(`${gear} has ${speech.length(finding.value)} to spare in ${opening}`),
        detail: `${speech.length(finding.limit)} is wanted ${SPARE_ON[factText(finding, 'axis')] ?? 'round it'}, for hands and for a bag that is full.`,
      };
};

export const sayGearUnplaced: SayRule = (finding) => ({
  title: sentence(`${factText(finding, 'gear')} has no place yet`),
  detail:
    factText(finding, 'firstDue') === 'yes'
      ? 'It is wanted in the first minute: give it a place near the hatch.'
      : 'It counts for no weight until it has one.',
  valueText: 'no place',
  limitText: '',
});

import type { Finding } from '../../inspection/index.ts';
import { saySlip } from '../say-slip.ts';
import { type FindingWords, factNumber, factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

export const saySpaceMissing: SayRule = (finding) => ({
  title: 'No cargo space yet: nothing is checked against the vehicle',
  detail:
    factNumber(finding, 'stations') < 2
      ? 'Measure at least two stations, each from the floor to the roof on both sides.'
      : 'The survey does not make a closed space; its sheet says where.',
  valueText: 'not checked',
  limitText: '',
});

export const sayStartValues: SayRule = (finding, { name }) => {
  const { parts, severity } = finding;
  const openingOnly = factNumber(finding, 'openingOnly') === 1;
  return {
    title: openingOnly
      ? 'The clear opening is still a start value of a vehicle class'
      : parts.length === 0
        ? 'The survey holds start values of a vehicle class'
        : `Start values of a vehicle class are left: ${parts.map(name).join(', ')}`,
    detail:
      severity === 'stop'
        ? 'Panels stand where they shape the room: not for cutting. Measure these, or say on the survey that they are measured.'
        : 'They serve for a first sketch. Measure the vehicle before anything is cut.',
    valueText: 'not measured',
    limitText: '',
  };
};

/** A reading in its own unit: millimetres follow the reader, an angle stays in degrees. */
const asRead = (finding: Finding, key: string, speech: Speech): string =>
  speech.amount(factNumber(finding, key), factText(finding, 'readUnit'));

export const saySurveyMisread: SayRule = (finding, speech): FindingWords => {
  const spread = factNumber(finding, 'spread') > 0 ? ` ± ${asRead(finding, 'spread', speech)}` : '';
  const slip = saySlip(factText(finding, 'slip'), speech.units);
  return {
    title: `${sentence(partName(finding, 0, speech))} is likely misread`,
    detail:
      `The other ${factNumber(finding, 'others')} readings put it at ${asRead(finding, 'made', speech)}${spread}; ` +
      `${asRead(finding, 'read', speech)} is written.${slip === '' ? '' : ` It may be ${slip}.`} Measure it again, or leave it out with a reason.`,
    valueText: `${speech.length(finding.value)} off`,
  };
};

const tells = (finding: Finding, { name }: Speech): string => {
  const [from, to, repeats] = ['tellFrom', 'tellTo', 'tellRepeats'].map((key) => factText(finding, key));
  if (!from) return '';
  return repeats
    ? `take ${name(repeats)} once more, set up afresh`
    : `measure ${name(from)} to ${name(to ?? '')}, straight`;
};

const sayEdgeOff: SayRule = (finding, speech): FindingWords => ({
  title: sentence(`the lowest edge of the ${partName(finding, 0, speech)} does not fit its hinge, trim and angle`),
  detail: `Open, they put it ${speech.length(factNumber(finding, 'edgeMade'))} above ground; ${speech.length(factNumber(finding, 'edgeTaped'))} was taped. Measure hinge line, inner trim and opening angle again, and the floor above ground.`,
  valueText: `${speech.length(finding.value)} off`,
});

export const saySurveyClosureError: SayRule = (finding, speech): FindingWords => {
  if ('edgeMade' in finding.facts) return sayEdgeOff(finding, speech);
  const tell = tells(finding, speech);
  return finding.parts.length > 1
    ? {
        title: `One of ${finding.parts.length} readings is wrong, and the readings cannot tell which`,
        detail: `${finding.parts.map(speech.name).join('; ')}.${tell === '' ? ' Measure each of them again.' : ` To tell, ${tell}.`}`,
        valueText: `${speech.length(finding.value)} off`,
      }
    : {
        title: `${sentence(partName(finding, 0, speech))} does not agree with the rest`,
        detail: `The adjusted survey stands ${speech.length(finding.value)} from it. Measure it again.`,
        valueText: `${speech.length(finding.value)} off`,
      };
};

const MOST_NAMED = 3;

export const saySurveySingleReading: SayRule = ({ parts }, { name }): FindingWords => {
  const rest = parts.length - MOST_NAMED;
  return {
    title:
      parts.length === 1 ? 'One reading is checked by no other' : `${parts.length} readings are checked by no other`,
    detail: `${parts.slice(0, MOST_NAMED).map(name).join('; ')}${rest > 0 ? `; and ${rest} more` : ''}. A misreading there goes unseen: take a diagonal, or the same again from the other end.`,
    limitText: '',
  };
};

import { factNumber, factText, partName, type SayRule, type Speech, sentence } from '../words.ts';

const doubt = (uncertainty: number, speech: Speech): string =>
  uncertainty === 0 ? '' : ` Known to ± ${speech.length(uncertainty)}.`;

export const sayMoverTravel: SayRule = (finding, speech) => {
  const mover = partName(finding, 0, speech, factText(finding, 'mover'));
  const obstacle = factText(finding, 'obstacle') || partName(finding, 1, speech);
  if (factText(finding, 'what') === 'meets') {
    const short = speech.amount(finding.limit - finding.value, finding.unit);
    return {
      title: sentence(`${mover} opens ${short} short: it meets ${obstacle}`),
      detail: `Out ${speech.amount(finding.value, finding.unit)} of ${speech.amount(finding.limit, finding.unit)}, then ${factText(finding, 'body')} touches ${obstacle}.`,
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

import { fitProblemLine, isFitProblemCode } from '../say-fit-problem.ts';
import { factNumber, factText, type SayRule, sentence } from '../words.ts';

export const sayPartTooSmall: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'panel')} is too small to hold at the saw`),
  detail: `Its ${factText(finding, 'side')} side is ${speech.length(finding.value)}; ${speech.length(finding.limit)} can be held. Cut it from a longer strip, or join it to its neighbour.`,
});

export const sayPartTooBig: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'panel')} does not come out of any stock sheet`),
  detail: `${speech.length(factNumber(finding, 'length'))} along the grain by ${speech.length(factNumber(finding, 'width'))}; ${factText(finding, 'sheet')} gives ${speech.length(finding.limit)} that way once its edges are trimmed.`,
});

export const sayCabinetSolves: SayRule = (finding, speech) => {
  const code = factText(finding, 'code');
  const axis = factText(finding, 'axis');
  const isSized = factText(finding, 'sized') === 'yes';
  const reasons = factText(finding, 'because')
    .split('; ')
    .filter((reason) => reason !== '');
  const title = isFitProblemCode(code)
    ? fitProblemLine(
        {
          code,
          at: finding.parts[0] ?? '',
          axis: axis === 'across' || axis === 'deep' || axis === 'up' ? axis : null,
          needMm: isSized ? finding.limit : null,
          haveMm: isSized ? finding.value : null,
          because: reasons,
        },
        speech,
      )
    : code;
  return {
    title,
    detail:
      isSized && reasons.length > 0 ? `What asks for it: ${reasons.join(', ')}.` : 'It is drawn as far as it goes.',
    ...(isSized ? {} : { valueText: '', limitText: '' }),
  };
};

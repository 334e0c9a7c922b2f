import { factNumber, factText, partName, type SayRule, sentence } from '../words.ts';

const newtons = (value: number): string =>
  value < 1000 ? `${Math.round(value)} N` : `${(value / 1000).toFixed(1)} kN`;

export const saySlideLoad: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'mover')} weighs ${speech.amount(finding.value, 'kg')} on its slides`),
  detail: `${factText(finding, 'slide')}: rated ${speech.amount(factNumber(finding, 'ratingKg'), 'kg')} a pair, ${speech.amount(finding.limit, 'kg')} in a vehicle at this length and width.`,
});

export const sayTrayLeg: SayRule = (finding, speech) => ({
  title: sentence(`${factText(finding, 'mover')} wants a leg or a second rail`),
  detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')}, out ${speech.length(factNumber(finding, 'outMm'))}. With a person leaning on it (${newtons(factNumber(finding, 'lean'))}) each slide takes ${Math.round(factNumber(finding, 'rootNm'))} N m at the face.`,
});

export const sayTrayTip: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 0, speech)} would tip with its trays out`),
  detail: `All trays out and a person leaning on the furthest turn it over its face with ${Math.round(factNumber(finding, 'momentNm'))} N m; ${speech.name(factText(finding, 'anchor'))} would be pulled with ${newtons(factNumber(finding, 'pullN'))}. Bolt it down further from the face, or let one tray out at a time.`,
  valueText: `${speech.amount(finding.value, 'share')} used`,
});

export const sayShelfSag: SayRule = (finding, speech) =>
  finding.unit === 'MPa'
    ? {
        title: sentence(`${partName(finding, 0, speech)} may break on a rough road`),
        detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')} over ${speech.length(factNumber(finding, 'span'))}, thrown by the road. Use a thicker sheet, or a support in the middle.`,
      }
    : {
        title: sentence(`${partName(finding, 0, speech)} sags ${speech.length(finding.value)}`),
        detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')} over ${speech.length(factNumber(finding, 'span'))}, after it has crept.`,
      };

export const sayDrawerBottomSag: SayRule = (finding, speech) => ({
  title: sentence(`${partName(finding, 0, speech)} sags ${speech.length(finding.value)}`),
  detail: `${speech.amount(factNumber(finding, 'kg'), 'kg')} on it, after it has crept. Use a thicker bottom.`,
});

export const sayGasSpring: SayRule = (finding, speech) =>
  factText(finding, 'day') === 'cold'
    ? {
        title: sentence(`${factText(finding, 'mover')} falls shut on a cold day`),
        detail: `Its gas springs lack ${Math.abs(finding.value).toFixed(1)} N m to hold ${speech.amount(factNumber(finding, 'kg'), 'kg')} open at the coldest. Never the only prop of a heavy lid.`,
        valueText: `${finding.value.toFixed(1).replace('-', '−')} N m`,
        limitText: 'stays open',
      }
    : {
        title: sentence(`${factText(finding, 'mover')} is hard to close on a hot day`),
        detail: 'The hand that closes it pushes at the free edge.',
      };

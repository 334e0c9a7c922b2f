import type { Drawings } from '../../../../../shop/index.ts';
import type { Choice } from '../../../parts/index.ts';

/** What the first word of a view's name means to a person; the rest is an id. */
const WORDS: Readonly<Record<string, string>> = {
  face: 'Face',
  exploded: 'Drawn apart',
  template: 'Anchor template',
  brace: 'Bar',
};
const WHOLE: Readonly<Record<string, string>> = {
  plan: 'Plan',
  side: 'Side',
  'assembly-order': 'Assembly order',
};

const viewLabel = (name: string, drawings: Drawings, nameOf: (id: string) => string): string => {
  const whole = WHOLE[name];
  if (whole !== undefined) return whole;
  const dash = name.indexOf('-');
  const [word, id] = [name.slice(0, dash), name.slice(dash + 1)];
  if (word === 'assembly') {
    // Ids of movers have a stroke where names of drawings have a dash.
    const movers = drawings.marks.parts.flatMap(({ panels }) => panels.flatMap(({ mover }) => mover ?? []));
    return `Put together: ${nameOf(movers.find((each) => each.replaceAll('/', '-') === id) ?? id)}`;
  }
  return `${WORDS[word] ?? word}: ${nameOf(id)}`;
};

/** All that can be drawn, in groups, under names that people use. */
export const drawingChoices = (drawings: Drawings, nameOf: (id: string) => string): readonly Choice<string>[] => [
  ...drawings.papers.map((value) => ({ value, label: viewLabel(value, drawings, nameOf), group: 'To build by' })),
  ...drawings.views.map((value) => ({ value, label: viewLabel(value, drawings, nameOf), group: 'Views' })),
  ...drawings.rows.map(({ mark, name }) => ({ value: mark, label: `${mark} ${name}`, group: 'Parts' })),
];

import {
  type Carcass,
  type Design,
  type FittingKind,
  findOpening,
  type NodeId,
  type Opening,
} from '../../../../design/index.ts';
import { KIND_WORDS } from '../../fittings/kind-words.ts';

export const kindWords = (kind: FittingKind): string => KIND_WORDS[kind].name;

/** What an opening is called where it has no name of its own: by what it holds. */
export const openingWords = (opening: Opening): string => {
  if (opening.name !== '') return opening.name;
  const { content } = opening;
  if (content.kind === 'fitted') return kindWords(content.fitting.kind);
  if (content.kind === 'divided') return content.along;
  return 'empty opening';
};

/** Where an opening lies, as a person would say it: `left carcass, column 1, row 3`. */
export const whereabouts = (design: Design, id: NodeId): string => {
  const found = findOpening(design, id);
  if (!found) return '';
  const steps = [...found.around, found.opening];
  const words = steps.slice(1).map((opening, i) => {
    const parent = steps[i];
    if (parent?.content.kind !== 'divided') return 'inside';
    const { along, parts } = parent.content;
    const place = parts.findIndex((part) => part.opening.id === opening.id) + 1;
    return `${along === 'columns' ? 'column' : along === 'rows' ? 'row' : 'layer'} ${place}`;
  });
  return [found.carcass.name, ...words].join(', ');
};

export const carcassWords = (carcass: Carcass): string => carcass.name || carcass.id.replace('-', ' ');

import { LYINGS, type Lying } from '../../../design/index.ts';

const WORDS: { readonly [L in Lying]: string } = {
  'upright-back': 'upright on the back',
  'upright-left': 'upright on the left side',
  'upright-right': 'upright on the right side',
  'across-back': 'across on the back',
  'across-floor': 'across on the floor',
  'deep-left': 'front to back on the left side',
  'deep-right': 'front to back on the right side',
  'deep-floor': 'front to back on the floor',
};

/** The ways that a long thing lies in its clamps. */
export const LYING_CHOICES = LYINGS.map((value) => ({ value, label: WORDS[value] }));

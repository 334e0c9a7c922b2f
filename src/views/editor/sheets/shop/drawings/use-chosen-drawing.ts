import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Choice } from '../../../parts/index.ts';

/** Which drawing is looked at: kept while a person looks at other steps. */
const chosen = createStore<{ readonly name: string }>()(() => ({ name: 'plan' }));

/** The chosen drawing, or the first where that one is no longer there. */
export const useChosenDrawing = (
  choices: readonly Choice<string>[],
): { readonly name: string; readonly choose: (name: string) => void } => {
  const wanted = useStore(chosen, ({ name }) => name);
  const name = choices.some(({ value }) => value === wanted) ? wanted : (choices[0]?.value ?? '');
  return { name, choose: (next) => chosen.setState({ name: next }) };
};

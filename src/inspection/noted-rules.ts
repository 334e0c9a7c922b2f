import type { HouseRules } from '../catalog/index.ts';

export interface NotedRules {
  readonly rules: HouseRules;
  /** Ids looked up so far, each once, in the order met. */
  readonly met: ReadonlySet<string>;
}

/** The house rules with a note of what was looked up in them. */
export const notedRules = (rules: HouseRules): NotedRules => {
  const met = new Set<string>();
  const note = (id: string): string => {
    met.add(id);
    return id;
  };
  return {
    rules: { ...rules, value: (id) => rules.value(note(id)), record: (id) => rules.record(note(id)) },
    met,
  };
};

/**
 * One set of settings for every job. Tuned on instances and seeds other than those of the reported figures; docs/cutting.md
 * says what each change was worth.
 */
export interface SearchSettings {
  /** Mean number of removals in a turn. */
  readonly removals: number;
  /** Chance that a removal takes the rectangle around, again and again. */
  readonly climb: number;
  /** Chance that a better place is overlooked. */
  readonly blink: number;
  /** Turns that late acceptance looks back. */
  readonly memory: number;
  /** How often the pieces go back in each order of PIECE_ORDERS, relative to each other. */
  readonly orders: readonly number[];
}

export const SETTINGS: SearchSettings = {
  removals: 6,
  climb: 0.42,
  blink: 0.02,
  memory: 100,
  orders: [1, 1, 1, 1, 1, 1],
};

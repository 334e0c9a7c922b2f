/**
 * One set of settings for every job. Tuned on instances and seeds other than those of the reported figures; docs/cutting.md
 * says what each change was worth.
 */
export interface SearchSettings {
  /** Mean number of removals in a turn. */
  readonly removals: number;
  /** Chance that a removal takes the rectangle around, again and again. */
  readonly climb: number;
  /** Chance that a turn takes out whole sheets instead of pieces, where few pieces share a sheet. */
  readonly wholeSheets: number;
  /** Chance that a better place is overlooked. */
  readonly blink: number;
  /** Turns that late acceptance looks back. */
  readonly memory: number;
  /** Turns without a better layout after which annealing takes over. */
  readonly patience: number;
  readonly annealing: AnnealingSettings;
  /** How often the pieces go back in each order of PIECE_ORDERS, relative to each other. */
  readonly orders: readonly number[];
}

export interface AnnealingSettings {
  /** Temperatures at the start and the end of a round, in mean areas of a piece. */
  readonly warm: number;
  readonly cold: number;
  /** Turns of the first round after a find; each further one is twice as long, up to the most. */
  readonly turns: number;
  readonly mostTurns: number;
}

export const SETTINGS: SearchSettings = {
  removals: 6,
  climb: 0.42,
  wholeSheets: 0.3,
  blink: 0.02,
  memory: 100,
  patience: 5_000,
  annealing: {
    warm: 0.3,
    cold: 0.003,
    turns: 20_000,
    mostTurns: 400_000,
  },
  orders: [1, 1, 1, 1, 1, 1],
};

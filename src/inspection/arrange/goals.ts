/**
 * What an arrangement is judged by, all of it the less the better: `side` is the worst difference of left and right in
 * percent of the whole; `index` the worst lifting index and `strain` the sum of all; `motions` and `arms` the most
 * motions, and the furthest hands from the shoulder in decimetres, to first-due gear; `moves` how many items change
 * their place.
 */
export const GOALS = ['side', 'index', 'strain', 'motions', 'arms', 'moves'] as const;
export type Goal = (typeof GOALS)[number];
export type Scores = Readonly<Record<Goal, number>>;

/** What an arrangement may put first. */
export const ARRANGE_FIRST = ['balance', 'lifting', 'first-due'] as const;
export type ArrangeFirst = (typeof ARRANGE_FIRST)[number];

/** The goals one after the other: a later one counts among what is as good by the earlier ones. */
export const ORDER: Readonly<Record<ArrangeFirst, readonly Goal[]>> = {
  balance: ['side', 'index', 'motions', 'arms', 'strain', 'moves'],
  lifting: ['index', 'strain', 'side', 'motions', 'arms', 'moves'],
  'first-due': ['motions', 'arms', 'side', 'index', 'strain', 'moves'],
};

/** The goals that each thing put first is about: one that gains on none of them is no arrangement for it. */
export const ABOUT: Readonly<Record<ArrangeFirst, readonly Goal[]>> = {
  balance: ['side'],
  lifting: ['index', 'strain'],
  'first-due': ['motions', 'arms'],
};

/** How much worse than its best a goal may be for the sake of later ones: less than anybody would notice. */
export const GIVE: Scores = { side: 0.1, index: 0.01, strain: 0.1, motions: 0, arms: 0.1, moves: 0 };

/** Below zero where `a` is the better by the first goal on which they differ by more than anybody would notice. */
export const compareScores = (order: readonly Goal[], a: Scores, b: Scores): number => {
  for (const goal of order) {
    const by = a[goal] - b[goal];
    if (Math.abs(by) > GIVE[goal]) return by;
  }
  return 0;
};

/** The index that a lift outside the equation counts as: worse than any that is allowed. */
export const OUTSIDE_INDEX = 10;

/** Where an item may stand, with what it then does to each goal. */
export interface Choice {
  readonly berth: number;
  /** What it adds to each loading case: percent of the whole that left weighs more than right. */
  readonly leans: readonly number[];
  readonly index: number;
  readonly motions: number;
  readonly arms: number;
}

/** An item that may change its place; the first choice is where it stands now. */
export interface Movable {
  readonly id: string;
  readonly choices: readonly [Choice, ...Choice[]];
}

/** Everything that an arrangement is chosen from, in plain figures. */
export interface Table {
  readonly items: readonly Movable[];
  /** What leans each loading case whatever is chosen; empty where balance is not known. */
  readonly leans: readonly number[];
  /** The worst of what stays where it is. */
  readonly staying: { readonly index: number; readonly motions: number; readonly arms: number };
}

/** For each item the place of its choice in its list. */
export type Picks = readonly number[];

export const choiceOf = ({ choices }: Movable, pick: number | undefined): Choice => choices[pick ?? 0] ?? choices[0];

/** An arrangement judged: plain sums and worst values, which the solver of programs must agree with. */
export const scoresOf = ({ items, leans, staying }: Table, picks: Picks): Scores => {
  const chosen = items.map((item, i) => choiceOf(item, picks[i]));
  const lean = leans.map((rest, at) => chosen.reduce((sum, own) => sum + (own.leans[at] ?? 0), rest));
  return {
    side: Math.max(0, ...lean.map(Math.abs)),
    index: Math.max(staying.index, ...chosen.map(({ index }) => index)),
    strain: chosen.reduce((sum, { index }) => sum + index, 0),
    motions: Math.max(staying.motions, ...chosen.map(({ motions }) => motions)),
    arms: Math.max(staying.arms, ...chosen.map(({ arms }) => arms)),
    moves: picks.filter((pick) => pick !== 0).length,
  };
};

/** Choices that cannot stand together: one of them at least is another one. */
export type Ban = readonly { readonly item: number; readonly pick: number }[];

/** What an arrangement must keep besides: goals no worse than these, and nothing that was found not to stand. */
export interface Within {
  readonly caps: Partial<Scores>;
  readonly bans: readonly Ban[];
}

export const keeps = (table: Table, picks: Picks, { caps, bans }: Within, scores = scoresOf(table, picks)): boolean =>
  GOALS.every((goal) => scores[goal] <= (caps[goal] ?? Infinity)) &&
  !bans.some((ban) => ban.every(({ item, pick }) => picks[item] === pick));

/** The best picks for one goal, and what no picks can go below; null where nothing keeps what is asked. */
export type Minimise = (
  table: Table,
  goal: Goal,
  within: Within,
  start: Picks,
) => { readonly picks: Picks; readonly bound: number } | null;

export interface Staged {
  readonly picks: Picks;
  readonly scores: Scores;
  /** What no picks can go below on the first goal. */
  readonly bound: number;
}

/** Minimises the goals one after the other, each within a hair of its best while the later ones are. */
export const minimiseInTurn = (
  table: Table,
  order: readonly Goal[],
  bans: readonly Ban[],
  minimise: Minimise,
): Staged | null => {
  let picks: Picks = table.items.map(() => 0);
  let caps: Partial<Scores> = {};
  let bound = -Infinity;
  for (const [turn, goal] of order.entries()) {
    const best = minimise(table, goal, { caps, bans }, picks);
    if (best === null) return null;
    picks = best.picks;
    if (turn === 0) bound = best.bound;
    caps = { ...caps, [goal]: scoresOf(table, picks)[goal] + GIVE[goal] };
  }
  return { picks, scores: scoresOf(table, picks), bound };
};

/** What the opening order says: plain data, for the inspection sheet, the review copy and the bay alike. */

/** A motion of one hand: something opened, undone, drawn out, or set aside. */
export interface OrderStep {
  readonly act: 'open' | 'close' | 'undo' | 'lift-away' | 'take';
  /** What it is done to, as a finding names it: a closure, the opening of a fitting, an item of gear. */
  readonly part: string;
  /** The mover that it moves, by id, with the rest that it goes to and that rest's share of its travel. */
  readonly mover: string | null;
  readonly rest: string | null;
  readonly share: number | null;
  /** What it counts, by the house rules. */
  readonly count: number;
}

/** How an item of gear comes to hand. */
export interface GearReach {
  readonly gear: string;
  readonly opening: string;
  readonly firstDue: boolean;
  /** False where no way was found: it is not proven that there is none. */
  readonly found: boolean;
  /** From the closed vehicle to hand; empty where none was found. */
  readonly steps: readonly OrderStep[];
  /** Sum of the counts of the steps; null where none was found. */
  readonly count: number | null;
  /** Where every mover stands when the item is taken, by id: for the bay to show. */
  readonly shares: Readonly<Record<string, number>>;
  /** Where no way was found: what was in the way, movers by part and gear by id, and the name of what never moves. */
  readonly stuck: { readonly parts: readonly string[]; readonly fixed: string | null } | null;
}

/** What one mover asks of another: `mover` travels its whole way only while `other` stands at one of `at`. */
export interface OrderRow {
  /** Ids of both movers, and the parts that a finding would name. */
  readonly mover: string;
  readonly part: string;
  readonly other: string;
  readonly otherPart: string;
  /** Rests of the other at which the way is free, by name; empty where it never is. */
  readonly at: readonly string[];
  /** Rests of the other at which they meet. */
  readonly notAt: readonly string[];
}

export interface OpeningOrder {
  /** Only pairs that are in each other's way; in the order of the movers, closures first. */
  readonly rows: readonly OrderRow[];
  /** Every placed item of gear, in the order of the list. */
  readonly gear: readonly GearReach[];
}

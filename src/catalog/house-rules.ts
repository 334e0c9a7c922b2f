import type { Catalog } from './catalog.ts';
import type { HouseRule } from './records.ts';

/** One limit that a shop or a design sets for itself, with the person who answers for it. */
export interface RuleChange {
  readonly rule: string;
  readonly value: number;
  readonly who: string;
  readonly why: string;
}

/** A limit as it holds: the catalog's own, or changed. The source stays that of the catalog's figure. */
export interface AppliedRule extends HouseRule {
  readonly changedBy: { readonly who: string; readonly why: string } | null;
}

export interface HouseRules {
  /** The limit in the rule's own unit. Throws RangeError for an id that the catalog does not have. */
  value(id: string): number;
  /** The whole record, with who changed it. Throws RangeError for an id that the catalog does not have. */
  record(id: string): AppliedRule;
  /** Every rule by id, in the order of the catalog. */
  readonly all: ReadonlyMap<string, AppliedRule>;
  /** Changes of rules that the catalog does not have; they limit nothing, and the caller should say so. */
  readonly unknown: readonly RuleChange[];
}

const changed = (rule: HouseRule, change: RuleChange | undefined): AppliedRule =>
  change === undefined
    ? { ...rule, changedBy: null }
    : { ...rule, value: change.value, changedBy: { who: change.who, why: change.why } };

/** The catalog's limits with the changes laid over them; of two changes of one rule the later holds. */
export const houseRules = (catalog: Catalog, changes: readonly RuleChange[]): HouseRules => {
  const last = new Map(changes.map((change) => [change.rule, change]));
  const all = new Map([...catalog.rules].map(([id, rule]) => [id, changed(rule, last.get(id))]));
  const record = (id: string): AppliedRule => {
    const rule = all.get(id);
    if (rule === undefined) throw new RangeError(`No house rule has the id "${id}"`);
    return rule;
  };
  return {
    all,
    unknown: changes.filter((change) => !catalog.rules.has(change.rule)),
    record,
    value: (id) => record(id).value,
  };
};

import type { Accepted, Design, HouseRuleChange } from '../design.ts';

export const changeDocument = (
  design: Design,
  change: Partial<Pick<Design, 'title' | 'customer' | 'units' | 'projection' | 'notes' | 'holdTo'>>,
): Design => ({ ...design, ...change });

/** Sets a house rule for this design, in place of any earlier change of the same rule. */
export const setHouseRule = (design: Design, change: HouseRuleChange): Design => ({
  ...design,
  houseRules: [...design.houseRules.filter((other) => other.rule !== change.rule), change],
});

export const clearHouseRule = (design: Design, rule: string): Design => ({
  ...design,
  houseRules: design.houseRules.filter((other) => other.rule !== rule),
});

const samePlace = (a: Pick<Accepted, 'rule' | 'parts'>, b: Pick<Accepted, 'rule' | 'parts'>): boolean =>
  a.rule === b.rule && a.parts.length === b.parts.length && a.parts.every((part, i) => part === b.parts[i]);

/** Lets a finding stand, with a name and a reason. Throws when either is blank: nobody accepts without both. */
export const acceptFinding = (design: Design, accepted: Accepted): Design => {
  if (accepted.who.trim() === '' || accepted.why.trim() === '')
    throw new RangeError('acceptFinding: a finding is accepted with a name and a reason');
  return { ...design, accepted: [...design.accepted.filter((other) => !samePlace(other, accepted)), accepted] };
};

export const withdrawAcceptance = (design: Design, finding: Pick<Accepted, 'rule' | 'parts'>): Design => ({
  ...design,
  accepted: design.accepted.filter((other) => !samePlace(other, finding)),
});

/** True when the finding of this rule about these parts has been accepted. */
export const acceptanceOf = (design: Design, finding: Pick<Accepted, 'rule' | 'parts'>): Accepted | null =>
  design.accepted.find((other) => samePlace(other, finding)) ?? null;

import type { LengthUnits } from '../base/index.ts';
import type { GearPlace } from '../design/index.ts';
import type {
  ArrangedItem,
  ArrangeFigures,
  ArrangeFirst,
  Arrangement,
  ArrangePlan,
  Staying,
} from '../inspection/index.ts';
import { sayAmount } from './amounts.ts';
import { sentence } from './words.ts';

type Naming = (id: string) => string;

const FIRST_WORDS: { readonly [First in ArrangeFirst]: string } = {
  balance: 'balance first',
  lifting: 'lifting first',
  'first-due': 'first-due gear first',
};

/** What an arrangement puts first, as the head of a column. */
export const sayArrangeFirst = (first: readonly ArrangeFirst[]): string => {
  const [only, ...more] = first.map((one) => FIRST_WORDS[one]);
  return more.length === 0
    ? (only ?? '')
    : `${first.map((one) => FIRST_WORDS[one].replace(/ first$/, '')).join(' or ')} first`;
};

const UNKNOWN = 'unknown';

/** One line of the comparison of arrangements: what it is, and how each of them stands there. */
export interface ArrangeRow {
  readonly what: string;
  readonly said: (figures: ArrangeFigures) => string;
}

/** The figures by which arrangements are compared, in the reader's units. */
export const arrangeRows = (units: LengthUnits, names: Naming): readonly ArrangeRow[] => {
  const of = (text: string, part: string | null): string => (part === null ? text : `${text}, ${names(part)}`);
  return [
    {
      what: 'left against right, worst case',
      said: ({ sideShare, sideCase }) =>
        sideShare === null ? UNKNOWN : of(sayAmount(sideShare, 'share', units), sideCase),
    },
    {
      what: 'worst lifting index',
      said: ({ liftIndex, liftGear, notAllowed }) => {
        if (liftIndex === null) return UNKNOWN;
        const beyond = notAllowed === 0 ? '' : `; ${notAllowed} not allowed at all`;
        return `${of(liftIndex.toFixed(2), liftGear)}${beyond}`;
      },
    },
    { what: 'all lifts together', said: ({ liftSum }) => (liftSum === null ? UNKNOWN : liftSum.toFixed(2)) },
    {
      what: 'most motions to first-due gear',
      said: ({ motions, motionsGear, stuck }) => {
        const beyond = stuck === 0 ? '' : `; no straight way out for ${stuck}`;
        return `${motions === null ? 'none known' : of(String(motions), motionsGear)}${beyond}`;
      },
    },
    {
      what: 'furthest first-due gear from the shoulder',
      said: ({ armsMm, armsGear }) => (armsMm === null ? 'none' : of(sayAmount(armsMm, 'mm', units), armsGear)),
    },
  ];
};

const LIES: { readonly [Stance in GearPlace['stance']]: string } = {
  upright: 'upright',
  'on-side': 'on its side',
  'on-back': 'on its back',
};

const sameLying = (a: GearPlace, b: GearPlace): boolean => a.stance === b.stance && a.turnDeg % 180 === b.turnDeg % 180;

const sayItem = ({ gear, from, to }: ArrangedItem, names: Naming): string => {
  const lying = sameLying(from, to)
    ? ''
    : `, ${LIES[to.stance]}${to.turnDeg % 180 === 0 ? '' : ', turned by a quarter'}`;
  return sentence(
    from.opening === to.opening && from.level === to.level
      ? `${names(gear)}: to another place in ${names(to.opening)}${lying}.`
      : `${names(gear)}: from ${names(from.opening)} to ${names(to.opening)}${lying}.`,
  );
};

/** What an arrangement changes, one sentence for each. */
export const sayArrangement = ({ items, carcasses }: Arrangement, names: Naming): readonly string[] => [
  ...(carcasses.length === 2 ? [sentence(`${carcasses.map(names).join(' and ')} change sides.`)] : []),
  ...(carcasses.length === 1 ? [sentence(`${carcasses.map(names).join('')} moves over to the other side.`)] : []),
  ...items.map((item) => sayItem(item, names)),
];

const BOUND_WORDS: { readonly [First in ArrangeFirst]: (bound: number, units: LengthUnits) => string } = {
  balance: (bound, units) => `${sayAmount(bound, 'share', units)} from side to side`,
  lifting: (bound) => `a worst lifting index of ${bound.toFixed(2)}`,
  'first-due': (bound) => `${bound} motions to first-due gear`,
};

/** How far the plan can be trusted: what was looked at, and what no arrangement goes below. */
export const sayArrangePlan = (plan: ArrangePlan, units: LengthUnits): readonly string[] => {
  const { items, places, sides, exact, bounds } = plan;
  const ways = sides === 0 ? '' : `, and ${sides} other way${sides === 1 ? '' : 's'} to stand the carcasses`;
  const known = (['balance', 'lifting', 'first-due'] as const).flatMap((first) => {
    const bound = bounds[first];
    return bound === null ? [] : [BOUND_WORDS[first](bound, units)];
  });
  return [
    `${exact ? 'All arrangements were weighed' : 'Too many arrangements to weigh all: they were searched'}: ${items} items among ${places} places that fit them${ways}.`,
    ...(known.length === 0 ? [] : [`No arrangement of these goes below ${known.join(', ')}.`]),
  ];
};

const STAYING_WORDS: { readonly [Why in Staying]: string } = {
  wished: 'as you asked',
  held: 'held by a bracket or without a room',
  needs: 'it needs a bracket',
  piled: 'it stands in a pile',
  sized: 'its opening is as large as it is',
};

/** What keeps its place, by reason. */
export const sayStaying = ({ stays }: ArrangePlan, names: Naming): readonly string[] =>
  (['wished', 'held', 'needs', 'piled', 'sized'] as const).flatMap((why) => {
    const gear = stays.filter((own) => own.why === why).map((own) => names(own.gear));
    return gear.length === 0 ? [] : [`Keeps its place, ${STAYING_WORDS[why]}: ${gear.join('; ')}.`];
  });

import { type Design, type FittingKind, openingsFrom } from '../../design/index.ts';

/** The house rule that says how long one takes; null where its parts, cut-outs and devices are all the work there is. */
const HOURS: { readonly [Kind in FittingKind]: string | null } = {
  drawer: 'hours-drawer',
  'slide-out': 'hours-slide-out',
  'open-storage': null,
  faceplate: null,
  'apparatus-bracket': 'hours-bracket',
  door: 'hours-door',
  board: 'hours-board',
  'extinguisher-cradle': 'hours-bracket',
  'cylinder-clamp': 'hours-bracket',
  'tool-clamp': 'hours-bracket',
  'pass-through': 'hours-bracket',
  'charger-bay': null,
  valuables: 'hours-slide-out',
  'map-slot': null,
  'tablet-mount': 'hours-bracket',
  trim: 'hours-bracket',
};

/** How many fittings take the hours of each rule, by the rule's id. */
export const fittingCounts = (design: Design): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { opening } of design.cabinet.carcasses)
    for (const { content } of openingsFrom(opening)) {
      const rule = content.kind === 'fitted' ? HOURS[content.fitting.kind] : null;
      if (rule !== null) counts.set(rule, (counts.get(rule) ?? 0) + 1);
    }
  return counts;
};

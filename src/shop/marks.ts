import { compareText } from '../base/index.ts';
import type { FitOut, Panel, PartId } from '../fitout/index.ts';
import { samePart } from './same-part.ts';

/** One distinct cut part of one carcass, with every panel that it serves as. */
export interface MarkedPart {
  /** Carcass letter and running number: `A1`, `B12`. The same on every paper. */
  readonly mark: string;
  readonly carcass: string;
  /** The panel that the drawing shows: the first in the order of the carcass. */
  readonly panel: Panel;
  /** Every panel cut to this part, the shown one first. */
  readonly panels: readonly Panel[];
}

export interface Marks {
  /** Carcass by carcass, in the order of the numbers. */
  readonly parts: readonly MarkedPart[];
  readonly markOf: ReadonlyMap<PartId, string>;
  readonly letterOf: ReadonlyMap<string, string>;
}

/** Without I and O, which are read as 1 and 0 on a dusty label. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** The letter of the carcass that stands at this place in the design, from 0: A … Z, then AA, AB … */
export const carcassLetter = (index: number): string => {
  const last = LETTERS[index % LETTERS.length] ?? '';
  return index < LETTERS.length ? last : `${carcassLetter(Math.floor(index / LETTERS.length) - 1)}${last}`;
};

/** The carcass is built in this order; what fits into it comes after, opening by opening. */
const ROLE_ORDER: readonly string[] = ['side', 'top', 'bottom', 'back', 'divider', 'shelf'];

const roleRank = (panel: Panel): number => {
  const rank = ROLE_ORDER.findIndex((word) => panel.role === word || panel.role.startsWith(`${word}-`));
  return rank < 0 ? ROLE_ORDER.length : rank;
};

/**
 * Carcass parts by role (`side-left` before `side-right`), then parts of fittings by the opening that they fit;
 * otherwise as the fit-out lists them.
 */
const inBuildingOrder = (fitout: FitOut): readonly Panel[] => {
  const openingRank = new Map<string, number>(fitout.openings.map((opening, i) => [opening.id, i]));
  const rankOf = (panel: Panel): number => openingRank.get(panel.origin) ?? -1;
  return fitout.panels
    .map((panel, place) => ({ panel, place, role: roleRank(panel), opening: rankOf(panel) }))
    .sort((a, b) => a.role - b.role || a.opening - b.opening || sideFirst(a, b) || a.place - b.place)
    .map(({ panel }) => panel);
};

const sideFirst = (a: { panel: Panel; role: number }, b: { panel: Panel }): number =>
  a.role < ROLE_ORDER.length ? compareText(a.panel.role, b.panel.role) : 0;

const distinctParts = (panels: readonly Panel[]): readonly (readonly Panel[])[] => {
  const groups: Panel[][] = [];
  for (const panel of panels) {
    const group = groups.find(([first]) => first !== undefined && samePart(first, panel));
    if (group) group.push(panel);
    else groups.push([panel]);
  }
  return groups;
};

/** Carcasses in the order of the fit-out, then any that only a panel names, so that no panel goes without a mark. */
const carcassOrder = (fitout: FitOut): readonly string[] => [
  ...new Set<string>([...fitout.carcasses.map(({ id }) => id), ...fitout.panels.map(({ carcass }) => carcass)]),
];

/**
 * Gives every panel of the fit-out its mark. Panels of one carcass that are cut and worked alike share a mark;
 * mirror images do not. The same fit-out always gives the same marks.
 */
export const markParts = (fitout: FitOut): Marks => {
  const ordered = inBuildingOrder(fitout);
  const letterOf = new Map(carcassOrder(fitout).map((id, i) => [id, carcassLetter(i)]));
  const parts = [...letterOf].flatMap(([carcass, letter]) =>
    distinctParts(ordered.filter((panel) => panel.carcass === carcass)).flatMap((panels, i): readonly MarkedPart[] => {
      const [panel] = panels;
      return panel === undefined ? [] : [{ mark: `${letter}${i + 1}`, carcass, panel, panels }];
    }),
  );
  const markOf = new Map(parts.flatMap(({ mark, panels }) => panels.map(({ id }) => [id, mark])));
  return { parts, markOf, letterOf };
};

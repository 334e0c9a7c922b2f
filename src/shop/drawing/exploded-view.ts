import { add, boxMiddle, ORIGIN, placed, scale, subtract, turned, type Vec3 } from '../../base/index.ts';
import type { FitOut, SolvedCarcass } from '../../fitout/index.ts';
import type { Assembly, Panel } from '../assembly/index.ts';
import type { Marks } from '../marks.ts';
import type { Drawing } from './drawing.ts';
import { drawnPanel, middleOfPanel } from './drawn-panel.ts';
import { obliqueSight } from './oblique.ts';
import { seenExtent, spaceShapes } from './space-picture.ts';
import { type Surround, type ViewWords, viewSheet } from './view-sheet.ts';

/** Middles of panels stand this much further from the middle of what they make. */
const APART = 0.55;
/** What moves stands out of the face by so much of the depth. */
const PULLED = 0.75;
const SURROUND: Surround = { left: 14, right: 14, bottom: 4, top: 4 };

const centreOf = (points: readonly Vec3[]): Vec3 =>
  scale(
    points.reduce((sum, each) => add(sum, each), ORIGIN),
    1 / Math.max(1, points.length),
  );

/** How far each panel is drawn aside: away from a middle, which keeps apart all that a plane parts. */
export const asideFrom = (panels: readonly Panel[], middle: Vec3 | null): ReadonlyMap<string, Vec3> => {
  const middles = panels.map(middleOfPanel);
  const from = middle ?? centreOf(middles);
  return new Map(panels.map(({ id }, i) => [id, scale(subtract(middles[i] ?? from, from), APART)]));
};

/** The same for a whole carcass: what moves is drawn out of the face together and then apart. */
const partedBy = (assemblies: readonly Assembly[], carcass: SolvedCarcass): ReadonlyMap<string, Vec3> => {
  const own = assemblies.filter((each) => each.carcass === carcass.id);
  const middle = placed(carcass.pose, boxMiddle({ min: ORIGIN, max: carcass.size }));
  const out = turned(carcass.pose, [0, -carcass.size[1] * (PULLED + APART), 0]);
  return new Map(
    own.flatMap(({ mover, panels }) => {
      if (mover === null) return [...asideFrom(panels, middle)];
      const whole = add(out, scale(subtract(centreOf(panels.map(middleOfPanel)), middle), APART));
      return [...asideFrom(panels, null)].map(([id, aside]) => [id, add(whole, aside)] as const);
    }),
  );
};

export interface ExplodedInput extends Pick<ViewWords, 'designTitle' | 'customer' | 'signed' | 'foot'> {
  readonly fitout: FitOut;
  readonly carcass: SolvedCarcass;
  readonly assemblies: readonly Assembly[];
  readonly marks: Marks;
  readonly units: 'in' | 'mm';
}

/** One carcass with all its panels drawn apart, each with its mark. */
export const explodedView = (input: ExplodedInput): Drawing => {
  const { carcass, assemblies, marks, units, fitout } = input;
  const by = partedBy(assemblies, carcass);
  const panels = fitout.panels.filter((panel) => panel.carcass === carcass.id);
  const picture = {
    solids: panels.flatMap((panel) => drawnPanel(panel, by.get(panel.id) ?? ORIGIN)),
    sight: obliqueSight(carcass),
    heavy: new Set<string>(),
    names: new Map(panels.map(({ id }) => [id, marks.markOf.get(id) ?? id])),
  };
  const { from, to } = seenExtent(picture);
  const name = carcass.name === '' ? carcass.id : carcass.name;
  const words = {
    designTitle: input.designTitle,
    customer: input.customer,
    signed: input.signed,
    foot: input.foot,
    view: `${name}, drawn apart`,
    seen: 'from before the open face, above its left side',
    mark: marks.letterOf.get(carcass.id) ?? '',
    sizes: 'none: a picture in space is not measured',
    unmeasured: true,
  };
  return viewSheet(words, [to[0] - from[0], to[1] - from[1]], SURROUND, units, (reduced, at) =>
    spaceShapes(picture, reduced, at),
  );
};

import { type Box, boxGap, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import {
  boxShape,
  clearanceInside,
  gapWithin,
  type PreparedShell,
  prepareShell,
  shapeBox,
  skinGap,
} from '../../bodies/index.ts';
import type { CargoSpace } from '../space.ts';
import type { KeepOut } from './keep-out.ts';

/** What stands too near to a box. */
export interface Blocker {
  readonly kind: 'skin' | KeepOut['kind'];
  /** The obstacle, closure or zone; empty for the skin. */
  readonly id: string;
  readonly rule: string;
  readonly gapMm: number;
  readonly askedMm: number;
  /** From the box to what it is too near to. */
  readonly at: readonly [Vec3, Vec3];
}

export interface BoxCheck {
  readonly bounds: Box;
  /** The first thing that is too near, or null. */
  readonly blocker: (box: Box) => Blocker | null;
}

interface Parts {
  readonly space: CargoSpace;
  readonly around: PreparedShell;
  readonly skinGapMm: number;
  readonly keepOuts: readonly KeepOut[];
}

/** A check of boxes against skin and everything else that a carcass keeps off; exact to rounding, touching the gap is clear. */
export const makeBoxCheck = ({ space, around, skinGapMm, keepOuts }: Parts): BoxCheck => {
  const whole = prepareShell(space.skin);
  const near = keepOuts.map((keepOut) => ({ keepOut, box: shapeBox(keepOut.shape) }));
  const skinBlocks = (box: Box): Blocker | null => {
    const shape = boxShape(box);
    const gap = skinGap(shape, around, skinGapMm);
    const made = (by: { distance: number; from: Vec3; to: Vec3 }, askedMm: number): Blocker => ({
      kind: 'skin',
      id: '',
      rule: 'gap-trim',
      gapMm: by.distance,
      askedMm,
      at: [by.from, by.to],
    });
    if (gap && gap.distance < skinGapMm - ROUNDING_MM) return made(gap, skinGapMm);
    const poking = clearanceInside(shape, whole, 0);
    return poking && poking.distance < -ROUNDING_MM ? made(poking, 0) : null;
  };
  return {
    bounds: space.bounds,
    blocker: (box) => {
      const shape = boxShape(box);
      for (const { keepOut, box: around } of near) {
        if (boxGap(box, around) >= keepOut.gap) continue;
        const gap = gapWithin(shape, keepOut.shape, keepOut.gap);
        if (gap && gap.distance < keepOut.gap - ROUNDING_MM)
          return {
            kind: keepOut.kind,
            id: keepOut.id,
            rule: keepOut.rule,
            gapMm: gap.distance,
            askedMm: keepOut.gap,
            at: [gap.from, gap.to],
          };
      }
      return skinBlocks(box);
    },
  };
};

import { radians } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { type Bend, bendOf } from '../bend.ts';
import type { CarcassContext } from '../context.ts';
import type { BendLine, PanelCut } from '../parts.ts';

type Faceplate = FittingByKind['faceplate'];

/** How far a plate may lean, as in the schema. */
const LEAST_TILT = radians(-45);
const MOST_TILT = radians(60);

/** Lean of a plate (rad): towards the eye that reads it, tan φ = above / (out + set-back), or as stated. */
export const plateTilt = ({ eye, tiltDeg, setbackMm }: Faceplate): number =>
  eye === null
    ? radians(tiltDeg)
    : Math.min(MOST_TILT, Math.max(LEAST_TILT, Math.atan2(eye.aboveMm, eye.outMm + setbackMm)));

/** The flanges of a bent plate: both edges turned square to the rear. */
export interface PlateFlange {
  readonly outsideMm: number;
  readonly bend: Bend;
  readonly insideRadiusMm: number;
  /** From the edge of the plate: where cut-outs may begin, and where bodies behind the plate may. */
  readonly clearMm: number;
  readonly behindMm: number;
  /** Shortest flange that a die can take hold of. */
  readonly leastMm: number;
  /** Tightest inside radius that the sheet takes without cracking. */
  readonly leastRadiusMm: number;
}

/**
 * Null for a flat plate, and for a sheet that is not bent. House rules say how many thicknesses of flat a cut-out keeps
 * from the end of a bend, and how many a flange is long beyond the radius so that it lies on the die.
 */
export const plateFlange = (
  { flangeMm }: Faceplate,
  { bend, thicknessMm }: Material,
  { rule }: CarcassContext,
): PlateFlange | null => {
  if (flangeMm === null || bend === null) return null;
  const turned = bendOf(thicknessMm, bend, Math.PI / 2);
  return {
    outsideMm: flangeMm,
    bend: turned,
    insideRadiusMm: bend.insideRadiusMm,
    clearMm: turned.outsideSetbackMm + rule('bend-hole-share') * thicknessMm,
    behindMm: thicknessMm + bend.insideRadiusMm,
    leastMm: bend.insideRadiusMm + rule('flange-min-share') * thicknessMm,
    leastRadiusMm: rule('bend-radius-share') * thicknessMm,
  };
};

/** A row of slots for air along one edge of a plate. */
export interface AirRow {
  readonly count: number;
  readonly slot: readonly [length: number, height: number];
  /** Middle of the row from the edge of the plate, and what it takes of the plate up to the nearest device. */
  readonly middleMm: number;
  readonly takesMm: number;
  readonly leastWidth: number;
}

export const airRow = (count: number, flange: PlateFlange | null, { rule }: CarcassContext): AirRow | null => {
  if (count === 0) return null;
  const slot = [rule('air-slot-length'), rule('air-slot-height')] as const;
  const from = Math.max(rule('cutout-edge'), flange?.clearMm ?? 0);
  const web = rule('min-web-cutout');
  return {
    count,
    slot,
    middleMm: from + slot[1] / 2,
    takesMm: from + slot[1] + web,
    leastWidth: count * slot[0] + (count - 1) * web + 2 * rule('cutout-edge'),
  };
};

/** The slots of both rows on a plate of width × height, shared out with equal plate between them. */
export const airSlots = (air: AirRow | null, width: number, height: number): readonly PanelCut[] => {
  if (air === null) return [];
  const [long, high] = air.slot;
  const gap = (width - air.count * long) / (air.count + 1);
  return [air.middleMm, height - air.middleMm].flatMap((y) =>
    Array.from({ length: air.count }, (_, i): PanelCut => {
      const x = gap + i * (long + gap);
      const outline = {
        shape: 'rectangle',
        from: [x, y - high / 2],
        to: [x + long, y + high / 2],
        cornerRadius: high / 2,
      } as const;
      return { kind: 'cutout', outline, why: 'air slot' };
    }),
  );
};

/** Bend lines of a plate of width × height in its flat pattern, the lower first. */
export const plateBends = (flange: PlateFlange | null, width: number, height: number): readonly BendLine[] => {
  if (flange === null) return [];
  const { bend, outsideMm, insideRadiusMm } = flange;
  const flat = 2 * outsideMm + height - 2 * bend.deductionMm;
  const at = outsideMm - bend.deductionMm / 2;
  return [at, flat - at].map((y) => ({
    from: [0, y],
    to: [width, y],
    angleRad: Math.PI / 2,
    towards: 'b',
    insideRadiusMm,
    allowanceMm: bend.allowanceMm,
    deductionMm: bend.deductionMm,
  }));
};

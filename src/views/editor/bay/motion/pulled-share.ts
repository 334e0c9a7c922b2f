import type { Vec2, Vec3 } from '../../../../base/index.ts';

/** One drag of a handle along its travel, in screen pixels. */
export interface Pull {
  /** Where the gripped point stands at a share of the travel. */
  readonly pathAt: (share: number) => Vec3;
  /** A point on the screen, or null when it lies behind the eye. */
  readonly project: (point: Vec3) => Vec2 | null;
  readonly startShare: number;
  readonly startPointer: Vec2;
}

/** Pieces that a travel is cut into on the screen; a quarter turn then errs by less than a pixel in a thousand. */
const PIECES = 48;
/** A travel that looks shorter than this on the screen comes straight at the eye and cannot be followed. */
const SHORT_PX = 48;
/** Pixels of pull towards oneself that stand for the whole travel when it cannot be followed. */
const BLIND_PULL_PX = 260;
/** How much a pixel of distance is worth against a whole travel of jump, so that the near branch of an arc is kept. */
const JUMP_PX = 24;

interface Stop {
  readonly share: number;
  readonly at: Vec2;
}

/** The travel on the screen, cut off where it passes behind the eye. */
const pathOnScreen = (pull: Pull): readonly Stop[] => {
  const stops: Stop[] = [];
  for (let i = 0; i <= PIECES; i++) {
    const share = i / PIECES;
    const at = pull.project(pull.pathAt(share));
    if (!at) break;
    stops.push({ share, at });
  }
  return stops;
};

const apart = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const screenLength = (stops: readonly Stop[]): number =>
  stops.reduce((sum, stop, i) => sum + (i > 0 ? apart(stops[i - 1]?.at ?? stop.at, stop.at) : 0), 0);

const nearestOn = (from: Stop, to: Stop, pointer: Vec2): Stop => {
  const along: Vec2 = [to.at[0] - from.at[0], to.at[1] - from.at[1]];
  const square = along[0] * along[0] + along[1] * along[1];
  const raw = square > 0 ? ((pointer[0] - from.at[0]) * along[0] + (pointer[1] - from.at[1]) * along[1]) / square : 0;
  const t = Math.min(1, Math.max(0, raw));
  return {
    share: from.share + (to.share - from.share) * t,
    at: [from.at[0] + along[0] * t, from.at[1] + along[1] * t],
  };
};

/**
 * The share of the travel that a pointer asks for: the place of the travel that looks nearest to it, the present
 * share preferred between two that look alike. A travel that comes straight at the eye is moved by pulling down the
 * screen instead. Always within 0 and 1.
 */
export const pulledShare = (pull: Pull, pointer: Vec2, present: number): number => {
  const stops = pathOnScreen(pull);
  if (stops.length < 2 || screenLength(stops) < SHORT_PX) {
    const pulled = pull.startShare + (pointer[1] - pull.startPointer[1]) / BLIND_PULL_PX;
    return Math.min(1, Math.max(0, pulled));
  }
  let best = present;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < stops.length; i++) {
    const from = stops[i - 1];
    const to = stops[i];
    if (!from || !to) continue;
    const near = nearestOn(from, to, pointer);
    const cost = apart(near.at, pointer) + JUMP_PX * Math.abs(near.share - present);
    if (cost < least) {
      least = cost;
      best = near.share;
    }
  }
  return best;
};

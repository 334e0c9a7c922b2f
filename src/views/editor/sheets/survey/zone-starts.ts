import type { Survey, Zone } from '../../../../design/index.ts';

export interface ZoneStart {
  readonly label: string;
  readonly zone: Omit<Zone, 'id'>;
}

interface Room {
  readonly x0: number;
  readonly x1: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** A room of ordinary size, for a survey without sections. */
const USUAL: Room = { x0: 0, x1: 1500, left: 600, right: -600, top: 900 };

const roomOf = ({ stations }: Survey): Room => {
  const outs = (side: 'left' | 'right'): readonly number[] => stations.flatMap((one) => one[side].map(([out]) => out));
  const ups = stations.flatMap((one) => [...one.left, ...one.right].map(([, up]) => up));
  const xs = stations.map(({ xMm }) => xMm);
  if (xs.length < 2 || ups.length === 0) return USUAL;
  return {
    x0: Math.min(...xs),
    x1: Math.max(...xs),
    left: Math.max(...outs('left')),
    right: -Math.max(...outs('right')),
    top: Math.max(...ups),
  };
};

/** How deep a folded curtain and its way stand off the trim, and how far down it reaches, where nobody has looked yet. */
const CURTAIN = { deep: 90, down: 260 } as const;
const SIGHT = { half: 250, low: 0.6 } as const;
const SEAT_TRAVEL = 220;
const UNDER_FLOOR = 60;

/** The zones that most vehicles have, each where it usually lies, to be set to its true line. */
export const zoneStarts = (survey: Survey): readonly ZoneStart[] => {
  const { x0, x1, left, right, top } = roomOf(survey);
  const curtain = (side: 'left' | 'right'): ZoneStart => ({
    label: `an airbag curtain, ${side}`,
    zone: {
      name: `airbag curtain, ${side}`,
      rule: 'nothing-stands',
      solid: {
        shape: 'box',
        min: [x0, side === 'left' ? left - CURTAIN.deep : right, top - CURTAIN.down],
        max: [x1, side === 'left' ? left : right + CURTAIN.deep, top],
      },
    },
  });
  const middle = Math.round((x0 + x1) / 2);
  return [
    curtain('left'),
    curtain('right'),
    {
      label: 'a no-hole area',
      zone: {
        name: 'no holes here',
        rule: 'no-hole',
        solid: { shape: 'box', min: [middle - 300, -250, -UNDER_FLOOR], max: [middle + 300, 250, UNDER_FLOOR] },
        outlineFromAbove: [
          [middle - 300, -250],
          [middle + 300, -250],
          [middle + 300, 250],
          [middle - 300, 250],
        ],
      },
    },
    {
      label: 'a sight line',
      zone: {
        name: 'view to the rear',
        rule: 'sight-line',
        solid: { shape: 'box', min: [x0, -SIGHT.half, Math.round(top * SIGHT.low)], max: [x1, SIGHT.half, top] },
      },
    },
    {
      label: 'a seat travel',
      zone: {
        name: 'seat, fully back',
        rule: 'seat-travel',
        solid: { shape: 'box', min: [x1 - SEAT_TRAVEL, right, 0], max: [x1, left, Math.round(top * 0.7)] },
      },
    },
  ];
};

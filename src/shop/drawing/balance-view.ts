import type { LengthUnits, Vec2 } from '../../base/index.ts';
import { formatMass } from '../../base/index.ts';
import type { Vehicle } from '../../design/index.ts';
import type { LoadingCaseResult } from '../../inspection/index.ts';
import type { Drawing, Shape } from './drawing.ts';
import { sizeText } from './paper-words.ts';
import { circle, line, onSheet, rectangle, ring, TEXT_MM, text } from './shapes.ts';
import type { TitleFoot } from './title-foot.ts';
import { dimension, viewSheet } from './view-sheet.ts';

export interface BalanceViewInput {
  readonly designTitle: string;
  readonly customer: string;
  /** Letter, hash and who approved it. */
  readonly signed: string;
  readonly foot: TitleFoot;
  readonly units: LengthUnits;
  readonly vehicle: Vehicle;
  readonly cases: readonly LoadingCaseResult[];
  /** A loading case by its id, for the reader. */
  readonly nameCase: (id: string) => string;
}

/** A wheel as drawn: half its width and its radius. */
const WHEEL: Vec2 = [110, 350];
const GAP = 400;
const RING_POINTS = 24;
/** Doubt is drawn at 95 %. */
const SIGMAS = 2;
const SURROUND = { left: 14, right: 80, bottom: 12, top: 6 } as const;

const ellipse = (at: Vec2, half: Vec2): readonly Vec2[] =>
  Array.from({ length: RING_POINTS }, (_, i): Vec2 => {
    const angle = (2 * Math.PI * i) / RING_POINTS;
    return [at[0] + half[0] * Math.cos(angle), at[1] + half[1] * Math.sin(angle)];
  });

/**
 * Where the weight stands in each loading case, from above and from the side, forward to the right: a point with its
 * number, and round it where it lies at 95 %. Null until wheelbase, track and the place of the rear axle are known.
 */
export const balanceView = (input: BalanceViewInput): Drawing | null => {
  const { vehicle, cases, units } = input;
  const { wheelbaseMm, trackMm, sillBehindRearAxleMm: rear, floorAboveGroundMm: floor } = vehicle;
  if (wheelbaseMm === null || trackMm === null || rear === null || cases.length === 0) return null;
  const high = floor !== null && cases.some(({ cgHeightMm }) => cgHeightMm !== null);
  const sideHeight = high ? Math.max(2 * WHEEL[1], ...cases.map(({ cgHeightMm }) => cgHeightMm ?? 0)) + WHEEL[1] : 0;
  const planHeight = trackMm + 2 * WHEEL[0];
  const size: Vec2 = [wheelbaseMm + 2 * WHEEL[1], planHeight + (high ? GAP + sideHeight : 0)];
  const middle = (high ? sideHeight + GAP : 0) + planHeight / 2;
  const along = (x: number): number => x - rear + WHEEL[1];
  const words = {
    designTitle: input.designTitle,
    customer: input.customer,
    signed: input.signed,
    foot: input.foot,
    view: 'balance',
    seen: high ? 'from above, and from the right below it; forward to the right' : 'from above, forward to the right',
    mark: 'balance',
  };
  return viewSheet(words, size, SURROUND, units, (scale, at) => {
    const move = onSheet(scale, at);
    const axles = [rear, rear + wheelbaseMm].map(along);
    const box = (from: Vec2, to: Vec2): Shape => rectangle('outline', move(from), move(to));
    const wheels = axles.flatMap((x) => [
      ...([-1, 1] as const).map((side) => {
        const y = middle + (side * trackMm) / 2;
        return box([x - WHEEL[1], y - WHEEL[0]], [x + WHEEL[1], y + WHEEL[0]]);
      }),
      ...(high ? [circle('outline', move([x, WHEEL[1]]), WHEEL[1] * scale)] : []),
    ]);
    const [from, to] = [axles[0] ?? 0, axles[1] ?? 0];
    const marks = cases.flatMap((one, i): readonly Shape[] => {
      const plan: Vec2 = [along(one.cg[0]), middle + one.cg[1]];
      const doubt = one.cgSigmaMm;
      const spot = (point: Vec2, half: Vec2 | null): readonly Shape[] => [
        circle('outline', move(point), 0.7),
        ...(half ? [ring('dimension', ellipse(point, half).map(move))] : []),
        text([move(point)[0] + 1.2, move(point)[1] + 0.8 + (i % 2) * TEXT_MM.note], String(i + 1), {
          height: TEXT_MM.note,
        }),
      ];
      const up = doubt?.[2] ?? null;
      return [
        ...spot(plan, doubt && [SIGMAS * doubt[0], SIGMAS * doubt[1]]),
        ...(one.cgHeightMm === null || !high
          ? []
          : spot([plan[0], one.cgHeightMm], doubt && up !== null ? [SIGMAS * doubt[0], SIGMAS * up] : null)),
      ];
    });
    const listAt: Vec2 = [at[0] + size[0] * scale + 6, at[1] + size[1] * scale - TEXT_MM.value];
    const list = cases.flatMap((one, i): readonly Shape[] => {
      const height = one.cgHeightMm === null ? '' : `, CG ${sizeText(one.cgHeightMm, units)} up`;
      const share = one.leftShare === null ? '' : `, ${(one.leftShare * 100).toFixed(1)} % left`;
      const y = listAt[1] - i * 9;
      return [
        text([listAt[0], y], `${i + 1}  ${input.nameCase(one.id)}`, { height: TEXT_MM.note, strong: true, within: 70 }),
        text(
          [listAt[0] + 4, y - 3.6],
          `${formatMass(one.frontKg, units)} front, ${formatMass(one.rearKg, units)} rear${share}${height}`,
          { height: TEXT_MM.caption, within: 66 },
        ),
      ];
    });
    const ground = move([0, 0]);
    return [
      ...wheels,
      line('centre', move([0, middle]), move([size[0], middle])),
      ...(high ? [line('seen', ground, move([size[0], 0]))] : []),
      ...marks,
      ...list,
      dimension('across', move([from, 0]), move([to, 0]), at[1] - 7, sizeText(wheelbaseMm, units)),
    ];
  });
};

import { boxAround, boxCorners, placed } from '../../../../base/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';

/** What nobody measures of a vehicle, for its outline alone: nothing is reckoned from it. */
const FRONT_OVERHANG = 880;
const SKIN = 70;
const HOOD_OVER_FLOOR = 420;
const UNDER_FLOOR = 380;

/** The outline of a vehicle as far as the survey tells it; the nose is sketched. */
export interface VehicleOutline {
  readonly rearX: number;
  readonly noseX: number;
  readonly halfWidth: number;
  /** Above ground. */
  readonly floor: number;
  readonly roof: number;
  readonly boxes: readonly CarcassBox[];
}

interface CarcassBox {
  readonly id: string;
  readonly min: readonly [number, number, number];
  readonly max: readonly [number, number, number];
}

const boxesOf = ({ carcasses }: FitOut): readonly CarcassBox[] =>
  carcasses.map(({ id, pose, size }) => ({
    id,
    ...boxAround(boxCorners({ min: [0, 0, 0], max: size }).map((corner) => placed(pose, corner))),
  }));

/** The outline around wheels at these places; the floor is taken at the height of the hub while nobody has measured it. */
export const useVehicleOutline = (frontX: number, halfTrack: number): VehicleOutline => {
  const { design, fitOut } = useEditorParts((editor) => ({ design: editor.history.design, fitOut: editor.fitOut }));
  const points = design.survey.stations.flatMap(({ left, right }) => [...left, ...right]);
  const floor = design.vehicle.floorAboveGroundMm ?? 2 * UNDER_FLOOR;
  const boxes = boxesOf(fitOut);
  const high = Math.max(900, ...points.map(([, z]) => z), ...boxes.map(({ max }) => max[2]));
  return {
    rearX: -SKIN - design.vehicle.bumperBehindSillMm,
    noseX: frontX + FRONT_OVERHANG,
    halfWidth: Math.max(halfTrack + 100, ...points.map(([y]) => Math.abs(y) + SKIN)),
    floor,
    roof: floor + high + SKIN,
    boxes,
  };
};

const BODY = {
  fill: 'var(--field)',
  stroke: 'var(--ink-2)',
  vectorEffect: 'non-scaling-stroke',
  strokeLinejoin: 'round',
} as const;
const WOOD = { fill: 'var(--line)', stroke: 'var(--ink-2)', vectorEffect: 'non-scaling-stroke' } as const;

/** From the left side, forward to the right, ground at zero. */
export const SideOutline = ({ of, frontX }: { readonly of: VehicleOutline; readonly frontX: number }) => {
  const { rearX, noseX, floor, roof, boxes } = of;
  const sill = floor - 60;
  const under = floor - UNDER_FLOOR;
  const hood = floor + HOOD_OVER_FLOOR;
  return (
    <g>
      <path
        {...BODY}
        d={`M0 ${-sill}L${rearX} ${-sill}L${rearX} ${-under}H${noseX - 60}L${noseX} ${-(under + 160)}L${noseX - 30} ${-(hood - 90)}L${frontX + 250} ${-hood}L${frontX - 650} ${-(roof - 60)}L${frontX - 850} ${-roof}L120 ${-roof}L0 ${-(roof - 90)}Z`}
      />
      <path d={`M0 ${-floor}H${frontX - 700}`} stroke="var(--line-2)" vectorEffect="non-scaling-stroke" />
      {boxes.map(({ id, min, max }) => (
        <rect key={id} {...WOOD} x={min[0]} y={-(max[2] + floor)} width={max[0] - min[0]} height={max[2] - min[2]} />
      ))}
    </g>
  );
};

/** From above, forward up. */
export const PlanOutline = ({ of }: { readonly of: VehicleOutline }) => {
  const { rearX, noseX, halfWidth, boxes } = of;
  return (
    <g>
      <rect {...BODY} x={-halfWidth} y={-noseX} width={2 * halfWidth} height={noseX - rearX} rx={180} />
      {boxes.map(({ id, min, max }) => (
        <rect key={id} {...WOOD} x={-max[1]} y={-max[0]} width={max[1] - min[1]} height={max[0] - min[0]} />
      ))}
    </g>
  );
};

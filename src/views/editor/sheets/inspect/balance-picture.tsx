import type { Vec2 } from '../../../../base/index.ts';
import type { LoadingCaseResult } from '../../../../inspection/index.ts';
import { sayCase } from '../../../../says/index.ts';
import { DrawingBoard, Heading, Length } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './inspect.module.css';

interface Wheels {
  readonly rearX: number;
  readonly frontX: number;
  readonly halfTrack: number;
}

const TIRE: Vec2 = [110, 350];

const Tire = ({ at }: { readonly at: Vec2 }) => (
  <rect
    x={at[0] - TIRE[0]}
    y={-at[1] - TIRE[1]}
    width={2 * TIRE[0]}
    height={2 * TIRE[1]}
    rx={60}
    fill="var(--sheet)"
    stroke="var(--ink-2)"
    vectorEffect="non-scaling-stroke"
  />
);

const Plan = ({ wheels, cases }: { readonly wheels: Wheels; readonly cases: readonly LoadingCaseResult[] }) => {
  const { rearX, frontX, halfTrack } = wheels;
  return (
    <DrawingBoard
      label="The centre of gravity of each loading case between the wheels, forward up"
      from={[-halfTrack - TIRE[0], rearX - TIRE[1]]}
      to={[halfTrack + TIRE[0], frontX + TIRE[1]]}
      margin={[8, 8, 8, 8]}
      tallest={280}
    >
      {(text) => (
        <>
          <path
            d={`M${-halfTrack} ${-rearX}H${halfTrack}V${-frontX}H${-halfTrack}Z`}
            fill="var(--field)"
            stroke="var(--ink)"
            vectorEffect="non-scaling-stroke"
          />
          <path
            d={`M0 ${-rearX + 300}V${-frontX - 300}M${-halfTrack} ${-(rearX + frontX) / 2}H${halfTrack}`}
            stroke="var(--line-2)"
            strokeDasharray="10 3 2 3"
            vectorEffect="non-scaling-stroke"
          />
          {[rearX, frontX].flatMap((x) => [
            <Tire key={`${x}l`} at={[-halfTrack, x]} />,
            <Tire key={`${x}r`} at={[halfTrack, x]} />,
          ])}
          {cases.map((one, i) => (
            <g key={one.id}>
              <circle cx={-one.cg[1]} cy={-one.cg[0]} r={text * 0.18} fill="var(--ink)" />
              <line
                x1={-one.cg[1]}
                y1={-one.cg[0]}
                x2={halfTrack * 0.45}
                y2={-(rearX + ((frontX - rearX) * (i + 1)) / (cases.length + 1))}
                stroke="var(--line-2)"
                vectorEffect="non-scaling-stroke"
              />
              <text
                x={halfTrack * 0.5}
                y={-(rearX + ((frontX - rearX) * (i + 1)) / (cases.length + 1)) + text * 0.35}
                fontSize={text}
                fill="var(--ink)"
                fontWeight={600}
              >
                {i + 1}
              </text>
            </g>
          ))}
        </>
      )}
    </DrawingBoard>
  );
};

/** Where the weight stands between the wheels, in each loading case. */
export const BalancePicture = ({ cases }: { readonly cases: readonly LoadingCaseResult[] }) => {
  const vehicle = useEditor((editor) => editor.history.design.vehicle);
  const units = useUnits();
  const { wheelbaseMm, trackMm, sillBehindRearAxleMm } = vehicle;
  if (wheelbaseMm === null || trackMm === null || sillBehindRearAxleMm === null) return null;
  const wheels = {
    rearX: sillBehindRearAxleMm,
    frontX: sillBehindRearAxleMm + wheelbaseMm,
    halfTrack: trackMm / 2,
  };
  return (
    <>
      <Heading level={3} title="Balance" aside="seen from above, forward up" />
      <div className={styles.balance}>
        <Plan wheels={wheels} cases={cases} />
        <ul className={sheet.group}>
          {cases.map((one, i) => (
            <li key={one.id}>
              <span className={styles.dot}>{i + 1}</span> {sayCase(one.id)}
              <br />
              <span className={sheet.soft}>
                {one.leftShare === null ? 'side to side unknown' : `${(one.leftShare * 100).toFixed(1)} % on the left`}
                {one.cgHeightMm === null ? '' : ', CG '}
                {one.cgHeightMm === null ? null : <Length mm={one.cgHeightMm} units={units} unit />}
                {one.cgHeightMm === null ? '' : ' above ground'}
              </span>
            </li>
          ))}
        </ul>
      </div>
    </>
  );
};

import { formatMass, type Vec2 } from '../../../../base/index.ts';
import type { LoadingCaseResult } from '../../../../inspection/index.ts';
import { DrawingBoard, Heading, Length } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './inspect.module.css';
import { PlanOutline, SideOutline, useVehicleOutline } from './vehicle-sketch.tsx';

interface Wheels {
  readonly rearX: number;
  readonly frontX: number;
  readonly halfTrack: number;
}

/** Doubt is drawn at 95 %. */
const SIGMAS = 2;

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
  const outline = useVehicleOutline(frontX, halfTrack);
  return (
    <DrawingBoard
      label="The centre of gravity of each loading case between the wheels, forward up"
      from={[-outline.halfWidth, outline.rearX]}
      to={[outline.halfWidth, outline.noseX]}
      margin={[8, 8, 8, 8]}
      tallest={340}
    >
      {(text) => (
        <>
          <PlanOutline of={outline} />
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
              {one.cgSigmaMm ? (
                <ellipse
                  cx={-one.cg[1]}
                  cy={-one.cg[0]}
                  rx={SIGMAS * one.cgSigmaMm[1]}
                  ry={SIGMAS * one.cgSigmaMm[0]}
                  fill="none"
                  stroke="var(--ink-2)"
                  vectorEffect="non-scaling-stroke"
                />
              ) : null}
              <line
                x1={-one.cg[1]}
                y1={-one.cg[0]}
                x2={halfTrack * 0.62}
                y2={-(rearX + ((frontX - rearX) * (i + 1)) / (cases.length + 1))}
                stroke="var(--line-2)"
                vectorEffect="non-scaling-stroke"
              />
              <text
                x={halfTrack * 0.66}
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

const Side = ({ wheels, cases }: { readonly wheels: Wheels; readonly cases: readonly LoadingCaseResult[] }) => {
  const { rearX, frontX, halfTrack } = wheels;
  const outline = useVehicleOutline(frontX, halfTrack);
  const known = cases.flatMap((one, i) => (one.cgHeightMm === null ? [] : [{ one, up: one.cgHeightMm, i }]));
  if (known.length === 0)
    return <p className={sheet.soft}>Heights need the floor and the centre of gravity above ground.</p>;
  const top = Math.max(outline.roof, ...known.map(({ up }) => up)) + TIRE[1] * 0.6;
  // Numbers stand in a row above, in the order of the list from the rear.
  const labelX = (i: number): number => rearX + ((frontX - rearX) * (i + 1)) / (cases.length + 1);
  return (
    <DrawingBoard
      label="The centre of gravity of each loading case above ground, forward to the right"
      from={[outline.rearX, 0]}
      to={[outline.noseX, top]}
      margin={[8, 8, 8, 8]}
      tallest={300}
    >
      {(text) => (
        <>
          <path
            d={`M${outline.rearX} 0H${outline.noseX}`}
            stroke="var(--ink)"
            strokeWidth={1.5}
            vectorEffect="non-scaling-stroke"
          />
          <SideOutline of={outline} frontX={frontX} />
          {[rearX, frontX].map((x) => (
            <circle
              key={x}
              cx={x}
              cy={-TIRE[1]}
              r={TIRE[1]}
              fill="var(--sheet)"
              stroke="var(--ink-2)"
              vectorEffect="non-scaling-stroke"
            />
          ))}
          {known.map(({ one, up, i }) => (
            <g key={one.id}>
              {one.cgSigmaMm && one.cgSigmaMm[2] !== null ? (
                <ellipse
                  cx={one.cg[0]}
                  cy={-up}
                  rx={SIGMAS * one.cgSigmaMm[0]}
                  ry={SIGMAS * one.cgSigmaMm[2]}
                  fill="none"
                  stroke="var(--ink-2)"
                  vectorEffect="non-scaling-stroke"
                />
              ) : null}
              <circle cx={one.cg[0]} cy={-up} r={text * 0.18} fill="var(--ink)" />
              <line
                x1={one.cg[0]}
                y1={-up}
                x2={labelX(i)}
                y2={-top + text * 0.4}
                stroke="var(--line-2)"
                vectorEffect="non-scaling-stroke"
              />
              <text
                x={labelX(i)}
                y={-top + text * 0.2}
                fontSize={text}
                textAnchor="middle"
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

const ssfWords = (one: LoadingCaseResult, before: number | null): string => {
  if (one.ssfWorstSide === null) return '';
  const spread = one.ssfSigma === null ? '' : ` ± ${(SIGMAS * one.ssfSigma).toFixed(2)}`;
  const change = before === null ? '' : ` (${(one.ssfWorstSide - before).toFixed(2).replace('-', '−')})`;
  return `, stability factor ${one.ssfWorstSide.toFixed(2)}${spread}${change}`;
};

const Case = ({
  one,
  index,
  before,
}: {
  readonly one: LoadingCaseResult;
  readonly index: number;
  readonly before: number | null;
}) => {
  const units = useUnits();
  const names = useNames();
  return (
    <li>
      <span className={styles.dot}>{index + 1}</span> {names.nameOf(one.id)}
      <br />
      <span className={sheet.soft}>
        {one.leftShare === null ? 'side to side unknown' : `${(one.leftShare * 100).toFixed(1)} % on the left`}
        {one.cgHeightMm === null ? '' : ', CG '}
        {one.cgHeightMm === null ? null : <Length mm={one.cgHeightMm} units={units} unit />}
        {one.cgHeightMm === null ? '' : ' above ground'}
        {ssfWords(one, index === 0 ? null : before)}
        {one.takenOffFrontKg > 0
          ? `; what stands behind the rear axle takes ${formatMass(one.takenOffFrontKg, units)} off the front`
          : ''}
      </span>
    </li>
  );
};

/** Where the weight stands between the wheels and above ground, in each loading case, with its doubt at 95 %. */
export const BalancePicture = ({ cases }: { readonly cases: readonly LoadingCaseResult[] }) => {
  const vehicle = useEditor((editor) => editor.history.design.vehicle);
  const { wheelbaseMm, trackMm, sillBehindRearAxleMm } = vehicle;
  if (wheelbaseMm === null || trackMm === null || sillBehindRearAxleMm === null) return null;
  const wheels = {
    rearX: sillBehindRearAxleMm,
    frontX: sillBehindRearAxleMm + wheelbaseMm,
    halfTrack: trackMm / 2,
  };
  const before = cases.find(({ id }) => id === 'received')?.ssfWorstSide ?? null;
  return (
    <>
      <Heading
        level={3}
        title="Balance"
        aside="from above, forward up; from the side, forward to the right; rings at 95 %"
      />
      <div className={styles.balance}>
        <Plan wheels={wheels} cases={cases} />
        <ul className={sheet.group}>
          {cases.map((one, i) => (
            <Case key={one.id} one={one} index={i} before={before} />
          ))}
        </ul>
      </div>
      <Side wheels={wheels} cases={cases} />
    </>
  );
};

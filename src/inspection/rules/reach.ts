import { dot, length, subtract, unit, type Vec3 } from '../../base/index.ts';
import { standsInAisle } from '../aisle.ts';
import type { Finding, Measured } from '../finding.ts';
import type { Job } from '../job.ts';
import { armsLength, liftsOf } from '../reach/index.ts';
import { found, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';
import { CONTROL_KINDS } from './control-kinds.ts';

/** Lighter things are taken with one hand, which the equation does not speak of. */
const isLifted = (job: Job, kg: number): boolean => kg >= job.rules.value('lifting-least-mass');

/** Every item lifted out by the revised equation, its tray as far out as helps. Screening of strength, not of skill. */
export const lifting = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'lifting-index');
  const lifts = liftsOf(job).filter(({ kg }) => isLifted(job, kg));
  const findings = lifts.flatMap((lift): readonly Finding[] => {
    if (lift.index !== null && lift.index <= limit.value) return [];
    const facts = {
      gear: lift.name,
      kg: lift.kg,
      limitKg: lift.limitKg,
      reachMm: lift.reachMm,
      heightMm: lift.heightMm,
      outside: lift.index === null ? 'yes' : 'no',
    };
    const margin = lift.index === null ? null : 'reach';
    return [
      found('lifting', { severity: 'caution', parts: [lift.gear], value: lift.index ?? 0, limit, margin, facts }),
    ];
  });
  const taken = lifts.flatMap(({ gear, index }): readonly Measured[] =>
    index === null
      ? []
      : [measured('lifting', { margin: 'reach', parts: [gear], value: index, limit, sense: 'at most' })],
  );
  return { findings, measured: taken, pairs: 0 };
};

/** Heavy gear between knee and waist, and not deep in without something that slides. */
export const heavyGear = (job: Job): Verdict => {
  const [low, high] = [ruleLimit(job.rules, 'heavy-height-min'), ruleLimit(job.rules, 'heavy-height-max')];
  const deep = ruleLimit(job.rules, 'heavy-reach');
  const heavy = liftsOf(job).filter(({ kg }) => kg >= job.rules.value('heavy-mass'));
  const findings = heavy.flatMap(({ gear, name, kg, heightMm, reachMm }): readonly Finding[] => {
    const say = (what: string, value: number, limit: typeof low): Finding =>
      found('heavy-gear', { severity: 'caution', parts: [gear], value, limit, facts: { gear: name, kg, what } });
    if (heightMm < low.value) return [say('low', heightMm, low)];
    if (heightMm > high.value) return [say('high', heightMm, high)];
    return reachMm > deep.value ? [say('deep', reachMm, deep)] : [];
  });
  return { ...NOTHING, findings };
};

/** First-due gear within a stretched arm of a small person in boots, standing at the bumper or the face. */
export const reachFar = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'reach-extended-small');
  const firstDue = new Set<string>(job.design.gear.filter(({ firstDue: due }) => due).map(({ id }) => id));
  const all = liftsOf(job)
    .filter(({ gear }) => firstDue.has(gear))
    .map((lift) => ({ lift, value: armsLength(lift, job.rules) }));
  const findings = all.flatMap(({ lift, value }): readonly Finding[] =>
    value <= limit.value
      ? []
      : [
          found('reach-far', {
            severity: 'caution',
            parts: [lift.gear],
            value,
            limit,
            margin: null,
            facts: { gear: lift.name, heightMm: lift.heightMm },
          }),
        ],
  );
  return { ...NOTHING, findings };
};

/** The plates that carry controls: middle and outward normal in the vehicle. */
const platesOf = (job: Job): readonly { readonly opening: string; readonly at: Vec3; readonly out: Vec3 }[] =>
  job.fitout.panels.flatMap((panel) => {
    if (panel.role !== 'plate') return [];
    const own = job.fitout.devices.filter(({ opening, device }) => {
      const kind = job.catalog.devices.get(device)?.kind;
      return opening === panel.origin && kind !== undefined && CONTROL_KINDS.has(kind);
    });
    const [first, ...rest] = own.map(({ at }) => at);
    if (!first) return [];
    const count = own.length;
    const at = rest.reduce<Vec3>((sum, each) => [sum[0] + each[0], sum[1] + each[1], sum[2] + each[2]], first);
    const middle: Vec3 = [at[0] / count, at[1] / count, at[2] / count];
    const outward = panel.pose.turn[2];
    const face = job.fitout.carcasses.find(({ id }) => id === panel.carcass);
    const towards: Vec3 = face ? face.pose.turn[1] : [1, 0, 0];
    const out: Vec3 = dot(outward, towards) > 0 ? [-outward[0], -outward[1], -outward[2]] : outward;
    return [{ opening: panel.origin, at: middle, out }];
  });

/** Radios, screens and switches where hands and eyes are: height above where they stand, and the angle that a plate is read at. */
export const controls = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const [low, high] = [ruleLimit(job.rules, 'control-height-min'), ruleLimit(job.rules, 'control-height-max')];
  const angle = ruleLimit(job.rules, 'view-angle-max');
  const boots = job.rules.value('boots-height');
  // In the middle of the ground on which a person works behind the bumper, or as far before any other face.
  const stand = job.design.vehicle.bumperBehindSillMm + job.rules.value('stand-depth') / 2;
  const inAisle = standsInAisle(job.design, job.rules);
  const findings = platesOf(job).flatMap(({ opening, at, out }): readonly Finding[] => {
    const stood = inAisle(out) ? 0 : floor;
    const eyes = ['eye-small', 'eye-large'].map((id) => job.rules.value(id) + boots - stood);
    const height = at[2] + stood;
    const limit = height < low.value ? low : high;
    const off = height < low.value || height > high.value;
    const rear = out[0] < -0.5;
    const angles = eyes.map((z) => {
      const eye: Vec3 = rear ? [-stand, at[1], z] : [at[0], at[1] + Math.sign(out[1]) * stand, z];
      const sight = subtract(eye, at);
      return length(sight) > 0 ? (Math.acos(Math.min(1, dot(unit(sight), unit(out)))) * 180) / Math.PI : 0;
    });
    const worst = Math.max(...angles);
    return [
      ...(off ? [found('control-height', { severity: 'caution', parts: [opening], value: height, limit })] : []),
      ...(worst > angle.value
        ? [found('reading-angle', { severity: 'caution', parts: [opening], value: worst, limit: angle })]
        : []),
    ];
  });
  return { ...NOTHING, findings };
};

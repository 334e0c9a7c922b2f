import { boxMiddle, HOME, ROUNDING_MM, turned } from '../../base/index.ts';
import { certifiedTravel, gapWithin, shapeBox } from '../../bodies/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { namedPart } from '../standing.ts';
import { type InTheWay, openPose, openVehicle } from '../travel/movers.ts';
import { found, limitAt, NO_OVERLAP, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';
import { CONTROL_KINDS } from './control-kinds.ts';

type Mounted = FitOut['devices'][number] & { readonly off: NonNullable<FitOut['devices'][number]['off']> };

/** A mount where it stands with the closures open, and all else then. */
interface Standing {
  readonly device: Mounted;
  readonly name: string;
  readonly own: readonly InTheWay[];
  readonly others: readonly InTheWay[];
}

const mountsOf = (job: Job): readonly Standing[] => {
  const devices = job.fitout.devices.flatMap((device) => (device.off ? [{ ...device, off: device.off }] : []));
  if (devices.length === 0) return [];
  const cabinet = job.standing
    .filter(({ closure, body }) => closure === null && body.kind !== 'plug-room')
    .map(({ body }): InTheWay => {
      const part = namedPart(body);
      return { part, name: body.name, shape: body.shape, vehicle: null, doubt: 0 };
    });
  const brackets = new Set<unknown>(
    job.fitout.bodies.filter(({ kind }) => kind === 'hardware').map(({ shape }) => shape),
  );
  const all = [...(job.space ? openVehicle(job, job.space) : []), ...cabinet];
  return devices.map((device) => ({
    device,
    name: job.fitout.bodies.find(({ id }) => id === `${device.origin}/body`)?.name ?? device.origin,
    own: all.filter(({ part, shape }) => part === device.origin && !brackets.has(shape)),
    others: all.filter(({ part }) => part !== device.origin),
  }));
};

/**
 * Every device mounted outside the cabinet comes straight off the way that it looks, as far as it says, closures open
 * and the cabinet stowed: past everything but what it already touches.
 */
export const mountOff = (job: Job): Verdict => {
  const mounts = mountsOf(job);
  const closures = new Map((job.space?.closures ?? []).map((closure) => [closure.id as string, closure]));
  const findings = mounts.flatMap(({ device, name, own, others }): readonly Finding[] => {
    const { along, mm } = device.off;
    const pose = device.mover === null ? HOME : openPose(closures, device.mover);
    const away = others.filter(({ shape }) => own.every((each) => gapWithin(each.shape, shape, ROUNDING_MM) === null));
    const { contact, reaches } = certifiedTravel(
      { kind: 'slide', along: turned(pose, along), fromMm: 0, toMm: mm },
      own.map(({ shape }) => shape),
      away.map(({ shape }) => shape),
      0,
      { limit: ROUNDING_MM },
    );
    const met = contact ? away[contact.obstacle] : undefined;
    if (!contact || !met) return [];
    return [
      found('mount-off', {
        severity: 'caution',
        parts: [device.origin, met.part],
        value: reaches,
        limit: limitAt(NO_OVERLAP, mm, 'mm'),
        uncertainty: met.doubt,
        at: [contact.from, contact.to],
        margin: 'reach',
        facts: { device: name, body: met.name },
      }),
    ];
  });
  return { ...NOTHING, findings, pairs: mounts.length };
};

/** A switch or a radio that hangs outside the cabinet is in reach of a raised hand, closures open. */
export const mountHeight = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const limit = ruleLimit(job.rules, 'mount-height-max');
  const findings = mountsOf(job).flatMap(({ device, name, own }): readonly Finding[] => {
    const kind = job.catalog.devices.get(device.device)?.kind;
    const [first] = own;
    if (!first || kind === undefined || !CONTROL_KINDS.has(kind)) return [];
    const value = boxMiddle(shapeBox(first.shape))[2] + floor;
    if (value <= limit.value) return [];
    return [
      found('mount-height', {
        severity: 'caution',
        parts: [device.origin],
        value,
        limit,
        margin: 'reach',
        facts: { device: name },
      }),
    ];
  });
  return { ...NOTHING, findings };
};

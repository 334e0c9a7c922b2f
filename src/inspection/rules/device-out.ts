import { type Box, boxesMeet, boxUnion, ROUNDING_MM, scale, shift, turned, type Vec3 } from '../../base/index.ts';
import { certifiedTravel, gapWithin, type Motion, shapeAt, shapeBox, travelIsClear } from '../../bodies/index.ts';
import { createStands, type Placed } from '../access/take-out.ts';
import { accessOf } from '../access/work-out-order.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { pastFacts } from '../travel/past-it.ts';
import { found, limitAt, NO_OVERLAP, NOTHING, outFacts, type Verdict } from '../verdict.ts';

/** The room axis that looks out of the open face, in the carcass of the opening. */
const OUT_OF_FACE: Vec3 = [0, -1, 0];

/** How far it comes before it meets that one. */
const reachesBefore = (motion: Motion, own: readonly Placed[], met: Placed): number =>
  certifiedTravel(
    motion,
    own.map(({ shape }) => shape),
    [met.shape],
    0,
    { limit: ROUNDING_MM },
  ).reaches;

/** The box around all of the carcass that a part belongs to: past one panel of it, the next one is in the way. */
const wholeOf = (placed: readonly Placed[], { solid }: Placed): Box => {
  const [own] = solid.part.split('/');
  return placed
    .filter(({ solid: { part } }) => part.split('/')[0] === own)
    .map(({ box }) => box)
    .reduce(boxUnion);
};

/**
 * A device behind a faceplate is drawn out through the face for service, by its own depth, past everything that does
 * not belong to its plate: with the closures open and every mover stowed. A caution where something fixed is before it.
 */
export const deviceOut = (job: Job): Verdict => {
  const devices = job.fitout.devices.filter(({ opening }) => opening !== null);
  if (devices.length === 0) return NOTHING;
  const { ground } = accessOf(job).lanes;
  const open = Object.fromEntries(ground.units.filter(({ closure }) => closure).map(({ id }) => [id, 1]));
  const placed = createStands(ground)(open);
  const carcassOf = new Map<string, string>(job.fitout.openings.map(({ id, carcass }) => [id, carcass]));
  const poses = new Map<string, (typeof job.fitout.carcasses)[number]['pose']>(
    job.fitout.carcasses.map(({ id, pose }) => [id, pose]),
  );
  const plates = new Set<string>(devices.flatMap(({ origin, opening }) => [origin, opening ?? origin]));
  const findings: Finding[] = [];
  for (const device of devices) {
    const pose = poses.get(carcassOf.get(device.opening ?? '') ?? '');
    const own = placed.filter(({ solid }) => solid.origin === device.origin && solid.kind === 'device');
    if (!pose || own.length === 0) continue;
    const out = turned(pose, OUT_OF_FACE);
    const box = own.map((each) => each.box).reduce(boxUnion);
    const depth = Math.abs(out[0]) > Math.abs(out[1]) ? box.max[0] - box.min[0] : box.max[1] - box.min[1];
    const way = boxUnion(
      box,
      shapeBox(shapeAt({ vertices: [box.min, box.max], faces: [], radius: 0 }, shift(scale(out, depth)))),
    );
    const motion: Motion = { kind: 'slide', along: out, fromMm: 0, toMm: depth };
    const met = placed.find(
      (other) =>
        !plates.has(other.solid.origin) &&
        boxesMeet(way, other.box) &&
        !own.some(({ shape }) => gapWithin(shape, other.shape, ROUNDING_MM) !== null) &&
        !travelIsClear(
          motion,
          own.map(({ shape }) => shape),
          [other.shape],
          0,
        ),
    );
    if (!met) continue;
    findings.push(
      found('device-out', {
        severity: 'caution',
        parts: [device.origin, met.solid.part],
        value: 0,
        limit: limitAt(NO_OVERLAP, depth, 'mm'),
        margin: 'reach',
        facts: {
          opening: device.opening ?? '',
          device: own[0]?.solid.name ?? device.origin,
          body: met.solid.name,
          shortMm: depth - reachesBefore(motion, own, met),
          ...outFacts(out),
          ...pastFacts(motion, box, wholeOf(placed, met)),
        },
      }),
    );
  }
  return { ...NOTHING, findings, pairs: devices.length };
};

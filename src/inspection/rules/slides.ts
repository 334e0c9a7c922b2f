import { boxUnion, dot, type Vec3 } from '../../base/index.ts';
import { allowedSlideLoadKg } from '../../fitout/index.ts';
import type { Finding, Measured } from '../finding.ts';
import { anchorUse, type CarcassHold, forceOf, type HeldMover } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { found, limitAt, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** A drawer or tray that slides out of its carcass by itself. */
interface Slider {
  readonly held: HeldMover;
  readonly direction: Vec3;
  readonly travel: number;
  /** How far its front and its middle stand towards the viewer, stowed. */
  readonly front: number;
  readonly centre: number;
  readonly widthMm: number;
}

const slidersOf = (job: Job): readonly Slider[] =>
  job.heldMovers.flatMap((held): readonly Slider[] => {
    const { motion, carriedBy, id } = held.mover;
    if (motion.kind !== 'slide' || carriedBy !== null) return [];
    const [first, ...rest] = job.standing
      .filter(({ body }) => body.mover === id && body.kind === 'panel')
      .map(({ box }) => box);
    if (!first) return [];
    const box = rest.reduce(boxUnion, first);
    const axis = Math.abs(motion.direction[0]) > 0.5 ? 0 : 1;
    const across = axis === 0 ? 1 : 0;
    const way = motion.direction[axis] > 0 ? 1 : -1;
    const front = way > 0 ? box.max[axis] : -box.min[axis];
    return [
      {
        held,
        direction: motion.direction,
        travel: motion.travel,
        front,
        centre: dot(held.centre, motion.direction),
        widthMm: box.max[across] - box.min[across],
      },
    ];
  });

/**
 * Every pair of slides carries what runs on it: the rating in a vehicle, less for a mover wider than its slides are
 * long and for over-travel. Over what is allowed: caution; over the rating itself: stop.
 */
export const slideLoad = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'slide-vehicle-factor');
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  for (const { held, widthMm } of slidersOf(job)) {
    const { origin } = held.mover;
    const use = job.fitout.hardware.find((each) => each.origin === origin && each.from === 'slide');
    const slide = use && job.catalog.slides.get(use.item);
    if (!slide || use.lengthMm === null) continue;
    const allowed = limitAt(limit, allowedSlideLoadKg(slide, use.lengthMm, widthMm, job.rules), 'kg');
    const what = { parts: [origin], value: held.kg, limit: allowed };
    taken.push(measured('slide-load', { ...what, margin: 'hold', sense: 'at most' }));
    if (held.kg <= allowed.value) continue;
    const facts = { mover: held.mover.name, slide: slide.name, ratingKg: slide.ratingKg };
    const severity = held.kg > slide.ratingKg ? 'stop' : 'caution';
    findings.push(found('slide-load', { ...what, severity, margin: 'hold', facts }));
  }
  return { findings, measured: taken, pairs: 0 };
};

/** A heavy or far-reaching tray needs a leg or a second rail; its root moment with a person leaning is said. */
export const trayLeg = (job: Job): Verdict => {
  const [mass, travel] = [ruleLimit(job.rules, 'slide-out-leg-mass'), ruleLimit(job.rules, 'slide-out-leg-travel')];
  const heavy = job.rules.value('slide-out-lock-mass');
  const lean = job.rules.value('slide-out-lean');
  const findings = slidersOf(job).flatMap(({ held, travel: out, front, centre }): readonly Finding[] => {
    const far = out > travel.value && held.kg > heavy;
    if (held.kg <= mass.value && !far) return [];
    // Middle behind the front: c; the middle out past the face: s − c; the lean acts at the front edge, s.
    const behind = Math.max(0, front - centre);
    const rootNmm = (forceOf(job, held.kg, 1) * Math.max(0, out - behind) + lean * out) / 2;
    const over = held.kg > mass.value;
    const facts = { mover: held.mover.name, kg: held.kg, outMm: out, rootNm: rootNmm / 1000, lean };
    return [
      found('tray-leg', {
        severity: 'caution',
        parts: [held.mover.origin],
        value: over ? held.kg : out,
        limit: over ? mass : travel,
        facts,
      }),
    ];
  });
  return { ...NOTHING, findings };
};

interface Tip {
  readonly use: number;
  readonly anchor: string;
  readonly momentNmm: number;
  readonly pullN: number;
}

/** All trays of a carcass out and a person leaning on the furthest: what its anchors hold it down with. */
const tipOf = (job: Job, { carcass }: CarcassHold, trays: readonly Slider[]): Tip | null => {
  const [first] = trays;
  if (!first || carcass.anchors.length === 0) return null;
  const { direction } = first;
  const axis = Math.abs(direction[0]) > 0.5 ? 0 : 1;
  const way = direction[axis] > 0 ? 1 : -1;
  const toe = way * (way > 0 ? carcass.foot.max[axis] : carcass.foot.min[axis]);
  const trayKg = trays.reduce((sum, { held }) => sum + held.kg, 0);
  const out = trays.reduce(
    (sum, { held, centre, travel }) => sum + forceOf(job, held.kg, 1) * (centre + travel - toe),
    0,
  );
  const lean = job.rules.value('slide-out-lean') * Math.max(...trays.map(({ front, travel }) => front + travel - toe));
  // The moment of everything about the edge, less that of the trays where they are stowed.
  const stowed = trays.reduce((sum, { held, centre }) => sum + held.kg * (toe - centre), 0);
  const inside = forceOf(job, Math.max(0, carcass.kg * (toe - way * carcass.centre[axis]) - stowed), 1);
  const momentNmm = Math.max(0, out + lean - inside);
  const levers = carcass.anchors.map(({ at, on }) =>
    on === 'floor' ? Math.max(0, toe - way * at[axis]) : at[2] - carcass.foot.z,
  );
  const square = levers.reduce((sum, own) => sum + own ** 2, 0);
  if (!(square > 0) || trayKg <= 0) return null;
  let worst: Tip | null = null;
  carcass.anchors.forEach((anchor, i) => {
    const pullN = (momentNmm * (levers[i] ?? 0)) / square;
    const { links } = anchorUse(job, anchor, { tensionN: pullN, shearN: 0 }, null);
    const use = Math.max(0, ...links.map((link) => link.use));
    if (!worst || use > worst.use) worst = { use, anchor: anchor.id, momentNmm, pullN };
  });
  return worst;
};

/** A carcass does not tip over its face with its trays out and a person leaning on them. */
export const trayTip = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'tilt-anchor-share');
  const sliders = slidersOf(job);
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  for (const hold of job.holds) {
    const trays = sliders.filter(({ held }) => held.carcass === hold.carcass.id);
    const tip = tipOf(job, hold, trays);
    if (!tip) continue;
    const what = { parts: [hold.carcass.id], value: tip.use, limit, margin: 'hold' } as const;
    taken.push(measured('tray-tip', { ...what, sense: 'at most' }));
    const facts = { anchor: tip.anchor, momentNm: tip.momentNmm / 1000, pullN: tip.pullN, trays: trays.length };
    if (tip.use > limit.value) findings.push(found('tray-tip', { ...what, severity: 'stop', facts }));
  }
  return { findings, measured: taken, pairs: 0 };
};

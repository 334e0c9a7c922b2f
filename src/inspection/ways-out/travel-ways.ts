import {
  changeFitting,
  changeSurveyItem,
  type Design,
  findOpening,
  type NodeId,
  openingsFrom,
  setPartSize,
} from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import { type Candidate, markOff, roundedUp, sizedCandidate, type WayFinder } from './candidate.ts';
import { carcassAround, movedAlong, shrunkBy } from './carcass-ways.ts';
import { type Shift, shiftsOff, VEHICLE_AXES, type VehicleAxis } from './escape.ts';
import { gearAsideWays } from './gear-ways.ts';

/** Slides come in steps of this (mm); a length that the chosen slide does not come in makes a stop of its own and falls out. */
const SLIDE_STEP = 50;
/** Lengths tried, longest first. */
const TRIED = 6;
/** From this share on a direction runs along an axis. */
const STRAIGHT = 0.99;
/** Stops of a leaf that are tried lower, in degrees. */
const STOP_STEP = 5;

const idIn = (design: Design, part: string | undefined): NodeId | null =>
  design.cabinet.carcasses.flatMap((carcass) => openingsFrom(carcass.opening)).find(({ id }) => id === part)?.id ??
  null;

const fittingOf = (design: Design, id: NodeId) => {
  const content = findOpening(design, id)?.opening.content;
  return content?.kind === 'fitted' ? content.fitting : null;
};

const shorterSlide = (design: Design, part: string | undefined, mostMm: number): readonly Candidate[] => {
  const id = idIn(design, part);
  const fitting = id === null ? null : fittingOf(design, id);
  if (id === null || !fitting || !('slideLengthMm' in fitting)) return [];
  const longest = Math.floor(mostMm / SLIDE_STEP) * SLIDE_STEP;
  return Array.from({ length: TRIED }, (_, i) => longest - i * SLIDE_STEP)
    .filter((mm) => mm > 0)
    .map(
      (mm): Candidate => ({
        kind: 'shorten-slide',
        facts: { opening: id, mm },
        design: changeFitting(design, id, (own) => {
          if ('slideLengthMm' in own) own.slideLengthMm = mm;
        }),
        change: longest + SLIDE_STEP - mm,
        group: `slide ${id}`,
      }),
    );
};

/** The slide that is in there, or a common long one where the solver chose it. */
const LONG_SLIDE = 700;

/** A shorter slide, so that the mover stops before it meets anything. */
export const shorterSlideWays: WayFinder = (finding, design) => {
  if (finding.rule === 'mover-travel')
    return finding.unit === 'mm' && finding.facts.what === 'meets'
      ? shorterSlide(design, finding.parts[0], finding.value)
      : [];
  return finding.parts.flatMap((part) => shorterSlide(design, part, LONG_SLIDE - SLIDE_STEP));
};

const OTHER_SIDE = { left: 'right', right: 'left' } as const;

const otherHinge = (design: Design, part: string | undefined): readonly Candidate[] => {
  const id = idIn(design, part);
  const fitting = id === null ? null : fittingOf(design, id);
  if (id === null || !fitting) return [];
  const candidate = (side: string, changed: Design): Candidate => ({
    kind: 'other-hinge',
    facts: { opening: id, side },
    design: changed,
    change: 1,
    group: null,
  });
  if (fitting.kind === 'door' && (fitting.hung === 'left' || fitting.hung === 'right')) {
    const side = OTHER_SIDE[fitting.hung];
    return [
      candidate(
        side,
        changeFitting(design, id, (own) => {
          if (own.kind === 'door') own.hung = side;
        }),
      ),
    ];
  }
  if (fitting.kind !== 'board' || fitting.way === 'top-flip') return [];
  const side = OTHER_SIDE[fitting.hinge];
  return [
    candidate(
      side,
      changeFitting(design, id, (own) => {
        if (own.kind === 'board') own.hinge = side;
      }),
    ),
  ];
};

/** A leaf or board given a stop so many degrees sooner than it goes now. */
const soonerStop = (design: Design, part: string | undefined, fromDeg: number, lessDeg: number): Candidate | null => {
  const id = idIn(design, part);
  const fitting = id === null ? null : fittingOf(design, id);
  const deg = fromDeg - lessDeg;
  if (id === null || !fitting || deg < STOP_STEP || (fitting.kind !== 'door' && fitting.kind !== 'board')) return null;
  return {
    kind: 'lower-stop',
    facts: { opening: id, deg },
    design: changeFitting(design, id, (own) => {
      if (own.kind === 'door') own.opensDeg = deg;
      if (own.kind === 'board') own.stopsDeg = [...own.stopsDeg.filter((stop) => stop < deg), deg];
    }),
    change: lessDeg,
    group: `stop ${id}`,
  };
};

/** A leaf or board that stops sooner: at the last step before it meets anything. */
const lowerStop = (finding: Finding, design: Design): readonly Candidate[] => {
  const deg = Math.floor(finding.value / STOP_STEP) * STOP_STEP;
  if (finding.unit !== 'deg' || finding.facts.what !== 'meets') return [];
  const candidate = soonerStop(design, finding.parts[0], finding.limit, finding.limit - deg);
  return candidate ? [candidate] : [];
};

/** How much sooner a leaf stops that is in the way of another mover: tried in turn, then the least that does. */
const SOONER = [15, 35, 60];

/** Any leaf that the finding names, stopped sooner. */
const soonerStops = (finding: Finding, design: Design): readonly Candidate[] =>
  finding.parts.flatMap((part) => {
    const id = idIn(design, part);
    const fitting = id === null ? null : fittingOf(design, id);
    const from =
      fitting?.kind === 'door' ? fitting.opensDeg : fitting?.kind === 'board' ? Math.max(...fitting.stopsDeg) : 0;
    return SOONER.flatMap((less) => sizedCandidate(less, STOP_STEP, (by) => soonerStop(design, part, from, by)));
  });

/** Two movers in each other's way: one hung on the other side, stopped sooner, or on a shorter slide. */
export const pairWays: WayFinder = (finding, design) => [
  ...finding.parts.flatMap((part) => otherHinge(design, part)),
  ...soonerStops(finding, design),
  ...shorterSlideWays(finding, design),
];

/** A closure that a strap holds sooner, so that it clears a low roof. */
export const lowRoofWays: WayFinder = (finding, design) => {
  const closure = design.survey.closures.find(({ id }) => id === finding.parts[0]);
  const deg = Math.floor(Number(finding.facts.keepsDeg));
  if (!closure || !(deg >= 1)) return [];
  return [
    {
      kind: 'lower-stop',
      facts: { opening: closure.id, deg },
      design: changeSurveyItem(design, 'closures', closure.id, { opensDeg: deg }),
      change: closure.opensDeg - deg,
      group: null,
    },
  ];
};

/** The axis of the vehicle along which something comes out, with its sign; null where it comes out aslant. */
const outOf = ({ facts }: Finding): { readonly axis: VehicleAxis; readonly sign: number } | null => {
  for (const axis of VEHICLE_AXES) {
    const share = Number(facts[`out-${axis}`] ?? 0);
    if (Math.abs(share) > STRAIGHT) return { axis, sign: Math.sign(share) };
  }
  return null;
};

/** Nobody moves a carcass farther than this (mm) to let a mover past something: there are lighter ways. */
const MOST_PAST = 150;

/** Room wanted past what a mover met: with the gap and all that is not known of it, or just past it. */
const roomsPast = ({ facts }: Finding): readonly number[] => {
  const [gap, doubt] = [Number(facts.gapMm ?? 0), Number(facts.doubtMm ?? 0)];
  return [...new Set([gap + doubt, 0])];
};

/** Shifts off what a mover met, over it, under it or to a side of it, those with room to spare first. */
const shiftsPast = (finding: Finding): readonly Shift[] =>
  VEHICLE_AXES.flatMap((axis) =>
    (['plus', 'minus'] as const).flatMap((way): readonly Shift[] => {
      const past = Number(finding.facts[`past-${axis}-${way}`] ?? 0);
      if (!(past > 0) || past > MOST_PAST) return [];
      const lengths = roomsPast(finding).map((room) => past + room);
      const sign = way === 'plus' ? 1 : -1;
      return lengths.map((mm) => ({ axis, mm: sign * mm, group: `${axis} ${sign}`, rank: Math.max(...lengths) }));
    }),
  );

/** Shifts of a mover off what it passes too near or past what it runs into. */
const moverShifts = (finding: Finding, design: Design): readonly Shift[] =>
  finding.facts.what === 'close' ? shiftsOff(finding, design.units) : shiftsPast(finding);

/** The carcass of a mover moved: back by what it falls short, past what it runs into, or off what it passes. */
export const moverCarcassWays: WayFinder = (finding, design) => {
  const carcass = carcassAround(design, finding.parts[0]);
  const out = finding.unit === 'mm' && finding.facts.what === 'meets' ? outOf(finding) : null;
  const short = finding.limit - finding.value;
  return [
    ...moverShifts(finding, design).flatMap(({ axis, mm, rank }) => movedAlong(design, carcass, axis, mm, rank)),
    ...(out
      ? roomsPast(finding).flatMap((room) =>
          movedAlong(design, carcass, out.axis, -out.sign * (short + room), short + Math.max(...roomsPast(finding))),
        )
      : []),
  ];
};

/** What stands before a hand or a device: gear put aside, the leaf hung the other way, either carcass moved apart. */
export const beforeItWays: WayFinder = (finding, design) => {
  const [part, met] = finding.parts;
  // A device is named by itself; its plate stands in an opening.
  const plate = finding.facts.opening;
  const [own, other] = [carcassAround(design, typeof plate === 'string' ? plate : part), carcassAround(design, met)];
  const out = outOf(finding);
  const short = Number(finding.facts.shortMm ?? 0);
  return [
    ...gearAsideWays(design, met === undefined ? [] : [met]),
    ...otherHinge(design, part),
    ...(own === other
      ? []
      : shiftsPast(finding).flatMap(({ axis, mm, rank }) => [
          ...movedAlong(design, own, axis, mm, rank),
          ...movedAlong(design, other, axis, -mm, rank),
        ])),
    ...(out && short > 0 && own !== other
      ? [
          ...movedAlong(design, own, out.axis, -out.sign * short),
          ...movedAlong(design, other, out.axis, out.sign * short),
        ]
      : []),
  ];
};

/** The other hinge side for any leaf that the finding names, and a lower stop for the one that is blocked. */
export const otherHingeWays: WayFinder = (finding, design) => [
  ...finding.parts.flatMap((part) => otherHinge(design, part)),
  ...lowerStop(finding, design),
];

/**
 * The row of a blocked mover raised or lowered: the row under it made higher or lower by what is short, where another
 * row with a share gives or takes it. For what runs into something low before the face, a striker or a sill, or into
 * something that hangs down.
 */
export const rowWays: WayFinder = (finding, design) => {
  const id = idIn(design, finding.parts[0]);
  const around = id === null ? undefined : findOpening(design, id);
  if (id === null || !around) return [];
  const chain = [...around.around, around.opening];
  const shifts = moverShifts(finding, design).filter(({ axis }) => axis === 'z');
  return around.around.flatMap((parent, i): readonly Candidate[] => {
    const { content } = parent;
    if (content.kind !== 'divided' || content.along !== 'rows') return [];
    const at = content.parts.findIndex(({ opening }) => opening.id === chain[i + 1]?.id);
    const below = content.parts[at + 1];
    const belowMm = below?.size.rule === 'fixed' ? below.size.mm : null;
    if (belowMm === null || !content.parts.some(({ size }, k) => k !== at + 1 && size.rule === 'share')) return [];
    return shifts.flatMap(({ mm, rank }) =>
      sizedCandidate(roundedUp(Math.abs(mm), design.units), markOff(design.units), (by) => {
        const size = belowMm + Math.sign(mm) * by;
        if (size <= 0) return null;
        return {
          kind: mm > 0 ? 'raise-row' : 'lower-row',
          facts: { opening: id, mm: by },
          design: setPartSize(design, parent.id, at + 1, { rule: 'fixed', mm: size }),
          change: rank,
          group: `row ${id} ${Math.sign(mm)}`,
        };
      }),
    );
  });
};

/** A carcass that is too large for its way in, made smaller by what lacks. */
export const carryWays: WayFinder = (finding, design) => {
  const carcass = carcassAround(design, finding.parts[0]);
  if (!carcass || finding.facts.what !== 'tight') return [];
  const short = finding.limit - finding.value;
  // What it passes on both sides takes twice as much.
  return (['width', 'height'] as const).flatMap((size) =>
    [short, 2 * short].flatMap((mm) => shrunkBy(design, carcass, size, mm)),
  );
};

import { changeFitting, type Design, findOpening, type NodeId, openingsFrom, setPartSize } from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import { type Candidate, roundedUp, type WayFinder } from './candidate.ts';

/** Slides come in steps of this (mm); a length that the chosen slide does not come in makes a stop of its own and falls out. */
const SLIDE_STEP = 50;
/** Lengths tried, longest first. */
const TRIED = 6;
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

/** A leaf or board that stops sooner: at the last step before it meets anything. */
const lowerStop = (finding: Finding, design: Design): readonly Candidate[] => {
  const id = idIn(design, finding.parts[0]);
  const fitting = id === null ? null : fittingOf(design, id);
  const deg = Math.floor(finding.value / STOP_STEP) * STOP_STEP;
  if (id === null || !fitting || finding.unit !== 'deg' || finding.facts.what !== 'meets' || deg < STOP_STEP) return [];
  if (fitting.kind !== 'door' && fitting.kind !== 'board') return [];
  return [
    {
      kind: 'lower-stop',
      facts: { opening: id, deg },
      design: changeFitting(design, id, (own) => {
        if (own.kind === 'door') own.opensDeg = deg;
        if (own.kind === 'board') own.stopsDeg = [...own.stopsDeg.filter((stop) => stop < deg), deg];
      }),
      change: finding.limit - deg,
      group: null,
    },
  ];
};

/** The other hinge side for any leaf that the finding names, and a lower stop for the one that is blocked. */
export const otherHingeWays: WayFinder = (finding, design) => [
  ...finding.parts.flatMap((part) => otherHinge(design, part)),
  ...lowerStop(finding, design),
];

/**
 * The row of a blocked mover raised: the row under it made higher by what is short, where another row with a share gives
 * it. For what runs into something low before the face: a striker, a sill.
 */
export const raiseWays: WayFinder = (finding, design) => {
  const id = idIn(design, finding.parts[0]);
  const around = id === null ? undefined : findOpening(design, id);
  if (id === null || !around || finding.rule !== 'mover-travel') return [];
  const short = finding.facts.what === 'close' ? finding.limit - finding.value : Number(finding.facts.risesMm ?? 0);
  if (!(short > 0)) return [];
  const chain = [...around.around, around.opening];
  const mm = roundedUp(short, design.units);
  return around.around.flatMap((parent, i): readonly Candidate[] => {
    const { content } = parent;
    if (content.kind !== 'divided' || content.along !== 'rows') return [];
    const at = content.parts.findIndex(({ opening }) => opening.id === chain[i + 1]?.id);
    const below = content.parts[at + 1];
    if (below?.size.rule !== 'fixed' || !content.parts.some(({ size }, k) => k !== at + 1 && size.rule === 'share'))
      return [];
    return [
      {
        kind: 'raise-row',
        facts: { opening: id, mm },
        design: setPartSize(design, parent.id, at + 1, { rule: 'fixed', mm: below.size.mm + mm }),
        change: mm,
        group: `raise ${id}`,
      },
    ];
  });
};

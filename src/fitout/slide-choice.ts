import { compareText, ROUNDING_MM } from '../base/index.ts';
import type { Slide } from '../catalog/index.ts';
import type { NodeId } from '../design/index.ts';
import type { CarcassContext } from './context.ts';
import type { FitProblem } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';
import { allowedSlideLoadKg } from './slide-load.ts';
import { unknown } from './stock.ts';

/** A slide of one length, with what runs on it. */
export interface SlideOption {
  readonly slide: Slide;
  readonly lengthMm: number;
}

/** Where a mover must lock: shut, out, and every so far in between where it is asked for. */
export interface LockAsk {
  readonly in: boolean;
  readonly out: boolean;
  readonly everyMm: number | null;
}

export const NO_LOCKS: LockAsk = { in: false, out: false, everyMm: null };

/** What a mover asks of its slides. */
export interface SlideAsk {
  /** The user's choice, or null. */
  readonly slide: string | null;
  readonly lengthMm: number | null;
  readonly mounts: readonly Slide['mount'][];
  /** Shortest slide that still carries what is inside. */
  readonly shortest: (slide: Slide) => number;
  /** Width of the mover on this slide (mm) and load on it (kg), in the room that is asked about. */
  readonly width: (slide: Slide) => number;
  readonly load: (option: SlideOption) => number;
  /** Where the mover must lock under the load. */
  readonly locks: (loadKg: number) => LockAsk;
}

const byMount = (slide: Slide): number => (slide.mount === 'side' ? 0 : 1);
const offFull = (slide: Slide): number => Math.abs(1 - slide.extension);

/** Side-mounted before under-mounted, light before heavy, full extension before part, then the lighter piece. */
const inOrder = (a: Slide, b: Slide): number =>
  byMount(a) - byMount(b) ||
  a.ratingKg - b.ratingKg ||
  offFull(a) - offFull(b) ||
  a.massKgPerMetre - b.massKgPerMetre ||
  compareText(a.id, b.id);

const lengthsOf = (slide: Slide, ask: SlideAsk): readonly number[] =>
  ask.lengthMm === null ? slide.lengthsMm.toSorted((a, b) => a - b) : [ask.lengthMm];

/** The user's slide, where the catalog has it and it can be mounted here. */
const namedSlide = (context: CarcassContext, ask: Pick<SlideAsk, 'slide' | 'mounts'>): Slide | null => {
  const slide = ask.slide === null ? undefined : context.catalog.slides.get(ask.slide);
  return slide && ask.mounts.includes(slide.mount) ? slide : null;
};

const candidates = (context: CarcassContext, ask: SlideAsk): readonly Slide[] => {
  const named = namedSlide(context, ask);
  if (named) return [named];
  const { lengthMm } = ask;
  // A side slide is laid flat by whoever asks for it, never by itself.
  const all = [...context.catalog.slides.values()]
    .filter(({ mount, laidFlat }) => laidFlat !== true && ask.mounts.includes(mount))
    .sort(inOrder);
  const ofLength = all.filter(({ lengthsMm }) => lengthMm === null || lengthsMm.includes(lengthMm));
  return ofLength.length > 0 ? ofLength : all;
};

/** True where what is asked lies on the locks of the slide: a whole number of its steps. */
const isStep = (everyMm: number, stepMm: number | undefined): boolean =>
  stepMm !== undefined && Math.abs(everyMm / stepMm - Math.round(everyMm / stepMm)) * stepMm <= ROUNDING_MM;

/** What of the locks that are asked for a slide does not have, each in a few words. */
const lacking = ({ locks }: Slide, ask: LockAsk): readonly string[] => [
  ...(ask.in && !locks.in ? ['shut'] : []),
  ...(ask.out && !locks.out ? ['out'] : []),
  ...(ask.everyMm !== null && !isStep(ask.everyMm, locks.everyMm) ? [`every ${mmWords(ask.everyMm)}`] : []),
];

const carries = (context: CarcassContext, ask: SlideAsk, option: SlideOption): boolean => {
  const loadKg = ask.load(option);
  if (lacking(option.slide, ask.locks(loadKg)).length > 0) return false;
  return allowedSlideLoadKg(option.slide, option.lengthMm, ask.width(option.slide), context.rules) >= loadKg;
};

/** The first option that carries its load; where none does, the one that carries most. */
const bestOf = (context: CarcassContext, ask: SlideAsk, options: readonly SlideOption[]): SlideOption | null => {
  const first = options.find((option) => carries(context, ask, option));
  if (first) return first;
  const allowed = ({ slide, lengthMm }: SlideOption): number =>
    allowedSlideLoadKg(slide, lengthMm, ask.width(slide), context.rules);
  return options.reduce<SlideOption | null>(
    (most, option) => (most === null || allowed(option) > allowed(most) ? option : most),
    null,
  );
};

/** The slide that needs least room: the shortest that holds what is inside, of the lightest that carries it. */
export const leastSlide = (context: CarcassContext, ask: SlideAsk): SlideOption | null => {
  const options = candidates(context, ask).flatMap((slide): readonly SlideOption[] => {
    const lengths = lengthsOf(slide, ask);
    const enough = lengths.filter((lengthMm) => lengthMm >= ask.shortest(slide) - ROUNDING_MM);
    return (enough.length > 0 ? enough : lengths.slice(-1)).map((lengthMm) => ({ slide, lengthMm }));
  });
  return bestOf(context, ask, options);
};

/** The slide for a room: the longest that fits, of the lightest that carries the load; null where none fits. */
export const slideFor = (
  context: CarcassContext,
  ask: SlideAsk,
  fits: (option: SlideOption) => boolean,
): SlideOption | null => {
  const options = candidates(context, ask).flatMap((slide): readonly SlideOption[] =>
    lengthsOf(slide, ask)
      .map((lengthMm) => ({ slide, lengthMm }))
      .filter(fits)
      .slice(-1),
  );
  return bestOf(context, ask, options);
};

/** Wishes that the catalog cannot meet: locks, no such slide for this mounting, or not in the length that is used. */
export const slideProblems = (
  context: CarcassContext,
  ask: Pick<SlideAsk, 'slide' | 'mounts'> & { readonly locks?: LockAsk },
  { slide, lengthMm }: SlideOption,
  at: NodeId,
): readonly FitProblem[] => [
  ...lacking(slide, ask.locks ?? NO_LOCKS).map((words) => badJoint(at, [`${slide.name} does not lock ${words}`])),
  ...(ask.slide !== null && namedSlide(context, ask) === null ? [unknown('unknown-hardware', at, ask.slide)] : []),
  ...(slide.lengthsMm.includes(lengthMm) ? [] : [unknown('unknown-hardware', at, `${slide.id} of ${lengthMm} mm`)]),
];

import { compareText, groupBy } from '../../base/index.ts';
import { kerfOf, type LayoutJob, materialOf } from './job.ts';
import type { Layout, LayoutNote } from './layout.ts';
import { MaterialSearch } from './material-search.ts';
import { prepare } from './prepare.ts';
import { writeLayout } from './write-layout.ts';

/**
 * A layout that gets better. The owner keeps the clock: it calls `step` for as long as it likes and stops when it
 * likes; `best` is there from the start and is never worse than before.
 */
export interface Improver {
  /** Works this many turns; true when the layout got better. The same seed and the same turns give the same layout. */
  readonly step: (turns: number) => boolean;
  readonly best: () => Layout;
  /** True when more turns change nothing. */
  readonly done: () => boolean;
  readonly turns: () => number;
  /** The searches by material, for proofs by linear programming. */
  readonly searches: readonly MaterialSearch[];
}

export interface ImproverOptions {
  /** Look for larger offcuts at the same price as well; true unless said otherwise. */
  readonly tidy?: boolean;
}

const isSound = (value: number): boolean => Number.isFinite(value) && value >= 0;

/** Settings that make no sense are replaced by none at all, and said so. */
const soundJob = (job: LayoutJob): { readonly job: LayoutJob; readonly notes: readonly LayoutNote[] } => {
  const notes: LayoutNote[] = [];
  const replaced = (about: string): void => void notes.push({ code: 'setting-replaced', about });
  let sound = job;
  if (!isSound(job.kerf)) {
    replaced('kerf');
    sound = { ...sound, kerf: 0 };
  }
  const { trim } = job;
  if (![trim.left, trim.right, trim.bottom, trim.top].every(isSound)) {
    replaced('trim');
    sound = { ...sound, trim: { left: 0, right: 0, bottom: 0, top: 0 } };
  }
  const { ripLimit, longestCut, minStrip, ...rest } = sound;
  const limits = { ripLimit, longestCut, minStrip };
  for (const [name, value] of Object.entries(limits)) {
    if (value !== undefined && !isSound(value)) replaced(name);
  }
  const kept = Object.fromEntries(Object.entries(limits).filter(([, value]) => value !== undefined && isSound(value)));
  return { job: { ...rest, ...kept }, notes };
};

/** A router is not bound to full cuts: no stages, no limits of a saw. */
const jobForCut = (job: LayoutJob): LayoutJob => {
  if (job.cut !== 'router') return { ...job, kerf: kerfOf(job) };
  const { ripLimit: _rip, longestCut: _longest, minStrip: _strip, firstCut: _first, ...free } = job;
  return { ...free, stages: 'any' };
};

/**
 * Lays out a job, at once in a first way and better with every step.
 *
 * `seed` decides every choice that is free. Bad parts, bad stock and impossible settings do not throw: what can be laid
 * out is, and the rest is listed with its reason.
 */
export const createImprover = (asked: LayoutJob, seed: number, options: ImproverOptions = {}): Improver => {
  const { job: sound, notes } = soundJob(asked);
  const job = jobForCut(sound);
  const stock = groupBy(job.stock, materialOf);
  const materials = [...groupBy(job.parts, materialOf)].sort(([a], [b]) => compareText(a, b));
  const searches = materials.map(
    ([material, parts], at) =>
      new MaterialSearch(prepare(job, material, parts, stock.get(material) ?? []), seed + at, options.tidy ?? true),
  );
  let written: { readonly layout: Layout; readonly of: string } | null = null;
  // Layouts only ever replace each other by better ones: their numbers tell whether the written one is still the best.
  const state = (): string => searches.map(({ version }) => version).join();
  let turns = 0;
  return {
    step: (count) => {
      let better = false;
      for (const search of searches) if (search.step(count)) better = true;
      turns += count;
      return better;
    },
    best: () => {
      const of = state();
      if (written?.of !== of) written = { layout: writeLayout(job, searches, notes), of };
      return written.layout;
    },
    done: () => searches.every((search) => search.done),
    turns: () => turns,
    searches,
  };
};

import { createContext, useContext } from 'react';
import { createStore, type StoreApi, useStore } from 'zustand';
import type { Remark } from '../../design/index.ts';
import type { ReviewData } from '../../shop/index.ts';

export const TABS = ['find', 'order', 'weight', 'questions', 'cautions', 'reply', 'shop'] as const;
export type Tab = (typeof TABS)[number];

/** A remark of two parts that waits for its second one. */
export interface Waiting {
  readonly kind: 'swap' | 'move';
  readonly part: string;
}

export interface Draft {
  readonly who: string;
  readonly on: string;
  readonly remarks: readonly Remark[];
  readonly answers: Readonly<Record<string, string>>;
  readonly approved: boolean;
}

export const NO_DRAFT: Draft = { who: '', on: '', remarks: [], answers: {}, approved: false };

export interface ReviewState {
  readonly data: ReviewData;
  readonly tab: Tab;
  readonly query: string;
  /** Gear or an opening. */
  readonly chosen: string | null;
  /** How many steps of its way have been shown; null when all are. */
  readonly step: number | null;
  readonly shares: Readonly<Record<string, number>>;
  readonly waiting: Waiting | null;
  readonly draft: Draft;
  readonly show: (tab: Tab) => void;
  readonly seek: (query: string) => void;
  /** Taps a part: it is shown, opened up, or becomes the second part of a remark that waits. */
  readonly tap: (id: string) => void;
  readonly showStep: (step: number | null) => void;
  readonly close: () => void;
  readonly setShare: (mover: string, share: number) => void;
  readonly wait: (waiting: Waiting | null) => void;
  readonly change: (change: Partial<Draft>) => void;
  readonly addRemark: (remark: Remark) => void;
  readonly dropRemark: (index: number) => void;
}

export const nameOf = ({ gear, openings, carcasses }: ReviewData, id: string): string =>
  gear.find((each) => each.id === id)?.name ??
  openings.find((each) => each.id === id)?.name ??
  carcasses.find((each) => each.id === id)?.name ??
  id;

/** Where the movers stand once the steps up to `step` are done. */
const sharesAt = (data: ReviewData, id: string, step: number | null): Readonly<Record<string, number>> => {
  const gear = data.gear.find((each) => each.id === id);
  if (!gear) return {};
  if (step === null) return gear.shares;
  return Object.fromEntries(
    gear.steps
      .slice(0, step)
      .flatMap(({ mover, share }) => (mover === null || share === null ? [] : [[mover, share] as const])),
  );
};

/** Everything that opens the vehicle itself. */
export const wayIn = ({ scene }: ReviewData): Readonly<Record<string, number>> =>
  Object.fromEntries(scene.movers.filter(({ closure }) => closure).map(({ id }) => [id, 1] as const));

/** The movers of an opening, from the outermost: what has to stand open so that one can look in. */
export const moversOf = ({ scene }: ReviewData, id: string): readonly string[] => {
  const direct = scene.movers.filter(({ part }) => part === id);
  const carrying = scene.touch.find((box) => box.id === id)?.mover ?? null;
  return [...new Set([...(carrying === null ? [] : [carrying]), ...direct.map((mover) => mover.id)])];
};

const secondOf = (data: ReviewData, waiting: Waiting, id: string): Remark | null => {
  if (id === waiting.part) return null;
  const [part, name] = [waiting.part, nameOf(data, waiting.part)];
  if (waiting.kind === 'swap')
    return data.gear.some((gear) => gear.id === id)
      ? { kind: 'swap', part, name, with: id, withName: nameOf(data, id), text: '' }
      : null;
  const to = data.gear.find((gear) => gear.id === id)?.opening ?? id;
  return { kind: 'move', part, name, to, toName: nameOf(data, to), text: '' };
};

/** The state of an open copy. `keep` is told of every change of what the reader wrote. */
export const createReview = (data: ReviewData, draft: Draft, keep: (draft: Draft) => void): StoreApi<ReviewState> =>
  createStore<ReviewState>()((set, get) => {
    const change = (part: Partial<Draft>): void => {
      const next = { ...get().draft, ...part };
      set({ draft: next });
      keep(next);
    };
    const addRemark = (remark: Remark): void => change({ remarks: [...get().draft.remarks, remark] });
    return {
      data,
      tab: 'find',
      query: '',
      chosen: null,
      step: null,
      shares: wayIn(data),
      waiting: null,
      draft,
      show: (tab) => set({ tab }),
      seek: (query) => set({ query }),
      tap: (id) => {
        const { waiting, chosen, shares } = get();
        if (waiting) {
          const remark = secondOf(data, waiting, id);
          if (!remark) return;
          addRemark(remark);
          set({ waiting: null });
          return;
        }
        const isGear = data.gear.some((gear) => gear.id === id);
        const movers = isGear ? [] : moversOf(data, id);
        const open = movers.some((mover) => (shares[mover] ?? 0) > 0) && chosen === id;
        set({
          chosen: id,
          step: null,
          tab: 'find',
          shares: isGear
            ? { ...wayIn(data), ...sharesAt(data, id, null) }
            : { ...shares, ...Object.fromEntries(movers.map((mover) => [mover, open ? 0 : 1] as const)) },
        });
      },
      showStep: (step) => {
        const { chosen } = get();
        if (chosen !== null) set({ step, shares: sharesAt(data, chosen, step) });
      },
      close: () => set({ shares: wayIn(data), chosen: null, step: null }),
      setShare: (mover, share) => set({ shares: { ...get().shares, [mover]: share } }),
      wait: (waiting) => set({ waiting }),
      change,
      addRemark,
      dropRemark: (index) => change({ remarks: get().draft.remarks.filter((_, i) => i !== index) }),
    };
  });

export const ReviewContext = createContext<StoreApi<ReviewState> | null>(null);

export const useReviewStore = (): StoreApi<ReviewState> => {
  const store = useContext(ReviewContext);
  if (!store) throw new Error('useReviewStore: outside of a copy');
  return store;
};

export const useReview = <T>(pick: (state: ReviewState) => T): T => useStore(useReviewStore(), pick);

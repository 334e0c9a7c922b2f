import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Pose } from '../../../base/index.ts';
import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Judgement } from '../worker/api.ts';
import { type History, historyOf, redone, stepped, undone } from './history.ts';

export const STEPS = ['survey', 'gear', 'cabinet', 'inspect', 'shop', 'review'] as const;
export type StepName = (typeof STEPS)[number];

export const VIEWPOINTS = ['hatch', 'above', 'left', 'right', 'seat'] as const;
export type Viewpoint = (typeof VIEWPOINTS)[number];

export type SaveState =
  | { readonly kind: 'saved'; readonly at: number }
  | { readonly kind: 'saving' }
  | { readonly kind: 'elsewhere' }
  | { readonly kind: 'failed'; readonly why: string };

/** Carcasses and mounts on their way in or out, by id: where they stand now, and what is not in the vehicle. */
export interface Carrying {
  readonly poses: Readonly<Record<string, Pose>>;
  readonly absent: readonly string[];
}

export interface EditorState {
  readonly history: History;
  /** Rises by one with every design shown, previews included. */
  readonly editNumber: number;
  readonly fitOut: FitOut;
  /** The newest answer of the worker; it may lag behind `editNumber`. */
  readonly judgement: Judgement | null;
  /** The design at the start of a gesture that is under way, or null. */
  readonly gesture: Design | null;
  /** Ids of nodes of the design or of solved parts, most recent last; the same list in every view. */
  readonly selection: readonly string[];
  readonly hover: string | null;
  readonly step: StepName;
  readonly viewpoint: Viewpoint;
  /** How far each mover stands out, as a share of its travel; absent is stowed. Closures are movers too. */
  readonly shares: Readonly<Record<string, number>>;
  /** What is shown carried in or out in the bay, or null. */
  readonly carrying: Carrying | null;
  /** The mover whose least gap of its travel is drawn in the bay, or null. */
  readonly felt: string | null;
  /** The carcass whose face the face map shows. */
  readonly carcass: string | null;
  /** A finding to fly to and draw a feeler line for, by its index in the list, or null. */
  readonly feeler: number | null;
  readonly save: SaveState;
}

/** Everything that changes the state. Each is one small function; gestures mark, preview, then commit or back out. */
export interface EditorActions {
  /** Makes one undoable step. */
  readonly edit: (label: string, change: (design: Design) => Design) => void;
  readonly beginGesture: () => void;
  /** Shows a design made from the one at the start of the gesture; leaves no step. */
  readonly previewGesture: (change: (design: Design) => Design) => void;
  readonly commitGesture: (label: string) => void;
  readonly cancelGesture: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Opens another document: history starts anew. */
  readonly open: (design: Design) => void;
  readonly select: (ids: readonly string[], how?: 'replace' | 'add') => void;
  readonly setHover: (id: string | null) => void;
  readonly setStep: (step: StepName) => void;
  readonly setViewpoint: (viewpoint: Viewpoint) => void;
  readonly setShare: (mover: string, share: number) => void;
  readonly stowAll: () => void;
  readonly setCarrying: (carrying: Carrying | null) => void;
  readonly setFelt: (mover: string | null) => void;
  readonly showCarcass: (id: string | null) => void;
  readonly setFeeler: (finding: number | null) => void;
  readonly setSave: (save: SaveState) => void;
  readonly judged: (judgement: Judgement) => void;
}

export type Editor = EditorState & EditorActions;
export type EditorStore = StoreApi<Editor>;

/** The editor's state without React; views bind to it with `useEditor`. `solve` is the fit-out stage of the flow. */
export const createEditorStore = (design: Design, solve: (design: Design) => FitOut): EditorStore =>
  createStore<Editor>()((set, get) => {
    const show = (history: History, more: Partial<EditorState> = {}): void => {
      const { design: shown } = history;
      set({ history, editNumber: get().editNumber + 1, fitOut: solve(shown), carrying: null, ...more });
    };
    const firstCarcass = (from: Design): string | null => from.cabinet.carcasses[0]?.id ?? null;
    return {
      history: historyOf(design),
      editNumber: 0,
      fitOut: solve(design),
      judgement: null,
      gesture: null,
      selection: [],
      hover: null,
      step: 'cabinet',
      viewpoint: 'hatch',
      shares: {},
      carrying: null,
      felt: null,
      carcass: firstCarcass(design),
      feeler: null,
      save: { kind: 'saved', at: 0 },

      edit: (label, change) => show(stepped(get().history, change(get().history.design), label), { gesture: null }),
      beginGesture: () => set({ gesture: get().gesture ?? get().history.design }),
      previewGesture: (change) => {
        const { gesture, history } = get();
        if (gesture) show({ ...history, design: change(gesture) });
      },
      commitGesture: (label) => {
        const { gesture, history } = get();
        if (gesture) show(stepped(history, history.design, label, gesture), { gesture: null });
      },
      cancelGesture: () => {
        const { gesture, history } = get();
        if (gesture) show({ ...history, design: gesture }, { gesture: null });
      },
      undo: () => show(undone(get().history), { gesture: null }),
      redo: () => show(redone(get().history), { gesture: null }),
      open: (opened) =>
        show(historyOf(opened), {
          gesture: null,
          selection: [],
          hover: null,
          shares: {},
          judgement: null,
          feeler: null,
          felt: null,
          carcass: firstCarcass(opened),
        }),
      select: (ids, how = 'replace') => {
        const { selection } = get();
        set({ selection: how === 'add' ? [...selection.filter((id) => !ids.includes(id)), ...ids] : ids });
      },
      setHover: (hover) => {
        if (get().hover !== hover) set({ hover });
      },
      setStep: (step) => set({ step }),
      setViewpoint: (viewpoint) => set({ viewpoint }),
      setShare: (mover, share) => set({ shares: { ...get().shares, [mover]: Math.min(1, Math.max(0, share)) } }),
      stowAll: () => set({ shares: {} }),
      setCarrying: (carrying) => set({ carrying }),
      setFelt: (felt) => {
        if (get().felt !== felt) set({ felt });
      },
      showCarcass: (carcass) => set({ carcass }),
      setFeeler: (feeler) => set({ feeler }),
      setSave: (save) => set({ save }),
      judged: (judgement) => {
        if (judgement.edit >= (get().judgement?.edit ?? -1)) set({ judgement });
      },
    };
  });

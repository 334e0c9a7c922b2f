import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Problem } from '../../../base/index.ts';

/** What lies over the window. */
export type OpenDialog =
  | { readonly kind: 'designs' }
  | { readonly kind: 'find' }
  | { readonly kind: 'help' }
  | { readonly kind: 'bad-file'; readonly name: string; readonly problems: readonly Problem[] };

export interface Brief {
  readonly id: number;
  readonly says: string;
  readonly tone: 'fact' | 'trouble';
}

/** Whether the inspection in the background works. */
export type EngineState =
  | { readonly kind: 'starting' }
  | { readonly kind: 'working' }
  | { readonly kind: 'ready' }
  | { readonly kind: 'failed'; readonly says: string };

export interface DeskState {
  readonly dialog: OpenDialog | null;
  readonly briefs: readonly Brief[];
  readonly engine: EngineState;
  /** True while ways out are being tried. */
  readonly lookingForWaysOut: boolean;
}

export interface DeskActions {
  readonly lay: (dialog: OpenDialog | null) => void;
  /** Says one brief fact at the foot of the window. */
  readonly tell: (says: string, tone?: Brief['tone']) => void;
  readonly forget: (id: number) => void;
  readonly setEngine: (engine: EngineState) => void;
  readonly setLookingForWaysOut: (looking: boolean) => void;
}

export type Desk = DeskState & DeskActions;
export type DeskStore = StoreApi<Desk>;

/** Facts kept on screen at once; older ones give way. */
const MOST_BRIEFS = 3;

/** What the window holds besides the design: dialogs, brief facts, the state of the inspection. */
export const createDesk = (): DeskStore =>
  createStore<Desk>()((set, get) => {
    let last = 0;
    return {
      dialog: null,
      briefs: [],
      engine: { kind: 'starting' },
      lookingForWaysOut: false,
      lay: (dialog) => set({ dialog }),
      tell: (says, tone = 'fact') => {
        last += 1;
        const others = get().briefs.filter((brief) => brief.says !== says);
        set({ briefs: [...others, { id: last, says, tone }].slice(-MOST_BRIEFS) });
      },
      forget: (id) => set({ briefs: get().briefs.filter((brief) => brief.id !== id) }),
      setEngine: (engine) => set({ engine }),
      setLookingForWaysOut: (lookingForWaysOut) => set({ lookingForWaysOut }),
    };
  });

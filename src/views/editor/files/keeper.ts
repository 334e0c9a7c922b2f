import { type Design, printDesign } from '../../../design/index.ts';
import type { EditorStore } from '../state/store.ts';
import type { KeptText, Vault } from './vault.ts';

export interface KeeperInput {
  readonly editor: EditorStore;
  readonly vault: Vault;
  readonly now: () => number;
  readonly later: (run: () => void, ms: number) => () => void;
  /** How long a person rests before the design is kept. */
  readonly restMs: number;
}

/** Keeps the design of one tab as it changes. */
export interface Keeper {
  /** Follows another document from now on; `mine` false keeps nothing, because another tab does. */
  readonly follow: (id: string, keptDesign: Design, mine: boolean) => void;
  readonly id: () => string;
  /** Keeps at once whatever is not kept yet. Never rejects: what went wrong is said in the state of saving. */
  readonly flush: () => Promise<void>;
  /** What is not kept yet, for the moment when the page goes away; null when all is kept. */
  readonly unkept: () => KeptText | null;
  /** True while the document is still as it was opened. */
  readonly untouched: () => boolean;
  readonly setMine: (mine: boolean) => void;
  /** Keeps the document as it was opened, so that it is found again although nobody changed it. */
  readonly keepOpened: () => Promise<void>;
  readonly stop: () => void;
}

const reason = (fault: unknown): string =>
  fault instanceof DOMException && fault.name === 'QuotaExceededError'
    ? 'its storage is full'
    : fault instanceof Error
      ? fault.message
      : String(fault);

/**
 * Keeps the newest design in the vault after a short rest. Previews of a gesture are not kept; the commit is. A write
 * that fails is said, and the next change tries again.
 */
export const createKeeper = ({ editor, vault, now, later, restMs }: KeeperInput): Keeper => {
  let id = '';
  let mine = false;
  let kept: Design | null = null;
  let opened: Design | null = null;
  let writing: Promise<void> = Promise.resolve();
  let cancel: () => void = () => undefined;

  const present = (): Design => {
    const { gesture, history } = editor.getState();
    return gesture ?? history.design;
  };
  const dirty = (): boolean => mine && present() !== kept;
  const recordOf = (design: Design): KeptText => ({
    id,
    title: design.title,
    savedAt: now(),
    text: printDesign(design),
  });

  const write = async (): Promise<void> => {
    if (!dirty()) return;
    const design = present();
    const record = recordOf(design);
    try {
      await vault.put(record);
      if (record.id !== id) return;
      kept = design;
      if (mine && !dirty()) editor.getState().setSave({ kind: 'saved', at: record.savedAt });
    } catch (fault) {
      if (record.id === id && mine) editor.getState().setSave({ kind: 'failed', why: reason(fault) });
    }
  };

  const keepOpened = (): Promise<void> => {
    kept = null;
    return flush();
  };

  const flush = (): Promise<void> => {
    cancel();
    writing = writing.then(write);
    return writing;
  };

  let seen: Design | null = null;
  const unsubscribe = editor.subscribe((state) => {
    if (state.gesture || state.history.design === seen) return;
    seen = state.history.design;
    if (!dirty()) return;
    cancel();
    if (state.save.kind === 'saved') editor.getState().setSave({ kind: 'saving' });
    cancel = later(() => void flush(), restMs);
  });

  const sayElsewhere = (): void => editor.getState().setSave({ kind: 'elsewhere' });

  return {
    follow: (nextId, keptDesign, isMine) => {
      cancel();
      id = nextId;
      mine = isMine;
      kept = keptDesign;
      opened = keptDesign;
      seen = keptDesign;
      if (!isMine) sayElsewhere();
      else editor.getState().setSave({ kind: 'saved', at: 0 });
    },
    id: () => id,
    flush,
    unkept: () => (dirty() ? recordOf(present()) : null),
    untouched: () => present() === opened,
    keepOpened,
    setMine: (next) => {
      mine = next;
      if (!next) {
        cancel();
        sayElsewhere();
      }
    },
    stop: () => {
      cancel();
      unsubscribe();
    },
  };
};

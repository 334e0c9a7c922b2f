import { fileOpen, fileSave } from 'browser-fs-access';
import { type Design, emptyDesign, printDesign, readDesign } from '../../../design/index.ts';
import type { FileActions } from '../state/bench.ts';
import type { DeskStore } from '../state/desk.ts';
import type { EditorStore } from '../state/store.ts';
import type { ClaimHooks, Claims } from './claims.ts';
import { DEMOS } from './demos.ts';
import { DESIGN_FILE_ENDING, fileStem } from './file-name.ts';
import type { Keeper } from './keeper.ts';
import type { Vault } from './vault.ts';

export interface SessionInput {
  readonly editor: EditorStore;
  readonly desk: DeskStore;
  readonly vault: Vault;
  readonly claims: Claims;
  readonly keeper: Keeper;
  readonly newId: () => string;
  /** Remembers which design this tab and this browser had open last. */
  readonly remember: (id: string) => void;
}

const isAbort = (fault: unknown): boolean => fault instanceof Error && fault.name === 'AbortError';

/** What a design is called before anybody named it. */
export const NEW_TITLE = 'New design';

/** Everything a person does with documents: new, open, save, take over from another tab. */
export const createSession = (input: SessionInput): FileActions => {
  const { editor, desk, vault, claims, keeper, newId, remember } = input;
  const tell = desk.getState().tell;
  let handle: FileSystemFileHandle | null = null;

  const hooks: ClaimHooks = {
    beforeLoss: () => keeper.flush(),
    onLost: () => keeper.setMine(false),
  };

  /** A demo or a new design that nobody touched leaves nothing behind. */
  const leavePresent = async (): Promise<void> => {
    await keeper.flush();
    const { history } = editor.getState();
    const worthless = keeper.untouched() && history.past.length === 0 && history.future.length === 0;
    if (worthless && disposable === keeper.id()) await vault.remove(keeper.id()).catch(() => undefined);
  };

  /** The id of a document that is worth nothing until it is changed. */
  let disposable = '';

  /** Which dialog lay over the window when a design was asked for; one laid since then stays. */
  const closesWhatAsked = (): (() => void) => {
    const asked = desk.getState().dialog;
    return () => {
      if (desk.getState().dialog === asked) desk.getState().lay(null);
    };
  };

  const show = async (id: string, design: Design, keepAtOnce: boolean, close: () => void): Promise<void> => {
    const mine = await claims.claim(id, hooks);
    keeper.follow(id, design, mine);
    editor.getState().open(design);
    handle = null;
    remember(id);
    close();
    if (keepAtOnce && mine) await keeper.keepOpened();
  };

  const openText = async (name: string, text: string, from: 'file' | 'demo'): Promise<boolean> => {
    const read = readDesign(text);
    if (!read.ok) {
      desk.getState().lay({ kind: 'bad-file', name, problems: read.error });
      return false;
    }
    const close = closesWhatAsked();
    await leavePresent();
    const id = newId();
    disposable = from === 'demo' ? id : '';
    await show(id, read.value, true, close);
    editor.getState().setStep(read.value.survey.stations.length === 0 ? 'survey' : 'cabinet');
    tell(`Opened ${read.value.title}`);
    return true;
  };

  const openOne = async (file: File): Promise<FileSystemFileHandle | null> => {
    const opened = await openText(file.name, await file.text(), 'file');
    return opened ? ((file as File & { handle?: FileSystemFileHandle }).handle ?? null) : null;
  };

  const newDesign = async (): Promise<void> => {
    const close = closesWhatAsked();
    await leavePresent();
    disposable = '';
    await show(newId(), emptyDesign(NEW_TITLE, editor.getState().history.design.units), false, close);
    editor.getState().setStep('survey');
  };

  const openFile = async (): Promise<void> => {
    try {
      const file = await fileOpen({
        description: 'Hatchwright design',
        extensions: ['.json'],
        mimeTypes: ['application/json'],
        id: 'designs',
      });
      handle = await openOne(file);
    } catch (fault) {
      if (!isAbort(fault)) tell(`The file could not be opened: ${String(fault)}`, 'trouble');
    }
  };

  const saveToFile = async (): Promise<void> => {
    // A field that is being typed in commits first.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const { design } = editor.getState().history;
    const fileName = `${fileStem(design.title)}${DESIGN_FILE_ENDING}`;
    try {
      const blob = new Blob([printDesign(design)], { type: 'application/json' });
      handle = (await fileSave(blob, { fileName, extensions: ['.json'], id: 'designs' }, handle)) ?? null;
      tell(`Saved to ${handle?.name ?? fileName}`);
    } catch (fault) {
      if (!isAbort(fault)) tell(`The file could not be saved: ${String(fault)}`, 'trouble');
    }
  };

  const openKept = async (id: string): Promise<void> => {
    if (id === keeper.id()) return desk.getState().lay(null);
    const close = closesWhatAsked();
    const kept = await vault.get(id).catch(() => null);
    if (!kept) return tell('That design is no longer kept here.', 'trouble');
    const read = readDesign(kept.text);
    if (!read.ok) return desk.getState().lay({ kind: 'bad-file', name: kept.title, problems: read.error });
    await leavePresent();
    disposable = '';
    await show(id, read.value, false, close);
    tell(`Opened ${read.value.title}`);
  };

  /** Takes the document over with what the other tab kept last; work done here meanwhile becomes a design of its own. */
  const workHere = async (): Promise<void> => {
    const id = keeper.id();
    const here = editor.getState().history.design;
    const changedHere = !keeper.untouched();
    await claims.takeOver(id, hooks);
    const kept = await vault.get(id).catch(() => null);
    const read = kept ? readDesign(kept.text) : null;
    if (changedHere) {
      const title = `${here.title}, from the second tab`;
      await vault.put({ id: newId(), title, savedAt: Date.now(), text: printDesign({ ...here, title }) });
      tell(`What you changed here is kept as “${title}” under Designs.`);
    }
    keeper.follow(id, read?.ok ? read.value : here, true);
    if (read?.ok) editor.getState().open(read.value);
  };

  return {
    newDesign,
    openFile,
    openDropped: async (files) => {
      const [file] = files;
      if (!file) return;
      if (files.length > 1) tell('One design at a time: the first file is opened.');
      await openOne(file);
    },
    openDemo: async (name) => {
      const demo = DEMOS.find((candidate) => candidate.name === name);
      if (demo) await openText(demo.title, await demo.load(), 'demo');
    },
    openKept,
    forgetKept: (id) => (id === keeper.id() ? Promise.resolve() : vault.remove(id)),
    kept: () => vault.list().catch(() => []),
    saveToFile,
    workHere,
    presentId: keeper.id,
  };
};

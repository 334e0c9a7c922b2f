import { useEffect } from 'react';
import type { FileActions } from '../state/bench.ts';
import type { DeskStore } from '../state/desk.ts';
import { type EditorStore, STEPS } from '../state/store.ts';

/** A key press as the window sees it. */
export interface Press {
  readonly key: string;
  readonly command: boolean;
  readonly shift: boolean;
  /** Whether the press goes to a control that takes text. */
  readonly typing: boolean;
  /** Whether that control holds text that is not committed yet. */
  readonly drafting: boolean;
}

export type KeyCommand =
  | 'undo'
  | 'redo'
  | 'save'
  | 'open'
  | 'find'
  | 'help'
  | 'back-out'
  | { readonly step: (typeof STEPS)[number] };

/** What a key press asks for at the level of the window, or null when it is none of its business. */
export const keyCommand = ({ key, command, shift, typing, drafting }: Press): KeyCommand | null => {
  const letter = key.toLowerCase();
  if (command) {
    if (letter === 's') return 'save';
    if (letter === 'o') return 'open';
    if (letter === 'k') return 'find';
    if (drafting) return null;
    if (letter === 'z') return shift ? 'redo' : 'undo';
    return letter === 'y' ? 'redo' : null;
  }
  if (key === 'Escape') return 'back-out';
  if (typing) return null;
  if (key === '?') return 'help';
  const step = STEPS[Number(key) - 1];
  return step ? { step } : null;
};

const TYPES_TEXT = 'input:not([type="checkbox"], [type="radio"], [type="range"], [type="button"]), textarea, select';

const pressOf = (event: KeyboardEvent): Press => {
  const target = event.target instanceof HTMLElement ? event.target : null;
  const typing = target?.closest(TYPES_TEXT) ?? null;
  // A text without a committed value behind it (a search, a pasted list) keeps its own undo.
  const owned = typing instanceof HTMLElement ? typing.dataset.draft : undefined;
  return {
    key: event.key,
    command: event.ctrlKey || event.metaKey,
    shift: event.shiftKey,
    typing: typing !== null,
    drafting: typing !== null && !(typing instanceof HTMLSelectElement) && owned !== 'false',
  };
};

/** Escape takes back one thing at a time: a gesture, then a feeler line, then the selection. */
const backOut = (editor: EditorStore): void => {
  const { gesture, feeler, selection, cancelGesture, setFeeler, select } = editor.getState();
  if (gesture) cancelGesture();
  else if (feeler !== null) setFeeler(null);
  else if (selection.length > 0) select([]);
};

/** Carries a command out. During a gesture, undo backs out of the gesture. */
export const carryOut = (command: KeyCommand, editor: EditorStore, desk: DeskStore, files: FileActions): void => {
  const { gesture, cancelGesture, undo, redo, setStep } = editor.getState();
  if (typeof command === 'object') setStep(command.step);
  else if (command === 'undo') (gesture ? cancelGesture : undo)();
  else if (command === 'redo') {
    if (!gesture) redo();
  } else if (command === 'save') void files.saveToFile();
  else if (command === 'open') void files.openFile();
  else if (command === 'find') desk.getState().lay({ kind: 'find' });
  else if (command === 'help') desk.getState().lay({ kind: 'help' });
  else backOut(editor);
};

/** Listens for the keys that work anywhere in the window. Dialogs keep their presses to themselves. */
export const useKeyboard = (editor: EditorStore, desk: DeskStore, files: FileActions): void => {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.altKey || desk.getState().dialog !== null) return;
      const command = keyCommand(pressOf(event));
      if (command === null) return;
      if (command !== 'back-out') event.preventDefault();
      carryOut(command, editor, desk, files);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [editor, desk, files]);
};

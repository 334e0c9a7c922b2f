import {
  addPart,
  clearOpening,
  type Design,
  findOpening,
  type NodeId,
  type Opening,
  parentOpening,
  partIndex,
  pasteContent,
  removePart,
} from '../../../../../design/index.ts';
import type { EditorStore } from '../../../state/store.ts';
import { openingWords } from '../names.ts';
import { clipboard } from './clipboard.ts';

export type OpeningActionId = 'add-room' | 'remove-room' | 'copy' | 'paste' | 'clear';

/** One thing that can be done to an opening, for a button, a menu and a key alike. */
export interface OpeningAction {
  readonly id: OpeningActionId;
  readonly label: string;
  readonly shortcut: string | null;
  readonly enabled: boolean;
  readonly run: () => void;
}

interface Place {
  readonly parent: NodeId;
  readonly index: number;
}

/** The room that an opening is of a divided one, or null. */
export const placeInParent = (design: Design, id: NodeId): Place | null => {
  const parent = parentOpening(design, id);
  const opening = parent && findOpening(design, parent)?.opening;
  if (!parent || opening?.content.kind !== 'divided') return null;
  const index = partIndex(opening, id);
  return index < 0 ? null : { parent, index };
};

const ROOM_WORDS = { columns: 'column', rows: 'row', layers: 'layer' } as const;

const roomWord = (design: Design, place: Place | null): string => {
  const content = place && findOpening(design, place.parent)?.opening.content;
  return content?.kind === 'divided' ? ROOM_WORDS[content.along] : 'room';
};

/** What can be done to an opening beside dividing and fitting it. */
export const openingActions = (editor: EditorStore, opening: Opening): readonly OpeningAction[] => {
  const { history, edit, select } = editor.getState();
  const { design } = history;
  const place = placeInParent(design, opening.id);
  const { copied } = clipboard.getState();
  const word = roomWord(design, place);
  const words = openingWords(opening);
  return [
    {
      id: 'add-room',
      label: `Add a ${word}`,
      shortcut: null,
      enabled: place !== null,
      run: () => place && edit(`add a ${word}`, (now) => addPart(now, place.parent, place.index)),
    },
    {
      id: 'remove-room',
      label: `Remove this ${word}`,
      shortcut: null,
      enabled: place !== null,
      run: () => {
        if (!place) return;
        edit(`remove a ${word}`, (now) => removePart(now, place.parent, place.index));
        select([place.parent]);
      },
    },
    {
      id: 'copy',
      label: 'Copy what is in it',
      shortcut: 'Ctrl C',
      enabled: opening.content.kind !== 'empty',
      run: () => clipboard.setState({ copied: { content: opening.content, words } }),
    },
    {
      id: 'paste',
      label: copied ? `Paste ${copied.words}` : 'Paste',
      shortcut: 'Ctrl V',
      enabled: copied !== null,
      run: () => copied && edit(`paste ${copied.words}`, (now) => pasteContent(now, opening.id, copied.content)),
    },
    {
      id: 'clear',
      label: 'Clear',
      shortcut: 'Delete',
      enabled: opening.content.kind !== 'empty',
      run: () => edit(`clear ${words}`, (now) => clearOpening(now, opening.id)),
    },
  ];
};

/** The action that a key asks for, or null. */
export const actionOfKey = (event: {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}): OpeningActionId | null => {
  const key = event.key.toLowerCase();
  if (event.ctrlKey || event.metaKey) return key === 'c' ? 'copy' : key === 'v' ? 'paste' : null;
  return key === 'delete' ? 'clear' : null;
};

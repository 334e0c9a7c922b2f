import type { KeptText, Vault } from './vault.ts';

const PREFIX = 'hatchwright-late-';

/** The few calls of Storage that are used. */
export type NoteBoard = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/**
 * Writes down what is not kept yet while the page goes away: the database answers too late then, this board at once.
 * A board that is full or forbidden loses at most the changes of the last moment.
 */
export const leaveNote = (board: NoteBoard, kept: KeptText): void => {
  try {
    board.setItem(PREFIX + kept.id, JSON.stringify(kept));
  } catch {
    // Nothing more can be done on the way out.
  }
};

const isKeptText = (value: unknown): value is KeptText =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  'text' in value &&
  'savedAt' in value &&
  typeof value.savedAt === 'number';

const noteKeys = (board: NoteBoard): readonly string[] =>
  Array.from({ length: board.length }, (_, i) => board.key(i)).filter(
    (key): key is string => key?.startsWith(PREFIX) ?? false,
  );

/** Brings notes left by a page on its way out into the vault, unless the vault holds something newer. */
export const collectNotes = async (board: NoteBoard, vault: Vault): Promise<void> => {
  for (const key of noteKeys(board)) {
    const note: unknown = JSON.parse(board.getItem(key) ?? 'null');
    if (isKeptText(note)) {
      const present = await vault.get(note.id);
      if (!present || present.savedAt <= note.savedAt) await vault.put(note);
    }
    board.removeItem(key);
  }
};

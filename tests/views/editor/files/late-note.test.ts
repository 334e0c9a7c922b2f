import { expect, it } from 'vitest';
import { collectNotes, leaveNote, type NoteBoard } from '../../../../src/views/editor/files/late-note.ts';
import { memoryVault } from './memory-vault.ts';

const board = (): NoteBoard => {
  const notes = new Map<string, string>();
  return {
    getItem: (key) => notes.get(key) ?? null,
    setItem: (key, value) => void notes.set(key, value),
    removeItem: (key) => void notes.delete(key),
    key: (i) => [...notes.keys()][i] ?? null,
    get length() {
      return notes.size;
    },
  };
};

const kept = (savedAt: number, text: string) => ({ id: 'one', title: 'one', savedAt, text });

it('brings in what a page left on its way out, and clears the board', async () => {
  const notes = board();
  const { vault, held } = memoryVault();
  await vault.put(kept(1, 'older'));
  leaveNote(notes, kept(2, 'newer'));
  await collectNotes(notes, vault);
  expect(held.get('one')?.text).toBe('newer');
  expect(notes.length).toBe(0);
});

it('leaves alone what was kept later than the note', async () => {
  const notes = board();
  const { vault, held } = memoryVault();
  leaveNote(notes, kept(2, 'note'));
  await vault.put(kept(3, 'later'));
  await collectNotes(notes, vault);
  expect(held.get('one')?.text).toBe('later');
});

it('does not touch what other programs left on the board', async () => {
  const notes = board();
  notes.setItem('theme', 'dark');
  const { vault, held } = memoryVault();
  await collectNotes(notes, vault);
  expect([notes.getItem('theme'), held.size]).toEqual(['dark', 0]);
});

it('bears a board that is full', () => {
  const full: NoteBoard = {
    ...board(),
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError');
    },
  };
  expect(() => leaveNote(full, kept(1, 'x'))).not.toThrow();
});

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { changeDocument, type Design, emptyDesign, readDesign } from '../../../../src/design/index.ts';
import { createKeeper } from '../../../../src/views/editor/files/keeper.ts';
import { createEditorStore } from '../../../../src/views/editor/state/store.ts';
import { solveNothing } from '../solve-nothing.ts';
import { memoryVault } from './memory-vault.ts';

const REST_MS = 400;
const start = emptyDesign('start', 'in');
const titled = (title: string) => (design: Design) => changeDocument(design, { title });

const later = (run: () => void, ms: number) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

const keeping = () => {
  const editor = createEditorStore(start, solveNothing);
  const store = memoryVault();
  let clock = 1000;
  const keeper = createKeeper({ editor, vault: store.vault, now: () => ++clock, later, restMs: REST_MS });
  keeper.follow('one', start, true);
  return { editor, keeper, ...store };
};

const keptTitle = (text: string | undefined): string => {
  const read = readDesign(text ?? '');
  return read.ok ? read.value.title : 'unreadable';
};

describe('keeping a design', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('keeps the newest design once, a rest after the last change', async () => {
    const { editor, puts } = keeping();
    editor.getState().edit('a', titled('a'));
    await vi.advanceTimersByTimeAsync(REST_MS - 1);
    editor.getState().edit('b', titled('b'));
    expect(editor.getState().save.kind).toBe('saving');
    await vi.advanceTimersByTimeAsync(REST_MS - 1);
    expect(puts).toHaveLength(0);
    await vi.advanceTimersByTimeAsync(2);
    expect(puts.map((kept) => keptTitle(kept.text))).toEqual(['b']);
    expect(editor.getState().save.kind).toBe('saved');
  });

  it('keeps what was there before a gesture while the gesture is under way, and its end afterwards', async () => {
    const { editor, keeper, puts } = keeping();
    editor.getState().beginGesture();
    editor.getState().previewGesture(titled('half way'));
    await vi.advanceTimersByTimeAsync(REST_MS * 3);
    await keeper.flush();
    expect(puts).toHaveLength(0);
    editor.getState().commitGesture('drag');
    await vi.advanceTimersByTimeAsync(REST_MS + 1);
    expect(puts.map((kept) => kept.title)).toEqual(['half way']);
  });

  it('writes nothing for a design that is open elsewhere', async () => {
    const { editor, keeper, puts } = keeping();
    keeper.follow('one', start, false);
    expect(editor.getState().save).toEqual({ kind: 'elsewhere' });
    editor.getState().edit('a', titled('a'));
    await vi.advanceTimersByTimeAsync(REST_MS * 3);
    await keeper.flush();
    expect(puts).toHaveLength(0);
    expect(keeper.unkept()).toBeNull();
    expect(editor.getState().save).toEqual({ kind: 'elsewhere' });
  });

  it('says why keeping failed and tries again with the next change', async () => {
    const { editor, puts, breakWith } = keeping();
    breakWith(new Error('no room'));
    editor.getState().edit('a', titled('a'));
    await vi.advanceTimersByTimeAsync(REST_MS + 1);
    expect(editor.getState().save).toEqual({ kind: 'failed', why: 'no room' });
    breakWith(null);
    editor.getState().edit('b', titled('b'));
    await vi.advanceTimersByTimeAsync(REST_MS + 1);
    expect(puts.map((kept) => kept.title)).toEqual(['b']);
    expect(editor.getState().save.kind).toBe('saved');
  });

  it('keeps undone work too: undo is a change like any other', async () => {
    const { editor, held } = keeping();
    editor.getState().edit('a', titled('a'));
    await vi.advanceTimersByTimeAsync(REST_MS + 1);
    editor.getState().undo();
    await vi.advanceTimersByTimeAsync(REST_MS + 1);
    expect(keptTitle(held.get('one')?.text)).toBe('start');
  });

  it('never writes one document under the id of another', async () => {
    const { editor, keeper, held } = keeping();
    editor.getState().edit('a', titled('a'));
    await keeper.flush();
    const other = emptyDesign('other', 'mm');
    keeper.follow('two', other, true);
    editor.getState().open(other);
    editor.getState().edit('b', titled('b'));
    await vi.advanceTimersByTimeAsync(REST_MS + 1);
    expect([keptTitle(held.get('one')?.text), keptTitle(held.get('two')?.text)]).toEqual(['a', 'b']);
  });

  it('has in hand what is not kept yet when the page goes away', () => {
    const { editor, keeper } = keeping();
    expect(keeper.unkept()).toBeNull();
    editor.getState().edit('a', titled('a'));
    expect(keptTitle(keeper.unkept()?.text)).toBe('a');
  });

  it('can keep a document that nobody changed, so that it is found again', async () => {
    const { keeper, held, editor } = keeping();
    await keeper.flush();
    expect(held.size).toBe(0);
    await keeper.keepOpened();
    expect(keptTitle(held.get('one')?.text)).toBe('start');
    expect(keeper.untouched()).toBe(true);
    expect(editor.getState().save.kind).toBe('saved');
  });
});

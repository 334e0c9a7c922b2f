import { describe, expect, it, vi } from 'vitest';
import { changeDocument, emptyDesign } from '../../../../src/design/index.ts';
import { createEditorStore } from '../../../../src/views/editor/state/store.ts';
import type { Judgement } from '../../../../src/views/editor/worker/api.ts';
import { NO_FIT_OUT, solveNothing } from '../solve-nothing.ts';

const start = emptyDesign('start', 'in');
const titled = (title: string) => (design: typeof start) => changeDocument(design, { title });
const judgementOf = (edit: number): Judgement => ({
  edit,
  ms: 1,
  order: { rows: [], gear: [] },
  space: { ok: false, error: [] },
  inspection: {
    findings: [],
    measured: [],
    consulted: {},
    cases: [],
    weighed: null,
    checked: { rules: 0, bodies: 0, pairs: 0, movers: 0, moverPairs: 0 },
  },
});

describe('the editor without React', () => {
  it('solves every design it shows', () => {
    const solve = vi.fn((_design: typeof start) => solveNothing());
    const store = createEditorStore(start, solve);
    store.getState().edit('rename', titled('next'));
    expect(solve.mock.calls.map(([design]) => design.title)).toEqual(['start', 'next']);
    expect(store.getState().fitOut).toBe(NO_FIT_OUT);
  });

  it('makes one step of a whole gesture, from its start to its end', () => {
    const store = createEditorStore(start, solveNothing);
    const { beginGesture, previewGesture, commitGesture } = store.getState();
    beginGesture();
    for (const title of ['a', 'b', 'c']) previewGesture(titled(title));
    expect(store.getState().history.past).toEqual([]);
    commitGesture('drag');
    expect(store.getState().history.past).toHaveLength(1);
    expect(store.getState().history.design.title).toBe('c');
    store.getState().undo();
    expect(store.getState().history.design).toBe(start);
  });

  it('previews from the start of the gesture, not from the preview before', () => {
    const store = createEditorStore(start, solveNothing);
    const longer = (design: typeof start) => changeDocument(design, { title: `${design.title}+` });
    store.getState().beginGesture();
    store.getState().previewGesture(longer);
    store.getState().previewGesture(longer);
    expect(store.getState().history.design.title).toBe('start+');
  });

  it('backs out of a gesture without a trace', () => {
    const store = createEditorStore(start, solveNothing);
    store.getState().beginGesture();
    store.getState().previewGesture(titled('away'));
    store.getState().cancelGesture();
    expect(store.getState().history.design).toBe(start);
    expect(store.getState().history.past).toEqual([]);
    expect(store.getState().gesture).toBeNull();
  });

  it('numbers every design it shows, previews included', () => {
    const store = createEditorStore(start, solveNothing);
    store.getState().edit('one', titled('1'));
    store.getState().beginGesture();
    store.getState().previewGesture(titled('2'));
    store.getState().commitGesture('two');
    // One edit, one preview, one commit.
    expect(store.getState().editNumber).toBe(3);
  });

  it('takes no judgement that is older than the one it has', () => {
    const store = createEditorStore(start, solveNothing);
    store.getState().judged(judgementOf(5));
    store.getState().judged(judgementOf(4));
    expect(store.getState().judgement?.edit).toBe(5);
    store.getState().judged(judgementOf(5));
    expect(store.getState().judgement?.edit).toBe(5);
  });

  it('begins anew with another document', () => {
    const store = createEditorStore(start, solveNothing);
    store.getState().edit('rename', titled('next'));
    store.getState().select(['gear-1']);
    store.getState().judged(judgementOf(1));
    store.getState().open(emptyDesign('other', 'mm'));
    const { history, selection, judgement } = store.getState();
    expect([history.past.length, selection.length, judgement]).toEqual([0, 0, null]);
  });

  it('adds to a selection with the newest last, and keeps shares between 0 and 1', () => {
    const store = createEditorStore(start, solveNothing);
    store.getState().select(['a', 'b']);
    store.getState().select(['a'], 'add');
    expect(store.getState().selection).toEqual(['b', 'a']);
    store.getState().setShare('mover', 1.7);
    store.getState().setShare('other', -1);
    expect(store.getState().shares).toEqual({ mover: 1, other: 0 });
  });
});

import { describe, expect, it } from 'vitest';
import { emptyDesign } from '../../../src/design/index.ts';
import { pacedEditor } from '../../../src/views/editor/bay/paced-editor.ts';
import { createEditorStore, type EditorStore } from '../../../src/views/editor/state/store.ts';
import { solveNothing } from '../editor/solve-nothing.ts';

/** A clock that is wound by hand: drawing takes `drawMs`, then waits run out in order. */
const bench = (drawMs: number) => {
  let clock = 0;
  const drawings: (() => void)[] = [];
  let timer: { readonly at: number; readonly run: () => void } | null = null;
  const editor = createEditorStore(emptyDesign('any', 'mm'), () => ({ ...solveNothing() }));
  const paced = pacedEditor(editor, {
    now: () => clock,
    whenDrawn: (run) => drawings.push(run),
    later: (run, ms) => {
      const mine = { at: clock + ms, run };
      timer = mine;
      return () => {
        if (timer === mine) timer = null;
      };
    },
  });
  const seen: string[] = [];
  const end = paced.subscribe((state) => seen.push(state.history.design.title));
  return {
    editor,
    paced,
    seen,
    end,
    draw: () => {
      clock += drawMs;
      for (const run of drawings.splice(0)) run();
    },
    wait: (ms: number) => {
      clock += ms;
      if (!timer || timer.at > clock) return;
      const { run } = timer;
      timer = null;
      run();
    },
  };
};

const call = (editor: EditorStore, title: string): void =>
  editor.getState().previewGesture((design) => ({ ...design, title }));

describe('the editor as the bay sees it', () => {
  it('hears of an edit outside of a gesture at once', () => {
    const { editor, seen } = bench(30);
    editor.getState().edit('name it', (design) => ({ ...design, title: 'a' }));
    editor.getState().edit('name it', (design) => ({ ...design, title: 'b' }));
    expect(seen).toEqual(['a', 'b']);
  });

  it('waits twice as long as a picture was late, then shows the newest', () => {
    const { editor, seen, draw, wait } = bench(64);
    editor.getState().beginGesture();
    seen.length = 0;
    call(editor, 'a');
    call(editor, 'b');
    draw();
    call(editor, 'c');
    wait(59);
    expect(new Set(seen)).toEqual(new Set(['a']));
    wait(1); // (64 − 34) × 2 = 60
    expect(seen.at(-1)).toBe('c');
  });

  it('follows every step where pictures come in time', () => {
    const { editor, seen, draw, wait } = bench(30);
    editor.getState().beginGesture();
    for (const title of ['a', 'b', 'c']) {
      call(editor, title);
      draw();
      wait(0);
      expect(seen.at(-1)).toBe(title);
    }
  });

  it('shows the end of a gesture at once, however slow the machine', () => {
    const { editor, seen, draw } = bench(5000);
    editor.getState().beginGesture();
    call(editor, 'a');
    draw();
    call(editor, 'b');
    expect(seen.at(-1)).toBe('a');
    editor.getState().commitGesture('name it');
    expect(seen.at(-1)).toBe('b');
  });

  it('follows at least every 400 ms', () => {
    const { editor, seen, draw, wait } = bench(5000);
    editor.getState().beginGesture();
    call(editor, 'a');
    draw();
    call(editor, 'b');
    wait(400);
    expect(seen.at(-1)).toBe('b');
  });

  it('hears of what is pointed at while the design is held back', () => {
    const { editor, paced, seen } = bench(30);
    editor.getState().beginGesture();
    call(editor, 'a');
    call(editor, 'b');
    editor.getState().setHover('x');
    expect(paced.getState().hover).toBe('x');
    expect(seen.at(-1)).toBe('a');
    expect(paced.getState().fitOut).not.toBe(editor.getState().fitOut);
  });

  it('leaves the editor alone when nobody listens any more', () => {
    const { editor, paced, seen, end } = bench(30);
    end();
    editor.getState().edit('name it', (design) => ({ ...design, title: 'a' }));
    expect(seen).toEqual([]);
    expect(paced.getState()).toBe(editor.getState());
  });
});

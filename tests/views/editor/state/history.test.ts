import { describe, expect, it } from 'vitest';
import { changeDocument, emptyDesign } from '../../../../src/design/index.ts';
import { historyOf, redone, stepped, undone } from '../../../../src/views/editor/state/history.ts';

const first = emptyDesign('first', 'in');
const named = (title: string) => changeDocument(first, { title });

describe('history', () => {
  it('goes back to the very design that was left, and forward again', () => {
    const second = named('second');
    const history = stepped(historyOf(first), second, 'rename');
    const back = undone(history);
    expect(back.design).toBe(first);
    expect(back.future[0]?.label).toBe('rename');
    expect(redone(back).design).toBe(second);
    expect(redone(back).past[0]?.label).toBe('rename');
  });

  it('leaves no step for an edit that changes nothing', () => {
    expect(stepped(historyOf(first), first, 'nothing').past).toEqual([]);
  });

  it('forgets what could be redone when something else is done', () => {
    const back = undone(stepped(historyOf(first), named('second'), 'rename'));
    const other = stepped(back, named('third'), 'rename otherwise');
    expect(other.future).toEqual([]);
    expect(undone(other).design).toBe(first);
  });

  it('undoes nothing at the beginning and redoes nothing at the end', () => {
    const history = historyOf(first);
    expect(undone(history)).toBe(history);
    expect(redone(history)).toBe(history);
  });

  it('keeps 500 steps: after 600 edits the earliest that can be reached is the hundredth', () => {
    let history = historyOf(first);
    for (let i = 1; i <= 600; i++) history = stepped(history, named(`title ${i}`), `edit ${i}`);
    expect(history.past).toHaveLength(500);
    expect(history.past[0]?.design.title).toBe('title 100');
  });
});

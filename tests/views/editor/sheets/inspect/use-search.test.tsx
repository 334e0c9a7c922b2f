// @vitest-environment happy-dom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyDesign } from '../../../../../src/design/index.ts';
import { useSearch } from '../../../../../src/views/editor/sheets/inspect/use-search.ts';
import { connectWorker } from '../../../../../src/views/editor/worker/connect.ts';

vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
vi.mock('../../../../../src/views/editor/worker/connect.ts');

/** Workers that were begun, each with what its search waits for and whether it was ended. */
interface Begun {
  ended: boolean;
  readonly answer: (found: string) => void;
  readonly fail: () => void;
  readonly promise: Promise<string>;
}
const begun: Begun[] = [];
const design = emptyDesign('Marrow Hill', 'mm');

const begin = (): Begun => {
  let answer: Begun['answer'] = () => undefined;
  let fail: Begun['fail'] = () => undefined;
  const promise = new Promise<string>((resolve, reject) => {
    answer = resolve;
    fail = () => reject(new Error('gone'));
  });
  const one = { ended: false, answer, fail, promise };
  begun.push(one);
  return one;
};

const Searching = () => {
  const { search, start, cancel } = useSearch<string>();
  return (
    <>
      <p>{search.kind === 'done' ? search.found : search.kind}</p>
      <button type="button" onClick={() => start(design, () => begun.at(-1)?.promise ?? Promise.reject(new Error()))}>
        start
      </button>
      <button type="button" onClick={cancel}>
        stop
      </button>
    </>
  );
};

let root: Root;
beforeEach(() => {
  begun.length = 0;
  vi.mocked(connectWorker).mockImplementation(() => {
    const one = begin();
    return {
      end: () => {
        one.ended = true;
      },
    } as ReturnType<typeof connectWorker>;
  });
  document.body.innerHTML = '<div id="here"></div>';
  root = createRoot(document.getElementById('here') as HTMLElement);
  act(() => root.render(<Searching />));
});
afterEach(() => act(() => root.unmount()));

const press = (words: string): void =>
  act(() => [...document.querySelectorAll('button')].find(({ textContent }) => textContent === words)?.click());
const said = (): string => document.querySelector('p')?.textContent ?? '';
const settle = (what: () => void): Promise<void> =>
  act(async () => {
    what();
    await Promise.resolve();
  });

describe('a search in a worker of its own', () => {
  it('tells what it found and ends its worker', async () => {
    press('start');
    expect(said()).toBe('searching');
    await settle(() => begun[0]?.answer('a way'));
    expect(said()).toBe('a way');
    expect(begun[0]?.ended).toBe(true);
  });

  it('stopped in the middle ends its worker at once, and a late answer changes nothing', async () => {
    press('start');
    press('stop');
    expect(begun[0]?.ended).toBe(true);
    expect(said()).toBe('none');
    await settle(() => begun[0]?.answer('too late'));
    expect(said()).toBe('none');
  });

  it('asked for anew ends the one under way; only the newer one answers', async () => {
    press('start');
    press('start');
    expect(begun.map(({ ended }) => ended)).toEqual([true, false]);
    await settle(() => begun[0]?.answer('old'));
    expect(said()).toBe('searching');
    await settle(() => begun[1]?.answer('new'));
    expect(said()).toBe('new');
  });

  it('that breaks says so, and a window that closes ends it', async () => {
    press('start');
    await settle(() => begun[0]?.fail());
    expect(said()).toBe('broke');
    press('start');
    act(() => root.render(null));
    expect(begun[1]?.ended).toBe(true);
  });
});

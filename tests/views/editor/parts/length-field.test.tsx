// @vitest-environment happy-dom
import { act, useState } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LengthField, readLengthDraft } from '../../../../src/views/editor/parts/length-field.tsx';

vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);

describe('reading a typed length', () => {
  const limits = { units: 'in', mayBeEmpty: false } as const;
  it('reads what people of the trade write', () => {
    // 14.375 × 25.4 = 365.125; + 0.25 × 25.4 = 371.475.
    expect(readLengthDraft('14 3/8', limits)).toEqual({ ok: true, value: 365.125 });
    expect(readLengthDraft('14 3/8 + 1/4', limits)).toEqual({ ok: true, value: 371.475 });
    expect(readLengthDraft('365 mm', limits)).toEqual({ ok: true, value: 365 });
  });

  it('says what is wrong in a sentence with the limit in the reader’s units', () => {
    expect(readLengthDraft('wide', limits)).toMatchObject({ ok: false, says: expect.stringContaining('14 3/8') });
    expect(readLengthDraft('', limits).ok).toBe(false);
    expect(readLengthDraft('1', { ...limits, min: 50.8 })).toEqual({ ok: false, says: 'At least 2 in.' });
    expect(readLengthDraft('90', { ...limits, max: 50.8 })).toEqual({ ok: false, says: 'At most 2 in.' });
  });

  it('takes an empty field for unknown only where that is allowed', () => {
    expect(readLengthDraft(' ', { ...limits, mayBeEmpty: true })).toEqual({ ok: true, value: null });
  });
});

const commits: number[] = [];

const Held = () => {
  const [mm, setMm] = useState(365.125);
  return (
    <LengthField
      label="Width"
      units="in"
      valueMm={mm}
      onCommit={(next) => {
        commits.push(next);
        setMm(next);
      }}
    />
  );
};

describe('a length field', () => {
  let root: Root;
  let place: HTMLElement;
  const input = (): HTMLInputElement => {
    const found = place.querySelector('input');
    if (!found) throw new Error('no field');
    return found;
  };
  const type = (text: string): void =>
    act(() => {
      // React listens to the browser's own setter, so the value is set beneath its own.
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input(), text);
      input().dispatchEvent(new Event('input', { bubbles: true }));
    });
  const key = (name: string, shiftKey = false): void =>
    act(() => {
      input().dispatchEvent(new KeyboardEvent('keydown', { key: name, shiftKey, bubbles: true, cancelable: true }));
    });
  const leave = (): void =>
    act(() => {
      input().dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
    });

  beforeEach(() => {
    commits.length = 0;
    place = document.createElement('div');
    document.body.append(place);
    root = createRoot(place);
    act(() => root.render(<Held />));
  });
  afterEach(() => {
    act(() => root.unmount());
    place.remove();
  });

  it('shows the value and commits a typed one on Enter', () => {
    expect(input().value).toBe('14 3/8');
    type('14 1/2');
    expect(commits).toEqual([]);
    key('Enter');
    expect(commits).toEqual([14.5 * 25.4]);
    expect(input().value).toBe('14 1/2');
  });

  it('commits when it is left, and not when nothing was typed', () => {
    leave();
    expect(commits).toEqual([]);
    type('10');
    leave();
    expect(commits).toEqual([254]);
  });

  it('keeps a text that it cannot read, says why, and commits nothing', () => {
    type('ten');
    key('Enter');
    expect(commits).toEqual([]);
    expect(input().value).toBe('ten');
    expect(input().getAttribute('aria-invalid')).toBe('true');
    expect(place.querySelector('[role="alert"]')?.textContent).toContain('Write a length');
  });

  it('puts the old value back on Escape', () => {
    type('ten');
    key('Enter');
    key('Escape');
    expect(input().value).toBe('14 3/8');
    expect(place.querySelector('[role="alert"]')).toBeNull();
  });

  it('nudges by a sixteenth, and by half an inch with Shift', () => {
    key('ArrowUp');
    expect(input().value).toBe('14 7/16');
    key('ArrowUp', true);
    expect(input().value).toBe('14 15/16');
    key('ArrowDown');
    expect(input().value).toBe('14 7/8');
    expect(commits).toEqual([]);
  });
});

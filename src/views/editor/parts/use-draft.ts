import { type ChangeEvent, type KeyboardEvent, useState } from 'react';

/** What reading a typed text gives: a value, or a sentence that says what is wrong. */
export type Draft<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly says: string };

interface DraftRules<T> {
  /** The committed value as text. */
  readonly shown: string;
  readonly read: (text: string) => Draft<T>;
  readonly commit: (value: T) => void;
  /** The text one step up or down, or null where the text cannot be read. */
  readonly nudged?: (text: string, direction: 1 | -1, large: boolean) => string | null;
}

/**
 * Text that is being typed over a committed value: Enter and leaving the field commit, Escape restores, the arrows
 * nudge, and a text that cannot be read stays with its error. A change of the value from outside drops the draft.
 */
export const useDraft = <T>({ shown, read, commit, nudged }: DraftRules<T>) => {
  const [draft, setDraft] = useState<string | null>(null);
  const [error, setError] = useState<string | null>(null);
  const [drawn, setDrawn] = useState(shown);
  if (drawn !== shown) {
    setDrawn(shown);
    setDraft(null);
    setError(null);
  }
  const settle = (): boolean => {
    if (draft === null || draft.trim() === shown.trim()) {
      setDraft(null);
      setError(null);
      return true;
    }
    const result = read(draft);
    if (!result.ok) {
      setError(result.says);
      return false;
    }
    setDraft(null);
    setError(null);
    commit(result.value);
    return true;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.key === 'Enter') {
      event.preventDefault();
      if (settle()) event.currentTarget.select();
    } else if (event.key === 'Escape' && draft !== null) {
      // Backs out of the typing only; a second Escape is for whatever stands around the field.
      event.preventDefault();
      event.stopPropagation();
      setDraft(null);
      setError(null);
    } else if ((event.key === 'ArrowUp' || event.key === 'ArrowDown') && nudged) {
      const next = nudged(draft ?? shown, event.key === 'ArrowUp' ? 1 : -1, event.shiftKey);
      if (next === null) return;
      event.preventDefault();
      setDraft(next);
      setError(null);
    }
  };
  return {
    error,
    input: {
      value: draft ?? shown,
      // Undo belongs to the typed text while there is one, and to the design otherwise.
      'data-draft': draft !== null,
      onChange: (event: ChangeEvent<HTMLInputElement>): void => setDraft(event.target.value),
      onBlur: (): void => {
        settle();
      },
      onKeyDown,
    },
  };
};

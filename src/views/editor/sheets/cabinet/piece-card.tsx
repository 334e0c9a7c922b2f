import type { ReactNode } from 'react';
import { Button } from '../../parts/index.ts';
import sheet from '../sheet.module.css';
import { useCabinet } from './use-cabinet.ts';

interface PieceCardProps {
  /** What is selected with it, and stays so when it is closed. */
  readonly within: readonly string[];
  readonly id: string;
  readonly words: string;
  /** What it came to, beside its name. */
  readonly about: string;
  readonly onRemove: () => void;
  /** The fields, shown while it is selected. */
  readonly children: ReactNode;
}

/** One anchor, corner, hole or mount: a line of it, and its fields while it is selected. */
export const PieceCard = ({ within, id, words, about, onRemove, children }: PieceCardProps) => {
  const { editor, selection } = useCabinet();
  const { select } = editor.getState();
  const open = selection.includes(id);
  return (
    <li className={sheet.card} data-selected={open}>
      <div className={sheet.head}>
        <button
          type="button"
          className={sheet.pick}
          aria-expanded={open}
          onClick={() => select(open ? within : [...within, id])}
        >
          {words}
        </button>
        <span className={sheet.soft}>{about}</span>
        <span className={sheet.push}>
          <Button look="quiet" small aria-label={`Remove ${words}`} onClick={onRemove}>
            Remove
          </Button>
        </span>
      </div>
      {open ? children : null}
    </li>
  );
};

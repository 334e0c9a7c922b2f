import { type KeyboardEvent, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { type Division, divideOpening, FITTING_KINDS, fitOpening, type Opening } from '../../../../../design/index.ts';
import { FITTING_VIEWS } from '../../../fittings/index.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './actions.module.css';
import { openingActions } from './opening-actions.ts';

interface OpeningMenuProps {
  readonly opening: Opening;
  /** On the page. */
  readonly at: { readonly x: number; readonly y: number };
  readonly onClose: () => void;
}

interface Item {
  readonly key: string;
  readonly label: string;
  readonly shortcut: string | null;
  readonly enabled: boolean;
  readonly run: () => void;
}

const WAYS: readonly (readonly [Division, string])[] = [
  ['columns', 'Divide into two columns'],
  ['rows', 'Divide into two rows'],
  ['layers', 'Divide into two layers'],
];

const EDGE_PX = 8;

/** What applies to an opening, where it was clicked with the right button. */
export const OpeningMenu = ({ opening, at, onClose }: OpeningMenuProps) => {
  const { editor } = useCabinet();
  const menu = useRef<HTMLDivElement>(null);
  const [place, setPlace] = useState(at);
  const { edit } = editor.getState();
  const groups: readonly (readonly Item[])[] = [
    WAYS.map(([along, label]) => ({
      key: along,
      label,
      shortcut: null,
      enabled: true,
      run: () => edit(`divide into 2 ${along}`, (now) => divideOpening(now, opening.id, along, 2)),
    })),
    FITTING_KINDS.map((kind) => ({
      key: kind,
      label: `Fit ${FITTING_VIEWS[kind].withArticle}`,
      shortcut: null,
      enabled: true,
      run: () => edit(`fit ${FITTING_VIEWS[kind].name}`, (now) => fitOpening(now, opening.id, kind)),
    })),
    openingActions(editor, opening).map((action) => ({ ...action, key: action.id })),
  ];
  useLayoutEffect(() => {
    const box = menu.current?.getBoundingClientRect();
    if (!box) return;
    setPlace({
      x: Math.max(EDGE_PX, Math.min(at.x, globalThis.innerWidth - box.width - EDGE_PX)),
      y: Math.max(EDGE_PX, Math.min(at.y, globalThis.innerHeight - box.height - EDGE_PX)),
    });
    menu.current?.querySelector<HTMLElement>('button:not(:disabled)')?.focus();
  }, [at]);
  useEffect(() => {
    const onDown = (event: PointerEvent): void => {
      if (event.target instanceof Node && !menu.current?.contains(event.target)) onClose();
    };
    document.addEventListener('pointerdown', onDown, true);
    return () => document.removeEventListener('pointerdown', onDown, true);
  }, [onClose]);
  const onKeyDown = (event: KeyboardEvent): void => {
    const items = [...(menu.current?.querySelectorAll<HTMLElement>('button:not(:disabled)') ?? [])];
    const here = items.indexOf(document.activeElement as HTMLElement);
    const go = (index: number): void => items.at(index % items.length)?.focus();
    if (event.key === 'ArrowDown') go(here + 1);
    else if (event.key === 'ArrowUp') go(here - 1);
    else if (event.key === 'Home') go(0);
    else if (event.key === 'End') go(-1);
    else if (event.key === 'Escape' || event.key === 'Tab') onClose();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div
      ref={menu}
      className={styles.menu}
      style={{ left: place.x, top: place.y }}
      role="menu"
      tabIndex={-1}
      aria-label="What can be done here"
      onKeyDown={onKeyDown}
    >
      {groups.map((items) => (
        // biome-ignore lint/a11y/useSemanticElements: a group of menu items has no element of its own
        <div key={items[0]?.key} role="group">
          {items.map(({ key, label, shortcut, enabled, run }) => (
            <button
              key={key}
              type="button"
              role="menuitem"
              disabled={!enabled}
              onClick={() => {
                run();
                onClose();
              }}
            >
              <span>{label}</span>
              {shortcut ? <kbd>{shortcut}</kbd> : null}
            </button>
          ))}
        </div>
      ))}
    </div>
  );
};

import { type KeyboardEvent, type MouseEvent, memo, useRef } from 'react';
import { useStore } from 'zustand';
import { formatMass } from '../../../../../base/index.ts';
import type { FittingKind, NodeId } from '../../../../../design/index.ts';
import { classNames } from '../../../parts/index.ts';
import { useEditor, useEditorStore } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import { kindWords } from '../names.ts';
import { DROP_ATTRIBUTE } from '../unplaced/gear-drag.ts';
import { useGearDrag } from '../use-cabinet.ts';
import styles from './face.module.css';

interface RoomButtonProps {
  readonly id: NodeId;
  readonly name: string;
  readonly kind: FittingKind | null;
  /** Of the gear in it. */
  readonly count: number;
  readonly massKg: number;
  readonly selected: boolean;
  /** On the board, pixels. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly onMenu: (x: number, y: number) => void;
}

/** Smaller than this there is no room for a second line, or for any. */
const TWO_LINES_PX = 40;
const ONE_LINE_PX = 17;
/** Narrower than this and taller than wide, the words run up the room. */
const NARROW_PX = 74;

const holdsWords = (count: number, mass: string): string => (count === 0 ? '' : `${count} gear · ${mass}`);

/**
 * One opening of the face: what it is called, what it holds; a click selects it. Told by plain values, so that of all
 * rooms only those that change under a dragged divider are drawn anew.
 */
export const RoomButton = memo((props: RoomButtonProps) => {
  const { id, selected, left, top, width, height, onMenu } = props;
  const editor = useEditorStore();
  const hovered = useEditor((state) => state.hover === id);
  const units = useUnits();
  const button = useRef<HTMLButtonElement>(null);
  const over = useStore(useGearDrag(), (state) => state.carried?.over === id);
  const kind = props.kind === null ? 'empty' : kindWords(props.kind);
  const name = props.name === '' ? kind : props.name;
  const holds = holdsWords(props.count, formatMass(props.massKg, units));
  const upright = width < NARROW_PX && height > width * 1.6;
  const openMenu = (event: MouseEvent): void => {
    event.preventDefault();
    editor.getState().select([id]);
    onMenu(event.clientX, event.clientY);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'ContextMenu' && !(event.shiftKey && event.key === 'F10')) return;
    event.preventDefault();
    const box = button.current?.getBoundingClientRect();
    editor.getState().select([id]);
    onMenu((box?.left ?? 0) + 12, (box?.top ?? 0) + 12);
  };
  return (
    <button
      ref={button}
      type="button"
      className={classNames(styles.room, props.kind === null && styles.emptyRoom)}
      style={{ left, top, width, height }}
      data-selected={selected}
      data-upright={upright}
      data-hovered={hovered}
      data-over={over}
      {...{ [DROP_ATTRIBUTE]: id }}
      aria-pressed={selected}
      aria-label={[name, holds, props.name === '' ? '' : kind].filter((words) => words !== '').join(', ')}
      onClick={(event) => editor.getState().select([id], event.shiftKey ? 'add' : 'replace')}
      onContextMenu={openMenu}
      onKeyDown={onKeyDown}
      onPointerEnter={() => editor.getState().setHover(id)}
      onPointerLeave={() => editor.getState().setHover(null)}
    >
      {height >= ONE_LINE_PX ? <span className={styles.roomName}>{name}</span> : null}{' '}
      {height >= TWO_LINES_PX ? (
        <span className={styles.roomHolds}>{holds || (props.name === '' ? '' : kind)}</span>
      ) : null}
    </button>
  );
});

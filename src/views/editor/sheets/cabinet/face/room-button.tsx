import { type KeyboardEvent, type MouseEvent, useRef } from 'react';
import { useStore } from 'zustand';
import { formatMass } from '../../../../../base/index.ts';
import { type Design, openingsFrom } from '../../../../../design/index.ts';
import { classNames } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { heldGear, massOf } from '../held-gear.ts';
import { kindWords } from '../names.ts';
import { DROP_ATTRIBUTE } from '../unplaced/gear-drag.ts';
import { useCabinet, useGearDrag } from '../use-cabinet.ts';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';
import type { FaceRoom } from './face-model.ts';

interface RoomButtonProps {
  readonly room: FaceRoom;
  readonly layout: FaceLayout;
  readonly onMenu: (x: number, y: number) => void;
}

/** Smaller than this there is no room for a second line, or for any. */
const TWO_LINES_PX = 40;
const ONE_LINE_PX = 17;
/** Narrower than this and taller than wide, the words run up the room. */
const NARROW_PX = 74;

const holdsWords = (count: number, mass: string): string => (count === 0 ? '' : `${count} gear · ${mass}`);

/** True when the room is the opening, or the opening lies inside what is fitted in it. */
const isOrHolds = (room: FaceRoom, openingId: string, design: Design): boolean => {
  const all = design.cabinet.carcasses.flatMap((carcass) => openingsFrom(carcass.opening));
  const found = all.find((opening) => opening.id === room.id);
  return found !== undefined && openingsFrom(found).some((opening) => opening.id === openingId);
};

/** One opening of the face: what it is called, what it holds; a click selects it. */
export const RoomButton = ({ room, layout, onMenu }: RoomButtonProps) => {
  const { editor, design, chosen, hover } = useCabinet();
  const units = useUnits();
  const button = useRef<HTMLButtonElement>(null);
  const over = useStore(useGearDrag(), (state) => state.carried?.over === room.id);
  const gear = heldGear(design, room.id);
  const selected = chosen.opening !== null && isOrHolds(room, chosen.opening.id, design);
  const kind = room.kind === null ? 'empty' : kindWords(room.kind);
  const name = room.name === '' ? kind : room.name;
  const holds = holdsWords(gear.length, formatMass(massOf(gear), units));
  const [width, height] = [room.rect.width * layout.pxPerMm, room.rect.height * layout.pxPerMm];
  const upright = width < NARROW_PX && height > width * 1.6;
  const openMenu = (event: MouseEvent): void => {
    event.preventDefault();
    editor.getState().select([room.id]);
    onMenu(event.clientX, event.clientY);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'ContextMenu' && !(event.shiftKey && event.key === 'F10')) return;
    event.preventDefault();
    const box = button.current?.getBoundingClientRect();
    editor.getState().select([room.id]);
    onMenu((box?.left ?? 0) + 12, (box?.top ?? 0) + 12);
  };
  return (
    <button
      ref={button}
      type="button"
      className={classNames(styles.room, room.kind === null && styles.emptyRoom)}
      style={{ left: layout.x(room.rect.across), top: layout.y(room.rect.up + room.rect.height), width, height }}
      data-selected={selected}
      data-upright={upright}
      data-hovered={hover === room.id}
      data-over={over}
      {...{ [DROP_ATTRIBUTE]: room.id }}
      aria-pressed={selected}
      aria-label={[name, holds, room.name === '' ? '' : kind].filter((words) => words !== '').join(', ')}
      onClick={(event) => editor.getState().select([room.id], event.shiftKey ? 'add' : 'replace')}
      onContextMenu={openMenu}
      onKeyDown={onKeyDown}
      onPointerEnter={() => editor.getState().setHover(room.id)}
      onPointerLeave={() => editor.getState().setHover(null)}
    >
      {height >= ONE_LINE_PX ? <span className={styles.roomName}>{name}</span> : null}{' '}
      {height >= TWO_LINES_PX ? (
        <span className={styles.roomHolds}>{holds || (room.name === '' ? '' : kind)}</span>
      ) : null}
    </button>
  );
};

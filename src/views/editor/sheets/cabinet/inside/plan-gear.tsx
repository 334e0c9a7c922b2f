import { type CSSProperties, type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { type GearPlace, placeGear } from '../../../../../design/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { gridOf } from '../face/snap-divider.ts';
import { edgeScroll } from '../unplaced/edge-scroll.ts';
import { takerUnder } from '../unplaced/gear-drag.ts';
import { useStow } from '../unplaced/use-carry-gear.ts';
import { useCabinet, useGearDrag } from '../use-cabinet.ts';
import styles from './plan.module.css';
import type { Plan, PlanGear } from './plan-model.ts';
import { slideGear } from './slide-gear.ts';

interface PlanGearBlockProps {
  readonly plan: Plan;
  readonly block: PlanGear;
  readonly style: CSSProperties;
  readonly pxPerMm: number;
}

const BEGINS_PX = 4;
const REACH_PX = 8;
/** One press of an arrow with Shift, in steps of the grid. */
const LARGE = 8;

interface Held {
  readonly x: number;
  readonly y: number;
  readonly place: GearPlace;
  moving: boolean;
}

/** One piece of gear on the plan: slide it about, nudge it with the arrows, R turns it, Delete takes it out. */
export const PlanGearBlock = ({ plan, block, style, pxPerMm }: PlanGearBlockProps) => {
  const { editor, design, rules, selection } = useCabinet();
  const units = useUnits();
  const drag = useGearDrag();
  const stow = useStow();
  const held = useRef<Held | null>(null);
  const gear = design.gear.find((item) => item.id === block.gear);
  const room = plan.rooms.find((one) => one.opening === block.opening);
  if (!gear?.place || !room) return null;
  const { place } = gear;
  const selected = selection.includes(gear.id) || selection.includes(`${gear.id}/body`);

  const slid = (from: GearPlace, across: number, deep: number, reach: number): GearPlace => {
    const others = plan.gear
      .filter((other) => other.gear !== gear.id && other.opening === block.opening)
      .map((other) => ({ across: other.from[0], deep: other.from[1], width: other.size[0], depth: other.size[1] }));
    const [x, y] = slideGear({
      wanted: [from.at[0] + across, from.at[1] + deep],
      size: [block.size[0], block.size[1]],
      room: [room.size[0], room.size[1]],
      others,
      gap: rules.value('gap-gear'),
      reach,
      grid: gridOf(units),
    });
    return { ...from, at: [x, y, from.at[2]] };
  };
  const onPointerDown = (event: PointerEvent<HTMLButtonElement>): void => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = { x: event.clientX, y: event.clientY, place, moving: false };
  };
  const onPointerMove = (event: PointerEvent<HTMLButtonElement>): void => {
    const hold = held.current;
    if (!hold) return;
    const [dx, dy] = [event.clientX - hold.x, event.clientY - hold.y];
    if (!hold.moving && Math.hypot(dx, dy) < BEGINS_PX) return;
    const state = editor.getState();
    if (!hold.moving) state.beginGesture();
    hold.moving = true;
    if (editor.getState().gesture === null) return;
    edgeScroll(event.currentTarget, event.clientY);
    const over = takerUnder(event.clientX, event.clientY);
    const away = over !== null && !plan.rooms.some((one) => one.opening === over);
    drag.setState({ carried: away ? { gear: gear.id, x: event.clientX, y: event.clientY, over } : null });
    const next = slid(hold.place, dx / pxPerMm, -dy / pxPerMm, REACH_PX / pxPerMm);
    state.previewGesture((start) => placeGear(start, gear.id, away ? hold.place : next));
  };
  const onPointerUp = (): void => {
    const hold = held.current;
    const { carried } = drag.getState();
    held.current = null;
    drag.setState({ carried: null });
    const state = editor.getState();
    if (!hold?.moving) {
      if (hold) state.select([gear.id]);
    } else if (carried?.over) {
      state.cancelGesture();
      stow(gear, carried.over);
    } else if (state.gesture) state.commitGesture(`move ${gear.name}`);
  };
  const change = (label: string, next: GearPlace | null): void =>
    editor.getState().edit(label, (now) => placeGear(now, gear.id, next));
  const nudge = (across: number, deep: number, event: KeyboardEvent): void => {
    const step = gridOf(units) * (event.shiftKey ? LARGE : 1);
    change(`move ${gear.name}`, slid(place, across * step, deep * step, 0));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'ArrowLeft') nudge(-1, 0, event);
    else if (event.key === 'ArrowRight') nudge(1, 0, event);
    else if (event.key === 'ArrowUp') nudge(0, 1, event);
    else if (event.key === 'ArrowDown') nudge(0, -1, event);
    else if (event.key === 'Delete' || event.key === 'Backspace') change(`take ${gear.name} out`, null);
    else if (event.key.toLowerCase() === 'r' && !event.ctrlKey && !event.metaKey)
      change(`turn ${gear.name}`, {
        ...place,
        turnDeg: place.turnDeg === 0 ? 90 : place.turnDeg === 90 ? 180 : place.turnDeg === 180 ? 270 : 0,
      });
    else if (event.key === 'Escape' && held.current?.moving) {
      held.current = null;
      editor.getState().cancelGesture();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      type="button"
      className={styles.gear}
      style={style}
      data-selected={selected}
      data-first-due={gear.firstDue}
      aria-pressed={selected}
      title={`${gear.name}: drag, nudge with the arrows, R turns it`}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerUp}
      onPointerEnter={() => editor.getState().setHover(gear.id)}
      onPointerLeave={() => editor.getState().setHover(null)}
      onClick={(event) => event.detail === 0 && editor.getState().select([gear.id])}
      onKeyDown={onKeyDown}
    >
      <span>{gear.name}</span>
    </button>
  );
};

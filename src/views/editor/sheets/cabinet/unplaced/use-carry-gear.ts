import { type PointerEvent, useRef } from 'react';
import { type Gear, placeGear } from '../../../../../design/index.ts';
import { useDeskStore } from '../../../state/use-desk.ts';
import { openingName, stowIn } from '../stow-in.ts';
import { useCabinet, useGearDrag } from '../use-cabinet.ts';
import { edgeScroll } from './edge-scroll.ts';
import { takerUnder } from './gear-drag.ts';

/** Nearer to where it went down, the pointer has not begun to carry. */
const BEGINS_PX = 5;

/** Where gear without a place goes back to. */
export const TO_LIST = 'list';

/** Puts gear into an opening at its first free spot, or back on the list. */
export const useStow = () => {
  const { editor, rules } = useCabinet();
  const desk = useDeskStore();
  return (gear: Gear, taker: string): void => {
    const { history, fitOut, edit, select } = editor.getState();
    const { design } = history;
    if (taker === TO_LIST) {
      if (gear.place) edit(`take ${gear.name} out`, (now) => placeGear(now, gear.id, null));
      return;
    }
    const stowed = stowIn(design, fitOut, gear, taker, rules.value('gap-gear'));
    const where = openingName(design, taker);
    if (!stowed) {
      desk.getState().tell(`Nothing can stand in ${where}. Fit a drawer, a tray or open storage first.`, 'trouble');
      return;
    }
    edit(`put ${gear.name} into ${where}`, (now) => placeGear(now, gear.id, stowed.place));
    select([gear.id]);
    if (!stowed.free)
      desk
        .getState()
        .tell(`${gear.name} finds no free place in ${where}; it stands at the front left for now.`, 'trouble');
  };
};

/** Pointer handlers that carry a piece of gear from where it lies to an opening. */
export const useCarryGear = (gear: Gear) => {
  const drag = useGearDrag();
  const stow = useStow();
  const from = useRef<readonly [number, number] | null>(null);
  const drop = (): void => {
    from.current = null;
    drag.setState({ carried: null });
    window.removeEventListener('keydown', onKey, true);
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    drop();
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== 0) return;
      from.current = [event.clientX, event.clientY];
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent<HTMLElement>): void => {
      const start = from.current;
      if (!start) return;
      const carrying = drag.getState().carried !== null;
      if (!carrying && Math.hypot(event.clientX - start[0], event.clientY - start[1]) < BEGINS_PX) return;
      if (!carrying) window.addEventListener('keydown', onKey, true);
      edgeScroll(event.currentTarget, event.clientY);
      const over = takerUnder(event.clientX, event.clientY);
      drag.setState({ carried: { gear: gear.id, x: event.clientX, y: event.clientY, over } });
    },
    onPointerUp: (): void => {
      const { carried } = drag.getState();
      drop();
      if (carried?.over) stow(gear, carried.over);
    },
    onPointerCancel: drop,
  };
};

import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { formatLengthUnit, type LengthUnits } from '../../../../../base/index.ts';
import { findOpening, moveDivider } from '../../../../../design/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { useCabinet } from '../use-cabinet.ts';
import { dividerTargets, firstAtPlace, placeOfFirst } from './divider-targets.ts';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';
import type { Face, FaceDivider } from './face-model.ts';
import type { GuideStore } from './guide.tsx';
import { gridOf, type SnapTarget, snapDivider } from './snap-divider.ts';

interface DividerHandleProps {
  readonly face: Face;
  readonly divider: FaceDivider;
  readonly layout: FaceLayout;
  readonly guide: GuideStore;
  readonly onType: () => void;
}

/** Rooms smaller than this cannot be drawn or built. */
const LEAST_MM = 20;
/** Within this on the screen a divider goes to what it likes to rest on. */
const REACH_PX = 7;
/** One press of an arrow with Shift, in steps of the grid. */
const LARGE_STEPS: Readonly<Record<LengthUnits, number>> = { in: 8, mm: 10 };

interface Held {
  readonly divider: FaceDivider;
  readonly targets: readonly SnapTarget[];
  /** How far the pointer was off the divider when it was taken hold of, along the division. */
  readonly off: number;
}

/** A ring on the line between two rooms: drag it, nudge it with the arrows, or press Enter and type. */
export const DividerHandle = ({ face, divider, layout, guide, onType }: DividerHandleProps) => {
  const { editor, design, fitOut, rules } = useCabinet();
  const units = useUnits();
  const held = useRef<Held | null>(null);
  const columns = divider.along === 'columns';
  const content = findOpening(design, divider.parent)?.opening.content;
  const parts = content?.kind === 'divided' ? content.parts : [];
  const [first, second] = [parts[divider.index]?.opening, parts[divider.index + 1]?.opening];

  const placeUnder = (event: PointerEvent): number => {
    const board = event.currentTarget.closest('[data-face-board]')?.getBoundingClientRect();
    const at = columns ? event.clientX - (board?.left ?? 0) : event.clientY - (board?.top ?? 0);
    return columns ? (at - layout.x(0)) / layout.pxPerMm : (layout.y(0) - at) / layout.pxPerMm;
  };
  const onPointerDown = (event: PointerEvent<HTMLDivElement>): void => {
    if (event.button !== 0 || !first || !second) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus({ preventScroll: true });
    const spareMm = { up: rules.value('hand-room-gear'), beside: rules.value('gap-gear') };
    const targets = dividerTargets(face, divider, { design, fitOut, first, second, spareMm });
    held.current = { divider, targets, off: placeUnder(event) - placeOfFirst(divider, divider.firstMm) };
    editor.getState().beginGesture();
  };
  const onPointerMove = (event: PointerEvent): void => {
    // An undo from the keyboard backs out of the gesture; the hand is then empty.
    if (held.current && editor.getState().gesture === null) letGo();
    const hold = held.current;
    if (!hold) return;
    const snapped = snapDivider({
      wantedMm: firstAtPlace(hold.divider, placeUnder(event) - hold.off),
      totalMm: hold.divider.firstMm + hold.divider.secondMm,
      leastMm: LEAST_MM,
      targets: hold.targets,
      reachMm: REACH_PX / layout.pxPerMm,
      gridMm: gridOf(units),
    });
    editor
      .getState()
      .previewGesture((start) =>
        moveDivider(start, hold.divider.parent, hold.divider.index, snapped.firstMm, snapped.secondMm),
      );
    guide.setState({
      guide: { along: divider.along, at: placeOfFirst(hold.divider, snapped.firstMm), says: snapped.says },
    });
  };
  const letGo = (): void => {
    held.current = null;
    guide.setState({ guide: null });
  };
  const onPointerUp = (): void => {
    if (held.current && editor.getState().gesture) editor.getState().commitGesture('move a divider');
    letGo();
  };
  const nudge = (steps: number): void => {
    const by = steps * gridOf(units);
    const firstMm = divider.firstMm + by;
    const secondMm = divider.secondMm - by;
    if (firstMm < LEAST_MM || secondMm < LEAST_MM) return;
    editor
      .getState()
      .edit('move a divider', (now) => moveDivider(now, divider.parent, divider.index, firstMm, secondMm));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const steps = event.shiftKey ? LARGE_STEPS[units] : 1;
    const forward = columns ? 'ArrowRight' : 'ArrowDown';
    const backward = columns ? 'ArrowLeft' : 'ArrowUp';
    if (event.key === 'Escape' && held.current) {
      editor.getState().cancelGesture();
      letGo();
    } else if (event.key === forward) nudge(steps);
    else if (event.key === backward) nudge(-steps);
    else if (event.key === 'Enter') onType();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const { rect } = divider;
  const middleX = layout.x(rect.across + rect.width / 2);
  const middleY = layout.y(rect.up + rect.height / 2);
  const long = (columns ? rect.height : rect.width) * layout.pxPerMm;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a separator that is moved has no element of its own
    <div
      role="separator"
      tabIndex={0}
      className={styles.divider}
      data-along={divider.along}
      style={
        columns
          ? { left: middleX, top: middleY - long / 2, height: long }
          : { left: middleX - long / 2, top: middleY, width: long }
      }
      aria-orientation={columns ? 'vertical' : 'horizontal'}
      aria-label={
        columns
          ? `between column ${divider.index + 1} and ${divider.index + 2}`
          : `between row ${divider.index + 1} and ${divider.index + 2}`
      }
      aria-valuenow={Math.round(divider.firstMm)}
      aria-valuemin={LEAST_MM}
      aria-valuemax={Math.round(divider.firstMm + divider.secondMm - LEAST_MM)}
      aria-valuetext={formatLengthUnit(divider.firstMm, units)}
      title="Drag, nudge with the arrows, or press Enter and type"
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerUp}
      onKeyDown={onKeyDown}
    >
      <span className={styles.ring} />
    </div>
  );
};

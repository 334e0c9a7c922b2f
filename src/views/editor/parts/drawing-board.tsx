import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { Vec2 } from '../../../base/index.ts';
import styles from './drawing-board.module.css';

interface DrawingBoardProps {
  /** What is drawn, heard by a screen reader. */
  readonly label: string;
  /** Low left and high right corner of what is drawn, in mm. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** Room around it for dimensions and figures, in px on screen: left, bottom, right, top. */
  readonly margin: readonly [number, number, number, number];
  /** The greatest height on screen, in px. */
  readonly tallest: number;
  /** Draws in mm with y down (up is negative); `text` is how many mm stand for one line of text on screen. */
  readonly children: (text: number) => ReactNode;
}

const TEXT_PX = 14;
/** Before the board is measured, and where it is not shown at all. */
const START_WIDTH = 520;

/** A drawing in true scale that fills the width it is given; lines and lettering keep their size on screen. */
export const DrawingBoard = ({ label, from, to, margin, tallest, children }: DrawingBoardProps) => {
  const board = useRef<SVGSVGElement>(null);
  const [width, setWidth] = useState(START_WIDTH);
  useLayoutEffect(() => {
    const element = board.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) setWidth(entry.contentRect.width);
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const [left, bottom, right, top] = margin;
  const [across, up] = [to[0] - from[0], to[1] - from[1]];
  const pxPerMm = Math.min((width - left - right) / across, (tallest - top - bottom) / up);
  const mm = (px: number): number => px / pxPerMm;
  const corner: Vec2 = [from[0] - mm(left), -to[1] - mm(top)];
  const size: Vec2 = [across + mm(left + right), up + mm(top + bottom)];
  return (
    <svg
      ref={board}
      className={styles.board}
      role="img"
      aria-label={label}
      height={Math.round(size[1] * pxPerMm)}
      viewBox={[...corner, ...size].join(' ')}
      preserveAspectRatio="xMidYMid meet"
    >
      {children(mm(TEXT_PX))}
    </svg>
  );
};

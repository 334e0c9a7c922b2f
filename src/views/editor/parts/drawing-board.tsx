import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { Vec2 } from '../../../base/index.ts';
import styles from './drawing-board.module.css';

interface DrawingBoardProps {
  /** What is drawn, heard by a screen reader. */
  readonly label: string;
  /** Low left and high right corner of what must be seen, in mm. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** The greatest height on screen, in px. */
  readonly tallest: number;
  /** Draws in mm with y down (up is negative); `text` is how many mm stand for 13 px on screen. */
  readonly children: (text: number) => ReactNode;
}

const TEXT_PX = 14;

/** A drawing in true scale that fills the width it is given; lines and lettering keep their size on screen. */
export const DrawingBoard = ({ label, from, to, tallest, children }: DrawingBoardProps) => {
  const board = useRef<SVGSVGElement>(null);
  const [width, setWidth] = useState(520);
  useLayoutEffect(() => {
    const element = board.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      // Nothing to fit into while the board is not shown, as on a sheet that only comes on paper.
      if (entry && entry.contentRect.width > 0) setWidth(entry.contentRect.width);
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const [across, up] = [to[0] - from[0], to[1] - from[1]];
  const pxPerMm = Math.min(width / across, tallest / up);
  return (
    <svg
      ref={board}
      className={styles.board}
      role="img"
      aria-label={label}
      height={Math.round(up * pxPerMm)}
      viewBox={`${from[0]} ${-to[1]} ${across} ${up}`}
      preserveAspectRatio="xMidYMid meet"
    >
      {children(TEXT_PX / pxPerMm)}
    </svg>
  );
};

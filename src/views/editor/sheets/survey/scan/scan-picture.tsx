import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Vec2, Vec3 } from '../../../../../base/index.ts';
import type { SurfaceSamples } from '../../../../../envelope/index.ts';
import { useTheme } from '../../../parts/index.ts';
import styles from './scan.module.css';
import { pickMark, useScan } from './scan-store.ts';
import { frameOf, onPicture, paintScan, type ScanView, sightThrough } from './scan-view.ts';

/** Pixels of the picture itself; the page scales it. */
const SIZE: Vec2 = [720, 430];
const START: ScanView = { turnRad: -2.4, tiltRad: 0.6, zoom: 0.95 };
const STEP_RAD = Math.PI / 24;
const RAD_A_PIXEL = 0.008;
const CLICK_PIXELS = 4;

const colour = (of: HTMLElement, token: string): Vec3 => {
  const [r = 0, g = 0, b = 0] =
    /^#(..)(..)(..)$/
      .exec(getComputedStyle(of).getPropertyValue(token).trim())
      ?.slice(1)
      .map((pair) => Number.parseInt(pair, 16)) ?? [];
  return [r, g, b];
};

const turnedBy = (view: ScanView, turn: number, tilt: number): ScanView => ({
  ...view,
  turnRad: view.turnRad + turn,
  tiltRad: Math.max(-Math.PI / 2, Math.min(Math.PI / 2, view.tiltRad + tilt)),
});

const KEYS: Readonly<Record<string, (view: ScanView) => ScanView>> = {
  ArrowLeft: (view) => turnedBy(view, -STEP_RAD, 0),
  ArrowRight: (view) => turnedBy(view, STEP_RAD, 0),
  ArrowUp: (view) => turnedBy(view, 0, STEP_RAD),
  ArrowDown: (view) => turnedBy(view, 0, -STEP_RAD),
  '+': (view) => ({ ...view, zoom: Math.min(20, view.zoom * 1.25) }),
  '-': (view) => ({ ...view, zoom: Math.max(0.3, view.zoom / 1.25) }),
};

interface PictureProps {
  readonly samples: SurfaceSamples;
  /** Which side of its surfaces is shown: a scan made inside looks inwards. */
  readonly otherSide: boolean;
}

/** The scan as dots: dragged to turn it, pressed to place the next mark; the fields below do the same by keyboard. */
export const ScanPicture = ({ samples, otherSide }: PictureProps) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const held = useRef<{ at: Vec2; moved: number } | null>(null);
  const theme = useTheme().shown;
  const [view, setView] = useState(START);
  const { sought, placing } = useScan();
  const frame = useMemo(() => frameOf(samples), [samples]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the colours are read anew when the theme changes
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!canvas.current || !context) return;
    const image = context.createImageData(SIZE[0], SIZE[1]);
    const ink = { far: colour(canvas.current, '--line'), near: colour(canvas.current, '--ink-2') };
    paintScan(image.data, SIZE, samples, view, frame, { facing: otherSide ? -1 : 1, ink });
    context.putImageData(image, 0, 0);
  }, [samples, view, frame, otherSide, theme]);

  const pixelOf = (event: PointerEvent<HTMLElement>): Vec2 => {
    const box = event.currentTarget.getBoundingClientRect();
    return [((event.clientX - box.left) / box.width) * SIZE[0], ((event.clientY - box.top) / box.height) * SIZE[1]];
  };
  const onMove = (event: PointerEvent<HTMLElement>): void => {
    if (!held.current) return;
    const at = pixelOf(event);
    const [dx, dy] = [at[0] - held.current.at[0], at[1] - held.current.at[1]];
    held.current = { at, moved: held.current.moved + Math.hypot(dx, dy) };
    if (held.current.moved > CLICK_PIXELS) setView((now) => turnedBy(now, -dx * RAD_A_PIXEL, dy * RAD_A_PIXEL));
  };
  const onUp = (event: PointerEvent<HTMLElement>): void => {
    const clicked = held.current !== null && held.current.moved <= CLICK_PIXELS;
    held.current = null;
    if (!clicked) return;
    const { from, along } = sightThrough(pixelOf(event), view, frame, SIZE);
    void pickMark(from, along, otherSide ? 'away' : 'towards');
  };
  const onKey = (event: KeyboardEvent): void => {
    const turn = KEYS[event.key];
    if (!turn) return;
    event.preventDefault();
    setView(turn);
  };
  return (
    <div
      className={styles.picture}
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it is turned with the arrow keys
      tabIndex={0}
      aria-label="Scan. Arrow keys turn it, plus and minus come nearer; marks are typed in the table below."
      onKeyDown={onKey}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = { at: pixelOf(event), moved: 0 };
      }}
      onPointerMove={onMove}
      onPointerUp={onUp}
      onPointerCancel={() => {
        held.current = null;
      }}
      onWheel={(event) =>
        setView((now) => ({ ...now, zoom: Math.max(0.3, Math.min(20, now.zoom * (event.deltaY < 0 ? 1.12 : 0.89))) }))
      }
    >
      <canvas ref={canvas} width={SIZE[0]} height={SIZE[1]} />
      <svg viewBox={`0 0 ${SIZE[0]} ${SIZE[1]}`} aria-hidden="true">
        {sought.map(({ at }, i) => {
          if (!at) return null;
          const [x, y] = onPicture(at, view, frame, SIZE);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark is known by its number
            <g key={i} data-on={i === placing}>
              <circle cx={x} cy={y} r={7} />
              <text x={x + 11} y={y + 5}>
                {i + 1}
              </text>
            </g>
          );
        })}
      </svg>
    </div>
  );
};

import { memo } from 'react';
import type { Chain } from './dimension-chains.ts';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';
import type { Face, Rect } from './face-model.ts';
import { GuideLine, type GuideStore } from './guide.tsx';

interface FaceDrawingProps {
  readonly face: Face;
  readonly layout: FaceLayout;
  readonly chains: readonly Chain[];
  readonly bodies: readonly Rect[];
  readonly guide: GuideStore;
}

const TICK_PX = 5;

interface InkProps {
  readonly className: string | undefined;
  readonly d: string;
}

/** While a divider is dragged most lines stay where they are: those are not drawn anew. */
const Ink = memo(({ className, d }: InkProps) => <path className={className} d={d} />);

const ChainLine = ({ chain, layout }: { readonly chain: Chain; readonly layout: FaceLayout }) => {
  const at = layout.chainAt(chain);
  const upright = chain.side !== 'bottom';
  return chain.pieces.map(({ from, to }, i) => {
    const [a, b] = upright ? [layout.y(from), layout.y(to)] : [layout.x(from), layout.x(to)];
    const line = upright ? `M${at} ${a}V${b}` : `M${a} ${at}H${b}`;
    const tick = (place: number): string =>
      upright ? `M${at - TICK_PX} ${place}h${2 * TICK_PX}` : `M${place} ${at - TICK_PX}v${2 * TICK_PX}`;
    // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a chain keep their order
    return <Ink key={i} className={styles.chain} d={`${line}${tick(a)}${tick(b)}`} />;
  });
};

const rectOf = (rect: Rect, layout: FaceLayout) => ({
  x: layout.x(rect.across),
  y: layout.y(rect.up + rect.height),
  width: rect.width * layout.pxPerMm,
  height: rect.height * layout.pxPerMm,
});

interface BoxProps {
  readonly className: string | undefined;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const Box = memo((box: BoxProps) => <rect {...box} />);

/** The ink under the face map: panels hatched, rooms clear, what stands in them, chains round them. */
export const FaceDrawing = ({ face, layout, chains, bodies, guide }: FaceDrawingProps) => (
  <svg className={styles.drawing} width={layout.width} height={layout.height} aria-hidden="true">
    <defs>
      <pattern id="panel-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className={styles.hatch} x1="0" y1="0" x2="0" y2="6" />
      </pattern>
      <clipPath id="face-edge">
        <rect {...rectOf({ across: 0, up: 0, width: face.width, height: face.height }, layout)} />
      </clipPath>
    </defs>
    <Box className={styles.outside} {...rectOf({ across: 0, up: 0, width: face.width, height: face.height }, layout)} />
    {face.rooms.map((room) => (
      <Box key={room.id} className={styles.clear} {...rectOf(room.rect, layout)} />
    ))}
    <g clipPath="url(#face-edge)">
      {bodies.map((body, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: outlines without a life of their own
        <Box key={i} className={styles.body} {...rectOf(body, layout)} />
      ))}
    </g>
    {chains.map((chain) => (
      <ChainLine key={`${chain.side} ${chain.rank}`} chain={chain} layout={layout} />
    ))}
    <GuideLine store={guide} layout={layout} width={face.width} height={face.height} />
  </svg>
);

import type { Chain } from './dimension-chains.ts';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';
import type { Face, Rect } from './face-model.ts';

interface FaceDrawingProps {
  readonly face: Face;
  readonly layout: FaceLayout;
  readonly chains: readonly Chain[];
  readonly bodies: readonly Rect[];
  /** A line that a dragged divider rests on, across or up the face, or null. */
  readonly guide: { readonly along: 'columns' | 'rows'; readonly at: number } | null;
}

const TICK_PX = 5;

const ChainLine = ({ chain, layout }: { readonly chain: Chain; readonly layout: FaceLayout }) => {
  const at = layout.chainAt(chain);
  const upright = chain.side !== 'bottom';
  return chain.pieces.map(({ from, to }) => {
    const [a, b] = upright ? [layout.y(from), layout.y(to)] : [layout.x(from), layout.x(to)];
    const line = upright ? `M${at} ${a}V${b}` : `M${a} ${at}H${b}`;
    const tick = (place: number): string =>
      upright ? `M${at - TICK_PX} ${place}h${2 * TICK_PX}` : `M${place} ${at - TICK_PX}v${2 * TICK_PX}`;
    return <path key={from} className={styles.chain} d={`${line}${tick(a)}${tick(b)}`} />;
  });
};

const rectOf = (rect: Rect, layout: FaceLayout) => ({
  x: layout.x(rect.across),
  y: layout.y(rect.up + rect.height),
  width: rect.width * layout.pxPerMm,
  height: rect.height * layout.pxPerMm,
});

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
    <rect
      className={styles.outside}
      {...rectOf({ across: 0, up: 0, width: face.width, height: face.height }, layout)}
    />
    {face.rooms.map((room) => (
      <rect key={room.id} className={styles.clear} {...rectOf(room.rect, layout)} />
    ))}
    <g clipPath="url(#face-edge)">
      {bodies.map((body, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: outlines without a life of their own
        <rect key={i} className={styles.body} {...rectOf(body, layout)} />
      ))}
    </g>
    {chains.map((chain) => (
      <ChainLine key={`${chain.side} ${chain.rank}`} chain={chain} layout={layout} />
    ))}
    {guide ? (
      <path
        className={styles.guide}
        d={
          guide.along === 'columns'
            ? `M${layout.x(guide.at)} ${layout.y(face.height) - 6}V${layout.y(0) + 6}`
            : `M${layout.x(0) - 6} ${layout.y(guide.at)}H${layout.x(face.width) + 6}`
        }
      />
    ) : null}
  </svg>
);

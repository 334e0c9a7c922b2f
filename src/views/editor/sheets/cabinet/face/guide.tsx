import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';

/** A line that a dragged divider rests on. */
export interface Guide {
  readonly along: 'columns' | 'rows';
  /** Across from the left or up from the bottom. */
  readonly at: number;
  readonly says: string | null;
}

/**
 * Where the guide lies, apart from the face map: it goes with every move of the hand, and nothing else of the map has
 * to be drawn anew for it.
 */
export type GuideStore = StoreApi<{ readonly guide: Guide | null }>;

export const createGuide = (): GuideStore => createStore<{ guide: Guide | null }>()(() => ({ guide: null }));

interface GuideProps {
  readonly store: GuideStore;
  readonly layout: FaceLayout;
  /** Of the face, millimetres. */
  readonly width: number;
  readonly height: number;
}

/** The line across the drawing. */
export const GuideLine = ({ store, layout, width, height }: GuideProps) => {
  const guide = useStore(store, (state) => state.guide);
  if (!guide) return null;
  const line =
    guide.along === 'columns'
      ? `M${layout.x(guide.at)} ${layout.y(height) - 6}V${layout.y(0) + 6}`
      : `M${layout.x(0) - 6} ${layout.y(guide.at)}H${layout.x(width) + 6}`;
  return <path className={styles.guide} d={line} />;
};

/** What the divider rests on, in words at the end of the line. */
export const GuideWords = ({ store, layout, width, height }: GuideProps) => {
  const guide = useStore(store, (state) => state.guide);
  if (!guide?.says) return null;
  const place =
    guide.along === 'columns'
      ? { left: layout.x(guide.at), top: layout.y(height) - 8 }
      : { left: layout.x(width) + 10, top: layout.y(guide.at) };
  return (
    <span className={styles.says} style={place}>
      {guide.says}
    </span>
  );
};

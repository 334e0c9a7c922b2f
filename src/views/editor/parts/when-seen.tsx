import { type ReactNode, useEffect, useRef, useState } from 'react';

/** How far below what is in view something is already made ready. */
const AHEAD = '200px';

interface WhenSeenProps {
  /** Shown at once, whether it is in view or not. */
  readonly now?: boolean;
  readonly children: ReactNode;
}

/** Holds back a part of a long sheet, and what it fetches, until it is about to come into view; it then stays. */
export const WhenSeen = ({ now = false, children }: WhenSeenProps) => {
  const place = useRef<HTMLDivElement>(null);
  const [seen, setSeen] = useState(now);
  useEffect(() => {
    if (now) setSeen(true);
    const box = place.current;
    if (!box) return;
    const watcher = new IntersectionObserver(([entry]) => entry?.isIntersecting && setSeen(true), {
      rootMargin: AHEAD,
    });
    watcher.observe(box);
    return () => watcher.disconnect();
  }, [now]);
  return seen || now ? children : <div ref={place} style={{ minHeight: 40 }} />;
};

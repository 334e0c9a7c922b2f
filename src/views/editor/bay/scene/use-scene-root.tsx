import { createRoot, type ReconcilerRoot } from '@react-three/fiber';
import { type ReactNode, type RefObject, useEffect, useRef, useState } from 'react';
import { PCFShadowMap } from 'three';
import { fullSharpness } from './camera-rig.tsx';

type Root = ReconcilerRoot<HTMLCanvasElement>;

interface Size {
  readonly width: number;
  readonly height: number;
}

const sizeOf = (host: HTMLElement): Size => ({
  width: Math.max(1, host.clientWidth),
  height: Math.max(1, host.clientHeight),
});

const configure = (root: Root, { width, height }: Size): Promise<Root> =>
  root.configure({
    frameloop: 'demand',
    flat: true,
    shadows: { type: PCFShadowMap, autoUpdate: false, needsUpdate: true },
    dpr: fullSharpness(),
    gl: { antialias: true, alpha: true, powerPreference: 'high-performance' },
    size: { width, height, top: 0, left: 0 },
  });

interface SceneRoot {
  /** The graphics card was taken away; drawing begins anew when `again` is called. */
  readonly lost: boolean;
  readonly again: () => void;
}

/**
 * Keeps a scene of its own inside the host element: a fresh canvas each time, since a canvas whose drawing has ended
 * cannot be drawn on again. `onSize` hears the size before the first frame and whenever it changes.
 */
export const useSceneRoot = (
  host: RefObject<HTMLElement | null>,
  scene: ReactNode,
  onSize: (size: Size) => void,
): SceneRoot => {
  const root = useRef<Root | null>(null);
  const [lost, setLost] = useState(false);
  const [round, setRound] = useState(0);
  const shown = useRef(scene);
  const heard = useRef(onSize);
  shown.current = scene;
  heard.current = onSize;

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round begins anew on purpose
  useEffect(() => {
    const box = host.current;
    if (!box) return;
    const canvas = document.createElement('canvas');
    canvas.setAttribute('aria-hidden', 'true');
    box.prepend(canvas);
    const made = createRoot(canvas);
    let ended = false;
    const fit = (): void => {
      const size = sizeOf(box);
      heard.current(size);
      void configure(made, size).then(() => {
        if (ended) return;
        root.current = made;
        made.render(shown.current);
      });
    };
    const onLost = (event: Event): void => {
      event.preventDefault();
      if (!ended) setLost(true);
    };
    canvas.addEventListener('webglcontextlost', onLost);
    const watcher = new ResizeObserver(fit);
    watcher.observe(box);
    return () => {
      ended = true;
      watcher.disconnect();
      root.current = null;
      made.unmount();
      canvas.remove();
    };
  }, [host, round]);

  useEffect(() => {
    root.current?.render(scene);
  }, [scene]);

  return {
    lost,
    again: () => {
      setLost(false);
      setRound((before) => before + 1);
    },
  };
};

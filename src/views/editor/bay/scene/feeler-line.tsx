import { useMemo } from 'react';
import { feelerLines } from '../marks/feeler.ts';
import { type Feeler, useFeelers } from '../marks/use-feelers.ts';
import type { SceneColours } from '../scene-colours.ts';
import { FatLines } from './fat-lines.tsx';

const FEELER_PX = 3;

interface OneLineProps {
  readonly feeler: Feeler;
  readonly colours: SceneColours;
}

const OneLine = ({ feeler: { at, severity }, colours }: OneLineProps) => {
  const colour = severity === null ? colours.ink : colours.severity[severity];
  const lines = useMemo(() => feelerLines(at), [at]);
  return <FatLines lines={lines} look={{ colour, widthPx: FEELER_PX, share: 1, through: true }} />;
};

/** The finding that is chosen and the least gap of the mover in the hand, each as a line between its two points. */
export const FeelerLine = ({ colours }: { readonly colours: SceneColours }) =>
  useFeelers().map((feeler) => <OneLine key={feeler.key} feeler={feeler} colours={colours} />);

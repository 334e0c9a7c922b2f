import { useEffect, useMemo } from 'react';
import { useEditorParts } from '../../state/use-editor.ts';
import { feelerLines } from '../marks/feeler.ts';
import type { SceneColours } from '../scene-colours.ts';
import { disposeFatLines, fatLines } from './fat-lines.ts';

const FEELER_PX = 3;

/** The finding that is chosen, as a line between its two points. */
export const FeelerLine = ({ colours }: { readonly colours: SceneColours }) => {
  const { feeler, findings } = useEditorParts((editor) => ({
    feeler: editor.feeler,
    findings: editor.judgement?.inspection.findings,
  }));
  const finding = feeler === null ? undefined : findings?.[feeler];
  const at = finding?.at ?? null;
  const colour = finding ? colours.severity[finding.severity] : colours.ink;
  const drawn = useMemo(
    () => at && fatLines(feelerLines(at), { colour, widthPx: FEELER_PX, share: 1, through: true }),
    [at, colour],
  );
  useEffect(
    () => () => {
      if (drawn) disposeFatLines(drawn);
    },
    [drawn],
  );
  return drawn ? <primitive object={drawn} /> : null;
};

import { useMemo } from 'react';
import type { Vec2 } from '../../../../base/index.ts';
import type { Catalog } from '../../../../catalog/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import { Figure } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import { partFacts } from '../marks/part-facts.ts';
import styles from './tags.module.css';

interface HoverTagProps {
  readonly at: Vec2 | null;
  readonly width: number;
  readonly catalog: Catalog;
  readonly space: CargoSpace | null;
}

/** Room that the tag needs to the right of the pointer before it turns over to the left. */
const TAG_PX = 220;

/** Name, size and mass of what the pointer rests on. */
export const HoverTag = ({ at, width, catalog, space }: HoverTagProps) => {
  const { hover, fitOut, design } = useEditorParts((editor) => ({
    hover: editor.hover,
    fitOut: bayFitOut(editor.fitOut),
    design: editor.history.design,
  }));
  const facts = useMemo(
    () => (hover === null ? null : partFacts(hover, { fitOut, space, design, catalog })),
    [hover, fitOut, space, design, catalog],
  );
  if (!at || !facts) return null;
  const turned = at[0] > width - TAG_PX;
  return (
    <div
      className={styles.hover}
      data-turned={turned}
      style={{ transform: `translate(${at[0]}px, ${at[1]}px)` }}
      role="presentation"
    >
      <strong>{facts.name}</strong>
      {facts.size === null ? null : <Figure>{facts.size}</Figure>}
      {facts.mass === null ? null : <Figure>{facts.mass}</Figure>}
    </div>
  );
};

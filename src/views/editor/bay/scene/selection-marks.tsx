import { useMemo } from 'react';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { LineData } from '../../../../shop/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import { type LitLines, litLines } from '../marks/lit-lines.ts';
import type { SceneColours } from '../scene-colours.ts';
import type { Stage } from '../stage.ts';
import { FatLines } from './fat-lines.tsx';
import { MovingGroup } from './moving-group.tsx';

const CHOSEN_PX = 2.6;
const HOVERED_PX = 1.6;
/** What lies behind something is still seen, fainter. */
const BEHIND_SHARE = 0.28;

/** Lines of several lit things, together by the mover that carries them. */
const byMover = (lit: readonly LitLines[]): ReadonlyMap<string | null, LineData> => {
  const groups = new Map<string | null, LineData>();
  for (const { mover, lines } of lit) {
    const group = groups.get(mover) ?? [];
    group.push(...lines);
    groups.set(mover, group);
  }
  return groups;
};

interface LitProps {
  readonly stage: Stage;
  readonly lit: readonly LitLines[];
  readonly colour: string;
  readonly widthPx: number;
}

const Lit = ({ stage, lit, colour, widthPx }: LitProps) => {
  const groups = useMemo(() => [...byMover(lit)].filter(([, lines]) => lines.length > 0), [lit]);
  return groups.map(([mover, lines]) => (
    <MovingGroup key={mover ?? 'still'} stage={stage} mover={mover}>
      <FatLines lines={lines} look={{ colour, widthPx, share: BEHIND_SHARE, through: true }} />
      <FatLines lines={lines} look={{ colour, widthPx, share: 1, through: false }} />
    </MovingGroup>
  ));
};

interface SelectionMarksProps {
  readonly stage: Stage;
  readonly space: CargoSpace | null;
  readonly colours: SceneColours;
}

/** Petrol edges round what is selected, finer ones round what is pointed at, here or on a sheet. */
export const SelectionMarks = ({ stage, space, colours }: SelectionMarksProps) => {
  const { fitOut, selection, hover } = useEditorParts((editor) => ({
    fitOut: bayFitOut(editor.fitOut),
    selection: editor.selection,
    hover: editor.hover,
  }));
  const chosen = useMemo(
    () => selection.flatMap((id) => litLines(fitOut, space, id, true)),
    [fitOut, space, selection],
  );
  const pointed = useMemo(
    () => (hover === null || selection.includes(hover) ? [] : litLines(fitOut, space, hover)),
    [fitOut, space, hover, selection],
  );
  return (
    <>
      <Lit stage={stage} lit={pointed} colour={colours.petrol} widthPx={HOVERED_PX} />
      <Lit stage={stage} lit={chosen} colour={colours.petrol} widthPx={CHOSEN_PX} />
    </>
  );
};

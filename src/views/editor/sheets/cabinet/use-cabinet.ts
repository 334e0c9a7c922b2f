import { createContext, useContext, useMemo } from 'react';
import type { Catalog, HouseRules } from '../../../../catalog/index.ts';
import { houseRules } from '../../../../catalog/index.ts';
import type { Design } from '../../../../design/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import { useBench } from '../../state/bench.ts';
import type { EditorStore } from '../../state/store.ts';
import { useEditorParts, useEditorStore } from '../../state/use-editor.ts';
import { type Chosen, chosenOf } from './chosen.ts';
import type { GearDrag } from './unplaced/gear-drag.ts';

/** What every part of the cabinet sheet looks at. */
export interface CabinetView {
  readonly editor: EditorStore;
  readonly design: Design;
  readonly fitOut: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly chosen: Chosen;
  readonly selection: readonly string[];
  readonly hover: string | null;
}

/** The view worked out once for the whole sheet; its parts take it from the context. */
export const useCabinetView = (): CabinetView => {
  const editor = useEditorStore();
  const { catalog } = useBench();
  const { design, fitOut, selection, hover, shown } = useEditorParts((state) => ({
    design: state.history.design,
    fitOut: state.fitOut,
    selection: state.selection,
    hover: state.hover,
    shown: state.carcass,
  }));
  const rules = useMemo(() => houseRules(catalog, design.houseRules), [catalog, design.houseRules]);
  const chosen = useMemo(() => chosenOf(design, fitOut, selection, shown), [design, fitOut, selection, shown]);
  return useMemo(
    () => ({ editor, design, fitOut, catalog, rules, chosen, selection, hover }),
    [editor, design, fitOut, catalog, rules, chosen, selection, hover],
  );
};

export const CabinetContext = createContext<CabinetView | null>(null);

export const useCabinet = (): CabinetView => {
  const view = useContext(CabinetContext);
  if (!view) throw new Error('useCabinet: no cabinet sheet around this component');
  return view;
};

/** Gear that is being dragged from the list or the plan, for everything that it can be let go over. */
export const GearDragContext = createContext<GearDrag | null>(null);

export const useGearDrag = (): GearDrag => {
  const drag = useContext(GearDragContext);
  if (!drag) throw new Error('useGearDrag: no cabinet sheet around this component');
  return drag;
};

import { useMemo } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { LengthUnits } from '../../../../base/index.ts';
import { type LabelSheetId, usualLabelSheet } from '../../../../shop/index.ts';

/** The labels in hand: kept while a person looks at other steps. */
export interface LabelChoice {
  readonly labelSheet: LabelSheetId;
  /** The first free label of a sheet that has been begun, from 1. */
  readonly firstLabel: number;
}

interface Chosen {
  /** Null until somebody chose: the usual sheet of the design's units. */
  readonly labelSheet: LabelSheetId | null;
  readonly firstLabel: number;
}

const store = createStore<Chosen>()(() => ({ labelSheet: null, firstLabel: 1 }));

export const chooseLabels = (choice: Partial<LabelChoice>): void => store.setState(choice);

export const useLabelChoice = (units: LengthUnits): LabelChoice => {
  const { labelSheet, firstLabel } = useStore(store);
  return useMemo(
    () => ({ labelSheet: labelSheet ?? usualLabelSheet(units), firstLabel }),
    [labelSheet, firstLabel, units],
  );
};

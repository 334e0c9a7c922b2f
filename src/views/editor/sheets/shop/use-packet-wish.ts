import { useMemo } from 'react';
import type { Inspection } from '../../../../inspection/index.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import { useLabelChoice } from './label-choice.ts';
import type { PacketWish } from './save-packet.ts';
import type { ShopLists } from './shop-lists.ts';

/** The inspection of the present design; null until that very design is inspected. */
export const useFreshInspection = (): Inspection | null =>
  useEditor(({ judgement, editNumber }) =>
    judgement !== null && judgement.edit >= editNumber ? judgement.inspection : null,
  );

/** What a packet of the present design is made from; null until that very design is inspected. */
export const usePacketWish = (lists: ShopLists): PacketWish | null => {
  const judgement = useEditorParts((editor) => ({
    fresh: editor.judgement !== null && editor.judgement.edit >= editor.editNumber ? editor.judgement : null,
  })).fresh;
  const labels = useLabelChoice(useUnits());
  return useMemo(
    () =>
      judgement && {
        lists,
        inspection: judgement.inspection,
        order: judgement.order,
        carry: judgement.carry ?? null,
        labels,
      },
    [lists, judgement, labels],
  );
};

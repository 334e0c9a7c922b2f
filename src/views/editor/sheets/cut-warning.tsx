import { useMemo } from 'react';
import { type Catalog, houseRules } from '../../../catalog/index.ts';
import type { Design } from '../../../design/index.ts';
import { solveFitOut } from '../../../fitout/index.ts';
import { type CutAgain, cutAgain } from '../../../revision/index.ts';
import { sayCutWarning } from '../../../says/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditor } from '../state/use-editor.ts';
import sheet from './sheet.module.css';

/** What no longer fits sheets that were cut from a released letter; null where none were. */
export const cutAgainOf = (design: Design, catalog: Catalog): CutAgain | null =>
  cutAgain(design, (each) => solveFitOut(each, catalog, houseRules(catalog, each.houseRules)));

/** Said wherever someone is about to cut or to release: sheets were cut from an older letter, and these panels changed. */
export const CutWarning = () => {
  const { catalog } = useBench();
  const design = useEditor((editor) => editor.gesture ?? editor.history.design);
  const says = useMemo(() => {
    const again = cutAgainOf(design, catalog);
    return again ? sayCutWarning(again.letter, again.panels) : '';
  }, [design, catalog]);
  return says === '' ? null : (
    <ul className={sheet.problems}>
      <li role="status">{says}</li>
    </ul>
  );
};

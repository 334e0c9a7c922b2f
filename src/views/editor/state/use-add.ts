import type { Design } from '../../../design/index.ts';
import { useEditorStore } from './use-editor.ts';

interface Added {
  readonly design: Design;
  readonly id: string;
}

/** Makes an undoable edit that adds one thing, selects the new thing, and gives its id. */
export const useAdd = (): ((label: string, add: (design: Design) => Added) => string) => {
  const store = useEditorStore();
  return (label, add) => {
    const { history, edit, select } = store.getState();
    const added = add(history.design);
    edit(label, () => added.design);
    select([added.id]);
    return added.id;
  };
};

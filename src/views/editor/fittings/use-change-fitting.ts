import { changeFitting, type NodeId } from '../../../design/index.ts';
import { useEditor } from '../state/use-editor.ts';

/** Changes parts of the fitting in an opening as one undoable step. */
export const useChangeFitting = <F extends object>(opening: NodeId): ((label: string, part: Partial<F>) => void) => {
  const edit = useEditor((editor) => editor.edit);
  return (label, part) =>
    edit(label, (design) => changeFitting(design, opening, (draft) => void Object.assign(draft, part)));
};

import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import { useShallow } from 'zustand/react/shallow';
import type { Editor, EditorStore } from './store.ts';

export const EditorContext = createContext<EditorStore | null>(null);

/** The store of the surrounding editor. Throws outside of one. */
export const useEditorStore = (): EditorStore => {
  const store = useContext(EditorContext);
  if (!store) throw new Error('useEditorStore: no editor around this component');
  return store;
};

/** A part of the editor's state; the component renders again when that part changes. */
export const useEditor = <T>(pick: (editor: Editor) => T): T => useStore(useEditorStore(), pick);

/** Several parts at once, compared one by one. */
export const useEditorParts = <T extends object>(pick: (editor: Editor) => T): T =>
  useStore(useEditorStore(), useShallow(pick));

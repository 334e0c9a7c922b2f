import { useEffect } from 'react';
import type { Design } from '../../../../../design/index.ts';
import { useEditorStore } from '../../../state/use-editor.ts';
import styles from '../review.module.css';

/** Shows the older design in the bay for as long as the button is held; letting go brings the present one back. */
export const HoldInBay = ({ called, older }: { readonly called: string; readonly older: Design }) => {
  const store = useEditorStore();
  const end = (): void => store.getState().cancelGesture();
  const begin = (): void => {
    const { beginGesture, previewGesture, gesture } = store.getState();
    if (gesture) return;
    beginGesture();
    previewGesture(({ revisions, approvals, replies, record }) => ({
      ...older,
      revisions,
      approvals,
      replies,
      record,
    }));
  };
  useEffect(() => () => store.getState().cancelGesture(), [store]);
  return (
    <button
      type="button"
      className={styles.hold}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        begin();
      }}
      onPointerUp={end}
      onPointerCancel={end}
      onBlur={end}
      onKeyDown={(event) => {
        if (event.key === ' ' || event.key === 'Enter') {
          event.preventDefault();
          begin();
        }
      }}
      onKeyUp={end}
    >
      Hold to see {called} in the bay
    </button>
  );
};

import { useId } from 'react';
import type { Closure } from '../../../../design/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import styles from './opening-angle.module.css';

/** How far a closure stands open in the bay, by hand. */
export const OpeningAngle = ({ closure }: { readonly closure: Closure }) => {
  const id = useId();
  const { share, setShare } = useEditorParts((editor) => ({
    share: editor.shares[closure.id] ?? 0,
    setShare: editor.setShare,
  }));
  const degrees = Math.round(share * closure.opensDeg);
  return (
    <div className={styles.row}>
      <label htmlFor={id}>Open the {closure.name}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={closure.opensDeg}
        step={1}
        value={degrees}
        aria-valuetext={`${degrees} degrees of ${closure.opensDeg}`}
        onChange={(event) => setShare(closure.id, Number(event.target.value) / closure.opensDeg)}
      />
      <output htmlFor={id}>
        {degrees}° of {closure.opensDeg}°
      </output>
    </div>
  );
};

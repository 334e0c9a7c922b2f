import type { ReactNode } from 'react';
import type { NodeId } from '../../../../design/index.ts';
import { removeSurveyItem, type SurveyList } from '../../../../design/index.ts';
import { Button } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import styles from '../sheet.module.css';
import { StartNote } from './start-values.tsx';

interface ItemCardProps {
  readonly list: SurveyList;
  readonly id: NodeId;
  readonly name: string;
  /** What it is, in a few words, beside the name. */
  readonly about: ReactNode;
  /** The fields, shown while the item is selected. */
  readonly children: ReactNode;
}

/** One thing of the survey: a line of it, and its fields while it is selected in any view. */
export const ItemCard = ({ list, id, name, about, children }: ItemCardProps) => {
  const { selected, select, setHover, edit } = useEditorParts((editor) => ({
    selected: editor.selection.includes(id),
    select: editor.select,
    setHover: editor.setHover,
    edit: editor.edit,
  }));
  return (
    <li
      className={styles.card}
      data-selected={selected}
      onPointerEnter={() => setHover(id)}
      onPointerLeave={() => setHover(null)}
    >
      <div className={styles.head}>
        <button
          type="button"
          className={styles.pick}
          aria-expanded={selected}
          onClick={() => select(selected ? [] : [id])}
        >
          {name === '' ? 'unnamed' : name}
        </button>
        <span className={styles.soft}>{about}</span>
        <span className={styles.push}>
          <Button
            look="quiet"
            small
            aria-label={`Remove ${name}`}
            onClick={() => edit(`remove ${name}`, (design) => removeSurveyItem(design, list, id))}
          >
            Remove
          </Button>
        </span>
      </div>
      {list === 'obstacles' || list === 'closures' ? <StartNote list={list} id={id} what={name} /> : null}
      {selected ? children : null}
    </li>
  );
};

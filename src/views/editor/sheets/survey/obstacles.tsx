import { addSurveyItem, changeSurveyItem, type Obstacle } from '../../../../design/index.ts';
import { Button, ChoiceField, TextField } from '../../parts/index.ts';
import { useAdd } from '../../state/use-add.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import styles from '../sheet.module.css';
import { ItemCard } from './item-card.tsx';
import { SOLID_STARTS, SOLID_WORDS, SolidFields } from './solid-fields.tsx';

const KINDS: readonly Obstacle['kind'][] = [
  'latch',
  'striker',
  'strut',
  'tie-down',
  'trim',
  'lamp',
  'seat-back',
  'wheelhouse',
  'other',
];

/** A strut turns about the one while the other goes with its closure. */
const STRUT_ENDS = ['Ball point on the body, stays', 'Ball point on the closure, goes with it'] as const;

const words = (id: string): string => id.replace(/-/g, ' ');

const ObstacleFields = ({ obstacle }: { readonly obstacle: Obstacle }) => {
  const { edit, closures } = useEditorParts((editor) => ({
    edit: editor.edit,
    closures: editor.history.design.survey.closures,
  }));
  const change = (label: string, part: Partial<Omit<Obstacle, 'id'>>): void =>
    edit(label, (design) => changeSurveyItem(design, 'obstacles', obstacle.id, part));
  return (
    <div className={styles.group}>
      <div className={styles.fields}>
        <TextField label="Name" value={obstacle.name} onCommit={(name) => change('name an obstacle', { name })} />
        <ChoiceField
          label="Kind"
          value={obstacle.kind}
          choices={KINDS.map((kind) => ({ value: kind, label: words(kind) }))}
          onCommit={(kind) => change('change an obstacle', { kind })}
        />
        <ChoiceField
          label="Moves with"
          value={obstacle.movesWith ?? ''}
          choices={[
            { value: '', label: 'nothing, it stays' },
            ...closures.map((closure) => ({ value: closure.id as string, label: closure.name })),
          ]}
          onCommit={(id) =>
            change('change what an obstacle moves with', {
              movesWith: closures.find((closure) => closure.id === id)?.id ?? null,
            })
          }
        />
      </div>
      <SolidFields
        solid={obstacle.solid}
        onCommit={(solid) => change('move an obstacle', { solid })}
        {...(obstacle.kind === 'strut' && obstacle.movesWith !== null ? { ends: STRUT_ENDS } : {})}
      />
    </div>
  );
};

/** What stands in the cargo space: latch, striker, struts, tie-downs, the seat back. */
export const Obstacles = () => {
  const add = useAdd();
  const { obstacles, closures } = useEditorParts((editor) => ({
    obstacles: editor.history.design.survey.obstacles,
    closures: editor.history.design.survey.closures,
  }));
  const about = (obstacle: Obstacle): string => {
    const carrier = closures.find((closure) => closure.id === obstacle.movesWith);
    const moves = carrier ? `, moves with ${carrier.name}` : '';
    return `${words(obstacle.kind)}, ${SOLID_WORDS[obstacle.solid.shape]}${moves}`;
  };
  return (
    <>
      <p className={styles.soft}>
        Whatever stands inside the sections: latch, striker, struts, tie-downs, the seat back at its rake. It is taken
        away from the free space.
      </p>
      <ul className={styles.group}>
        {obstacles.map((obstacle) => (
          <ItemCard key={obstacle.id} list="obstacles" id={obstacle.id} name={obstacle.name} about={about(obstacle)}>
            <ObstacleFields obstacle={obstacle} />
          </ItemCard>
        ))}
      </ul>
      <div className={styles.bar}>
        {SOLID_STARTS.map(({ label, solid }) => (
          <Button
            key={label}
            onClick={() =>
              add('add an obstacle', (design) =>
                addSurveyItem(design, 'obstacles', { name: 'obstacle', kind: 'other', solid, movesWith: null }),
              )
            }
          >
            Add {label}
          </Button>
        ))}
      </div>
    </>
  );
};

import { addSurveyItem, changeSurveyItem, type Zone } from '../../../../design/index.ts';
import { Button, ChoiceField, TextField } from '../../parts/index.ts';
import { useAdd } from '../../state/use-add.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import styles from '../sheet.module.css';
import { ItemCard } from './item-card.tsx';
import { SOLID_STARTS, SolidFields } from './solid-fields.tsx';

const RULE_WORDS: Readonly<Record<Zone['rule'], string>> = {
  'nothing-stands': 'nothing stands here',
  'no-hole': 'no hole here',
  'sight-line': 'stay out of the sight line',
  'seat-travel': 'the seat travels here',
};
const RULES = Object.keys(RULE_WORDS) as readonly Zone['rule'][];

const ZoneFields = ({ zone }: { readonly zone: Zone }) => {
  const edit = useEditor((editor) => editor.edit);
  const change = (label: string, part: Partial<Omit<Zone, 'id'>>): void =>
    edit(label, (design) => changeSurveyItem(design, 'zones', zone.id, part));
  return (
    <div className={styles.group}>
      <div className={styles.fields}>
        <TextField label="Name" value={zone.name} onCommit={(name) => change('name a zone', { name })} />
        <ChoiceField
          label="Rule"
          value={zone.rule}
          choices={RULES.map((rule) => ({ value: rule, label: RULE_WORDS[rule] }))}
          onCommit={(rule) => change('change the rule of a zone', { rule })}
        />
      </div>
      <SolidFields solid={zone.solid} onCommit={(solid) => change('move a zone', { solid })} />
    </div>
  );
};

/** Regions with a rule: airbag curtains, tank and lines, the driver's sight line, the seat's travel. */
export const Zones = () => {
  const add = useAdd();
  const { zones } = useEditorParts((editor) => ({
    zones: editor.history.design.survey.zones,
  }));
  return (
    <>
      <p className={styles.soft}>
        Where something must not be. Take airbag and drilling zones from the vehicle maker's body-builder guidance, not
        from a guess.
      </p>
      <ul className={styles.group}>
        {zones.map((zone) => (
          <ItemCard key={zone.id} list="zones" id={zone.id} name={zone.name} about={RULE_WORDS[zone.rule]}>
            <ZoneFields zone={zone} />
          </ItemCard>
        ))}
      </ul>
      <div className={styles.bar}>
        {SOLID_STARTS.map(({ label, solid }) => (
          <Button
            key={label}
            onClick={() =>
              add('add a zone', (design) =>
                addSurveyItem(design, 'zones', { name: 'zone', rule: 'nothing-stands', solid }),
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

import { addSurveyItem, changeSurveyItem, type Zone } from '../../../../design/index.ts';
import { Button, ChoiceField, TextField } from '../../parts/index.ts';
import { useAdd } from '../../state/use-add.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import styles from '../sheet.module.css';
import { ItemCard } from './item-card.tsx';
import { OutlineFields, SOLID_STARTS, SolidFields } from './solid-fields.tsx';
import { type ZoneStart, zoneStarts } from './zone-starts.ts';

const RULE_WORDS: Readonly<Record<Zone['rule'], string>> = {
  'nothing-stands': 'nothing stands here',
  'no-hole': 'no hole here',
  'sight-line': 'stay out of the sight line',
  'seat-travel': 'the seat travels here',
};
const RULES = Object.keys(RULE_WORDS) as readonly Zone['rule'][];

/** The ground of a zone's solid, to begin an outline with. */
const groundOf = ({ solid }: Zone): NonNullable<Zone['outlineFromAbove']> => {
  const [low, high] =
    solid.shape === 'box'
      ? [solid.min, solid.max]
      : solid.shape === 'capsule'
        ? [solid.from, solid.to]
        : [
            [Math.min(...solid.outline.map(([x]) => x)), Math.min(solid.fromY, solid.toY)] as const,
            [Math.max(...solid.outline.map(([x]) => x)), Math.max(solid.fromY, solid.toY)] as const,
          ];
  return [
    [low[0], low[1]],
    [high[0], low[1]],
    [high[0], high[1]],
    [low[0], high[1]],
  ];
};

/** The outline that a zone may have instead of the ground of its solid. */
const FromAbove = ({ zone }: { readonly zone: Zone }) => {
  const edit = useEditor((editor) => editor.edit);
  const set = (label: string, outline: Zone['outlineFromAbove']): void =>
    edit(label, (design) => {
      const { outlineFromAbove: _, ...plain } = zone;
      const next: Zone = outline ? { ...plain, outlineFromAbove: outline } : plain;
      const zones = design.survey.zones.map((one) => (one.id === zone.id ? next : one));
      return { ...design, survey: { ...design.survey, zones } };
    });
  const { outlineFromAbove } = zone;
  return outlineFromAbove ? (
    <>
      <OutlineFields
        label="Outline from above"
        axes={['forward', 'left']}
        points={outlineFromAbove}
        least={3}
        onCommit={(points) =>
          set(
            'change the outline of a zone',
            points.map(([x, y]) => [x, y] as const),
          )
        }
      />
      <div className={styles.bar}>
        <span className={styles.soft}>It stands between the heights below; their ground does not count.</span>
        <Button small onClick={() => set('drop the outline of a zone', undefined)}>
          Drop the outline
        </Button>
      </div>
    </>
  ) : (
    <div className={styles.bar}>
      <Button small onClick={() => set('outline a zone from above', groundOf(zone))}>
        Outline it from above
      </Button>
      <span className={styles.soft}>for a tank, a line or a harness that is no rectangle</span>
    </div>
  );
};

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
      <FromAbove zone={zone} />
      <SolidFields solid={zone.solid} onCommit={(solid) => change('move a zone', { solid })} />
    </div>
  );
};

const AddZones = ({ starts }: { readonly starts: readonly ZoneStart[] }) => {
  const add = useAdd();
  return (
    <div className={styles.bar}>
      {starts.map(({ label, zone }) => (
        <Button key={label} onClick={() => add('add a zone', (design) => addSurveyItem(design, 'zones', zone))}>
          Add {label}
        </Button>
      ))}
    </div>
  );
};

/** Regions with a rule: airbag curtains, tank and lines, the driver's sight line, the seat's travel. */
export const Zones = () => {
  const { survey } = useEditorParts((editor) => ({ survey: editor.history.design.survey }));
  return (
    <>
      <p className={styles.soft}>
        Where something must not be. Take airbag and drilling zones from the vehicle maker's body-builder guidance, not
        from a guess.
      </p>
      <ul className={styles.group}>
        {survey.zones.map((zone) => (
          <ItemCard
            key={zone.id}
            list="zones"
            id={zone.id}
            name={zone.name}
            about={`${RULE_WORDS[zone.rule]}${zone.outlineFromAbove ? `, outline of ${zone.outlineFromAbove.length} corners` : ''}`}
          >
            <ZoneFields zone={zone} />
          </ItemCard>
        ))}
      </ul>
      <AddZones starts={zoneStarts(survey)} />
      <p className={styles.soft}>What is added stands where it usually is in this vehicle; set its true line.</p>
      <AddZones
        starts={SOLID_STARTS.map(({ label, solid }) => ({
          label,
          zone: { name: 'zone', rule: 'nothing-stands', solid },
        }))}
      />
    </>
  );
};

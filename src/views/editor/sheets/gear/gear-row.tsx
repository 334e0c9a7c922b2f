import { houseRules } from '../../../../catalog/index.ts';
import { changeGear, type Gear, placeGear } from '../../../../design/index.ts';
import { CheckField, Chip, ChoiceField, Length, Mass, Row, tableStyles } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './gear.module.css';
import { placeIn, placeKey, roomOf, type StowChoice } from './stow.ts';

interface GearRowProps {
  readonly gear: Gear;
  readonly choices: readonly StowChoice[];
}

const needWords = (need: string): string => need.replace(/-/g, ' ');

/** One piece of gear in the list. */
export const GearRow = ({ gear, choices }: GearRowProps) => {
  const units = useUnits();
  const { selected, hovered, select, setHover, edit, fitOut, changes } = useEditorParts((editor) => ({
    selected: editor.selection.includes(gear.id),
    hovered: editor.hover === gear.id,
    select: editor.select,
    setHover: editor.setHover,
    edit: editor.edit,
    fitOut: editor.fitOut,
    changes: editor.history.design.houseRules,
  }));
  const { catalog } = useBench();
  const stow = (key: string): void => {
    const room = roomOf(fitOut, key);
    const gapMm = houseRules(catalog, changes).value('gap-gear');
    edit(room ? `stow ${gear.name}` : `take ${gear.name} out`, (design) =>
      placeGear(design, gear.id, room ? placeIn(design, room, gear, gapMm) : null),
    );
  };
  const key = placeKey(gear.place);
  const known = choices.some((choice) => choice.key === key);
  return (
    <Row
      selected={selected}
      hovered={hovered}
      onSelect={(add) => select([gear.id], add ? 'add' : 'replace')}
      onHover={(over) => setHover(over ? gear.id : null)}
    >
      <th scope="row">
        <button
          type="button"
          className={styles.pick}
          aria-expanded={selected}
          onClick={() => select(selected ? [] : [gear.id])}
        >
          {gear.name}
        </button>
        <span className={styles.needs}>
          {gear.needs.map((need) => (
            <Chip key={need}>{needWords(need)}</Chip>
          ))}
        </span>
      </th>
      <td className={styles.size}>
        {gear.sizeMm.map((side, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: length, width and height by their place
          <span key={i}>
            {i === 0 ? '' : ' × '}
            <Length mm={side} units={units} />
          </span>
        ))}
      </td>
      <td className={tableStyles.number}>
        <Mass kg={gear.massKg} units={units} />
      </td>
      <td>
        <CheckField
          label=""
          name={`${gear.name} is first due`}
          checked={gear.firstDue}
          onCommit={(firstDue) =>
            edit('change what is first due', (design) => changeGear(design, gear.id, { firstDue }))
          }
        />
      </td>
      <td className={styles.stowed}>
        <ChoiceField
          bare
          label={`Where ${gear.name} is stowed`}
          value={key}
          choices={[
            { value: '', label: 'no place yet' },
            ...(known || key === '' ? [] : [{ value: key, label: gear.place?.opening ?? key }]),
            ...choices.map((choice) => ({ value: choice.key, label: choice.label, group: choice.carcass })),
          ]}
          onCommit={stow}
        />
      </td>
    </Row>
  );
};

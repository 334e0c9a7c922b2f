import { Fragment, useMemo, useState } from 'react';
import { addGear, type Gear } from '../../../../design/index.ts';
import { Button, Heading, Mass, Table } from '../../parts/index.ts';
import { useAdd } from '../../state/use-add.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';
import { CatalogueDialog } from './catalogue-dialog.tsx';
import gearStyles from './gear.module.css';
import { GearDetail } from './gear-detail.tsx';
import { GearRow } from './gear-row.tsx';
import { PasteDialog } from './paste-dialog.tsx';
import { stowChoices } from './stow.ts';

const COLUMNS = ['gear', 'size', 'mass', 'first due', 'stowed in'] as const;

const OWN_GEAR: Omit<Gear, 'id'> = {
  name: 'new piece',
  kind: null,
  sizeMm: [300, 200, 200],
  massKg: 2,
  massFrom: 'estimated',
  massSigmaKg: 0.5,
  needs: [],
  firstDue: false,
  user: '',
  note: '',
  place: null,
};

const total = (gear: readonly Gear[]): number => gear.reduce((sum, item) => sum + item.massKg, 0);

interface GearGroup {
  readonly title: string;
  readonly gear: readonly Gear[];
}

/** Gear without a place comes first: that is the work left. */
const groupsOf = (gear: readonly Gear[]): readonly GearGroup[] =>
  [
    { title: 'Without a place', gear: gear.filter((item) => item.place === null) },
    { title: 'Stowed', gear: gear.filter((item) => item.place !== null) },
  ].filter((group) => group.gear.length > 0);

const Empty = () => (
  <div className={styles.first}>
    <h2>What goes aboard?</h2>
    <p>
      Ask the department for its list and paste the rows here, or take pieces from the catalogue and weigh them later.
      Every piece keeps its own size, mass and needs.
    </p>
  </div>
);

/** What the department stows: what, how big, how heavy, how it must be kept, and where. */
export const GearSheet = () => {
  const { gear, fitOut, selection } = useEditorParts((editor) => ({
    gear: editor.history.design.gear,
    fitOut: editor.fitOut,
    selection: editor.selection,
  }));
  const units = useUnits();
  const add = useAdd();
  const { nameOf } = useNames();
  const [dialog, setDialog] = useState<'paste' | 'catalogue' | null>(null);
  const choices = useMemo(() => stowChoices(fitOut, nameOf), [fitOut, nameOf]);
  const addOwn = (): void => {
    add('add a piece of gear', (design) => {
      const added = addGear(design, [OWN_GEAR]);
      return { design: added.design, id: added.ids[0] ?? '' };
    });
  };
  return (
    <div className={styles.sheet}>
      <Heading
        title="Gear"
        aside={
          gear.length === 0 ? null : (
            <>
              {gear.length} pieces, <Mass kg={total(gear)} units={units} />
            </>
          )
        }
      />
      <div className={`${styles.bar} no-print`}>
        <Button onClick={() => setDialog('paste')}>Paste a list…</Button>
        <Button onClick={() => setDialog('catalogue')}>From the catalogue…</Button>
        <Button onClick={addOwn}>Add a piece</Button>
        <span className={styles.push}>
          <Button onClick={() => window.print()}>Print</Button>
        </span>
      </div>
      {gear.length === 0 ? <Empty /> : null}
      {gear.length > 0 ? (
        <Table label="Gear">
          <thead>
            <tr>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          {groupsOf(gear).map((group) => (
            <tbody key={group.title}>
              <tr className={gearStyles.heading}>
                <th colSpan={COLUMNS.length} scope="rowgroup">
                  {group.title}: {group.gear.length}, <Mass kg={total(group.gear)} units={units} />
                </th>
              </tr>
              {group.gear.map((item) => (
                <Fragment key={item.id}>
                  <GearRow gear={item} choices={choices} />
                  {selection.at(-1) === item.id ? (
                    <tr>
                      <td colSpan={COLUMNS.length}>
                        <GearDetail gear={item} />
                      </td>
                    </tr>
                  ) : null}
                </Fragment>
              ))}
            </tbody>
          ))}
        </Table>
      ) : null}
      {dialog === 'paste' ? <PasteDialog onClose={() => setDialog(null)} /> : null}
      {dialog === 'catalogue' ? <CatalogueDialog onClose={() => setDialog(null)} /> : null}
    </div>
  );
};

import { useId, useMemo, useState } from 'react';
import { GEAR_GROUPS, type GearKind } from '../../../../catalog/index.ts';
import { addGear, gearOfKind } from '../../../../design/index.ts';
import { Button, Dialog, Heading, Length, Mass } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import styles from './gear.module.css';

const matches = (kind: GearKind, wanted: string): boolean => {
  const text = `${kind.name} ${kind.group} ${kind.needs.join(' ')}`.toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
};

const Kind = ({ kind }: { readonly kind: GearKind }) => {
  const units = useUnits();
  const { edit, aboard } = useEditorParts((editor) => ({
    edit: editor.edit,
    aboard: editor.history.design.gear.filter((gear) => gear.kind === kind.id).length,
  }));
  return (
    <li>
      <span>
        {kind.name}
        {aboard > 0 ? <span className={sheet.soft}> · {aboard} on the list</span> : null}
      </span>
      <span className={styles.size}>
        <Length mm={kind.sizeMm[0]} units={units} /> × <Length mm={kind.sizeMm[1]} units={units} /> ×{' '}
        <Length mm={kind.sizeMm[2]} units={units} />
      </span>
      <Mass kg={kind.massKg} units={units} />
      <Button
        small
        aria-label={`Add ${kind.name}`}
        onClick={() => edit(`add ${kind.name}`, (design) => addGear(design, [gearOfKind(design, kind)]).design)}
      >
        Add
      </Button>
    </li>
  );
};

/** Generic gear by group, found by a few letters of its name. */
export const CatalogueDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const id = useId();
  const { catalog } = useBench();
  const [wanted, setWanted] = useState('');
  const found = useMemo(() => [...catalog.gear.values()].filter((kind) => matches(kind, wanted)), [catalog, wanted]);
  return (
    <Dialog title="Gear from the catalogue" wide onClose={onClose} foot={<Button onClick={onClose}>Done</Button>}>
      <p className={sheet.soft}>
        Sizes and masses are typical of the class. Put the department's own pieces on the scale before the design is
        cut.
      </p>
      <div>
        <label htmlFor={id} className={sheet.small}>
          Find gear
        </label>
        <input
          id={id}
          type="search"
          className={styles.search}
          value={wanted}
          placeholder="extinguisher, rope, charged…"
          onChange={(event) => setWanted(event.target.value)}
        />
      </div>
      {GEAR_GROUPS.map((group) => {
        const kinds = found.filter((kind) => kind.group === group);
        return kinds.length === 0 ? null : (
          <section key={group} className={sheet.group}>
            <Heading level={3} title={group} />
            <ul className={styles.kinds}>
              {kinds.map((kind) => (
                <Kind key={kind.id} kind={kind} />
              ))}
            </ul>
          </section>
        );
      })}
      {found.length === 0 ? <p>Nothing of that name. Close this and add a piece of your own.</p> : null}
    </Dialog>
  );
};

import { formatLength, formatMass } from '../../../../../base/index.ts';
import { type Gear, placeGear } from '../../../../../design/index.ts';
import { Button, Heading } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { ActionBar } from '../actions/action-bar.tsx';
import { carcassWords, openingWords, whereabouts } from '../names.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './settings.module.css';

const GearHead = ({ gear }: { readonly gear: Gear }) => {
  const { editor, chosen } = useCabinet();
  const units = useUnits();
  const size = gear.sizeMm.map((mm) => formatLength(mm, units)).join(' × ');
  const where = chosen.opening ? `, in ${openingWords(chosen.opening)}` : '';
  const takeOut = (): void => editor.getState().edit(`take ${gear.name} out`, (now) => placeGear(now, gear.id, null));
  return (
    <Heading
      title={gear.name}
      aside={`${size} ${units}, ${formatMass(gear.massKg, units)}${gear.firstDue ? ', first due' : ''}${where}`}
      actions={gear.place ? <Button onClick={takeOut}>Take out</Button> : null}
    />
  );
};

/** What is selected, and what can be done to it. */
export const ChosenHead = () => {
  const { design, chosen } = useCabinet();
  const { gear, opening, carcass } = chosen;
  if (gear) return <GearHead gear={gear} />;
  if (opening)
    return (
      <div className={styles.head}>
        <Heading title={openingWords(opening)} aside={whereabouts(design, opening.id)} />
        <ActionBar opening={opening} />
      </div>
    );
  if (!carcass) return null;
  return (
    <div className={styles.head}>
      <Heading title={carcassWords(carcass)} aside="the whole carcass; click an opening to work on it" />
      {carcass.opening.content.kind === 'empty' ? <ActionBar opening={carcass.opening} /> : null}
    </div>
  );
};

import type { KeyboardEvent } from 'react';
import { useStore } from 'zustand';
import { formatMass } from '../../../../../base/index.ts';
import type { Gear } from '../../../../../design/index.ts';
import { Figure } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { openingWords } from '../names.ts';
import { useCabinet, useGearDrag } from '../use-cabinet.ts';
import { DROP_ATTRIBUTE } from './gear-drag.ts';
import styles from './unplaced.module.css';
import { TO_LIST, useCarryGear, useStow } from './use-carry-gear.ts';

const GearChip = ({ gear }: { readonly gear: Gear }) => {
  const { editor, chosen, selection } = useCabinet();
  const units = useUnits();
  const stow = useStow();
  const carry = useCarryGear(gear);
  const into = chosen.opening;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' || !into || chosen.gear) return;
    event.preventDefault();
    stow(gear, into.id);
  };
  return (
    <button
      type="button"
      className={styles.chip}
      data-selected={selection.includes(gear.id)}
      data-first-due={gear.firstDue}
      title={
        into ? `Drag into an opening, or press Enter to put it into ${openingWords(into)}` : 'Drag into an opening'
      }
      {...carry}
      onClick={() => editor.getState().select([gear.id])}
      onKeyDown={onKeyDown}
    >
      <span>{gear.name}</span>
      <Figure>{formatMass(gear.massKg, units)}</Figure>
    </button>
  );
};

/** Gear that stands nowhere yet: drag it into an opening. Gear that is dragged here is taken out. */
export const UnplacedGear = () => {
  const { design } = useCabinet();
  const over = useStore(useGearDrag(), (state) => state.carried?.over === TO_LIST);
  const waiting = design.gear.filter((gear) => gear.place === null);
  if (design.gear.length === 0) return null;
  return (
    <section className={styles.unplaced} data-over={over} {...{ [DROP_ATTRIBUTE]: TO_LIST }}>
      <div className={styles.list}>
        <h3>{waiting.length === 0 ? 'All gear has its place.' : `Without a place: ${waiting.length}`}</h3>
        {waiting.map((gear) => (
          <GearChip key={gear.id} gear={gear} />
        ))}
      </div>
    </section>
  );
};

/** The piece that is in the hand, under the pointer. */
export const CarriedGear = () => {
  const { design } = useCabinet();
  const carried = useStore(useGearDrag(), (state) => state.carried);
  const gear = carried && design.gear.find((item) => item.id === carried.gear);
  if (!carried || !gear) return null;
  return (
    <div className={styles.carried} style={{ transform: `translate(${carried.x}px, ${carried.y}px)` }}>
      {gear.name}
    </div>
  );
};

import { useId, useState } from 'react';
import { degrees } from '../../../../base/index.ts';
import type { Mover } from '../../../../fitout/index.ts';
import { feltGap } from '../../bay/marks/felt-gap.ts';
import { shownShares } from '../../bay/motion/all-movers.ts';
import { quantityText, ToggleChip } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from './mover-scrub.module.css';
import { useRange } from './use-range.ts';

/** Steps of the slider over the whole travel. */
const STEPS = 200;

const wholeOf = ({ motion }: Mover): { readonly whole: number; readonly unit: 'mm' | 'deg' } =>
  motion.kind === 'slide'
    ? { whole: motion.travel, unit: 'mm' }
    : { whole: Math.abs(degrees(motion.travelRad)), unit: 'deg' };

/** A mover on its travel by hand: it stops where it would hit, and says on what; its least gap shows in the bay. */
export const MoverScrub = ({ mover, name }: { readonly mover: Mover; readonly name: string }) => {
  const id = useId();
  const units = useUnits();
  const rangeOf = useRange(mover);
  const [stop, setStop] = useState<string | null>(null);
  const { share, gap, felt, setShare, setFelt } = useEditorParts((editor) => ({
    share: shownShares(editor.shares, editor.judgement?.space.ok ? editor.judgement.space.value : null)[mover.id] ?? 0,
    gap: editor.judgement ? feltGap(editor.judgement.inspection.measured, mover) : null,
    felt: editor.felt === mover.id,
    setShare: editor.setShare,
    setFelt: editor.setFelt,
  }));
  const { whole, unit } = wholeOf(mover);
  const out = quantityText(share * whole, unit, units);
  const all = quantityText(whole, unit, units);
  const move = (asked: number): void => {
    const { low, high, lowStop, highStop } = rangeOf();
    setStop(asked > high ? highStop : asked < low ? lowStop : null);
    setShare(mover.id, Math.min(high, Math.max(low, asked)));
    setFelt(mover.id);
  };
  return (
    <div className={styles.row}>
      <label htmlFor={id}>{name}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={STEPS}
        step={1}
        value={Math.round(share * STEPS)}
        aria-valuetext={share <= 0 ? 'stowed' : `${out} of ${all} out`}
        onChange={(event) => move(Number(event.target.value) / STEPS)}
      />
      <output htmlFor={id}>{share <= 0 ? 'stowed' : `${out} of ${all}`}</output>
      <p className={styles.said} role="status">
        {stop === null ? '' : `Stops here, on ${stop}.`}
      </p>
      {gap ? (
        <ToggleChip
          pressed={felt}
          onClick={() => setFelt(felt ? null : mover.id)}
          title="The nearest it comes to anything on its whole travel, drawn in the bay"
        >
          {gap.value < 0 ? 'meets' : `least gap ${quantityText(gap.value, gap.unit, units)}`}
        </ToggleChip>
      ) : null}
    </div>
  );
};

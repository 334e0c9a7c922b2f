import { Segment } from '../../parts/index.ts';
import { CUT_SIDES, type CutAway } from '../cut-away.ts';
import styles from './chips.module.css';

interface CutAwayBarProps {
  readonly cut: CutAway;
  readonly onCut: (cut: CutAway | null) => void;
}

const CHOICES = CUT_SIDES.map((side) => ({ value: side, label: side }));

/** Which side is opened, and how far. */
export const CutAwayBar = ({ cut, onCut }: CutAwayBarProps) => (
  <div className={styles.cut}>
    <Segment
      label="Side that is cut away"
      value={cut.side}
      choices={CHOICES}
      onCommit={(side) => onCut({ ...cut, side })}
    />
    <input
      type="range"
      min={0}
      max={100}
      step={1}
      value={Math.round(cut.share * 100)}
      aria-label="How far it is cut away"
      onChange={(event) => onCut({ ...cut, share: Number(event.target.value) / 100 })}
    />
  </div>
);

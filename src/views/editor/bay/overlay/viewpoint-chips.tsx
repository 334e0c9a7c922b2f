import { ToggleChip } from '../../parts/index.ts';
import { VIEWPOINTS, type Viewpoint } from '../../state/store.ts';
import type { CutAway } from '../cut-away.ts';
import styles from './chips.module.css';
import { CutAwayBar } from './cut-away-bar.tsx';

const NAMES: Readonly<Record<Viewpoint, string>> = {
  hatch: 'at the hatch',
  above: 'from above',
  left: 'left',
  right: 'right',
  seat: 'rear seat',
};

interface ViewpointChipsProps {
  /** Where the eye stands, or null once it has walked off. */
  readonly viewpoint: Viewpoint | null;
  readonly onChoose: (viewpoint: Viewpoint) => void;
  readonly cut: CutAway | null;
  readonly onCut: (cut: CutAway | null) => void;
}

/** Named places to stand, and the knife that opens a side. */
export const ViewpointChips = ({ viewpoint, onChoose, cut, onCut }: ViewpointChipsProps) => (
  <div className={styles.chips}>
    <div className={styles.row} role="toolbar" aria-label="Where you stand">
      {VIEWPOINTS.map((name) => (
        <ToggleChip key={name} pressed={viewpoint === name} onClick={() => onChoose(name)}>
          {NAMES[name]}
        </ToggleChip>
      ))}
      <ToggleChip pressed={cut !== null} onClick={() => onCut(cut ? null : { side: 'left', share: 0.35 })}>
        cut away
      </ToggleChip>
    </div>
    {cut ? <CutAwayBar cut={cut} onCut={onCut} /> : null}
  </div>
);

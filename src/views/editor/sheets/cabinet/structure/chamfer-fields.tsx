import { CHAMFER_EDGES, type Chamfer, type ChamferEdge, chamferAt } from '../../../../../design/index.ts';
import { ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from '../settings/settings.module.css';
import { EDGE_WORDS } from './structure-words.ts';

const EDGES = CHAMFER_EDGES.map((value) => ({ value, label: EDGE_WORDS[value] }));

interface ChamferFieldsProps {
  readonly chamfer: Chamfer;
  readonly onChange: (chamfer: Chamfer) => void;
}

interface Leg {
  readonly label: string;
  readonly mm: number;
  readonly to: (mm: number) => Chamfer;
}

/** The two legs of a chamfer, each on the side that it is taken from. */
const legsOf = (chamfer: Chamfer): readonly Leg[] => {
  const across = (own: Chamfer & { readonly acrossMm: number }): Leg => ({
    label: 'Off the width',
    mm: own.acrossMm,
    to: (acrossMm) => ({ ...own, acrossMm }),
  });
  const up = (own: Chamfer & { readonly upMm: number }): Leg => ({
    label: 'Off the height',
    mm: own.upMm,
    to: (upMm) => ({ ...own, upMm }),
  });
  const deep = (own: Chamfer & { readonly deepMm: number }): Leg => ({
    label: 'Off the depth',
    mm: own.deepMm,
    to: (deepMm) => ({ ...own, deepMm }),
  });
  switch (chamfer.along) {
    case 'deep':
      return [across(chamfer), up(chamfer)];
    case 'up':
      return [across(chamfer), deep(chamfer)];
    case 'across':
      return [up(chamfer), deep(chamfer)];
  }
};

/** Which edge of a carcass is cut off and how much. */
export const ChamferFields = ({ chamfer, onChange }: ChamferFieldsProps) => {
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <ChoiceField<ChamferEdge>
        label="Which edge"
        value={chamfer.corner}
        choices={EDGES}
        onCommit={(edge) => onChange(chamferAt(chamfer, edge))}
      />
      {legsOf(chamfer).map(({ label, mm, to }) => (
        <LengthField
          key={label}
          label={label}
          valueMm={mm}
          units={units}
          min={1}
          onCommit={(next) => onChange(to(next))}
        />
      ))}
    </div>
  );
};

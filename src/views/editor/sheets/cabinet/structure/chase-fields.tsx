import { CHASE_PANELS, type Chase } from '../../../../../design/index.ts';
import { HardwareField } from '../../../fittings/index.ts';
import { ChoiceField, LengthField, TextField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import styles from '../settings/settings.module.css';
import { PANEL_WORDS } from './structure-words.ts';

const PANELS = CHASE_PANELS.map((value) => ({ value, label: PANEL_WORDS[value] }));

/** Where the middle of a chase is measured from on each panel: along it, and across it. */
const FROM: Readonly<Record<Chase['panel'], readonly [along: string, across: string]>> = {
  left: ['Middle, from the face', 'Middle, from the bottom'],
  right: ['Middle, from the face', 'Middle, from the bottom'],
  top: ['Middle, from the left', 'Middle, from the face'],
  bottom: ['Middle, from the left', 'Middle, from the face'],
  back: ['Middle, from the left', 'Middle, from the bottom'],
};

interface ChaseFieldsProps {
  readonly chase: Chase;
  readonly onChange: (chase: Chase) => void;
}

/** Where an opening for wiring goes through a carcass, how large it is, and what covers its edge. */
export const ChaseFields = ({ chase, onChange }: ChaseFieldsProps) => {
  const units = useUnits();
  const [along, across] = FROM[chase.panel];
  const [long, wide] = chase.sizeMm;
  const lengths = [
    { label: along, mm: chase.alongMm, least: 0, to: (alongMm: number): Chase => ({ ...chase, alongMm }) },
    { label: across, mm: chase.acrossMm, least: 0, to: (acrossMm: number): Chase => ({ ...chase, acrossMm }) },
    { label: 'Long', mm: long, least: 1, to: (mm: number): Chase => ({ ...chase, sizeMm: [mm, wide] }) },
    { label: 'Wide', mm: wide, least: 1, to: (mm: number): Chase => ({ ...chase, sizeMm: [long, mm] }) },
    {
      label: 'Corner radius',
      mm: chase.cornerRadiusMm,
      least: 0,
      to: (cornerRadiusMm: number): Chase => ({ ...chase, cornerRadiusMm }),
    },
  ];
  return (
    <div className={styles.fields}>
      <TextField label="What it is for" value={chase.name} onCommit={(name) => onChange({ ...chase, name })} />
      <ChoiceField
        label="Through the"
        value={chase.panel}
        choices={PANELS}
        onCommit={(panel) => onChange({ ...chase, panel })}
      />
      {lengths.map(({ label, mm, least, to }) => (
        <LengthField
          key={label}
          label={label}
          valueMm={mm}
          units={units}
          min={least}
          onCommit={(next) => onChange(to(next))}
        />
      ))}
      <HardwareField
        label="Round its edge"
        value={chase.edgeTrim}
        kinds={['trim']}
        none="bare edge"
        onChange={(edgeTrim) => onChange({ ...chase, edgeTrim })}
      />
    </div>
  );
};

import type { Hardware } from '../../../catalog/index.ts';
import { ChoiceField } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { choiceOrNull, hardwareChoices, materialChoices, NO_CHOICE } from './choices.ts';

interface MaterialFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (material: string) => void;
}

/** A sheet of the catalog by its name. */
export const MaterialField = ({ label, value, onChange }: MaterialFieldProps) => {
  const { catalog } = useBench();
  return <ChoiceField label={label} value={value} choices={materialChoices(catalog, value)} onCommit={onChange} />;
};

interface HardwareFieldProps {
  readonly label: string;
  readonly value: string | null;
  readonly kinds: readonly Hardware['kind'][];
  readonly none: string;
  readonly onChange: (item: string | null) => void;
}

/** A piece of hardware of the catalog by its name, or none. */
export const HardwareField = ({ label, value, kinds, none, onChange }: HardwareFieldProps) => {
  const { catalog } = useBench();
  return (
    <ChoiceField
      label={label}
      value={value ?? NO_CHOICE}
      choices={hardwareChoices(catalog, kinds, value, none)}
      onCommit={(chosen) => onChange(choiceOrNull(chosen))}
    />
  );
};

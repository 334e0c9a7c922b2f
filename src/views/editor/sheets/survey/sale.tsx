import { changeVehicle, type Vehicle } from '../../../../design/index.ts';
import { ChoiceField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import styles from '../sheet.module.css';

const UNSAID = '';

const SALES: readonly { readonly value: string; readonly label: string }[] = [
  { value: UNSAID, label: 'nobody has said yet' },
  { value: 'new-untitled', label: 'new and not yet titled' },
  { value: 'in-service', label: 'in service already' },
];
const REGIONS: readonly { readonly value: string; readonly label: string }[] = [
  { value: UNSAID, label: 'nobody has said yet' },
  { value: 'us', label: 'United States' },
  { value: 'eu', label: 'European Union' },
  { value: 'other', label: 'elsewhere' },
];

/** Asked once: which rules on added mass hold for this vehicle. */
export const Sale = () => {
  const { vehicle, edit } = useEditorParts((editor) => ({ vehicle: editor.history.design.vehicle, edit: editor.edit }));
  const said = <K extends 'sale' | 'region'>(key: K, value: string): void =>
    edit('say which load rules hold', (now) =>
      changeVehicle(now, { [key]: value === UNSAID ? null : (value as Vehicle[K]) }),
    );
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="The vehicle is"
        value={vehicle.sale ?? UNSAID}
        choices={SALES}
        onCommit={(value) => said('sale', value)}
      />
      <ChoiceField
        label="Load rules of"
        value={vehicle.region ?? UNSAID}
        choices={REGIONS}
        onCommit={(value) => said('region', value)}
      />
    </div>
  );
};

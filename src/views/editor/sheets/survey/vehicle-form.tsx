import {
  changeDocument,
  changeSurvey,
  changeVehicle,
  VEHICLE_CLASSES,
  type Vehicle,
} from '../../../../design/index.ts';
import { CheckField, ChoiceField, Heading, LengthField, MassField, NumberField, TextField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';
import { Fuel } from './fuel.tsx';
import { Antennas, RearViewFields } from './rear-view.tsx';
import { Sale } from './sale.tsx';
import { Seats } from './seats.tsx';
import { Slip } from './slip.tsx';

const LENGTHS: readonly { readonly key: LengthKey; readonly label: string }[] = [
  { key: 'wheelbaseMm', label: 'Wheelbase' },
  { key: 'trackMm', label: 'Track' },
  { key: 'sillBehindRearAxleMm', label: 'Sill behind rear axle' },
  { key: 'floorAboveGroundMm', label: 'Floor above ground' },
  { key: 'cgHeightAsReceivedMm', label: 'Height of CG, as received' },
];
type LengthKey = 'wheelbaseMm' | 'trackMm' | 'sillBehindRearAxleMm' | 'floorAboveGroundMm' | 'cgHeightAsReceivedMm';

const RATINGS: readonly { readonly key: keyof Vehicle['ratings']; readonly label: string }[] = [
  { key: 'grossKg', label: 'Gross vehicle rating' },
  { key: 'frontAxleKg', label: 'Front axle rating' },
  { key: 'rearAxleKg', label: 'Rear axle rating' },
];

const Who = () => {
  const { design, edit } = useEditorParts((editor) => ({ design: editor.history.design, edit: editor.edit }));
  const { survey, vehicle } = design;
  return (
    <div className={styles.fields}>
      <TextField
        label="For"
        value={design.customer}
        placeholder="the department"
        onCommit={(customer) => edit('change the customer', (now) => changeDocument(now, { customer }))}
      />
      <ChoiceField
        label="Class"
        value={vehicle.class}
        choices={VEHICLE_CLASSES.map((value) => ({ value, label: value.replace(/-/g, ' ') }))}
        onCommit={(next) => edit('change the vehicle class', (now) => changeVehicle(now, { class: next }))}
      />
      <TextField
        label="Measured by"
        value={survey.measuredBy}
        onCommit={(measuredBy) => edit('say who measured', (now) => changeSurvey(now, { measuredBy }))}
      />
      <TextField
        label="Measured on"
        value={survey.measuredOn}
        placeholder="year-month-day"
        onCommit={(measuredOn) => edit('say when it was measured', (now) => changeSurvey(now, { measuredOn }))}
      />
      <NumberField
        label="Tape is good to, 1σ"
        value={survey.sigmaMm}
        unit="mm"
        min={0}
        step={0.5}
        onCommit={(sigmaMm) => edit('change how well the survey is known', (now) => changeSurvey(now, { sigmaMm }))}
      />
      <div className={styles.wide}>
        <TextField
          label="Description"
          value={vehicle.description}
          onCommit={(description) => edit('describe the vehicle', (now) => changeVehicle(now, { description }))}
        />
      </div>
      <div className={styles.wide}>
        <TextField
          label="Notes of the survey"
          value={survey.notes}
          placeholder="what the next person should know"
          onCommit={(notes) => edit('note on the survey', (now) => changeSurvey(now, { notes }))}
        />
      </div>
      <div className={styles.wide}>
        <CheckField
          label="These are start values of a class, not measured: never cut from them"
          checked={survey.startValues}
          onCommit={(startValues) => edit('say whether it was measured', (now) => changeSurvey(now, { startValues }))}
        />
      </div>
    </div>
  );
};

/** What the label in the door, the tape and the scales say of the vehicle. */
export const VehicleForm = () => {
  const { vehicle, edit } = useEditorParts((editor) => ({ vehicle: editor.history.design.vehicle, edit: editor.edit }));
  const units = useUnits();
  const change = (label: string, part: Partial<Vehicle>): void => edit(label, (now) => changeVehicle(now, part));
  return (
    <>
      <Who />
      <Sale />
      <Heading level={3} title="Ratings" aside="from the label in the door opening" />
      <div className={styles.fields}>
        {RATINGS.map(({ key, label }) => (
          <MassField
            key={key}
            label={label}
            valueKg={vehicle.ratings[key]}
            units={units}
            decimals={0}
            onCommit={(kg) => change('change a rating', { ratings: { ...vehicle.ratings, [key]: kg } })}
            onClear={() => change('clear a rating', { ratings: { ...vehicle.ratings, [key]: null } })}
          />
        ))}
      </div>
      <Heading level={3} title="Where it stands" aside="empty where nobody has measured" />
      <div className={styles.fields}>
        {LENGTHS.map(({ key, label }) => (
          <LengthField
            key={key}
            label={label}
            valueMm={vehicle[key]}
            units={units}
            onCommit={(mm) => change('change a length of the vehicle', { [key]: mm })}
            onClear={() => change('clear a length of the vehicle', { [key]: null })}
          />
        ))}
        <LengthField
          label="Bumper behind sill"
          valueMm={vehicle.bumperBehindSillMm}
          units={units}
          min={0}
          onCommit={(bumperBehindSillMm) => change('change the bumper', { bumperBehindSillMm })}
        />
      </div>
      <Slip />
      <Fuel />
      <Seats />
      <RearViewFields />
      <Antennas />
    </>
  );
};

import { changeVehicle, type Vehicle } from '../../../../design/index.ts';
import { Button, Heading, NumberField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { PointFields } from './solid-fields.tsx';

type Fuel = NonNullable<Vehicle['fuel']>;

/** A tank of ordinary size under the floor, with petrol; to be set by the handbook. */
const START: Fuel = { tankLitres: 90, atSlipShare: 0.5, kgPerLitre: 0.745, at: [1200, 0, -150] };

const PER_CENT = 100;

/** The tank, and how full it was on the scale: loading cases with a full tank reckon from there. */
export const Fuel = () => {
  const { fuel, edit } = useEditorParts((editor) => ({
    fuel: editor.history.design.vehicle.fuel,
    edit: editor.edit,
  }));
  const set = (label: string, next: Fuel | null): void => edit(label, (now) => changeVehicle(now, { fuel: next }));
  if (!fuel)
    return (
      <>
        <Heading level={3} title="Fuel" aside="how full the tank was on the scale" />
        <div className={sheet.bar}>
          <span className={sheet.soft}>Not known. The slip then counts with the fuel that was in it.</span>
          <Button onClick={() => set('enter the tank', START)}>Enter the tank</Button>
        </div>
      </>
    );
  const change = (part: Partial<Fuel>): void => set('change the tank', { ...fuel, ...part });
  return (
    <>
      <Heading
        level={3}
        title="Fuel"
        aside="how full the tank was on the scale"
        actions={
          <Button small onClick={() => set('forget the tank', null)}>
            Remove
          </Button>
        }
      />
      <div className={sheet.fields}>
        <NumberField
          label="Tank holds"
          value={fuel.tankLitres}
          unit="l"
          min={1}
          max={2000}
          decimals={0}
          onCommit={(tankLitres) => change({ tankLitres })}
        />
        <NumberField
          label="Full when weighed"
          value={fuel.atSlipShare * PER_CENT}
          unit="%"
          min={0}
          max={100}
          decimals={0}
          step={5}
          onCommit={(share) => change({ atSlipShare: share / PER_CENT })}
        />
        <NumberField
          label="A litre weighs"
          value={fuel.kgPerLitre}
          unit="kg"
          min={0.1}
          max={2}
          decimals={3}
          step={0.005}
          onCommit={(kgPerLitre) => change({ kgPerLitre })}
        />
        <PointFields label="Its middle" at={fuel.at} onCommit={(at) => change({ at })} />
      </div>
    </>
  );
};

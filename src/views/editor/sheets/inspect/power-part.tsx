import { useMemo } from 'react';
import { houseRules } from '../../../../catalog/index.ts';
import { changeVehicle, type Vehicle } from '../../../../design/index.ts';
import { powerPlan } from '../../../../inspection/index.ts';
import { Heading, NumberField, Table, tableStyles } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';

const amps = (value: number): string => Number(value.toFixed(2)).toString();

const FIGURES: readonly { readonly key: keyof Vehicle['power']; readonly label: string; readonly unit: string }[] = [
  { key: 'batteryAh', label: 'Battery', unit: 'Ah' },
  { key: 'alternatorSpareA', label: 'Alternator, spare at idle', unit: 'A' },
  { key: 'feedLoopM', label: 'Feed, out and back', unit: 'm' },
];

/** Every device as a circuit: what it draws, its wire and fuse, and what the battery and alternator make of it. */
export const PowerPart = () => {
  const { catalog } = useBench();
  const { design, fitOut, edit } = useEditorParts((editor) => ({
    design: editor.history.design,
    fitOut: editor.fitOut,
    edit: editor.edit,
  }));
  const plan = useMemo(
    () => powerPlan({ design, fitout: fitOut, catalog, rules: houseRules(catalog, design.houseRules) }),
    [design, fitOut, catalog],
  );
  const { power } = design.vehicle;
  const change = (key: keyof Vehicle['power'], value: number | null): void =>
    edit('change a figure of the power', (now) =>
      changeVehicle(now, { power: { ...now.vehicle.power, [key]: value } }),
    );
  if (plan.circuits.length === 0) return null;
  return (
    <>
      <Heading
        level={3}
        title="Power"
        aside="each device with a fuse of its own; a licensed person answers for the wiring"
      />
      <div className={sheet.fields}>
        {FIGURES.map(({ key, label, unit }) => (
          <NumberField
            key={key}
            label={label}
            value={power[key]}
            unit={unit}
            min={0}
            onCommit={(value) => change(key, value)}
            onClear={() => change(key, null)}
          />
        ))}
      </div>
      <p>
        Standby {amps(plan.standbyA)} A
        {plan.parkedHours === null ? ', hours parked unknown' : `, ${plan.parkedHours.toFixed(1)} h parked`}; running{' '}
        {amps(plan.runA)} A, {amps(plan.meanA)} A on average with radios, {amps(plan.mostA)} A at most
        {plan.spareA === null ? '; alternator unknown' : `; ${amps(plan.spareA)} A to spare at idle`}.
      </p>
      <Table label="Circuits">
        <thead>
          <tr>
            <th scope="col">device</th>
            <th scope="col">standby A</th>
            <th scope="col">run A</th>
            <th scope="col">most A</th>
            <th scope="col">wire</th>
            <th scope="col">fuse A</th>
            <th scope="col">drop</th>
          </tr>
        </thead>
        <tbody>
          {plan.circuits.map((circuit) => (
            <tr key={circuit.device}>
              <th scope="row">{circuit.name}</th>
              <td className={tableStyles.number}>{amps(circuit.standbyA)}</td>
              <td className={tableStyles.number}>{amps(circuit.runA)}</td>
              <td className={tableStyles.number}>{amps(circuit.mostA)}</td>
              <td className={tableStyles.number}>
                {circuit.wire ? `${circuit.wire.areaMm2} mm² (${circuit.wire.gauge})` : 'none'}
              </td>
              <td className={tableStyles.number}>{circuit.fuseA ?? '–'}</td>
              <td className={tableStyles.number}>
                {circuit.dropShare === null ? '?' : `${(circuit.dropShare * 100).toFixed(1)} %`}
              </td>
            </tr>
          ))}
        </tbody>
      </Table>
    </>
  );
};

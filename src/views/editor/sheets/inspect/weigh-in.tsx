import { formatMass } from '../../../../base/index.ts';
import { type BuiltSlip, changeVehicle, setHouseRule } from '../../../../design/index.ts';
import { CASE_IDS, type WeighIn as Weighed } from '../../../../inspection/index.ts';
import { sayCase } from '../../../../says/index.ts';
import { Button, ChoiceField, Heading, MassField, Table, tableStyles } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';

const signed = (text: string, kg: number): string => `${kg < 0 ? '−' : '+'}${text}`;

const Told = ({ told }: { readonly told: Weighed }) => {
  const units = useUnits();
  const names = useNames();
  const { edit } = useEditorParts((editor) => ({ edit: editor.edit }));
  const more = (kg: number): string => signed(formatMass(Math.abs(kg), units), kg);
  const rows = [
    ['front', told.predicted.frontKg, told.weighed.frontKg],
    ['rear', told.predicted.rearKg, told.weighed.rearKg],
    ['all', told.predicted.totalKg, told.weighed.totalKg],
  ] as const;
  const { contingencyShare } = told;
  return (
    <>
      <Table label="Predicted and weighed">
        <thead>
          <tr>
            <th scope="col">axle</th>
            <th scope="col">predicted</th>
            <th scope="col">weighed</th>
            <th scope="col">difference</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([what, predicted, weighed]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td className={tableStyles.number}>{formatMass(predicted, units)}</td>
              <td className={tableStyles.number}>{formatMass(weighed, units)}</td>
              <td className={tableStyles.number}>{more(weighed - predicted)}</td>
            </tr>
          ))}
        </tbody>
      </Table>
      <p className={sheet.soft}>
        {(told.share * 100).toFixed(1)} % of what was to be added, {Math.abs(told.sigmas).toFixed(1)} standard
        deviations. Known worst, and what each would explain:{' '}
        {told.items.map(({ id, moreKg }) => `${names.nameOf(id.replace(/\/mass$/, ''))} ${more(moreKg)}`).join('; ')}.
      </p>
      {contingencyShare === null ? null : (
        <Button
          small
          onClick={() =>
            edit('take the contingency of the scale', (now) =>
              setHouseRule(now, {
                rule: 'contingency-share',
                value: Math.round(contingencyShare * 1000) / 1000,
                who: 'the scale',
                why: 'weighed after the build',
              }),
            )
          }
        >
          Take the contingency that the scale shows, {(contingencyShare * 100).toFixed(1)} %
        </Button>
      )}
    </>
  );
};

/** The slip after the build: entered, compared, and used by choice. */
export const WeighIn = ({ told }: { readonly told: Weighed | null }) => {
  const { vehicle, edit } = useEditorParts((editor) => ({ vehicle: editor.history.design.vehicle, edit: editor.edit }));
  const units = useUnits();
  const { built } = vehicle;
  const set = (label: string, next: BuiltSlip | null): void =>
    edit(label, (now) => changeVehicle(now, { built: next }));
  const choices = [
    ...CASE_IDS.map((id) => ({ value: id as string, label: sayCase(id) })),
    ...vehicle.ownCases.map(({ id, name }) => ({ value: id as string, label: name })),
  ];
  return (
    <>
      <Heading
        level={3}
        title="Weighed after the build"
        actions={
          built ? (
            <Button small onClick={() => set('remove the slip after the build', null)}>
              Remove
            </Button>
          ) : (
            <Button
              small
              onClick={() => set('enter the slip after the build', { case: 'fitted', frontKg: 0, rearKg: 0, note: '' })}
            >
              Enter the slip
            </Button>
          )
        }
      />
      {built ? (
        <div className={sheet.fields}>
          <ChoiceField
            label="On the scale"
            value={built.case}
            choices={choices}
            onCommit={(id) => set('say what stood on the scale', { ...built, case: id })}
          />
          <MassField
            label="Front axle"
            valueKg={built.frontKg}
            units={units}
            decimals={0}
            onCommit={(frontKg) => set('enter the slip after the build', { ...built, frontKg })}
          />
          <MassField
            label="Rear axle"
            valueKg={built.rearKg}
            units={units}
            decimals={0}
            onCommit={(rearKg) => set('enter the slip after the build', { ...built, rearKg })}
          />
        </div>
      ) : null}
      {told && built && built.frontKg + built.rearKg > 0 ? <Told told={told} /> : null}
    </>
  );
};

import { formatMass } from '../../../../base/index.ts';
import { type BuiltSlip, changeGear, changeVehicle, type Design, setHouseRule } from '../../../../design/index.ts';
import { CASE_IDS, type WeighIn as Weighed, type WeighShare } from '../../../../inspection/index.ts';
import { sayCase } from '../../../../says/index.ts';
import { Button, ChoiceField, Heading, MassField, Table, tableStyles } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';

const signed = (text: string, kg: number): string => `${kg < 0 ? '−' : '+'}${text}`;

/** The item with the mass that the scale makes likely: gear in its list, a part of the cabinet beside its catalogue. */
const corrected = (design: Design, { id, listedKg, listedSigmaKg }: WeighShare): Design => {
  const gear = design.gear.find((own) => id === `${own.id}/mass`);
  const kg = Math.round(listedKg * 1000) / 1000;
  const sigmaKg = Math.round(listedSigmaKg * 1000) / 1000;
  if (gear) return changeGear(design, gear.id, { massKg: kg, massSigmaKg: sigmaKg });
  const others = design.vehicle.knownMasses.filter(({ of }) => of !== id);
  return changeVehicle(design, { knownMasses: [...others, { of: id, kg, sigmaKg }] });
};

/** Whether a mass belongs to the cabinet or its gear: people and fuel are not put right here. */
const isListed = ({ id }: WeighShare): boolean => id.includes('/');

/** Items known worst, each with what it would explain, to be put right one by one. */
const Suspects = ({ told }: { readonly told: Weighed }) => {
  const units = useUnits();
  const names = useNames();
  const { edit } = useEditorParts((editor) => ({ edit: editor.edit }));
  return (
    <Table label="Items known worst">
      <thead>
        <tr>
          <th scope="col">known worst</th>
          <th scope="col">counted</th>
          <th scope="col">± at 95 %</th>
          <th scope="col">would explain</th>
          <th scope="col">put right</th>
        </tr>
      </thead>
      <tbody>
        {told.items.map((item) => {
          const name = names.nameOf(item.id.replace(/\/mass$/, ''));
          return (
            <tr key={item.id}>
              <th scope="row">{name}</th>
              <td className={tableStyles.number}>{formatMass(item.kg, units)}</td>
              <td className={tableStyles.number}>{formatMass(2 * item.sigmaKg, units)}</td>
              <td className={tableStyles.number}>{signed(formatMass(Math.abs(item.moreKg), units), item.moreKg)}</td>
              <td>
                {isListed(item) ? (
                  <Button
                    small
                    aria-label={`List ${name} with ${formatMass(item.listedKg, units)}`}
                    onClick={() => edit(`put the mass of ${name} right`, (now) => corrected(now, item))}
                  >
                    List it with {formatMass(item.listedKg, units)}
                  </Button>
                ) : null}
              </td>
            </tr>
          );
        })}
      </tbody>
    </Table>
  );
};

/** Masses of the cabinet that were put right, to be given back to the catalogue. */
const Known = () => {
  const units = useUnits();
  const names = useNames();
  const { known, edit } = useEditorParts((editor) => ({
    known: editor.history.design.vehicle.knownMasses,
    edit: editor.edit,
  }));
  if (known.length === 0) return null;
  return (
    <ul className={sheet.group}>
      {known.map(({ of, kg }) => (
        <li key={of} className={sheet.bar}>
          <span>
            {names.nameOf(of)} counts with {formatMass(kg, units)}, not as listed.
          </span>
          <Button
            small
            look="quiet"
            aria-label={`Count ${names.nameOf(of)} as listed`}
            onClick={() =>
              edit('count a mass as listed', (now) =>
                changeVehicle(now, { knownMasses: now.vehicle.knownMasses.filter((own) => own.of !== of) }),
              )
            }
          >
            As listed
          </Button>
        </li>
      ))}
    </ul>
  );
};

const Told = ({ told }: { readonly told: Weighed }) => {
  const units = useUnits();
  const { edit } = useEditorParts((editor) => ({ edit: editor.edit }));
  const more = (kg: number): string => signed(formatMass(Math.abs(kg), units), kg);
  const rows = [
    ['front', told.predicted.frontKg, told.weighed.frontKg],
    ['rear', told.predicted.rearKg, told.weighed.rearKg],
    ['all', told.predicted.totalKg, told.weighed.totalKg],
    ...(told.leftKg ? [['left wheels', told.leftKg.predicted, told.leftKg.weighed] as const] : []),
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
        deviations. A difference most likely lies in what is known worst:
      </p>
      <Suspects told={told} />
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

const SIDES: readonly { readonly key: 'leftKg' | 'rightKg'; readonly label: string }[] = [
  { key: 'leftKg', label: 'Left wheels' },
  { key: 'rightKg', label: 'Right wheels' },
];

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
              onClick={() =>
                set('enter the slip after the build', {
                  case: 'fitted',
                  frontKg: 0,
                  rearKg: 0,
                  leftKg: null,
                  rightKg: null,
                  note: '',
                })
              }
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
          {SIDES.map(({ key, label }) => (
            <MassField
              key={key}
              label={label}
              valueKg={built[key]}
              units={units}
              decimals={0}
              onCommit={(kg) => set('enter the slip after the build', { ...built, [key]: kg })}
              onClear={() => set('enter the slip after the build', { ...built, [key]: null })}
            />
          ))}
        </div>
      ) : null}
      <Known />
      {told && built && built.frontKg + built.rearKg > 0 ? <Told told={told} /> : null}
    </>
  );
};

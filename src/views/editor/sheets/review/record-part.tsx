import { useState } from 'react';
import { formatMass } from '../../../../base/index.ts';
import { changeRecord, type VehicleRecord } from '../../../../design/index.ts';
import { Button, Heading, MassField } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import { useUnits } from '../../state/use-units.ts';
import sheet from '../sheet.module.css';
import { By } from './by.tsx';
import { rememberedName, today } from './today.ts';
import { WordsField } from './words-field.tsx';

type Change = (label: string, part: (record: VehicleRecord) => Partial<VehicleRecord>) => void;

const useRecord = (): { readonly record: VehicleRecord; readonly change: Change } => {
  const record = useEditor((editor) => editor.history.design.record);
  const edit = useEditor((editor) => editor.edit);
  return { record, change: (label, part) => edit(label, (design) => changeRecord(design, part(design.record))) };
};

const by = (): { readonly who: string; readonly on: string } => ({ who: rememberedName() || 'the shop', on: today() });

const AsBuilt = () => {
  const { record, change } = useRecord();
  const { nameOf } = useNames();
  const part = useEditor((editor) => editor.selection.at(-1) ?? null);
  const [text, setText] = useState('');
  const add = (): void => {
    change('note what was built', ({ asBuilt }) => ({ asBuilt: [...asBuilt, { ...by(), part, text: text.trim() }] }));
    setText('');
  };
  return (
    <>
      <Heading level={3} title="As built" aside="what was made otherwise than drawn" />
      <ul className={sheet.group}>
        {record.asBuilt.map((note) => (
          <li key={`${note.on} ${note.part ?? ''} ${note.text}`}>
            <bdi>
              {note.part === null ? '' : `${nameOf(note.part)}: `}
              {note.text}
            </bdi>{' '}
            <span className={sheet.soft}>
              <By {...note} />
            </span>
          </li>
        ))}
      </ul>
      <div className={sheet.bar}>
        <WordsField
          label={part === null ? 'Note about the whole' : `Note about ${nameOf(part)}`}
          value={text}
          maxLength={2000}
          onChange={setText}
        />
        <Button disabled={text.trim() === ''} onClick={add}>
          Add the note
        </Button>
      </div>
    </>
  );
};

const Weighed = () => {
  const { record, change } = useRecord();
  const units = useUnits();
  const [front, setFront] = useState<number | null>(null);
  const [rear, setRear] = useState<number | null>(null);
  const predicted = useEditor((editor) => editor.judgement?.inspection.cases.find(({ id }) => id === 'fitted') ?? null);
  return (
    <>
      <Heading
        level={3}
        title="Axle scales after the build"
        aside={
          predicted === null
            ? 'nobody aboard'
            : `predicted ${formatMass(predicted.frontKg, units)} front, ${formatMass(predicted.rearKg, units)} rear`
        }
      />
      <ul className={sheet.group}>
        {record.weighed.map((slip) => (
          <li key={`${slip.on} ${slip.frontKg} ${slip.rearKg}`}>
            front {formatMass(slip.frontKg, units)}, rear {formatMass(slip.rearKg, units)}{' '}
            <span className={sheet.soft}>
              <By {...slip} />
            </span>
          </li>
        ))}
      </ul>
      <div className={sheet.bar}>
        <MassField label="Front axle" valueKg={front} units={units} decimals={0} onCommit={setFront} />
        <MassField label="Rear axle" valueKg={rear} units={units} decimals={0} onCommit={setRear} />
        <Button
          disabled={front === null || rear === null}
          onClick={() => {
            if (front === null || rear === null) return;
            change('enter axle scales', ({ weighed }) => ({
              weighed: [...weighed, { ...by(), frontKg: front, rearKg: rear, note: '' }],
            }));
            setFront(null);
            setRear(null);
          }}
        >
          Enter the slip
        </Button>
      </div>
    </>
  );
};

/** Days are written year-month-day, so that they can be told apart by their order. */
const DAY = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

const TorqueChecks = () => {
  const { record, change } = useRecord();
  const [due, setDue] = useState('');
  const isDay = DAY.test(due.trim());
  return (
    <>
      <Heading level={3} title="Torque checks of the anchors" />
      <ul className={sheet.group}>
        {record.torqueChecks.map((check, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: checks have no name and are only added and ticked.
          <li className={sheet.bar} key={i}>
            <span>
              due {check.due}
              {check.doneOn === '' ? '' : `, done ${check.doneOn} by ${check.who}`}
              {check.doneOn === '' && DAY.test(check.due) && check.due < today() ? <strong>, overdue</strong> : null}
            </span>
            {check.doneOn === '' ? (
              <Button
                small
                onClick={() =>
                  change('tick a torque check', ({ torqueChecks }) => ({
                    torqueChecks: torqueChecks.map((each, k) =>
                      k === i ? { ...each, doneOn: today(), who: by().who } : each,
                    ),
                  }))
                }
              >
                Done today
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      <div className={sheet.bar}>
        <WordsField label="Due on (year-month-day)" value={due} onChange={setDue} />
        {due.trim() === '' || isDay ? null : <span>A day is written as {today()}.</span>}
        <Button
          disabled={!isDay}
          onClick={() => {
            change('add a torque check', ({ torqueChecks }) => ({
              torqueChecks: [...torqueChecks, { due: due.trim(), doneOn: '', who: '' }],
            }));
            setDue('');
          }}
        >
          Add the check
        </Button>
      </div>
    </>
  );
};

/** What stays with the vehicle after delivery. */
export const RecordPart = () => (
  <section className={sheet.group}>
    <Heading title="Vehicle record" aside="after delivery" />
    <AsBuilt />
    <Weighed />
    <TorqueChecks />
  </section>
);

import { useState } from 'react';
import { changeFitting, type Faceplate, freshIds } from '../../../design/index.ts';
import { Button, CheckField, ChoiceField, LengthField, NumberField } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditorParts } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { MaterialField } from './catalog-fields.tsx';
import { deviceChoices } from './choices.ts';
import { changedDevice, type DeviceMove, movedDevice, withDevice, withGrille, withoutDevice } from './device-rows.ts';
import type { FittingFormProps, FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const MOVES: readonly (readonly [DeviceMove, string, string])[] = [
  ['left', '←', 'to the left'],
  ['right', '→', 'to the right'],
  ['up', '↑', 'one row up'],
  ['down', '↓', 'one row down'],
];

const Devices = ({ opening, fitting }: FittingFormProps<Faceplate>) => {
  const { catalog } = useBench();
  const change = useChangeFitting<Faceplate>(opening);
  const { selection, select, edit } = useEditorParts((editor) => ({
    selection: editor.selection,
    select: editor.select,
    edit: editor.edit,
  }));
  const [adding, setAdding] = useState('');
  const { rows } = fitting;
  const isSpeaker = (device: string): boolean => {
    const record = catalog.devices.get(device);
    return record?.kind === 'speaker' && record.cutout.shape === 'round';
  };
  const add = (device: string, row: number): void =>
    edit('add a device', (design) => {
      const id = freshIds(design)('device');
      return changeFitting(design, opening, (draft) => {
        if (draft.kind === 'faceplate') Object.assign(draft, { rows: withDevice(rows, row, { id, device }) });
      });
    });
  return (
    <div className={styles.rows}>
      {rows.map((row, r) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are known by their place from the top
        <fieldset key={r} className={styles.row}>
          <legend>Row {r + 1}</legend>
          {row.map(({ id, device, grille }) => (
            <div key={id} className={styles.device} data-selected={selection.some((one) => one.startsWith(id))}>
              <ChoiceField
                label={`Device in row ${r + 1}`}
                bare
                value={device}
                choices={deviceChoices(catalog, device)}
                onCommit={(next) => change('change a device', { rows: changedDevice(rows, id, next) })}
              />
              {MOVES.map(([move, sign, words]) => (
                <Button
                  key={move}
                  small
                  look="quiet"
                  aria-label={`Move ${words}`}
                  title={`Move ${words}`}
                  onClick={() => {
                    change('move a device', { rows: movedDevice(rows, id, move) });
                    select([id]);
                  }}
                >
                  {sign}
                </Button>
              ))}
              {isSpeaker(device) ? (
                <CheckField
                  label="behind a drilled grille"
                  checked={grille === true}
                  onCommit={(on) => change('change a grille', { rows: withGrille(rows, id, on) })}
                />
              ) : null}
              <Button
                small
                look="quiet"
                aria-label="Take it out"
                title="Take it out"
                onClick={() => change('take a device out', { rows: withoutDevice(rows, id) })}
              >
                ✕
              </Button>
            </div>
          ))}
        </fieldset>
      ))}
      <div className={styles.add}>
        <ChoiceField
          label="Add a device"
          value={adding}
          choices={[{ value: '', label: 'choose…' }, ...deviceChoices(catalog, null)]}
          onCommit={setAdding}
        />
        <Button disabled={adding === ''} onClick={() => add(adding, Math.max(0, rows.length - 1))}>
          to the last row
        </Button>
        <Button disabled={adding === ''} onClick={() => add(adding, rows.length)}>
          as a new row
        </Button>
      </div>
    </div>
  );
};

type Eye = NonNullable<Faceplate['eye']>;

const EyeFields = ({ eye, onChange }: { readonly eye: Eye; readonly onChange: (eye: Eye) => void }) => {
  const units = useUnits();
  return (
    <>
      <LengthField
        label="Eye above the middle"
        valueMm={eye.aboveMm}
        units={units}
        onCommit={(aboveMm) => onChange({ ...eye, aboveMm })}
      />
      <LengthField
        label="Eye out of the face"
        valueMm={eye.outMm}
        units={units}
        min={1}
        onCommit={(outMm) => onChange({ ...eye, outMm })}
      />
    </>
  );
};

const Form: FittingView<Faceplate>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<Faceplate>(opening);
  const units = useUnits();
  return (
    <>
      <div className={styles.fields}>
        <MaterialField
          label="Plate"
          value={fitting.material}
          onChange={(material) => change('change the plate', { material })}
        />
        <NumberField
          label="Leans back by"
          disabled={fitting.eye !== null}
          value={fitting.tiltDeg}
          unit="°"
          min={-45}
          max={60}
          onCommit={(tiltDeg) => change('change the lean', { tiltDeg })}
        />
        <ChoiceField
          label="Lean"
          value={fitting.eye === null ? 'stated' : 'eye'}
          choices={[
            { value: 'stated', label: 'as stated' },
            { value: 'eye', label: 'towards the eye that reads it' },
          ]}
          onCommit={(way) =>
            change('change what sets the lean', { eye: way === 'eye' ? { aboveMm: 300, outMm: 700 } : null })
          }
        />
        {fitting.eye !== null && <EyeFields eye={fitting.eye} onChange={(eye) => change('move the eye', { eye })} />}
        <ChoiceField
          label="Edges"
          value={fitting.flangeMm === null ? 'flat' : 'bent'}
          choices={[
            { value: 'flat', label: 'flat plate' },
            { value: 'bent', label: 'bent back as flanges' },
          ]}
          onCommit={(make) => change('change the edges', { flangeMm: make === 'bent' ? 30 : null })}
        />
        {fitting.flangeMm !== null && (
          <LengthField
            label="Flanges, outside"
            valueMm={fitting.flangeMm}
            units={units}
            min={1}
            onCommit={(flangeMm) => change('change the flanges', { flangeMm })}
          />
        )}
        <NumberField
          label="Air slots in each row"
          value={fitting.airSlots}
          min={0}
          max={30}
          whole
          onCommit={(airSlots) => change('change the air slots', { airSlots })}
        />
        <LengthField
          label="Behind the face by"
          valueMm={fitting.setbackMm}
          units={units}
          min={0}
          onCommit={(setbackMm) => change('change the set-back', { setbackMm })}
        />
      </div>
      <Devices opening={opening} fitting={fitting} />
    </>
  );
};

export const faceplateView: FittingView<Faceplate> = { ...KIND_WORDS.faceplate, Form };

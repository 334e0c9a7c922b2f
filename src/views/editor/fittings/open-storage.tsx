import type { OpenStorage } from '../../../design/index.ts';
import { Button, ChoiceField, LengthField } from '../parts/index.ts';
import { useEditor } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { withShelf } from './shelves.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const SHELVES = [
  { value: 'fixed', label: 'housed in the sides' },
  { value: 'adjustable', label: 'on pins, adjustable' },
] as const;

/** More shelves than this the design refuses. */
const MOST_SHELVES = 12;

const Form: FittingView<OpenStorage>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<OpenStorage>(opening);
  const units = useUnits();
  const roomUp = useEditor((editor) => editor.fitOut.openings.find((one) => one.id === opening)?.size[2] ?? null);
  const { shelvesUpMm } = fitting;
  const setShelves = (label: string, shelves: readonly number[]): void =>
    change(label, { shelvesUpMm: shelves.toSorted((a, b) => a - b) });
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Keeps gear in"
        value={fitting.restraint}
        kinds={['net', 'strap']}
        none="nothing"
        onChange={(restraint) => change('change what keeps gear in', { restraint })}
      />
      <LengthField
        label="Lip along the front"
        valueMm={fitting.lipHeightMm}
        units={units}
        min={0}
        onCommit={(lipHeightMm) => change('change the lip', { lipHeightMm })}
      />
      <HardwareField
        label="Mat on the floor"
        value={fitting.mat}
        kinds={['mat']}
        none="none"
        onChange={(mat) => change('change the mat', { mat })}
      />
      <HardwareField
        label="Drain in the floor"
        value={fitting.drain}
        kinds={['drain']}
        none="none"
        onChange={(drain) => change('change the drain', { drain })}
      />
      {shelvesUpMm.length > 0 ? (
        <>
          <MaterialField
            label="Sheet of the shelves"
            value={fitting.shelfMaterial}
            onChange={(shelfMaterial) => change('change the shelves', { shelfMaterial })}
          />
          <ChoiceField
            label="Shelves"
            value={fitting.shelves}
            choices={SHELVES}
            onCommit={(shelves) => change('change how the shelves are held', { shelves })}
          />
        </>
      ) : null}
      {shelvesUpMm.map((up, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: shelves are known by their place from the bottom
        <div key={i} className={styles.withButton}>
          <LengthField
            label={`Shelf ${i + 1}, top above the floor`}
            valueMm={up}
            units={units}
            min={1}
            onCommit={(mm) => setShelves('move a shelf', shelvesUpMm.with(i, mm))}
          />
          <Button
            look="quiet"
            aria-label={`Take shelf ${i + 1} out`}
            onClick={() => setShelves('take a shelf out', shelvesUpMm.toSpliced(i, 1))}
          >
            ✕
          </Button>
        </div>
      ))}
      <div className={styles.last}>
        <Button
          disabled={roomUp === null || shelvesUpMm.length >= MOST_SHELVES}
          onClick={() => roomUp !== null && setShelves('add a shelf', withShelf(shelvesUpMm, roomUp))}
        >
          Add a shelf
        </Button>
      </div>
    </div>
  );
};

export const openStorageView: FittingView<OpenStorage> = { ...KIND_WORDS['open-storage'], Form };

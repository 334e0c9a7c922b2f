import type { Vec3 } from '../../../../../base/index.ts';
import { Button, ChoiceField, NumberField, Table } from '../../../parts/index.ts';
import sheet from '../../sheet.module.css';
import type { KnownPlace } from './known-places.ts';
import styles from './scan.module.css';
import { changeSought, placeNext, type SoughtMark, useScan } from './scan-store.ts';

const AXES = ['x', 'y', 'z'] as const;

const withAxis = (at: Vec3 | null, axis: number, value: number): Vec3 => {
  const [x, y, z] = at ?? [0, 0, 0];
  return [axis === 0 ? value : x, axis === 1 ? value : y, axis === 2 ? value : z];
};

interface RowProps {
  readonly sought: SoughtMark;
  readonly index: number;
  readonly places: readonly KnownPlace[];
}

const MarkRow = ({ sought: { mark, at }, index, places }: RowProps) => {
  const { placing } = useScan();
  const label = `Mark ${index + 1}`;
  return (
    <tr>
      <th scope="row">
        <Button
          small
          look={placing === index ? 'main' : 'plain'}
          aria-pressed={placing === index}
          aria-label={`Place mark ${index + 1} on the scan`}
          onClick={() => placeNext(index)}
        >
          {index + 1}
        </Button>
      </th>
      <td>
        <ChoiceField
          bare
          label={`${label}, which place`}
          value={mark ?? ''}
          choices={[
            { value: '', label: 'choose…' },
            ...places.map(({ key, label: words }) => ({ value: key, label: words })),
          ]}
          onCommit={(key) => changeSought(index, { mark: key === '' ? null : key })}
        />
      </td>
      {AXES.map((axis, k) => (
        <td key={axis} className={styles.coordinate}>
          <NumberField
            bare
            label={`${label}, ${axis} in the scan`}
            value={at?.[k] ?? null}
            decimals={4}
            onCommit={(value) => changeSought(index, { at: withAxis(at, k, value) })}
          />
        </td>
      ))}
    </tr>
  );
};

/** Three places that are known in the vehicle, and where they stand in the scan. */
export const ScanMarks = ({ places }: { readonly places: readonly KnownPlace[] }) => {
  const { sought, placing } = useScan();
  return (
    <>
      <p className={sheet.soft}>
        Choose three places far apart. Press mark {placing + 1} on the scan, or type where it is.
      </p>
      <Table label="Marks to set the scan by">
        <thead>
          <tr>
            <th scope="col">mark</th>
            <th scope="col">place in the vehicle</th>
            {AXES.map((axis) => (
              <th key={axis} scope="col">
                {axis}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sought.map((one, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark is known by its number
            <MarkRow key={i} sought={one} index={i} places={places} />
          ))}
        </tbody>
      </Table>
    </>
  );
};

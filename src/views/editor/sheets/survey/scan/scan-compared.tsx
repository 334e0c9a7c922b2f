import { useState } from 'react';
import { formatLengthUnit } from '../../../../../base/index.ts';
import { addSurveyItem, changeSurveyItem, type NodeId } from '../../../../../design/index.ts';
import type { ComparedScan, Section } from '../../../../../envelope/index.ts';
import { Button, Heading, Length, LengthField, Row, Table, tableStyles } from '../../../parts/index.ts';
import { useDesk } from '../../../state/use-desk.ts';
import { useEditor } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import sheet from '../../sheet.module.css';
import styles from './scan.module.css';
import { ScanDifferenceDrawing, signedLength } from './scan-difference.tsx';
import { scanStation } from './scan-store.ts';

/** Points a side of a station that is taken from the scan. */
const POINTS = 12;

interface Props {
  readonly compared: ComparedScan;
  readonly sections: readonly Section[];
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** The scan against the tape, station by station, and stations taken from it. */
export const ScanCompared = ({ compared, sections }: Props) => {
  const units = useUnits();
  const edit = useEditor((editor) => editor.edit);
  const tell = useDesk((desk) => desk.tell);
  const [shown, setShown] = useState(0);
  const [depth, setDepth] = useState<number | null>(null);
  const [section, station] = [sections[shown] ?? sections[0], compared.stations[shown] ?? compared.stations[0]];
  const take = async (id: NodeId, xMm: number): Promise<void> => {
    const made = await scanStation(xMm, POINTS);
    if (!made) return;
    edit('take a station from the scan', (now) =>
      changeSurveyItem(now, 'stations', id, {
        left: made.left,
        right: made.right,
        leftMarks: [],
        rightMarks: [],
        source: 'scan',
        startValues: false,
      }),
    );
    tell('The station is taken from the scan and marked so.');
  };
  const addAt = async (xMm: number): Promise<void> => {
    const made = await scanStation(xMm, POINTS);
    if (!made) return;
    edit(
      'add a station from the scan',
      (now) => addSurveyItem(now, 'stations', { ...made, startValues: false }).design,
    );
    tell('A station was added from the scan and marked so.');
  };
  return (
    <>
      <Heading
        level={3}
        title="Scan against tape"
        aside={`agrees within ${formatLengthUnit(compared.rmsMm, units)} (1σ) on ${percent(compared.fitted)} of the sections`}
      />
      <p className={sheet.soft}>
        Marks lie {compared.marksOff.map((off) => formatLengthUnit(off, units)).join(', ')} off.
        <span className={styles.key} style={{ background: 'var(--petrol)' }} />
        more room than taped (+)
        <span className={styles.key} style={{ background: 'var(--stop)' }} />
        less room than taped (−)
      </p>
      {section && station ? <ScanDifferenceDrawing section={section} compared={station} /> : null}
      <Table label="Scan against tape, by station">
        <thead>
          <tr>
            <th scope="col">station</th>
            <th scope="col">mean</th>
            <th scope="col">worst</th>
            <th scope="col">seen</th>
            <th scope="col">
              <span className={sheet.soft}>take it</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {compared.stations.map(({ difference }, i) => (
            <Row key={difference.station} selected={i === shown} onSelect={() => setShown(i)}>
              <th scope="row">
                <Button look="quiet" small aria-pressed={i === shown} onClick={() => setShown(i)}>
                  {i + 1} · <Length mm={difference.x} units={units} />
                </Button>
              </th>
              <td className={tableStyles.number}>{signedLength(difference.meanMm, units)}</td>
              <td className={tableStyles.number}>
                {difference.worst ? signedLength(difference.worst.offMm, units) : 'not seen'}
              </td>
              <td className={tableStyles.number}>{percent(difference.seen)}</td>
              <td>
                <Button
                  small
                  aria-label={`Take station ${i + 1} from the scan`}
                  onClick={() => void take(difference.station, difference.x)}
                >
                  From the scan
                </Button>
              </td>
            </Row>
          ))}
        </tbody>
      </Table>
      <div className={sheet.bar} style={{ alignItems: 'end' }}>
        <div style={{ width: 150 }}>
          <LengthField
            label="A further station at"
            valueMm={depth}
            units={units}
            onCommit={setDepth}
            onClear={() => setDepth(null)}
          />
        </div>
        <Button disabled={depth === null} onClick={() => (depth === null ? undefined : void addAt(depth))}>
          Add it from the scan
        </Button>
      </div>
    </>
  );
};

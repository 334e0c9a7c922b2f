import { changeSurvey, sayOpeningMeasured } from '../../../../design/index.ts';
import { openingFromMarks } from '../../../../envelope/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import styles from '../sheet.module.css';
import { OutlineFields } from './solid-fields.tsx';
import { useReadings } from './use-readings.ts';

const START: readonly (readonly [number, number])[] = [
  [-550, 0],
  [550, 0],
  [550, 850],
  [-550, 850],
];

/** The clear opening that everything is carried in through: typed, or as the readings of its marks make it. */
export const Aperture = () => {
  const edit = useEditor((editor) => editor.edit);
  const { survey, read } = useReadings();
  const measured = openingFromMarks(read.points);
  const set = (label: string, aperture: readonly (readonly [number, number])[] | null): void =>
    edit(label, (now) => changeSurvey(now, { aperture }));
  return (
    <section className={styles.group}>
      <Heading level={3} title="Clear opening" aside="measured inside the seal; everything passes through it" />
      {survey.aperture ? (
        <OutlineFields
          label="Clear opening"
          axes={['to the left', 'up']}
          points={survey.aperture}
          least={3}
          onCommit={(points) =>
            set(
              'change the clear opening',
              points.map(([y, z]) => [y, z] as const),
            )
          }
        />
      ) : (
        <p className={styles.soft}>Not entered yet: whether a carcass passes through the opening is not checked.</p>
      )}
      <div className={styles.bar}>
        {measured ? (
          <Button
            onClick={() =>
              edit('take the opening from its readings', (now) =>
                sayOpeningMeasured(changeSurvey(now, { aperture: measured })),
              )
            }
          >
            Take it from the readings of the opening
          </Button>
        ) : null}
        {survey.aperture ? (
          <Button onClick={() => set('remove the clear opening', null)}>Remove</Button>
        ) : (
          <Button onClick={() => set('enter the clear opening', START)}>Enter the opening</Button>
        )}
      </div>
    </section>
  );
};

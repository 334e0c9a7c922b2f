import {
  isStartValue,
  type NodeId,
  type StartList,
  sayMeasured,
  sayOpeningMeasured,
} from '../../../../design/index.ts';
import { Button, SeverityMark } from '../../parts/index.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import styles from './readings.module.css';
import type { Readings } from './use-readings.ts';

interface StartNoteProps {
  readonly list: StartList;
  readonly id: NodeId;
  /** What it is called in the sentence: this section, this obstacle. */
  readonly what: string;
}

/** Says of one section, obstacle or closure that it is not measured, and takes the word of whoever has measured it. */
export const StartNote = ({ list, id, what }: StartNoteProps) => {
  const { survey, edit } = useEditorParts((editor) => ({
    survey: editor.history.design.survey,
    edit: editor.edit,
  }));
  const items: readonly { readonly id: NodeId; readonly startValues?: boolean | undefined }[] = survey[list];
  const item = items.find((one) => one.id === id);
  if (!item || !isStartValue(survey, item)) return null;
  return (
    <p className={styles.banner}>
      <SeverityMark severity="caution" />
      <span>
        <strong>Not for cutting:</strong> typed figures of {what} are those of a vehicle class. Overwrite them with your
        tape, then say so.
      </span>
      <Button small onClick={() => edit(`say that ${what} is measured`, (now) => sayMeasured(now, list, id))}>
        It is measured
      </Button>
    </p>
  );
};

const counted = (count: number, one: string): readonly string[] =>
  count === 0 ? [] : [`${count} ${one}${count === 1 ? '' : 's'}`];

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** What still rests on the vehicle class, in a line over the whole survey; nothing once all of it is measured. */
export const StartValuesBanner = ({ readings: { survey, read } }: { readonly readings: Readings }) => {
  const edit = useEditor((editor) => editor.edit);
  const sections = read.stations.filter(({ left, right }) =>
    [...left, ...right].some(({ standing }) => standing === 'start'),
  ).length;
  const start = (items: readonly { readonly startValues?: boolean | undefined }[]): number =>
    items.filter((item) => isStartValue(survey, item)).length;
  const left = [
    ...counted(sections, 'section'),
    ...counted(start(survey.obstacles), 'obstacle'),
    ...counted(start(survey.closures), 'closure'),
  ];
  if (left.length === 0 && !survey.startValues) return null;
  return (
    <p className={styles.banner} role="note">
      <SeverityMark severity="caution" />
      {left.length > 0 ? (
        <span>
          <strong>Start values, not for cutting.</strong> {listed(left)} still hold sizes of the class. A section point
          stops being one as soon as readings hold its mark.
        </span>
      ) : (
        <>
          <span>
            <strong>Only the clear opening is left</strong> of the start values. Compare it with the vehicle.
          </span>
          <Button small onClick={() => edit('say that the opening is measured', sayOpeningMeasured)}>
            It is measured
          </Button>
        </>
      )}
    </p>
  );
};

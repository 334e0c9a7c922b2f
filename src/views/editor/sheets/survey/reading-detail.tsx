import { houseRules } from '../../../../catalog/index.ts';
import { changeReading, INSTRUMENTS, type Reading, readsAngle } from '../../../../design/index.ts';
import { ChoiceField, NumberField, TextField } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import type { ReadingRow } from './readings-rows.ts';

const words = (id: string): string => id.replaceAll('-', ' ');

/** How the selected reading was taken: with what, how well, and what is noted of it. */
export const ReadingDetail = ({ row }: { readonly row: ReadingRow }) => {
  const { catalog } = useBench();
  const { edit, changes } = useEditorParts((editor) => ({
    edit: editor.edit,
    changes: editor.history.design.houseRules,
  }));
  const { reading, number, words: what } = row;
  const angle = readsAngle(reading.kind);
  const change = (part: Partial<Omit<Reading, 'id'>>): void =>
    edit(`say how reading ${number} was taken`, (now) => changeReading(now, reading.id, part));
  const usual = houseRules(catalog, changes).record(`${reading.instrument}-sigma`);
  return (
    <section className={sheet.card} aria-label={`How reading ${number} was taken`}>
      <p>
        <strong>{number}</strong> {what}
      </p>
      <div className={sheet.fields}>
        <ChoiceField
          label="Taken with"
          value={reading.instrument}
          choices={INSTRUMENTS.map((value) => ({ value, label: words(value) }))}
          onCommit={(instrument) => change({ instrument })}
        />
        <NumberField
          label="Good to, 1σ"
          value={reading.sigma}
          unit={angle ? '°' : 'mm'}
          min={0.01}
          max={1000}
          step={0.1}
          hint={
            reading.sigma === null
              ? `empty: ${usual.value} ${usual.unit}, of a ${words(reading.instrument)}`
              : undefined
          }
          onCommit={(sigma) => change({ sigma })}
          onClear={() => change({ sigma: null })}
        />
        <div className={sheet.wide}>
          <TextField label="Note" value={reading.note} onCommit={(note) => change({ note })} />
        </div>
      </div>
    </section>
  );
};

import { useState } from 'react';
import { houseRules } from '../../../../catalog/index.ts';
import type { NodeId } from '../../../../design/index.ts';
import { type ExtraReading, networkProblems } from '../../../../envelope/index.ts';
import { sayProblem } from '../../../../says/index.ts';
import { Button, Heading, SeverityMark, ToggleChip } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { MarksList } from './marks-list.tsx';
import { ReadingDetail } from './reading-detail.tsx';
import { AddReading, type NewReading, startReading } from './readings-add.tsx';
import { ReadingsDrawing } from './readings-drawing.tsx';
import { ReadingsFoot } from './readings-foot.tsx';
import { PasteReadings } from './readings-paste.tsx';
import { ReadingsPlan } from './readings-plan.tsx';
import { readingsSummary } from './readings-rows.ts';
import { focusReading, ReadingsTable } from './readings-table.tsx';
import { type Readings, useReadings } from './use-readings.ts';

/** A survey half taken has many marks that hang in the air; the first say what to do. */
const MOST_FAULTS = 5;

/** Rows that take no part, and marks that nothing holds. */
const Faults = ({ readings }: { readonly readings: Readings }) => {
  const { catalog } = useBench();
  const { changes } = useEditorParts((editor) => ({ changes: editor.history.design.houseRules }));
  const problems = networkProblems(readings.survey, houseRules(catalog, changes));
  // A slip that explains a misreading is said at the foot of the sheet.
  const suspects = new Set<string>(readings.read.verdict?.suspects.flatMap(({ slip }) => slip ?? []));
  const faults = problems.filter(({ code }) => !suspects.has(code));
  return faults.length === 0 ? null : (
    <ul className={sheet.problems} aria-label="What keeps readings from being used">
      {faults.slice(0, MOST_FAULTS).map((problem) => (
        <li key={`${problem.at} ${problem.code}`}>
          <SeverityMark severity="caution" />
          <span>{sayProblem(problem)}.</span>
        </li>
      ))}
      {faults.length > MOST_FAULTS ? <li>and {faults.length - MOST_FAULTS} more.</li> : null}
    </ul>
  );
};

const asDraft = ({ kind, from, to }: ExtraReading): NewReading => ({
  kind,
  from: from as NodeId,
  to: (to ?? from) as NodeId,
  at: from as NodeId,
});

/** The readings of the tape: drawn, listed, adjusted together, and the one that was likely misread. */
export const ReadingsPart = () => {
  const readings = useReadings();
  const { rows, read, survey } = readings;
  const [list, setList] = useState<'readings' | 'plan' | 'marks'>(rows.length === 0 ? 'plan' : 'readings');
  const [draft, setDraft] = useState<NewReading | null>(null);
  const [pastes, setPastes] = useState(false);
  const selection = useEditor((editor) => editor.selection);
  const chosen = rows.find(({ reading }) => selection.includes(reading.id)) ?? null;
  const begin = startReading(survey.marks);
  const open = (next: NewReading | null): void => {
    setList('readings');
    setDraft(next);
    requestAnimationFrame(() => focusReading('new'));
  };
  return (
    <>
      <div className={sheet.chips}>
        <ToggleChip pressed={list === 'readings'} onClick={() => setList('readings')}>
          Taken
        </ToggleChip>
        <ToggleChip pressed={list === 'plan'} onClick={() => setList('plan')}>
          What to measure
        </ToggleChip>
        <ToggleChip pressed={list === 'marks'} onClick={() => setList('marks')}>
          Marks
        </ToggleChip>
      </div>
      {list === 'plan' ? (
        <ReadingsPlan readings={readings} />
      ) : list === 'marks' ? (
        <MarksList readings={readings} />
      ) : (
        <>
          <ReadingsDrawing readings={readings} />
          <Heading
            level={3}
            title="Readings"
            aside={readingsSummary(rows, read)}
            actions={
              <>
                <Button small disabled={!begin} onClick={() => open(begin)}>
                  Add a reading
                </Button>
                <Button small disabled={!begin} onClick={() => setPastes(true)}>
                  Paste…
                </Button>
              </>
            }
          />
          {draft ? <AddReading draft={draft} onChange={setDraft} onClose={() => setDraft(null)} /> : null}
          {rows.length === 0 ? (
            <p className={sheet.soft}>No readings yet. Begin with “What to measure”: it names each mark and reading.</p>
          ) : (
            <ReadingsTable rows={rows} />
          )}
          {chosen ? <ReadingDetail row={chosen} /> : null}
          <Faults readings={readings} />
        </>
      )}
      <ReadingsFoot readings={readings} onTake={(extra) => open(asDraft(extra))} />
      {pastes ? <PasteReadings onClose={() => setPastes(false)} /> : null}
    </>
  );
};

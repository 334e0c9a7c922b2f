import { houseRules } from '../../../../catalog/index.ts';
import { type Closure, changeSurveyItem } from '../../../../design/index.ts';
import { closureEdge } from '../../../../envelope/index.ts';
import { sayClosureEdge, sayMark } from '../../../../says/index.ts';
import { ChoiceField, LengthField, SeverityMark } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';
import { useReadings } from './use-readings.ts';

const MARKS = [
  ['hingeFrom', 'Hinge line from follows'],
  ['hingeTo', 'Hinge line to follows'],
  ['edgeClosed', 'Edge, closed, follows'],
  ['edgeOpen', 'Edge, open, follows'],
] as const;

const NONE = { hingeFrom: null, hingeTo: null, edgeClosed: null, edgeOpen: null };

/** What hinge and angle follow, and the lowest edge above ground that checks them. */
export const ClosureChecks = ({ closure }: { readonly closure: Closure }) => {
  const units = useUnits();
  const edit = useEditor((editor) => editor.edit);
  const { survey, changes, floorMm, space } = useEditorParts((editor) => ({
    survey: editor.history.design.survey,
    changes: editor.history.design.houseRules,
    floorMm: editor.history.design.vehicle.floorAboveGroundMm,
    space: editor.judgement?.space ?? null,
  }));
  const { read } = useReadings();
  const { catalog } = useBench();
  const choices = [
    { value: '', label: 'nothing, it is typed' },
    ...survey.marks.map(({ id }) => ({
      value: id as string,
      label: `${sayMark(survey, id)}${read.points.has(id) ? '' : ', not held yet'}`,
    })),
  ];
  const setEdge = (mm: number | null): void =>
    edit('enter the lowest edge of a closure', (design) => {
      const { lowestEdgeAboveGroundMm: _, ...plain } = closure;
      const next: Closure = mm === null ? plain : { ...plain, lowestEdgeAboveGroundMm: mm };
      const closures = design.survey.closures.map((one) => (one.id === closure.id ? next : one));
      return { ...design, survey: { ...design.survey, closures } };
    });
  const edge = space?.ok ? closureEdge(space.value, survey, closure.id, floorMm, houseRules(catalog, changes)) : null;
  const said = edge ? sayClosureEdge(edge, units) : '';
  return (
    <>
      <div className={styles.fields}>
        <LengthField
          label="Lowest edge above ground, open"
          valueMm={closure.lowestEdgeAboveGroundMm ?? null}
          units={units}
          min={1}
          onCommit={setEdge}
          onClear={() => setEdge(null)}
        />
        {survey.marks.length === 0
          ? null
          : MARKS.map(([key, label]) => (
              <ChoiceField
                key={key}
                label={label}
                value={closure.marks?.[key] ?? ''}
                choices={choices}
                onCommit={(chosen) => {
                  const mark = survey.marks.find(({ id }) => id === chosen)?.id ?? null;
                  const marks = { ...NONE, ...closure.marks, [key]: mark };
                  edit('tie a closure to a mark', (now) => changeSurveyItem(now, 'closures', closure.id, { marks }));
                }}
              />
            ))}
      </div>
      {said === '' ? null : (
        <p className={styles.soft}>
          {edge?.off ? <SeverityMark severity="caution" /> : null} {said}
        </p>
      )}
    </>
  );
};

import type { Slide } from '../../../catalog/index.ts';
import type { NodeId } from '../../../design/index.ts';
import { sayLoadPlate } from '../../../says/index.ts';
import { ChoiceField, Length, Mass } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditorParts } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { choiceOrNull, NO_CHOICE, slideChoices, slideLengthChoices } from './choices.ts';
import styles from './fittings.module.css';
import { slideResult } from './slide-result.ts';

interface SlideFieldProps {
  readonly opening: NodeId;
  readonly slide: string | null;
  readonly mounts: readonly Slide['mount'][];
  readonly onChange: (slide: string | null) => void;
  /** Its length where it can be set: null for the longest that fits. */
  readonly length?: { readonly mm: number | null; readonly onChange: (mm: number | null) => void };
}

/** Which slide a mover runs on, with what it came to beside it. */
export const SlideField = ({ opening, slide, mounts, onChange, length }: SlideFieldProps) => {
  const { catalog } = useBench();
  const units = useUnits();
  const { fitOut, inspection } = useEditorParts((editor) => ({
    fitOut: editor.fitOut,
    inspection: editor.judgement?.inspection ?? null,
  }));
  const result = slideResult(opening, fitOut, catalog, inspection);
  return (
    <>
      <ChoiceField
        label="Slide"
        value={slide ?? NO_CHOICE}
        choices={slideChoices(catalog, mounts, slide)}
        onCommit={(value) => onChange(choiceOrNull(value))}
      />
      {length ? (
        <ChoiceField
          label="Length of the slide"
          value={length.mm === null ? NO_CHOICE : String(length.mm)}
          choices={slideLengthChoices(catalog, mounts, slide, length.mm, units)}
          onCommit={(value) => length.onChange(value === NO_CHOICE ? null : Number(value))}
        />
      ) : null}
      {result ? (
        <dl className={styles.result}>
          <div>
            <dt>Runs on</dt>
            <dd>
              {result.name}
              {result.lengthMm === null ? null : (
                <>
                  , <Length mm={result.lengthMm} units={units} unit /> long
                </>
              )}
            </dd>
          </div>
          <div>
            <dt>Load on the pair</dt>
            <dd>
              <Mass kg={result.loadKg} units={units} /> of{' '}
              <Mass kg={result.allowedKg ?? result.ratedKg} units={units} />{' '}
              {result.allowedKg === null ? 'rated' : 'allowed'}
            </dd>
          </div>
          {result.sill ? (
            <div>
              <dt>Comes out</dt>
              <dd>
                <Length mm={result.sill.beyondMm} units={units} unit /> beyond the sill
                {result.sill.leftMm > 0 ? (
                  <>
                    , its rear edge <Length mm={result.sill.leftMm} units={units} unit /> inside
                  </>
                ) : null}
              </dd>
            </div>
          ) : null}
          {result.safeLoadKg === null ? null : (
            <div>
              <dt>Plate on its front</dt>
              <dd>{sayLoadPlate(result.safeLoadKg, units)}</dd>
            </div>
          )}
        </dl>
      ) : null}
    </>
  );
};

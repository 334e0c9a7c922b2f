import { useMemo } from 'react';
import { houseRules } from '../../../../catalog/index.ts';
import type { Survey } from '../../../../design/index.ts';
import { readSurvey, type SurveyRead } from '../../../../envelope/index.ts';
import { useBench } from '../../state/bench.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { type ReadingRow, readingRows, withoutSuspects } from './readings-rows.ts';

export interface Readings {
  readonly survey: Survey;
  readonly read: SurveyRead;
  readonly rows: readonly ReadingRow[];
}

/** The survey of the design with its readings adjusted: a few milliseconds, done at once so that typing answers. */
export const useReadings = (): Readings => {
  const { catalog } = useBench();
  const { survey, changes } = useEditorParts((editor) => ({
    survey: editor.history.design.survey,
    changes: editor.history.design.houseRules,
  }));
  return useMemo(() => {
    const rules = houseRules(catalog, changes);
    const read = readSurvey(survey, rules);
    const rest = withoutSuspects(survey, read);
    return { survey, read, rows: readingRows(survey, read, rest && readSurvey(rest, rules)) };
  }, [survey, changes, catalog]);
};

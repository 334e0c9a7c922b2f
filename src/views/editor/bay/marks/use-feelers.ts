import { useMemo } from 'react';
import type { Vec3 } from '../../../../base/index.ts';
import type { Severity } from '../../../../inspection/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { feltGap } from './felt-gap.ts';

/** A feeler line that is to be drawn: a finding that is chosen, or the least gap of a mover in the hand. */
export interface Feeler {
  readonly key: string;
  readonly at: readonly [Vec3, Vec3];
  readonly value: number;
  readonly unit: string;
  /** Half width at 95 %; 0 where it is exact. */
  readonly uncertainty: number;
  /** Null for a gap that is as it should be. */
  readonly severity: Severity | null;
}

export const useFeelers = (): readonly Feeler[] => {
  const { feeler, felt, inspection, movers } = useEditorParts((editor) => ({
    feeler: editor.feeler,
    felt: editor.felt,
    inspection: editor.judgement?.inspection,
    movers: editor.fitOut.movers,
  }));
  return useMemo(() => {
    const finding = feeler === null ? undefined : inspection?.findings[feeler];
    const origin = felt === null ? null : (movers.find(({ id }) => id === felt)?.origin ?? felt);
    const gap =
      felt === null || origin === null || !inspection ? null : feltGap(inspection.measured, { id: felt, origin });
    return [
      ...(finding?.at
        ? [
            {
              key: 'finding',
              at: finding.at,
              value: finding.value,
              unit: finding.unit,
              uncertainty: finding.uncertainty,
              severity: finding.severity,
            },
          ]
        : []),
      ...(gap?.at
        ? [{ key: 'felt', at: gap.at, value: gap.value, unit: gap.unit, uncertainty: gap.uncertainty, severity: null }]
        : []),
    ];
  }, [feeler, felt, inspection, movers]);
};

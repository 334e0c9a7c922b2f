import { useMemo } from 'react';
import type { Vec3 } from '../../../../base/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut, Mover } from '../../../../fitout/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import { closureGrip, gripOf } from '../marks/front.ts';
import { allMovers, shownShares } from '../motion/all-movers.ts';
import type { BayTools } from '../pointer/bay-tools.ts';
import { HandleRing } from './handle-ring.tsx';

interface HandleRingsProps {
  readonly tools: BayTools;
  readonly space: CargoSpace | null;
  readonly onHold: (mover: string | null) => void;
}

/** Ids that belong to each mover: its own, its node's, and those of everything that it carries. */
const carriedIds = (fitOut: FitOut): ((mover: Mover) => ReadonlySet<string>) => {
  const carried = new Map<string, string[]>();
  for (const { mover, id, origin } of [...fitOut.panels, ...fitOut.bodies]) {
    if (mover === null) continue;
    const ids = carried.get(mover);
    if (ids) ids.push(id, origin);
    else carried.set(mover, [id, origin]);
  }
  return ({ id, origin }) => new Set([id, origin, ...(carried.get(id) ?? [])]);
};

/** A ring for every mover; those of what is pointed at or selected show, the others come out when they are tabbed to. */
export const HandleRings = ({ tools, space, onHold }: HandleRingsProps) => {
  const { fitOut, shares, selection, hover } = useEditorParts((editor) => ({
    fitOut: bayFitOut(editor.fitOut),
    shares: editor.shares,
    selection: editor.selection,
    hover: editor.hover,
  }));
  const held = useMemo(() => {
    const idsOf = carriedIds(fitOut);
    return allMovers(fitOut, space).flatMap((mover) => {
      const grip: Vec3 | null = gripOf(fitOut, mover.id) ?? closureGrip(space, mover.id);
      return grip ? [{ mover, grip, ids: idsOf(mover) }] : [];
    });
  }, [fitOut, space]);
  const shown = shownShares(shares, space);
  return held.map(({ mover, grip, ids }) => (
    <HandleRing
      key={mover.id}
      tools={tools}
      mover={mover}
      grip={grip}
      share={shown[mover.id] ?? 0}
      lit={(hover !== null && ids.has(hover)) || selection.some((id) => ids.has(id))}
      onHold={onHold}
    />
  ));
};

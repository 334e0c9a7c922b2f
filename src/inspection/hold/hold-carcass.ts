import { scale, type Vec3 } from '../../base/index.ts';
import type { InspectionInput } from '../job.ts';
import { anchorUse, pullOf } from './anchor-use.ts';
import { groupForces } from './bolt-group.ts';
import type { HeldCarcass } from './held-carcass.ts';
import type { LinkName, Pull } from './links.ts';
import { THROWN, type Thrown, thrownBy } from './load-sets.ts';

type Anchor = InspectionInput['fitout']['anchors'][number];

/** The worst that one anchor sees, over all ways in which its carcass is thrown. */
export interface AnchorWorst {
  readonly anchor: Anchor;
  readonly use: number;
  readonly link: LinkName;
  readonly thrown: Thrown;
  readonly pull: Pull;
}

export interface CarcassHold {
  readonly carcass: HeldCarcass;
  readonly anchors: readonly AnchorWorst[];
  /** A way in which the anchors cannot hold at all, standing on one spot or line; null where they can. */
  readonly loose: Thrown | null;
  /** Records whose strength nobody gives. */
  readonly missing: readonly string[];
}

/** The top panel of the carcass that a carcass is bolted to. */
const panelBelow = ({ fitout, catalog }: InspectionInput, below: string | null) => {
  if (below === null) return null;
  const panel = fitout.panels.find(({ carcass, role }) => carcass === below && role === 'top');
  const material = panel && catalog.materials.get(panel.material);
  return panel && material ? { material, thickness: panel.thickness } : null;
};

/** One carcass thrown each way of the load sets that the design is held to. */
export const holdCarcass = (job: InspectionInput, carcass: HeldCarcass): CarcassHold => {
  const { design, rules } = job;
  const below = panelBelow(job, carcass.standsOn);
  const gravity = rules.value('standard-gravity');
  const missing = new Set<string>();
  const worst = new Map<string, AnchorWorst>();
  let loose: Thrown | null = null;
  for (const thrown of thrownBy(design.holdTo, rules)) {
    const force: Vec3 = scale(THROWN[thrown.way], carcass.kg * thrown.g * gravity);
    const forces = groupForces(carcass.anchors, carcass.foot, { at: carcass.centre, force });
    if (!forces) {
      loose ??= thrown;
      continue;
    }
    carcass.anchors.forEach((anchor, i) => {
      const pull = pullOf(anchor, forces.anchors[i] ?? [0, 0, 0]);
      const reckoned = anchorUse(job, anchor, pull, below);
      for (const id of reckoned.missing) missing.add(id);
      for (const { link, use } of reckoned.links)
        if (use > (worst.get(anchor.id)?.use ?? -1)) worst.set(anchor.id, { anchor, use, link, thrown, pull });
    });
  }
  return { carcass, anchors: [...worst.values()], loose, missing: [...missing].sort() };
};

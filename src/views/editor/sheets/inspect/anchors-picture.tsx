import { useMemo } from 'react';
import type { Carcass } from '../../../../design/index.ts';
import type { Inspection } from '../../../../inspection/index.ts';
import { Heading } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { AnchorPlan } from '../cabinet/anchors/anchor-plan.tsx';
import { anchorUses } from '../cabinet/anchors/anchor-uses.ts';
import { CabinetContext, useCabinetView } from '../cabinet/use-cabinet.ts';
import sheet from '../sheet.module.css';
import styles from './inspect.module.css';

const OnePlan = ({ carcass, inspection }: { readonly carcass: Carcass; readonly inspection: Inspection }) => {
  const uses = useMemo(
    () =>
      anchorUses(
        inspection,
        carcass.id,
        carcass.anchors.map(({ id }) => id),
      ),
    [inspection, carcass],
  );
  const worst = Math.max(0, ...uses.values());
  return (
    <figure className={styles.anchors}>
      <figcaption>
        {carcass.name === '' ? carcass.id : carcass.name}
        <span className={sheet.soft}>
          {carcass.anchors.length === 0
            ? ' has no anchors'
            : uses.size === 0
              ? ', use unknown'
              : `, the worst at ${Math.round(worst * 100)} %`}
        </span>
      </figcaption>
      {carcass.anchors.length === 0 ? null : <AnchorPlan carcass={carcass} uses={uses} />}
    </figure>
  );
};

/** Every carcass's anchors from above with what of its strength each uses, thrown the worst way. */
export const AnchorsPicture = ({ inspection }: { readonly inspection: Inspection }) => {
  const carcasses = useEditor((editor) => editor.history.design.cabinet.carcasses);
  const view = useCabinetView();
  if (carcasses.length === 0) return null;
  return (
    <CabinetContext value={view}>
      <Heading
        level={3}
        title="Anchors"
        aside="from above, the open face below; share of the weakest link that each uses, thrown the worst way"
      />
      <div className={styles.anchorPlans}>
        {carcasses.map((carcass) => (
          <OnePlan key={carcass.id} carcass={carcass} inspection={inspection} />
        ))}
      </div>
    </CabinetContext>
  );
};

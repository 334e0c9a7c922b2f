import { useMemo } from 'react';
import type { Finding, Inspection, Severity } from '../../../../inspection/index.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { MoversPart } from '../scrub/movers-part.tsx';
import sheet from '../sheet.module.css';
import { Sale } from '../survey/sale.tsx';
import { AcceptedList } from './accepted-list.tsx';
import { AnchorsPicture } from './anchors-picture.tsx';
import { ArrangePart } from './arrange-part.tsx';
import { CarryInPlan } from './carry-in-plan.tsx';
import { CautionList } from './caution-list.tsx';
import { FindingLine } from './finding-line.tsx';
import { HeldTo } from './held-to.tsx';
import styles from './inspect.module.css';
import { InspectionPaper } from './inspection-paper.tsx';
import { LiftPicture } from './lift-picture.tsx';
import { Loads } from './loads.tsx';
import { OpeningOrderTable } from './opening-order-table.tsx';
import { OwnCases } from './own-cases.tsx';
import { PowerPart } from './power-part.tsx';
import { WeighIn } from './weigh-in.tsx';

const SEVERITIES: readonly Severity[] = ['stop', 'caution', 'note'];

const counted = (findings: readonly Finding[]): string =>
  SEVERITIES.map((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  }).join(' · ');

const Status = ({ fresh }: { readonly fresh: boolean }) => {
  const engine = useDesk((desk) => desk.engine);
  const looking = useDesk((desk) => desk.lookingForWaysOut);
  const { stopLooking } = useBench();
  if (looking)
    return (
      <div className={styles.status} role="status">
        Searching for a way in, and trying ways out on copies…
        <Button small onClick={stopLooking}>
          Stop looking
        </Button>
      </div>
    );
  if (!fresh || engine.kind === 'working' || engine.kind === 'starting')
    return (
      <div className={styles.status} role="status">
        Inspecting…
      </div>
    );
  return null;
};

/** Asked until somebody has said it, then never again here: the Survey step keeps it. */
const AskedOnce = () => {
  const { sale, region } = useEditor((editor) => editor.history.design.vehicle);
  if (sale !== null && region !== null) return null;
  return (
    <section aria-label="Asked once">
      <Heading
        level={3}
        title="Asked once"
        aside="added mass may have to be disclosed; which rule holds depends on this. Local rules decide."
      />
      <Sale />
    </section>
  );
};

const Findings = ({ inspection, fresh }: { readonly inspection: Inspection; readonly fresh: boolean }) => {
  const numbered = useMemo(() => inspection.findings.map((finding, index) => ({ finding, index })), [inspection]);
  const open = numbered.filter(({ finding }) => finding.accepted === null);
  const accepted = numbered.filter(({ finding }) => finding.accepted !== null).map(({ finding }) => finding);
  const { checked } = inspection;
  return (
    <>
      {open.length === 0 ? (
        <p>Nothing found against this design. See the cautions below: a clean inspection is no approval.</p>
      ) : (
        <ul className={styles.list} aria-label="Findings">
          {open.map(({ finding, index }) => (
            <FindingLine
              key={`${finding.rule} ${finding.parts.join(' ')} ${index}`}
              finding={finding}
              index={index}
              fresh={fresh}
            />
          ))}
        </ul>
      )}
      <AcceptedList findings={accepted} />
      <p className={sheet.soft}>
        Checked: {checked.rules} rules, {checked.bodies} bodies, {checked.pairs} pairs, {checked.movers} movers.
      </p>
      <AskedOnce />
      <HeldTo />
      <AnchorsPicture inspection={inspection} />
      <Loads cases={inspection.cases} />
      <OwnCases />
      <ArrangePart />
      <WeighIn told={inspection.weighed} />
      <LiftPicture />
      <PowerPart />
    </>
  );
};

/** Every finding with its place, value, limit, source and way out; then weight and balance; then the cautions. */
export const InspectSheet = () => {
  const { judgement, fresh } = useEditorParts((editor) => ({
    judgement: editor.judgement,
    fresh: editor.judgement !== null && editor.judgement.edit >= editor.editNumber,
  }));
  return (
    <>
      <div className={`${sheet.sheet} no-print`}>
        <Heading
          title="Findings"
          aside={judgement ? counted(judgement.inspection.findings.filter((one) => one.accepted === null)) : null}
          actions={<Button onClick={() => window.print()}>Print the inspection sheet</Button>}
        />
        <Status fresh={fresh} />
        {judgement ? <Findings inspection={judgement.inspection} fresh={fresh} /> : null}
        {judgement ? <OpeningOrderTable order={judgement.order} /> : null}
        <MoversPart />
        <CarryInPlan />
        <Heading level={3} title="Cautions" />
        <CautionList />
      </div>
      {judgement ? <InspectionPaper inspection={judgement.inspection} order={judgement.order} fresh={fresh} /> : null}
    </>
  );
};

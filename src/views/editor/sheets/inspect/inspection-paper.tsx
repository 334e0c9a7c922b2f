import { useMemo } from 'react';
import type { Inspection, OpeningOrder } from '../../../../inspection/index.ts';
import { signOffOf } from '../../../../shop/index.ts';
import { SeverityMark } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import sheet from '../sheet.module.css';
import { CautionList } from './caution-list.tsx';
import styles from './inspect.module.css';
import paper from './inspection-paper.module.css';
import { Loads } from './loads.tsx';
import { OpeningOrderTable } from './opening-order-table.tsx';

interface InspectionPaperProps {
  readonly inspection: Inspection;
  readonly order: OpeningOrder;
  readonly fresh: boolean;
}

const Head = () => {
  const design = useEditor((editor) => editor.history.design);
  const { record } = useMemo(() => signOffOf(design), [design]);
  return (
    <header className={paper.head}>
      <h1>Inspection sheet</h1>
      <dl>
        <dt>Design</dt>
        <dd>{design.title}</dd>
        <dt>For</dt>
        <dd>{design.customer || '–'}</dd>
        <dt>Vehicle</dt>
        <dd>{design.vehicle.description || '–'}</dd>
        <dt>Measured</dt>
        <dd>{[design.survey.measuredBy, design.survey.measuredOn].filter((word) => word !== '').join(', ') || '–'}</dd>
        <dt>Revision</dt>
        <dd>
          {record.map((line) => (
            <div key={line}>{line}</div>
          ))}
        </dd>
        <dt>Printed</dt>
        <dd>{new Date().toISOString().slice(0, 10)}</dd>
      </dl>
    </header>
  );
};

/** The inspection sheet on paper: every finding in full, accepted ones with their names, weight, cautions, signatures. */
export const InspectionPaper = ({ inspection, order, fresh }: InspectionPaperProps) => {
  const { sayFinding } = useNames();
  return (
    <div className={`print-only ${paper.paper}`}>
      <Head />
      {fresh ? null : <p>Printed while an inspection was under way: print again for the newest findings.</p>}
      <table className={paper.table}>
        <thead>
          <tr>
            <th>severity</th>
            <th>finding</th>
            <th>value</th>
            <th>limit</th>
            <th>source</th>
          </tr>
        </thead>
        <tbody>
          {inspection.findings
            .map((finding) => ({ finding, said: sayFinding(finding) }))
            .map(({ finding, said }) => (
              <tr key={`${finding.rule} ${finding.parts.join(' ')}`}>
                <td>
                  <SeverityMark severity={finding.severity} word />
                </td>
                <td>
                  <strong>{said.title}</strong>
                  <br />
                  {said.detail}
                  {finding.accepted ? (
                    <>
                      <br />
                      <em>
                        Accepted by {finding.accepted.who}
                        {finding.accepted.on === '' ? '' : `, ${finding.accepted.on}`}: {finding.accepted.why}
                      </em>
                    </>
                  ) : null}
                </td>
                <td>{said.valueText}</td>
                <td>{said.limitText}</td>
                <td>
                  {finding.source}
                  {finding.status === '' ? '' : `, ${finding.status}`}
                </td>
              </tr>
            ))}
          {inspection.findings.length === 0 ? (
            <tr>
              <td colSpan={5}>Nothing found.</td>
            </tr>
          ) : null}
        </tbody>
      </table>
      <p>
        Checked: {inspection.checked.rules} rules, {inspection.checked.bodies} bodies, {inspection.checked.pairs} pairs.
      </p>
      <div className={sheet.group}>
        <Loads cases={inspection.cases} />
      </div>
      <OpeningOrderTable order={order} onPaper />
      <CautionList full />
      <div className={styles.signs}>
        <span>Fabricator, date</span>
        <span>For the department, date</span>
      </div>
    </div>
  );
};

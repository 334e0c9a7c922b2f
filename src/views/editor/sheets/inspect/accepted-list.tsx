import { withdrawAcceptance } from '../../../../design/index.ts';
import type { Finding } from '../../../../inspection/index.ts';
import { Button, Heading, SeverityMark } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import styles from './inspect.module.css';

/** Findings that a named person lets stand, and why. */
export const AcceptedList = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const edit = useEditor((editor) => editor.edit);
  const { sayFinding } = useNames();
  if (findings.length === 0) return null;
  return (
    <>
      <Heading level={3} title="Accepted" aside={String(findings.length)} />
      <ul className={styles.list}>
        {findings.map((finding) => (
          <li key={`${finding.rule} ${finding.parts.join(' ')}`} className={styles.accepted}>
            <SeverityMark severity={finding.severity} />
            <span>
              {sayFinding(finding).title}
              <br />
              <span className={styles.source}>
                Accepted by {finding.accepted?.who}
                {finding.accepted?.on ? `, ${finding.accepted.on}` : ''}: {finding.accepted?.why}
              </span>
            </span>
            <span className="no-print">
              <Button
                small
                onClick={() =>
                  edit('no longer accept a finding', (design) =>
                    withdrawAcceptance(design, { rule: finding.rule, parts: [...finding.parts] }),
                  )
                }
              >
                No longer accept
              </Button>
            </span>
          </li>
        ))}
      </ul>
    </>
  );
};

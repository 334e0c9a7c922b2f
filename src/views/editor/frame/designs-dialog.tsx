import { useCallback, useEffect, useState } from 'react';
import { DEMOS } from '../files/demos.ts';
import type { KeptDesign } from '../files/vault.ts';
import { Button, Dialog, Heading } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { agoWords } from '../state/save-words.ts';
import { useDesk } from '../state/use-desk.ts';
import { DEMO_WORDS } from './demo-words.ts';
import styles from './designs-dialog.module.css';

const useKept = () => {
  const { files } = useBench();
  const [kept, setKept] = useState<readonly KeptDesign[] | null>(null);
  const renew = useCallback(() => {
    files.kept().then(setKept, () => setKept([]));
  }, [files]);
  useEffect(renew, [renew]);
  return { kept, renew };
};

const KeptList = () => {
  const { files } = useBench();
  const { kept, renew } = useKept();
  const [asked, setAsked] = useState<string | null>(null);
  const present = files.presentId();
  if (kept === null) return <p className={styles.none}>…</p>;
  if (kept.length === 0)
    return <p className={styles.none}>None yet. A design is kept here from its first change on.</p>;
  return (
    <ul className={styles.list}>
      {kept.map((design) => (
        <li key={design.id}>
          <button type="button" className={styles.open} onClick={() => void files.openKept(design.id)}>
            <span className={styles.title}>{design.title}</span>
            <span className={styles.when}>
              {design.id === present ? 'open now' : agoWords(Math.max(0, Date.now() - design.savedAt))}
            </span>
          </button>
          {design.id === present ? null : (
            <Button
              small
              look={asked === design.id ? 'plain' : 'quiet'}
              aria-label={`Remove ${design.title} from this browser`}
              onClick={() => {
                if (asked !== design.id) return setAsked(design.id);
                void files.forgetKept(design.id).then(renew);
              }}
            >
              {asked === design.id ? 'Remove for good' : 'Remove'}
            </Button>
          )}
        </li>
      ))}
    </ul>
  );
};

/** New, open, and what is kept in this browser. */
export const DesignsDialog = () => {
  const lay = useDesk((desk) => desk.lay);
  const { files } = useBench();
  return (
    <Dialog title="Designs" onClose={() => lay(null)}>
      <div className={styles.actions}>
        <Button look="main" onClick={() => void files.newDesign()}>
          New design
        </Button>
        <Button onClick={() => void files.openFile()} title="Ctrl O">
          Open a file…
        </Button>
      </div>
      <Heading level={3} title="Kept in this browser" />
      <KeptList />
      <Heading level={3} title="Demo designs" aside="invented vehicles, yours to take apart" />
      <ul className={styles.list}>
        {DEMOS.map((demo) => (
          <li key={demo.name}>
            <button type="button" className={styles.open} onClick={() => void files.openDemo(demo.name)}>
              <span className={styles.title}>{demo.title}</span>
              <span className={styles.about}>{DEMO_WORDS[demo.name]}</span>
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
};

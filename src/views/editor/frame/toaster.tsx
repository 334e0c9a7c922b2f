import { useEffect } from 'react';
import { Button } from '../parts/index.ts';
import type { Brief } from '../state/desk.ts';
import { useDesk } from '../state/use-desk.ts';
import styles from './toaster.module.css';

/** Long enough to be read twice; what is wrong stays until it is sent away. */
const SHOWN_MS = 6000;

const BriefLine = ({ brief }: { readonly brief: Brief }) => {
  const forget = useDesk((desk) => desk.forget);
  useEffect(() => {
    if (brief.tone === 'trouble') return;
    const timer = setTimeout(() => forget(brief.id), SHOWN_MS);
    return () => clearTimeout(timer);
  }, [brief, forget]);
  return (
    <div className={styles.brief} data-tone={brief.tone}>
      <span>{brief.says}</span>
      <Button look="quiet" small aria-label="Send this line away" onClick={() => forget(brief.id)}>
        ✕
      </Button>
    </div>
  );
};

/** Brief facts at the foot of the window, read out by a screen reader as they come. */
export const Toaster = () => {
  const briefs = useDesk((desk) => desk.briefs);
  return (
    <div className={styles.toaster} role="status" aria-live="polite">
      {briefs.map((brief) => (
        <BriefLine key={brief.id} brief={brief} />
      ))}
    </div>
  );
};

import { Button, SeverityMark } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useDesk } from '../state/use-desk.ts';
import { useEditor } from '../state/use-editor.ts';
import styles from './banner.module.css';

/** What a person must know before going on: the design is open elsewhere, cannot be kept, or is not inspected. */
export const Banner = () => {
  const save = useEditor((editor) => editor.save);
  const engine = useDesk((desk) => desk.engine);
  const { files } = useBench();
  if (save.kind === 'elsewhere')
    return (
      <div className={styles.banner} role="alert">
        <SeverityMark severity="caution" />
        <span>This design is open in another tab. What you change here is not kept.</span>
        <Button small onClick={() => void files.workHere()}>
          Work here instead
        </Button>
        <Button small onClick={() => void files.saveToFile()}>
          Save to a file
        </Button>
      </div>
    );
  if (save.kind === 'failed')
    return (
      <div className={styles.banner} role="alert">
        <SeverityMark severity="stop" />
        <span>This browser could not keep the design ({save.why}). Save it to a file before you close the page.</span>
        <Button small onClick={() => void files.saveToFile()}>
          Save to a file
        </Button>
      </div>
    );
  if (engine.kind === 'failed')
    return (
      <div className={styles.banner} role="alert">
        <SeverityMark severity="caution" />
        <span>The inspection stopped ({engine.says}). It begins again with the next change.</span>
      </div>
    );
  return null;
};

import { Dialog, Heading } from '../parts/index.ts';
import { useDesk } from '../state/use-desk.ts';
import styles from './help-dialog.module.css';

const FIRST_STEPS: readonly string[] = [
  'Survey: enter the sections of the cargo space, what stands in it, the hatch, the ratings and the weigh slip.',
  'Gear: paste the list from the department, or take pieces from the catalogue.',
  'Cabinet: add a carcass, divide its opening, put fittings in, give each piece of gear its place.',
  'Inspect: read what does not fit, move, carry or reach; every finding names its limit, where that comes from, and a way out.',
  'Shop: look over the cut list and the drawings, then save the packet.',
  'Review: release a revision, save the copy for the chief, bring the reply in.',
];

const KEYS: readonly (readonly [readonly string[], string])[] = [
  [['1', '…', '6'], 'go to a step'],
  [['Ctrl', 'K'], 'find a step, an opening, gear, a panel, a finding'],
  [['Ctrl', 'Z'], 'undo; with Shift, redo'],
  [['Ctrl', 'S'], 'save to a file'],
  [['Ctrl', 'O'], 'open a file'],
  [['Esc'], 'back out of a drag, a feeler line, a selection'],
  [['Enter'], 'take what is typed; Esc puts the old value back'],
  [['↑', '↓'], 'in a length: one sixteenth or one millimetre; with Shift, a larger step'],
  [['?'], 'this page'],
];

/** First steps, keys, and what the program does not answer for. */
export const HelpDialog = () => {
  const lay = useDesk((desk) => desk.lay);
  return (
    <Dialog title="Help" reading onClose={() => lay(null)}>
      <Heading level={3} title="The way through" />
      <ol className={styles.steps}>
        {FIRST_STEPS.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <Heading level={3} title="Keys" />
      <dl className={styles.keys}>
        {KEYS.map(([keys, says]) => (
          <div key={says} style={{ display: 'contents' }}>
            <dt>{keys.map((key) => (key === '…' ? <span key={key}>…</span> : <kbd key={key}>{key}</kbd>))}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <Heading level={3} title="Lengths" />
      <p>
        Write them as you say them: 14 3/8, 14-3/8", 1' 6 1/2", 365 mm, 36.5 cm, or a sum such as 14 3/8 + 1/4. A bare
        number takes the units chosen at the top. The design file always holds millimetres.
      </p>
      <Heading level={3} title="Where your work is" />
      <p>
        Every change is kept in this browser a moment after you make it, and is there again when you come back. Save to
        a file to take a design with you or to hand it on; a file can also be dropped anywhere on this window.
      </p>
      <p className={styles.caution}>
        Crash safety, vehicle certification and electrical work belong to local codes, the vehicle maker's body-builder
        guidance and licensed practice. A clean inspection is no approval; check every figure against the vehicle in
        front of you before you cut.
      </p>
    </Dialog>
  );
};

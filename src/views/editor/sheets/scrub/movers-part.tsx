import { useMemo } from 'react';
import { allMovers } from '../../bay/motion/all-movers.ts';
import { Button, Heading } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useNames } from '../../state/use-names.ts';
import sheet from '../sheet.module.css';
import styles from './mover-scrub.module.css';
import { MoverScrub } from './mover-scrub.tsx';

const useMovers = () => {
  const { fitOut, space } = useEditorParts((editor) => ({
    fitOut: editor.fitOut,
    space: editor.judgement?.space.ok ? editor.judgement.space.value : null,
  }));
  return useMemo(() => allMovers(fitOut, space), [fitOut, space]);
};

/** Everything that slides or turns, each to be moved by hand. */
export const MoversPart = () => {
  const movers = useMovers();
  const { nameOf } = useNames();
  const stowAll = useEditorParts((editor) => ({ stowAll: editor.stowAll })).stowAll;
  return (
    <section className={sheet.group} aria-label="Movers">
      <Heading
        level={3}
        title="Movers"
        actions={
          movers.length === 0 ? null : (
            <Button small onClick={stowAll}>
              Stow all
            </Button>
          )
        }
      />
      {movers.length === 0 ? (
        <p className={sheet.soft}>Nothing slides or turns yet.</p>
      ) : (
        <ul className={styles.list}>
          {movers.map((mover) => (
            <li key={mover.id}>
              <MoverScrub mover={mover} name={mover.origin === mover.id ? nameOf(mover.id) : mover.name} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

/** The movers of one part of the design: a fitting, a closure. Nothing where it does not move. */
export const ScrubsOf = ({ origin }: { readonly origin: string }) =>
  useMovers()
    .filter((mover) => mover.origin === origin)
    .map((mover) => <MoverScrub key={mover.id} mover={mover} name={`Move ${mover.name}`} />);

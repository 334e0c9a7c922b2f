import { FITTING_KINDS, fitOpening, type Opening } from '../../../../../design/index.ts';
import { FITTING_VIEWS } from '../../../fittings/index.ts';
import { useCabinet } from '../use-cabinet.ts';
import styles from './actions.module.css';

interface FitListProps {
  readonly opening: Opening;
  readonly onDone: () => void;
}

/** The kinds of fitting, each with a line on what it is for. */
export const FitList = ({ opening, onDone }: FitListProps) => {
  const { editor } = useCabinet();
  return (
    <ul className={styles.fits}>
      {FITTING_KINDS.map((kind) => {
        const { name, purpose } = FITTING_VIEWS[kind];
        return (
          <li key={kind}>
            <button
              type="button"
              onClick={() => {
                editor.getState().edit(`fit ${name}`, (now) => fitOpening(now, opening.id, kind));
                onDone();
              }}
            >
              <strong>{name}</strong>
              <span>{purpose}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
};

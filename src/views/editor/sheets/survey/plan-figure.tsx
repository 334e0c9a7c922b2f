import type { PlanFigure } from '../../../../envelope/index.ts';
import { DrawingBoard } from '../../parts/index.ts';
import styles from './readings.module.css';

interface PlanFigureViewProps {
  readonly figure: PlanFigure;
  /** The step whose reading is lit, or null. */
  readonly step: number | null;
}

/** The small drawing of the plan that shows where a reading is taken, the present one lit. */
export const PlanFigureView = ({ figure, step }: PlanFigureViewProps) => {
  const look = (own: number | null): string | undefined => (own !== null && own === step ? 'chosen' : undefined);
  return (
    <figure className={styles.planned}>
      <DrawingBoard
        label={`${figure.title}${step === null ? '' : `, reading ${step} lit`}`}
        from={figure.from}
        to={figure.to}
        margin={[6, 6, 6, 6]}
        tallest={250}
      >
        {(text) => (
          <>
            {figure.lines.map(({ from, to, role, step: own }) => (
              <line
                key={`${role} ${from.join(' ')} ${to.join(' ')} ${own}`}
                className={styles.drawn}
                data-role={role}
                data-look={look(own)}
                x1={from[0]}
                y1={-from[1]}
                x2={to[0]}
                y2={-to[1]}
                vectorEffect="non-scaling-stroke"
              />
            ))}
            {figure.marks.map(([u, v]) => (
              <circle key={`${u} ${v}`} className={styles.stuck} cx={u} cy={-v} r={text * 0.22} />
            ))}
            {figure.labels.map(({ at, text: words, step: own }) => (
              <text
                key={`${words} ${at.join(' ')}`}
                className={styles.figure}
                data-look={look(own)}
                data-word={own === null}
                x={at[0]}
                y={-at[1] + figure.letter * 0.5}
                // A capital is some 0.7 of the size of the lettering.
                fontSize={figure.letter / 0.7}
                strokeWidth={figure.letter * 0.4}
                textAnchor="middle"
              >
                {words}
              </text>
            ))}
          </>
        )}
      </DrawingBoard>
      <figcaption>{figure.title}</figcaption>
    </figure>
  );
};

import { memo } from 'react';
import type { LengthUnits } from '../../../../../base/index.ts';
import { classNames, Length } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import type { Chain, ChainPiece } from './dimension-chains.ts';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';

interface ChainFiguresProps {
  readonly chain: Chain;
  readonly layout: FaceLayout;
  readonly selected: string | null;
  /** Which figure, by the place of its chain and its own in it. */
  readonly onType: (side: Chain['side'], rank: number, index: number) => void;
}

const RULE_MARK = { fixed: '', share: 'share', hug: 'hug' } as const;

type Rule = (typeof RULE_MARK)[keyof typeof RULE_MARK];

const ruleOf = (piece: ChainPiece): Rule => (piece.sets.kind === 'part' ? RULE_MARK[piece.sets.rule.rule] : '');

interface FigureProps {
  readonly side: Chain['side'];
  readonly rank: number;
  readonly index: number;
  readonly left: number;
  readonly top: number;
  readonly mm: number;
  readonly rule: Rule;
  readonly marked: boolean;
  readonly units: LengthUnits;
  readonly onType: ChainFiguresProps['onType'];
}

/** Drawn anew only where it says or stands otherwise than before. */
const Figure = memo(({ side, rank, index, left, top, mm, rule, marked, units, onType }: FigureProps) => (
  <button
    type="button"
    className={classNames(styles.figure, styles[side])}
    data-selected={marked}
    style={{ left, top }}
    title={`Click and type${rule === '' ? '' : `; now ${rule === 'hug' ? 'as big as its content needs' : 'a share of what is left'}`}`}
    onClick={() => onType(side, rank, index)}
  >
    <Length mm={mm} units={units} />
    {rule === '' ? null : <i>{rule}</i>}
  </button>
));

/** The figures of a chain; a click on one opens it for typing. */
export const ChainFigures = ({ chain, layout, selected, onType }: ChainFiguresProps) => {
  const units = useUnits();
  const { side, rank } = chain;
  const at = layout.chainAt(chain);
  return chain.pieces.map((piece, index) => {
    const middle = (piece.from + piece.to) / 2;
    const [left, top] = side === 'bottom' ? [layout.x(middle), at] : [at, layout.y(middle)];
    return (
      <Figure
        // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a chain keep their order
        key={index}
        side={side}
        rank={rank}
        index={index}
        left={left}
        top={top}
        mm={piece.to - piece.from}
        rule={ruleOf(piece)}
        marked={piece.room !== null && piece.room === selected}
        units={units}
        onType={onType}
      />
    );
  });
};

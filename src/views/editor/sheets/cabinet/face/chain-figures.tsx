import { classNames, Length } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import type { Chain, ChainPiece } from './dimension-chains.ts';
import styles from './face.module.css';
import type { FaceLayout } from './face-layout.ts';

interface ChainFiguresProps {
  readonly chain: Chain;
  readonly layout: FaceLayout;
  readonly selected: string | null;
  readonly onType: (piece: ChainPiece) => void;
}

const RULE_MARK = { fixed: '', share: 'share', hug: 'hug' } as const;

const ruleOf = (piece: ChainPiece): string => (piece.sets.kind === 'part' ? RULE_MARK[piece.sets.rule.rule] : '');

/** The figures of a chain; a click on one opens it for typing. */
export const ChainFigures = ({ chain, layout, selected, onType }: ChainFiguresProps) => {
  const units = useUnits();
  const at = layout.chainAt(chain);
  return chain.pieces.map((piece) => {
    const middle = (piece.from + piece.to) / 2;
    const place = chain.side === 'bottom' ? { left: layout.x(middle), top: at } : { left: at, top: layout.y(middle) };
    const rule = ruleOf(piece);
    return (
      <button
        key={piece.from}
        type="button"
        className={classNames(styles.figure, styles[chain.side])}
        data-selected={piece.room !== null && piece.room === selected}
        style={place}
        title={`Click and type${rule === '' ? '' : `; now ${rule === 'hug' ? 'as big as its content needs' : 'a share of what is left'}`}`}
        onClick={() => onType(piece)}
      >
        <Length mm={piece.to - piece.from} units={units} />
        {rule === '' ? null : <i>{rule}</i>}
      </button>
    );
  });
};

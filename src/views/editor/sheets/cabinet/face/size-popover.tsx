import { useEffect, useRef } from 'react';
import { changeCarcass, type NodeId, type SizeRule } from '../../../../../design/index.ts';
import { Button, LengthField, NumberField, Segment } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { withPartSize } from '../typed-size.ts';
import { useCabinet } from '../use-cabinet.ts';
import type { ChainPiece } from './dimension-chains.ts';
import styles from './face.module.css';

interface SizePopoverProps {
  readonly carcass: NodeId;
  readonly piece: ChainPiece;
  readonly at: { readonly left: number; readonly top: number };
  readonly onClose: () => void;
}

const RULES: readonly { readonly value: SizeRule['rule']; readonly label: string }[] = [
  { value: 'fixed', label: 'fixed' },
  { value: 'share', label: 'share' },
  { value: 'hug', label: 'hug' },
];

const RULE_HINTS: Readonly<Record<SizeRule['rule'], string>> = {
  fixed: 'Stays as typed.',
  share: 'Takes its share of what the others leave.',
  hug: 'As big as its content and hand room need.',
};

/** A figure of the chains opened for typing, with the rule that it follows. */
export const SizePopover = ({ carcass, piece, at, onClose }: SizePopoverProps) => {
  const { editor } = useCabinet();
  const units = useUnits();
  const box = useRef<HTMLDivElement>(null);
  const { sets } = piece;
  const present = piece.to - piece.from;
  useEffect(() => {
    const input = box.current?.querySelector('input');
    input?.focus();
    input?.select();
  }, []);
  const setRule = (rule: SizeRule): void => {
    if (sets.kind === 'part')
      editor.getState().edit('change a size', (now) => withPartSize(now, sets.parent, sets.index, rule));
  };
  const commit = (mm: number): void => {
    if (sets.kind === 'part') setRule({ rule: 'fixed', mm });
    else
      editor.getState().edit(`change the ${sets.side}`, (now) => {
        const size = now.cabinet.carcasses.find((one) => one.id === carcass)?.size;
        return size ? changeCarcass(now, carcass, { size: { ...size, [sets.side]: mm } }) : now;
      });
    onClose();
  };
  const rule = sets.kind === 'part' ? sets.rule : null;
  return (
    <div
      ref={box}
      className={styles.popover}
      style={at}
      role="dialog"
      aria-label="Size"
      onKeyDown={(event) => {
        if (event.key !== 'Escape' && !(event.key === 'Enter' && event.target instanceof HTMLInputElement)) return;
        event.stopPropagation();
        if (event.key === 'Escape') onClose();
        // A figure that cannot be read stays open with its sentence, which is on screen by the next frame.
        else requestAnimationFrame(() => box.current?.querySelector('[aria-invalid="true"]') ?? onClose());
      }}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) onClose();
      }}
    >
      <LengthField
        label={sets.kind === 'part' ? 'Inside size' : sets.side === 'width' ? 'Overall width' : 'Overall height'}
        valueMm={present}
        units={units}
        min={1}
        onCommit={commit}
      />
      {rule ? (
        <>
          <Segment
            label="How it is measured"
            value={rule.rule}
            choices={RULES}
            onCommit={(next) =>
              setRule(
                next === 'fixed'
                  ? { rule: 'fixed', mm: present }
                  : next === 'share'
                    ? { rule: 'share', weight: 1 }
                    : { rule: 'hug' },
              )
            }
          />
          {rule.rule === 'share' ? (
            <NumberField
              label="Share, against the others"
              value={rule.weight}
              min={0.1}
              max={1000}
              step={0.5}
              onCommit={(weight) => setRule({ rule: 'share', weight })}
            />
          ) : null}
          <p className={styles.popoverHint}>{RULE_HINTS[rule.rule]}</p>
        </>
      ) : null}
      <Button small look="quiet" onClick={onClose}>
        Done
      </Button>
    </div>
  );
};

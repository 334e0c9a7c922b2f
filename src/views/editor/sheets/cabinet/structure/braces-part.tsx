import type { Vec3 } from '../../../../../base/index.ts';
import {
  addBrace,
  BRACE_FACES,
  type Brace,
  type Carcass,
  changeBrace,
  removeBrace,
} from '../../../../../design/index.ts';
import { HardwareField } from '../../../fittings/index.ts';
import { Button, ChoiceField, LengthField } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import sheet from '../../sheet.module.css';
import { carcassWords } from '../names.ts';
import { PieceCard } from '../piece-card.tsx';
import settings from '../settings/settings.module.css';
import { useCabinet } from '../use-cabinet.ts';
import { braceResult } from './structure-words.ts';

const FACE_WORDS: Readonly<Record<Brace['lies'], string>> = {
  top: 'their tops',
  rear: 'their rear faces',
  front: 'their front faces',
  left: 'their left faces',
  right: 'their right faces',
};
const FACES = BRACE_FACES.map((value) => ({ value, label: FACE_WORDS[value] }));

/** The two axes that an end is measured on, by the face that the brace lies on: forward, left and up are 0, 1 and 2. */
const MEASURED: { readonly [F in Brace['lies']]: readonly [0 | 1, 1 | 2] } = {
  top: [0, 1],
  rear: [1, 2],
  front: [1, 2],
  left: [0, 2],
  right: [0, 2],
};
const AXIS_WORDS = ['forward', 'left', 'up'] as const;

interface EndFieldsProps {
  readonly brace: Brace;
  readonly which: 'from' | 'to';
  readonly onChange: (change: Partial<Brace>) => void;
}

/** One end of a brace: the carcass, and where from the low corner of it. */
const EndFields = ({ brace, which, onChange }: EndFieldsProps) => {
  const { design } = useCabinet();
  const units = useUnits();
  const end = brace[which];
  const word = which === 'from' ? 'One end' : 'Other end';
  return (
    <>
      <ChoiceField
        label={`${word} on`}
        value={end.carcass as string}
        choices={design.cabinet.carcasses.map((own) => ({ value: own.id as string, label: carcassWords(own) }))}
        onCommit={(value) => {
          const chosen = design.cabinet.carcasses.find(({ id }) => id === value);
          if (chosen) onChange({ [which]: { ...end, carcass: chosen.id } });
        }}
      />
      {MEASURED[brace.lies].map((axis) => (
        <LengthField
          key={axis}
          label={`${word}, ${AXIS_WORDS[axis]}`}
          valueMm={end.at[axis]}
          units={units}
          min={0}
          onCommit={(mm) => {
            const at = end.at.map((own, i) => (i === axis ? mm : own)) as unknown as Vec3;
            onChange({ [which]: { ...end, at } });
          }}
        />
      ))}
    </>
  );
};

/** The bars that tie a carcass to others: which, where, and how long they came to be. */
export const BracesPart = ({ carcass }: { readonly carcass: Carcass }) => {
  const { editor, design, fitOut } = useCabinet();
  const units = useUnits();
  const { edit, select } = editor.getState();
  const own = design.cabinet.braces.filter(({ from, to }) => from.carcass === carcass.id || to.carcass === carcass.id);
  if (design.cabinet.carcasses.length < 2) return null;
  const add = (): void => {
    const { id } = addBrace(editor.getState().history.design, carcass.id);
    edit('brace two carcasses', (now) => addBrace(now, carcass.id).design);
    select([carcass.id, id]);
  };
  const nameOf = (id: string): string => {
    const found = design.cabinet.carcasses.find((each) => each.id === id);
    return found ? carcassWords(found) : id;
  };
  return (
    <>
      <ul className={sheet.group} aria-label="Braces" hidden={own.length === 0}>
        {own.map((brace) => {
          const onChange = (change: Partial<Brace>): void =>
            edit('change a brace', (now) => changeBrace(now, brace.id, change));
          const other = brace.from.carcass === carcass.id ? brace.to.carcass : brace.from.carcass;
          return (
            <PieceCard
              key={brace.id}
              within={[carcass.id]}
              id={brace.id}
              words={`Brace to ${nameOf(other)}`}
              about={braceResult(fitOut, brace, units)}
              onRemove={() => edit('take a brace out', (now) => removeBrace(now, brace.id))}
            >
              <div className={settings.fields}>
                <HardwareField
                  label="Bar"
                  value={brace.item}
                  kinds={['brace']}
                  none="choose one"
                  onChange={(item) => item !== null && onChange({ item })}
                />
                <ChoiceField
                  label="Lies on"
                  value={brace.lies}
                  choices={FACES}
                  onCommit={(lies) => onChange({ lies })}
                />
              </div>
              <div className={settings.fields}>
                <EndFields brace={brace} which="from" onChange={onChange} />
                <EndFields brace={brace} which="to" onChange={onChange} />
              </div>
              <p className={sheet.soft}>Measured from the low corner of each carcass, forward, to the left and up.</p>
            </PieceCard>
          );
        })}
      </ul>
      <div className={sheet.head}>
        <Button small onClick={add}>
          Brace it to another carcass
        </Button>
      </div>
    </>
  );
};

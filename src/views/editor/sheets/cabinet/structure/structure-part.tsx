import type { ReactNode } from 'react';
import {
  addStructure,
  addWheelhouses,
  type Carcass,
  changeStructure,
  removeStructure,
  type StructureList,
} from '../../../../../design/index.ts';
import { askFor, wheelhouseAsks } from '../../../../../inspection/index.ts';
import { Button } from '../../../parts/index.ts';
import { useEditor } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import sheet from '../../sheet.module.css';
import { PieceCard } from '../piece-card.tsx';
import { useCabinet } from '../use-cabinet.ts';
import { BracesPart } from './braces-part.tsx';
import { ChamferFields } from './chamfer-fields.tsx';
import { ChaseFields } from './chase-fields.tsx';
import { StandFields } from './stand-fields.tsx';
import {
  chamferResult,
  chamferWords,
  chaseResult,
  chaseWords,
  wheelhouseResult,
  wheelhouseWords,
} from './structure-words.ts';
import { WheelhouseFields } from './wheelhouse-fields.tsx';

const ADDS = [
  { list: 'chamfers', label: 'Cut a corner off', step: 'cut a corner off' },
  { list: 'wheelhouses', label: 'Stand over a wheelhouse', step: 'stand over a wheelhouse' },
  { list: 'chases', label: 'Add a wiring chase', step: 'add a wiring chase' },
] as const satisfies readonly { readonly list: StructureList; readonly label: string; readonly step: string }[];

interface StructurePartProps {
  readonly carcass: Carcass;
}

const useStructure = ({ id, wheelhouses }: Carcass) => {
  const { editor, design, fitOut, rules } = useCabinet();
  const space = useEditor((state) => (state.judgement?.space.ok ? state.judgement.space.value : null));
  const asks = wheelhouseAsks({ design, space, fitout: fitOut, rules }, id);
  const unmet = asks.filter((ask) => !wheelhouses.some((own) => askFor(own, [ask]) !== null));
  const { edit, select } = editor.getState();
  const change = <L extends StructureList>(list: L, step: string) => {
    return (piece: Carcass[L][number]): void => edit(step, (now) => changeStructure(now, id, list, piece));
  };
  return {
    asks,
    unmet,
    takeFromSurvey: (): void => {
      const cuts = unmet.map(({ cut }) => cut);
      const { ids } = addWheelhouses(editor.getState().history.design, id, cuts);
      edit('take wheelhouses from the survey', (now) => addWheelhouses(now, id, cuts).design);
      select([id, ...ids]);
    },
    add: (list: StructureList, step: string): void => {
      const { id: added } = addStructure(editor.getState().history.design, id, list);
      edit(step, (now) => addStructure(now, id, list).design);
      select([id, added]);
    },
    chamfer: change('chamfers', 'change a chamfer'),
    chase: change('chases', 'change a wiring chase'),
    wheelhouse: change('wheelhouses', 'change a wheelhouse'),
    remove: (list: StructureList, piece: Carcass[StructureList][number]): void => {
      edit('leave a corner or a hole whole', (now) => removeStructure(now, id, list, piece.id));
      select([id]);
    },
  };
};

/** What makes a carcass other than a plain box: what it stands on, corners cut off, wheelhouses, wiring chases. */
export const StructurePart = ({ carcass }: StructurePartProps) => {
  const { fitOut } = useCabinet();
  const units = useUnits();
  const structure = useStructure(carcass);
  const pieces = carcass.chamfers.length + carcass.wheelhouses.length + carcass.chases.length;
  const card = (
    list: StructureList,
    piece: Carcass[StructureList][number],
    words: string,
    about: string,
    fields: ReactNode,
  ) => (
    <PieceCard
      key={piece.id}
      within={[carcass.id]}
      id={piece.id}
      words={words}
      about={about}
      onRemove={() => structure.remove(list, piece)}
    >
      {fields}
    </PieceCard>
  );
  return (
    <>
      <StandFields carcass={carcass} />
      <ul className={sheet.group} aria-label="Corners and holes" hidden={pieces === 0}>
        {carcass.chamfers.map((own) =>
          card(
            'chamfers',
            own,
            chamferWords(own),
            chamferResult(fitOut, own, units),
            <ChamferFields chamfer={own} onChange={structure.chamfer} />,
          ),
        )}
        {carcass.wheelhouses.map((own) =>
          card(
            'wheelhouses',
            own,
            wheelhouseWords(own),
            wheelhouseResult(fitOut, own, units),
            <WheelhouseFields wheelhouse={own} asks={structure.asks} onChange={structure.wheelhouse} />,
          ),
        )}
        {carcass.chases.map((own) =>
          card(
            'chases',
            own,
            chaseWords(own),
            chaseResult(fitOut, carcass, own, units),
            <ChaseFields chase={own} onChange={structure.chase} />,
          ),
        )}
      </ul>
      <div className={sheet.head}>
        {structure.unmet.length > 0 ? (
          <Button small onClick={structure.takeFromSurvey}>
            {structure.unmet.length === 1
              ? 'Take the wheelhouse from the survey'
              : 'Take the wheelhouses from the survey'}
          </Button>
        ) : null}
        {ADDS.map(({ list, label, step }) => (
          <Button key={list} small onClick={() => structure.add(list, step)}>
            {label}
          </Button>
        ))}
      </div>
      <BracesPart carcass={carcass} />
    </>
  );
};

import { houseRules } from '../../../../catalog/index.ts';
import {
  addSurveyItem,
  CLOSURE_KINDS,
  type Closure,
  changeSurveyItem,
  setHouseRule,
} from '../../../../design/index.ts';
import { Button, ChoiceField, LengthField, NumberField, TextField } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useAdd } from '../../state/use-add.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import { ScrubsOf } from '../scrub/movers-part.tsx';
import styles from '../sheet.module.css';
import { Aperture } from './aperture.tsx';
import { ClosureChecks } from './closure-checks.tsx';
import { ItemCard } from './item-card.tsx';
import { OutlineFields, PointFields } from './solid-fields.tsx';

const words = (id: string): string => id.replace(/-/g, ' ');
const choices = <V extends string>(values: readonly V[]) => values.map((value) => ({ value, label: words(value) }));

const OUTWARD: readonly Closure['outward'][] = ['rear', 'left', 'right'];
const HANGS: readonly Closure['hangs'][] = ['down', 'up', 'left', 'right', 'forward', 'rearward'];

const ClosureFields = ({ closure }: { readonly closure: Closure }) => {
  const edit = useEditor((editor) => editor.edit);
  const closures = useEditor((editor) => editor.history.design.survey.closures);
  const units = useUnits();
  const change = (label: string, part: Partial<Omit<Closure, 'id'>>): void =>
    edit(label, (design) => changeSurveyItem(design, 'closures', closure.id, part));
  const { hinge } = closure;
  return (
    <div className={styles.group}>
      <div className={styles.fields}>
        <TextField label="Name" value={closure.name} onCommit={(name) => change('name a closure', { name })} />
        <ChoiceField
          label="Kind"
          value={closure.kind}
          choices={choices(CLOSURE_KINDS)}
          onCommit={(kind) => change('change a closure', { kind })}
        />
        <NumberField
          label="Opens by"
          value={closure.opensDeg}
          unit="°"
          min={1}
          max={270}
          onCommit={(opensDeg) => change('change how far a closure opens', { opensDeg })}
        />
        <LengthField
          label="Thickness"
          valueMm={closure.thicknessMm}
          units={units}
          min={1}
          onCommit={(thicknessMm) => change('change a closure', { thicknessMm })}
        />
        <ChoiceField
          label="Looks out to the"
          value={closure.outward}
          choices={choices(OUTWARD)}
          onCommit={(outward) => change('change a closure', { outward })}
        />
        <ChoiceField
          label="Hangs from the hinge"
          value={closure.hangs}
          choices={choices(HANGS)}
          onCommit={(hangs) => change('change a closure', { hangs })}
        />
        <ChoiceField
          label="Part of"
          value={closure.carriedBy ?? ''}
          choices={[
            { value: '', label: 'the vehicle' },
            ...closures
              .filter((one) => one.id !== closure.id)
              .map((one) => ({ value: one.id as string, label: one.name })),
          ]}
          onCommit={(id) =>
            change('change what a closure is part of', { carriedBy: closures.find((one) => one.id === id)?.id ?? null })
          }
          hint={closure.kind === 'hatch-glass' && closure.carriedBy ? 'opens by itself, and rides with it' : undefined}
        />
      </div>
      <div className={styles.fields}>
        <PointFields
          label="Hinge line from"
          at={hinge.from}
          onCommit={(from) => change('move a hinge line', { hinge: { ...hinge, from } })}
        />
        <PointFields
          label="Hinge line to"
          at={hinge.to}
          onCommit={(to) => change('move a hinge line', { hinge: { ...hinge, to } })}
        />
      </div>
      <ClosureChecks closure={closure} />
      <OutlineFields
        label="Inner trim when closed"
        axes={['from the hinge', 'into the cargo space']}
        points={closure.innerProfile}
        least={2}
        onCommit={(points) =>
          change('change the inner trim of a closure', { innerProfile: points.map(([a, b]) => [a, b] as const) })
        }
      />
    </div>
  );
};

const START: Omit<Closure, 'id'> = {
  name: 'hatch',
  kind: 'lift-hatch',
  hinge: { from: [20, -600, 950], to: [20, 600, 950] },
  outward: 'rear',
  hangs: 'down',
  innerProfile: [
    [0, 0],
    [400, -60],
    [930, -50],
  ],
  thicknessMm: 50,
  opensDeg: 85,
  carriedBy: null,
};

/** Glass in the upper half of a hatch, hinged just under its hinge, that opens while the hatch stays closed. */
const glassIn = (hatch: Closure): Omit<Closure, 'id'> => {
  const { from, to } = hatch.hinge;
  const reach = Math.max(...hatch.innerProfile.map(([away]) => away));
  const under = (at: Closure['hinge']['from']): Closure['hinge']['from'] => [at[0] - 10, at[1], at[2] - 40];
  return {
    ...START,
    name: 'glass',
    kind: 'hatch-glass',
    hinge: { from: under(from), to: under(to) },
    innerProfile: [
      [0, 0],
      [Math.round(reach / 2), 0],
    ],
    thicknessMm: 6,
    opensDeg: 90,
    carriedBy: hatch.id,
  };
};

const ROOF = 'roof-height-station';

/** The lowest roof that the closures open under: a house rule that is asked where the closures are. */
const LowRoof = () => {
  const { catalog } = useBench();
  const { changes, measuredBy, edit } = useEditorParts((editor) => ({
    changes: editor.history.design.houseRules,
    measuredBy: editor.history.design.survey.measuredBy,
    edit: editor.edit,
  }));
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <LengthField
        label="Lowest roof they open under"
        valueMm={houseRules(catalog, changes).value(ROOF)}
        units={units}
        min={1}
        remark="above ground"
        onCommit={(value) =>
          edit('change the lowest roof', (design) =>
            setHouseRule(design, {
              rule: ROOF,
              value,
              who: measuredBy === '' ? 'the shop' : measuredBy,
              why: 'the roof that the vehicle stands under',
            }),
          )
        }
      />
    </div>
  );
};

/** Hatch, tailgate, doors: hinge line, travel and inner trim, and how far each stands open now. */
export const Closures = () => {
  const add = useAdd();
  const { closures } = useEditorParts((editor) => ({
    closures: editor.history.design.survey.closures,
  }));
  return (
    <>
      <p className={styles.soft}>Opening a closure here swings it in the bay; it is not part of the design.</p>
      <ul className={styles.group}>
        {closures.map((closure) => (
          <ItemCard
            key={closure.id}
            list="closures"
            id={closure.id}
            name={closure.name}
            about={`${words(closure.kind)}, opens ${closure.opensDeg}°`}
          >
            <ClosureFields closure={closure} />
          </ItemCard>
        ))}
      </ul>
      {closures.length === 0 ? null : <LowRoof />}
      {closures.map((closure) => (
        <ScrubsOf key={closure.id} origin={closure.id} />
      ))}
      <Aperture />
      <div className={styles.bar}>
        <Button onClick={() => add('add a closure', (design) => addSurveyItem(design, 'closures', START))}>
          Add a closure
        </Button>
        {closures
          .filter(({ id, kind }) => kind === 'lift-hatch' && !closures.some((one) => one.carriedBy === id))
          .map((hatch) => (
            <Button
              key={hatch.id}
              onClick={() => add('add opening glass', (design) => addSurveyItem(design, 'closures', glassIn(hatch)))}
            >
              Add glass that opens by itself in the {hatch.name}
            </Button>
          ))}
      </div>
    </>
  );
};

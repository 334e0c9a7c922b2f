import { lazy, Suspense } from 'react';
import { type AxisPlace, type Carcass, changeCarcass, type Joints } from '../../../../../design/index.ts';
import { HardwareField, MaterialField } from '../../../fittings/index.ts';
import { ChoiceField, LengthField, TextField, WhenSeen } from '../../../parts/index.ts';
import { useUnits } from '../../../state/use-units.ts';
import { useCabinet } from '../use-cabinet.ts';
import { PlaceFields } from './place-fields.tsx';
import styles from './settings.module.css';

/** Fetched when they come into view. */
const StructurePart = lazy(async () => ({ default: (await import('../structure/structure-part.tsx')).StructurePart }));
const AnchorsPart = lazy(async () => ({ default: (await import('../anchors/anchors-part.tsx')).AnchorsPart }));

const FACINGS: readonly { readonly value: Carcass['facing']; readonly label: string }[] = [
  { value: 'rear', label: 'to the rear' },
  { value: 'left', label: 'to the left' },
  { value: 'right', label: 'to the right' },
  { value: 'front', label: 'to the front' },
];

const CORNERS: readonly { readonly value: Joints['corner']; readonly label: string }[] = [
  { value: 'dado', label: 'dado' },
  { value: 'rabbet', label: 'rabbet' },
  { value: 'butt', label: 'butt' },
];

const BACKS: readonly { readonly value: Joints['back']['kind']; readonly label: string }[] = [
  { value: 'groove', label: 'in a groove' },
  { value: 'rabbet', label: 'in a rabbet' },
  { value: 'none', label: 'no back' },
];

const SIZES = ['width', 'height', 'depth'] as const;
const SIZE_WORDS = { width: 'Width', height: 'Height', depth: 'Depth' } as const;

/** Usual joints of a back, for a carcass that gets one: half way into common sheet, a little in from the rear. */
const FRESH_BACK: { readonly [Kind in Joints['back']['kind']]: Joints['back'] } = {
  groove: { kind: 'groove', grooveDepthMm: 6, setbackMm: 12 },
  rabbet: { kind: 'rabbet', depthMm: 6 },
  none: { kind: 'none' },
};

/** A carcass: where it stands, how big it is, what it is made of. */
export const CarcassSettings = ({ carcass }: { readonly carcass: Carcass }) => {
  const { editor, selection } = useCabinet();
  const units = useUnits();
  const change = (label: string, part: Parameters<typeof changeCarcass>[2]): void =>
    editor.getState().edit(label, (now) => changeCarcass(now, carcass.id, part));
  const setPlace = (axis: 'x' | 'y' | 'z', place: AxisPlace): void =>
    change('move a carcass', { place: { ...carcass.place, [axis]: place } });
  const setJoints = (part: Partial<Joints>): void =>
    change('change the joints', { joints: { ...carcass.joints, ...part } });
  return (
    <>
      <div className={styles.fields}>
        <TextField
          label="Name"
          value={carcass.name}
          required
          onCommit={(name) => change('rename a carcass', { name })}
        />
        {SIZES.map((side) => (
          <LengthField
            key={side}
            label={SIZE_WORDS[side]}
            valueMm={carcass.size[side]}
            units={units}
            min={1}
            onCommit={(mm) => change(`change the ${side}`, { size: { ...carcass.size, [side]: mm } })}
          />
        ))}
        <ChoiceField
          label="Open face looks"
          value={carcass.facing}
          choices={FACINGS}
          onCommit={(facing) => change('turn a carcass', { facing })}
        />
        <MaterialField
          label="Made of"
          value={carcass.material}
          onChange={(material) => change('change the sheet', { material })}
        />
        <MaterialField
          label="Back"
          value={carcass.backMaterial}
          onChange={(backMaterial) => change('change the back', { backMaterial })}
        />
        <ChoiceField
          label="Corner joints"
          value={carcass.joints.corner}
          choices={CORNERS}
          onCommit={(corner) => setJoints({ corner })}
        />
        {carcass.joints.corner === 'butt' ? null : (
          <LengthField
            label="Joint depth"
            valueMm={carcass.joints.dadoDepthMm}
            units={units}
            min={0}
            onCommit={(dadoDepthMm) => setJoints({ dadoDepthMm })}
          />
        )}
        <ChoiceField
          label="Back stands"
          value={carcass.joints.back.kind}
          choices={BACKS}
          onCommit={(kind) => setJoints({ back: FRESH_BACK[kind] })}
        />
        <HardwareField
          label="Front edges"
          value={carcass.edgeBand}
          kinds={['edge-band']}
          none="bare"
          onChange={(edgeBand) => change('change the edge band', { edgeBand })}
        />
      </div>
      <h3 className={styles.subhead}>Where it stands</h3>
      <PlaceFields carcass={carcass} onChange={setPlace} />
      <WhenSeen now={selection.some((id) => id !== carcass.id)}>
        <Suspense fallback={null}>
          <h3 className={styles.subhead}>What it stands on, corners and holes</h3>
          <StructurePart carcass={carcass} />
          <h3 className={styles.subhead}>What holds it down</h3>
          <AnchorsPart carcass={carcass} />
        </Suspense>
      </WhenSeen>
    </>
  );
};

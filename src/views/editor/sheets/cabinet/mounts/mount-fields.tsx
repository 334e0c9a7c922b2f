import { add, ORIGIN, subtract, type Vec3 } from '../../../../../base/index.ts';
import { MOUNT_LOOKS, type Mount } from '../../../../../design/index.ts';
import { deviceChoices } from '../../../fittings/choices.ts';
import { HardwareField } from '../../../fittings/index.ts';
import { Button, CheckField, ChoiceField, LengthField, TextField } from '../../../parts/index.ts';
import { useBench } from '../../../state/bench.ts';
import { useEditor } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import sheet from '../../sheet.module.css';
import { carcassWords } from '../names.ts';
import { lowCorner } from '../settings/low-corner.ts';
import styles from '../settings/settings.module.css';
import { useCabinet } from '../use-cabinet.ts';
import { setAgainst } from './set-against.ts';

const LOOK_WORDS: Readonly<Record<Mount['looks'], string>> = {
  front: 'forward',
  rear: 'to the rear',
  left: 'to the left',
  right: 'to the right',
  up: 'up',
  down: 'down',
};
const LOOKS = MOUNT_LOOKS.map((value) => ({ value, label: LOOK_WORDS[value] }));
const VEHICLE = '-';

interface MountFieldsProps {
  readonly mount: Mount;
  readonly onChange: (step: string, change: Partial<Omit<Mount, 'id'>>) => void;
}

/** What carries it. It stays where it is in the vehicle when another thing does. */
const CarrierField = ({ mount, onChange }: MountFieldsProps) => {
  const { design, fitOut } = useCabinet();
  const lowOf = (on: string | null): Vec3 => (on === null ? ORIGIN : (lowCorner(fitOut, on) ?? ORIGIN));
  const carriers = [
    ...design.survey.closures.map(({ id, name }) => ({ id, label: name })),
    ...design.cabinet.carcasses.map((carcass) => ({ id: carcass.id, label: `outside of ${carcassWords(carcass)}` })),
  ];
  const choose = (value: string): void => {
    const on = carriers.find(({ id }) => id === value)?.id ?? null;
    onChange('hang a mount elsewhere', { on, at: subtract(add(mount.at, lowOf(mount.on)), lowOf(on)) });
  };
  return (
    <ChoiceField
      label="Carried by"
      value={mount.on ?? VEHICLE}
      choices={[
        { value: VEHICLE, label: 'the vehicle: trim or console' },
        ...carriers.map(({ id, label }) => ({ value: id as string, label })),
      ]}
      onCommit={choose}
    />
  );
};

const PLACES = ['Forward of the sill', 'Left of the middle', 'Above the floor'] as const;
const PLACES_ON_CARCASS = ['Forward of its low corner', 'Left of its low corner', 'Above its low corner'] as const;

/** Everything that one device outside the cabinet says. */
export const MountFields = (props: MountFieldsProps) => {
  const { mount, onChange } = props;
  const { design, fitOut } = useCabinet();
  const { catalog } = useBench();
  const units = useUnits();
  const space = useEditor((state) => (state.judgement?.space.ok ? state.judgement.space.value : null));
  const device = catalog.devices.get(mount.device);
  const onCarcass = design.cabinet.carcasses.some(({ id }) => id === mount.on);
  const against = space ? setAgainst(design, mount.id, fitOut, space) : null;
  return (
    <>
      <div className={styles.fields}>
        <ChoiceField
          label="Device"
          value={mount.device}
          choices={deviceChoices(catalog, mount.device)}
          onCommit={(next) => onChange('change a mount', { device: next })}
        />
        <TextField label="Name" value={mount.name} onCommit={(name) => onChange('rename a mount', { name })} />
        <CarrierField {...props} />
        <ChoiceField
          label="Its face looks"
          value={mount.looks}
          choices={LOOKS}
          onCommit={(looks) => onChange('turn a mount', { looks })}
        />
        {(onCarcass ? PLACES_ON_CARCASS : PLACES).map((label, axis) => (
          <LengthField
            key={label}
            label={label}
            valueMm={mount.at[axis] ?? 0}
            units={units}
            onCommit={(mm) =>
              onChange('move a mount', { at: mount.at.map((own, i) => (i === axis ? mm : own)) as unknown as Vec3 })
            }
          />
        ))}
        <HardwareField
          label="Comes off with"
          value={mount.bracket}
          kinds={['bracket', 'clip', 'arm']}
          none="nothing of its own"
          onChange={(bracket) => onChange('change a bracket', { bracket })}
        />
        <LengthField
          label="Free once it has come"
          valueMm={mount.offMm}
          units={units}
          min={0}
          remark={mount.offMm === null ? 'its own depth' : undefined}
          onCommit={(offMm) => onChange('change how a mount comes off', { offMm })}
          onClear={() => onChange('change how a mount comes off', { offMm: null })}
        />
        <CheckField
          label="Turned on its end"
          checked={mount.onEnd}
          onCommit={(onEnd) => onChange('turn a mount', { onEnd })}
        />
        <CheckField
          label="Let into what carries it"
          checked={mount.letIn}
          onCommit={(letIn) => onChange('let a mount in', { letIn })}
        />
      </div>
      {mount.letIn && device ? (
        <p className={sheet.soft}>
          Look behind the trim before it is cut: body, plug and cable take{' '}
          {Math.round(device.behindMm.body + device.behindMm.plug + device.behindMm.bend)} mm there.
        </p>
      ) : null}
      <div className={sheet.head}>
        <Button
          small
          disabled={against === null}
          onClick={() => against && onChange('set a mount against what carries it', { at: against })}
        >
          Set it against what carries it
        </Button>
      </div>
    </>
  );
};

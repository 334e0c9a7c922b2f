import { type Antenna, changeVehicle, freshIds, type RearView } from '../../../../design/index.ts';
import { Button, Heading, LengthField, NumberField, TextField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';

/** A usual place to begin from: to be measured, not believed. */
const START: RearView = {
  mirror: [2900, 0, 780],
  glassForwardMm: 150,
  glassLowMm: 520,
  glassHighMm: 950,
  glassWidthMm: 1100,
};

const MIRROR = ['Mirror, forward', 'Mirror, left', 'Mirror, up'] as const;
const GLASS: readonly { readonly key: Exclude<keyof RearView, 'mirror'>; readonly label: string }[] = [
  { key: 'glassForwardMm', label: 'Rear glass, forward of sill' },
  { key: 'glassLowMm', label: 'Glass, lower edge' },
  { key: 'glassHighMm', label: 'Glass, upper edge' },
  { key: 'glassWidthMm', label: 'Glass, clear width' },
];

type Point = readonly [number, number, number];
const withAxis = (point: Point, axis: number, mm: number): Point => [
  axis === 0 ? mm : point[0],
  axis === 1 ? mm : point[1],
  axis === 2 ? mm : point[2],
];

/** What the inside mirror sees through the rear glass. */
export const RearViewFields = () => {
  const { view, edit } = useEditorParts((editor) => ({
    view: editor.history.design.vehicle.rearView,
    edit: editor.edit,
  }));
  const units = useUnits();
  const set = (label: string, rearView: RearView | null): void =>
    edit(label, (now) => changeVehicle(now, { rearView }));
  return (
    <>
      <Heading
        level={3}
        title="Inside mirror"
        aside="from the cargo floor at the sill; outside mirrors and cameras are duties of their own"
        actions={
          view ? (
            <Button small onClick={() => set('remove the mirror', null)}>
              Remove
            </Button>
          ) : (
            <Button small onClick={() => set('enter the mirror', START)}>
              Enter mirror and glass
            </Button>
          )
        }
      />
      {view ? (
        <div className={styles.fields}>
          {MIRROR.map((label, axis) => (
            <LengthField
              key={label}
              label={label}
              valueMm={view.mirror[axis] ?? 0}
              units={units}
              onCommit={(mm) => set('move the mirror', { ...view, mirror: withAxis(view.mirror, axis, mm) })}
            />
          ))}
          {GLASS.map(({ key, label }) => (
            <LengthField
              key={key}
              label={label}
              valueMm={view[key]}
              units={units}
              onCommit={(mm) => set('change the rear glass', { ...view, [key]: mm })}
            />
          ))}
        </div>
      ) : null}
    </>
  );
};

const PLACE = ['Forward', 'Left', 'Up'] as const;

/** Antennas that send while people work at the hatch. */
export const Antennas = () => {
  const { antennas, edit } = useEditorParts((editor) => ({
    antennas: editor.history.design.vehicle.antennas,
    edit: editor.edit,
  }));
  const units = useUnits();
  const change = (id: string, part: Partial<Antenna>): void =>
    edit('change an antenna', (now) =>
      changeVehicle(now, { antennas: now.vehicle.antennas.map((own) => (own.id === id ? { ...own, ...part } : own)) }),
    );
  const add = (): void =>
    edit('add an antenna', (now) => {
      const id = freshIds(now)('antenna');
      const name = `antenna ${now.vehicle.antennas.length + 1}`;
      return changeVehicle(now, { antennas: [...now.vehicle.antennas, { id, name, at: [1500, 0, 1150], watts: 50 }] });
    });
  return (
    <>
      <Heading
        level={3}
        title="Antennas"
        aside="that send while people stand at the open hatch"
        actions={
          <Button small onClick={add}>
            Add an antenna
          </Button>
        }
      />
      {antennas.map((antenna) => (
        <div key={antenna.id} className={styles.fields}>
          <TextField label="Antenna" value={antenna.name} onCommit={(name) => change(antenna.id, { name })} />
          <NumberField
            label="Power"
            value={antenna.watts}
            unit="W"
            min={0.1}
            onCommit={(watts) => change(antenna.id, { watts })}
          />
          {PLACE.map((label, axis) => (
            <LengthField
              key={label}
              label={label}
              valueMm={antenna.at[axis] ?? 0}
              units={units}
              onCommit={(mm) => change(antenna.id, { at: withAxis(antenna.at, axis, mm) })}
            />
          ))}
          <div style={{ alignSelf: 'end' }}>
            <Button
              look="quiet"
              aria-label={`Remove ${antenna.name}`}
              onClick={() =>
                edit('remove an antenna', (now) =>
                  changeVehicle(now, { antennas: now.vehicle.antennas.filter(({ id }) => id !== antenna.id) }),
                )
              }
            >
              Remove
            </Button>
          </div>
        </div>
      ))}
    </>
  );
};

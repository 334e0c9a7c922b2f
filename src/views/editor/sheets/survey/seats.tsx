import { changeVehicle, freshIds, type Seat } from '../../../../design/index.ts';
import { Button, ChoiceField, Heading, LengthField, MassField, TextField } from '../../parts/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';

const AXES = ['Hip, forward', 'Hip, left', 'Hip, up'] as const;

/** Who rides, and where: the loads of the occupants. */
export const Seats = () => {
  const { seats, edit } = useEditorParts((editor) => ({
    seats: editor.history.design.vehicle.seats,
    edit: editor.edit,
  }));
  const units = useUnits();
  const change = (id: string, part: Partial<Seat>): void =>
    edit('change a seat', (now) =>
      changeVehicle(now, { seats: now.vehicle.seats.map((seat) => (seat.id === id ? { ...seat, ...part } : seat)) }),
    );
  const add = (): void =>
    edit('add a seat', (now) => {
      const seat: Seat = {
        id: freshIds(now)('seat'),
        name: now.vehicle.seats.length === 0 ? 'driver' : 'rider',
        at: [2500, now.vehicle.seats.length === 0 ? 390 : -390, 330],
        occupant: now.vehicle.seats.length === 0 ? 'driver' : 'crew',
        occupantKg: null,
      };
      return changeVehicle(now, { seats: [...now.vehicle.seats, seat] });
    });
  return (
    <>
      <Heading
        level={3}
        title="Seats"
        aside="an empty mass takes the house rule"
        actions={
          <Button small onClick={add}>
            Add a seat
          </Button>
        }
      />
      {seats.map((seat) => (
        <div key={seat.id} className={styles.fields}>
          <TextField label="Seat" value={seat.name} onCommit={(name) => change(seat.id, { name })} />
          <ChoiceField
            label="Rider"
            value={seat.occupant}
            choices={[
              { value: 'driver', label: 'driver' },
              { value: 'crew', label: 'crew' },
            ]}
            onCommit={(occupant) => change(seat.id, { occupant })}
          />
          <MassField
            label="Mass"
            valueKg={seat.occupantKg}
            units={units}
            decimals={0}
            onCommit={(occupantKg) => change(seat.id, { occupantKg })}
            onClear={() => change(seat.id, { occupantKg: null })}
          />
          {AXES.map((label, i) => (
            <LengthField
              key={label}
              label={label}
              valueMm={seat.at[i] ?? 0}
              units={units}
              onCommit={(mm) =>
                change(seat.id, {
                  at: [i === 0 ? mm : seat.at[0], i === 1 ? mm : seat.at[1], i === 2 ? mm : seat.at[2]],
                })
              }
            />
          ))}
          <div style={{ alignSelf: 'end' }}>
            <Button
              look="quiet"
              aria-label={`Remove the seat ${seat.name}`}
              onClick={() =>
                edit('remove a seat', (now) =>
                  changeVehicle(now, { seats: now.vehicle.seats.filter((one) => one.id !== seat.id) }),
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

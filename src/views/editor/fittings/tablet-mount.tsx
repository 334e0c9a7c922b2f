import type { TabletMount } from '../../../design/index.ts';
import { armReach } from '../../arm-reach.ts';
import { ChoiceField, Length, NumberField } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditorParts } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField } from './catalog-fields.tsx';
import { deviceChoices } from './choices.ts';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { useChangeFitting } from './use-change-fitting.ts';

const SIDES = [
  { value: 'left', label: 'to the left side' },
  { value: 'right', label: 'to the right side' },
] as const;

const Reach = ({ opening }: { readonly opening: string }) => {
  const units = useUnits();
  const { fitOut, floorMm } = useEditorParts((editor) => ({
    fitOut: editor.fitOut,
    floorMm: editor.history.design.vehicle.floorAboveGroundMm,
  }));
  const reach = armReach(fitOut, opening);
  if (reach === null) return null;
  return (
    <dl className={styles.result}>
      <div>
        <dt>Reaches</dt>
        <dd>
          <Length mm={reach.radiusMm} units={units} unit /> round its line at the face: the sphere in the bay
          {floorMm === null ? null : (
            <>
              , its middle <Length mm={reach.centre[2] + floorMm} units={units} unit /> above ground
            </>
          )}
        </dd>
      </div>
    </dl>
  );
};

const Form: FittingView<TabletMount>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<TabletMount>(opening);
  const { catalog } = useBench();
  const screens = deviceChoices(catalog, fitting.tablet).filter(
    ({ value }) => value === fitting.tablet || catalog.devices.get(value)?.kind === 'screen',
  );
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Arm"
        value={fitting.arm}
        kinds={['arm']}
        none="choose one"
        onChange={(arm) => arm !== null && change('change the arm', { arm })}
      />
      <ChoiceField
        label="Screen"
        value={fitting.tablet}
        choices={screens}
        onCommit={(tablet) => change('change the screen', { tablet })}
      />
      <ChoiceField
        label="Bolted"
        value={fitting.side}
        choices={SIDES}
        onCommit={(side) => change('change the side of the arm', { side })}
      />
      <NumberField
        label="Arm swings out by"
        value={fitting.swingDeg}
        unit="°"
        min={1}
        max={180}
        onCommit={(swingDeg) => change('change the swing of the arm', { swingDeg })}
      />
      <NumberField
        label="Screen turns by"
        value={fitting.turnDeg}
        unit="°"
        min={1}
        max={180}
        onCommit={(turnDeg) => change('change the turn of the screen', { turnDeg })}
      />
      <HardwareField
        label="Hold stowed"
        value={fitting.latch}
        kinds={['latch']}
        none="nothing"
        onChange={(latch) => change('change the latch', { latch })}
      />
      <Reach opening={opening} />
    </div>
  );
};

export const tabletMountView: FittingView<TabletMount> = { ...KIND_WORDS['tablet-mount'], Form };

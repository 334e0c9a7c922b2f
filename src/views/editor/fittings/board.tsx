import { useMemo } from 'react';
import { houseRules } from '../../../catalog/index.ts';
import type { CommandBoard } from '../../../design/index.ts';
import { gasSpringFigures } from '../../../inspection/index.ts';
import { CheckField, ChoiceField, LengthField, quantityText, TextField } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { useEditorParts } from '../state/use-editor.ts';
import { useUnits } from '../state/use-units.ts';
import { readStops } from './board-stops.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import { choiceOrNull, deviceChoices, NO_CHOICE } from './choices.ts';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { SlideField } from './slide-fields.tsx';
import { useChangeFitting } from './use-change-fitting.ts';

const WAYS = [
  { value: 'side-flip', label: 'turns about its side' },
  { value: 'top-flip', label: 'flips up about its top' },
  { value: 'slide-and-turn', label: 'slides out, then turns' },
] as const;

const SIDES = [
  { value: 'left', label: 'at the left' },
  { value: 'right', label: 'at the right' },
] as const;

const FaceFields: FittingView<CommandBoard>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<CommandBoard>(opening);
  const { catalog } = useBench();
  const lights = deviceChoices(catalog, fitting.worklight).filter(
    ({ value }) => value === fitting.worklight || catalog.devices.get(value)?.kind === 'light',
  );
  return (
    <>
      <CheckField
        label="Magnetic face"
        checked={fitting.magneticFace}
        onCommit={(magneticFace) => change('change the face of the board', { magneticFace })}
      />
      <HardwareField
        label="Marker tray"
        value={fitting.markerTray}
        kinds={['lip']}
        none="none"
        onChange={(markerTray) => change('change the marker tray', { markerTray })}
      />
      <ChoiceField
        label="Worklight"
        value={fitting.worklight ?? NO_CHOICE}
        choices={[{ value: NO_CHOICE, label: 'none' }, ...lights]}
        onCommit={(light) => change('change the worklight', { worklight: choiceOrNull(light) })}
      />
    </>
  );
};

const MotionFields: FittingView<CommandBoard>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<CommandBoard>(opening);
  return (
    <>
      <ChoiceField
        label="Board"
        value={fitting.way}
        choices={WAYS}
        onCommit={(way) => change('change the way of the board', { way })}
      />
      {fitting.way === 'top-flip' ? (
        <HardwareField
          label="Gas springs, a pair"
          value={fitting.springs}
          kinds={['gas-spring']}
          none="none"
          onChange={(springs) => change('change the gas springs', { springs })}
        />
      ) : (
        <ChoiceField
          label="Hinge"
          value={fitting.hinge}
          choices={SIDES}
          onCommit={(hinge) => change('change the hinge side', { hinge })}
        />
      )}
      <TextField
        label="Stops at (degrees)"
        value={fitting.stopsDeg.join(', ')}
        hint="Angles from stowed up to 180, with commas between them."
        onCommit={(text) => {
          const stopsDeg = readStops(text);
          if (stopsDeg) change('change the stops', { stopsDeg });
        }}
      />
      <HardwareField
        label="Held at its stops by"
        value={fitting.ratchet}
        kinds={['ratchet']}
        none="nothing"
        onChange={(ratchet) => change('change what holds the stops', { ratchet })}
      />
      {fitting.way === 'slide-and-turn' ? (
        <SlideField
          opening={opening}
          slide={fitting.slide}
          mounts={['side']}
          onChange={(slide) => change('change the slide', { slide, slideLengthMm: null })}
        />
      ) : null}
    </>
  );
};

/** What the springs of a board do on the coldest and on the hottest day. */
const SpringWords = ({ opening }: { readonly opening: string }) => {
  const { design, fitOut } = useEditorParts((editor) => ({ design: editor.history.design, fitOut: editor.fitOut }));
  const { catalog } = useBench();
  const rules = useMemo(() => houseRules(catalog, design.houseRules), [catalog, design.houseRules]);
  const figures = gasSpringFigures({ design, space: null, fitout: fitOut, catalog, rules }).find(
    ({ held }) => held.mover.origin === opening,
  );
  if (!figures) return null;
  const day = (id: string): string => `${rules.value(id)} °C`;
  const spare = Math.round(Math.abs(figures.holdsOpen) / 100) / 10;
  const holds =
    figures.holdsOpen >= 0 ? `hold it open with ${spare} N·m to spare` : `let it fall for want of ${spare} N·m`;
  return (
    <p>
      {quantityText(figures.held.kg, 'kg', design.units)} on its springs: at {day('gas-spring-cold')} they {holds}; at{' '}
      {day('gas-spring-hot')} a hand closes it with {Math.round(figures.handN)} N, of{' '}
      {rules.value('gas-spring-close-force')} N at most. Never the only prop of a heavy board.
    </p>
  );
};

const Form: FittingView<CommandBoard>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<CommandBoard>(opening);
  const units = useUnits();
  return (
    <>
      <div className={styles.fields}>
        <MotionFields opening={opening} fitting={fitting} />
        <LengthField
          label="Width"
          valueMm={fitting.widthMm}
          units={units}
          min={1}
          hint={fitting.widthMm === null ? 'As wide as the opening.' : undefined}
          onCommit={(widthMm) => change('change the width', { widthMm })}
          onClear={() => change('change the width', { widthMm: null })}
        />
        <LengthField
          label="Height"
          valueMm={fitting.heightMm}
          units={units}
          min={1}
          hint={fitting.heightMm === null ? 'As high as the opening.' : undefined}
          onCommit={(heightMm) => change('change the height', { heightMm })}
          onClear={() => change('change the height', { heightMm: null })}
        />
        <MaterialField
          label="Sheet"
          value={fitting.material}
          onChange={(material) => change('change the board material', { material })}
        />
        <FaceFields opening={opening} fitting={fitting} />
        <HardwareField
          label="Hold stowed"
          value={fitting.latch}
          kinds={['latch']}
          none="nothing"
          onChange={(latch) => change('change the latch', { latch })}
        />
      </div>
      {fitting.springs === null ? null : <SpringWords opening={opening} />}
    </>
  );
};

export const boardView: FittingView<CommandBoard> = { ...KIND_WORDS.board, Form };

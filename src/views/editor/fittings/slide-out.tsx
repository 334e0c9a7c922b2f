import type { SlideOut } from '../../../design/index.ts';
import { LengthField } from '../parts/index.ts';
import { useUnits } from '../state/use-units.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { SlideField } from './slide-fields.tsx';
import { useChangeFitting } from './use-change-fitting.ts';

const Form: FittingView<SlideOut>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<SlideOut>(opening);
  const units = useUnits();
  return (
    <div className={styles.fields}>
      <MaterialField
        label="Deck"
        value={fitting.deckMaterial}
        onChange={(deckMaterial) => change('change the deck', { deckMaterial })}
      />
      <LengthField
        label="Lip round the deck"
        valueMm={fitting.lipHeightMm}
        units={units}
        min={0}
        onCommit={(lipHeightMm) => change('change the lip', { lipHeightMm })}
      />
      <MaterialField
        label="Lip"
        value={fitting.lipMaterial}
        onChange={(lipMaterial) => change('change the lip', { lipMaterial })}
      />
      <HardwareField
        label="Hold closed"
        value={fitting.latch}
        kinds={['latch']}
        none="slides only"
        onChange={(latch) => change('change the latch', { latch })}
      />
      <HardwareField
        label="Stops behind it"
        value={fitting.backStop}
        kinds={['bracket']}
        none="the back panel alone"
        onChange={(backStop) => change('change the back stops', { backStop })}
      />
      <SlideField
        opening={opening}
        slide={fitting.slide}
        mounts={['side', 'under']}
        onChange={(slide) => change('change the slide', { slide, slideLengthMm: null })}
      />
    </div>
  );
};

export const slideOutView: FittingView<SlideOut> = { ...KIND_WORDS['slide-out'], Form };

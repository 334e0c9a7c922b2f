import type { Valuables } from '../../../design/index.ts';
import { CheckField } from '../parts/index.ts';
import { HardwareField, MaterialField } from './catalog-fields.tsx';
import type { FittingView } from './fitting-view.ts';
import styles from './fittings.module.css';
import { KIND_WORDS } from './kind-words.ts';
import { SlideField } from './slide-fields.tsx';
import { useChangeFitting } from './use-change-fitting.ts';

const COVER = 'birch-ply-9';

const Form: FittingView<Valuables>['Form'] = ({ opening, fitting }) => {
  const change = useChangeFitting<Valuables>(opening);
  return (
    <div className={styles.fields}>
      <HardwareField
        label="Lock"
        value={fitting.lock}
        kinds={['latch']}
        none="choose one"
        onChange={(lock) => lock !== null && change('change the lock', { lock })}
      />
      <HardwareField
        label="Pull"
        value={fitting.pull}
        kinds={['pull']}
        none="none"
        onChange={(pull) => change('change the pull', { pull })}
      />
      <HardwareField
        label="Lined with"
        value={fitting.liner}
        kinds={['mat']}
        none="nothing"
        onChange={(liner) => change('change the lining', { liner })}
      />
      <CheckField
        label="Covered by a sheet of its own"
        checked={fitting.coverMaterial !== null}
        onCommit={(covered) => change('change the cover', { coverMaterial: covered ? COVER : null })}
      />
      {fitting.coverMaterial === null ? null : (
        <MaterialField
          label="Cover"
          value={fitting.coverMaterial}
          onChange={(coverMaterial) => change('change the cover', { coverMaterial })}
        />
      )}
      <MaterialField
        label="Box"
        value={fitting.boxMaterial}
        onChange={(boxMaterial) => change('change the box', { boxMaterial })}
      />
      <MaterialField
        label="Bottom"
        value={fitting.bottomMaterial}
        onChange={(bottomMaterial) => change('change the bottom', { bottomMaterial })}
      />
      <SlideField
        opening={opening}
        slide={fitting.slide}
        mounts={['side']}
        onChange={(slide) => change('change the slide', { slide, slideLengthMm: null })}
        length={{
          mm: fitting.slideLengthMm,
          onChange: (slideLengthMm) => change('change the length of the slide', { slideLengthMm }),
        }}
      />
    </div>
  );
};

export const valuablesView: FittingView<Valuables> = { ...KIND_WORDS.valuables, Form };

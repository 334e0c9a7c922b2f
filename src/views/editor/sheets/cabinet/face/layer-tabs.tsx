import { ToggleChip } from '../../../parts/index.ts';
import styles from './face.module.css';
import type { FaceLayers } from './face-model.ts';

interface LayerTabsProps {
  readonly layers: readonly FaceLayers[];
  readonly onShow: (parent: string, layer: number) => void;
}

/** Openings divided in depth show one layer at a time; here one goes to the layer behind. */
export const LayerTabs = ({ layers, onShow }: LayerTabsProps) =>
  layers.map((divided) => (
    <div key={divided.parent} className={styles.layers} role="toolbar" aria-label="Layer shown">
      <span>Depth:</span>
      {divided.names.map((name, layer) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: layers are known by their place
        <ToggleChip key={layer} pressed={layer === divided.shown} onClick={() => onShow(divided.parent, layer)}>
          {name}
        </ToggleChip>
      ))}
    </div>
  ));

import { useEffect, useState } from 'react';
import { type Box, boxAround, boxCorners, placed } from '../../../../../base/index.ts';
import type { CargoSpace } from '../../../../../envelope/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';
import type { Change, ChangedPanel } from '../../../../../revision/index.ts';
import { sceneRoom } from '../../../bay/scene-room.ts';
import { Heading, ToggleChip, useTheme } from '../../../parts/index.ts';
import { useBench } from '../../../state/bench.ts';
import type { Viewpoint } from '../../../state/store.ts';
import { useEditor } from '../../../state/use-editor.ts';
import sheet from '../../sheet.module.css';
import styles from '../review.module.css';
import type { BayPictureInput, BaySide } from './bay-pictures.ts';
import { touchedBodies } from './touched-parts.ts';
import type { Side } from './use-sides.ts';

const VIEWS: readonly (readonly [Viewpoint, string])[] = [
  ['hatch', 'at the hatch'],
  ['above', 'from above'],
  ['left', 'left'],
  ['right', 'right'],
];

const USUAL_FLOOR_UP = 700;

/** Both cabinets fill the picture; the cargo space, where there is neither. */
const cabinetBox = (carcasses: FitOut['carcasses'], space: CargoSpace | null): Box => {
  const corners = carcasses.flatMap(({ pose, size }) =>
    boxCorners({ min: [0, 0, 0], max: size }).map((corner) => placed(pose, corner)),
  );
  return corners.length > 0 ? boxAround(corners) : sceneRoom(space, []);
};

type Pictures = readonly string[] | 'drawing' | 'cannot';

/** Drawn a moment after the sheet has shown itself: each picture takes a noticeable time. */
const usePictures = (sides: readonly BaySide[], input: BayPictureInput): Pictures => {
  const [pictures, setPictures] = useState<Pictures>('drawing');
  const key = JSON.stringify([input.viewpoint, input.theme, input.room, input.floorUp]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the input, the sides for what is drawn.
  useEffect(() => {
    let live = true;
    const timer = setTimeout(() => {
      // Brings what draws in three dimensions, which a browser may not have.
      import('./bay-pictures.ts')
        .then(({ bayPictures }) => live && setPictures(bayPictures(sides, input)))
        .catch(() => live && setPictures('cannot'));
    }, 0);
    return () => {
      live = false;
      clearTimeout(timer);
    };
  }, [...sides.map(({ fitout }) => fitout), key]);
  return pictures;
};

interface BayPairProps {
  readonly before: Side;
  readonly after: Side;
  readonly changes: readonly Change[];
  readonly panels: readonly ChangedPanel[];
}

/** Before and after as one stands at the hatch, what differs marked. */
export const BayPair = ({ before, after, changes, panels }: BayPairProps) => {
  const { catalog } = useBench();
  const { shown: theme } = useTheme();
  const [viewpoint, setViewpoint] = useState<Viewpoint>('hatch');
  const present = useEditor((editor) => editor.gesture ?? editor.history.design);
  const judged = useEditor((editor) => (editor.judgement?.space.ok ? editor.judgement.space.value : null));
  const survey = JSON.stringify(present.survey);
  const sides = [before, after].map(
    ({ design, fitout }): BaySide => ({
      design,
      fitout,
      space: JSON.stringify(design.survey) === survey ? judged : null,
      touched: touchedBodies(fitout, changes, panels),
    }),
  );
  const pictures = usePictures(sides, {
    catalog,
    theme,
    viewpoint,
    room: cabinetBox([...before.fitout.carcasses, ...after.fitout.carcasses], judged),
    floorUp: after.design.vehicle.floorAboveGroundMm ?? USUAL_FLOOR_UP,
  });
  return (
    <>
      <Heading
        level={3}
        title="In the bay"
        aside="what differs is marked"
        actions={VIEWS.map(([name, label]) => (
          <ToggleChip key={name} pressed={viewpoint === name} onClick={() => setViewpoint(name)}>
            {label}
          </ToggleChip>
        ))}
      />
      {pictures === 'cannot' ? (
        <p className={sheet.soft}>This browser draws nothing in three dimensions.</p>
      ) : (
        <div className={styles.pair}>
          {[before, after].map(({ title }, i) => (
            <figure key={title}>
              <figcaption>{title}</figcaption>
              {pictures === 'drawing' ? (
                <p className={sheet.soft}>drawing…</p>
              ) : (
                <img className={styles.bay} src={pictures[i]} alt={`The bay, ${title}; what differs is marked`} />
              )}
            </figure>
          ))}
        </div>
      )}
    </>
  );
};

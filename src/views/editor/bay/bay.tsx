import { useEffect, useMemo, useRef, useState } from 'react';
import type { Vec2 } from '../../../base/index.ts';
import { Button, useTheme } from '../parts/index.ts';
import { useBench } from '../state/bench.ts';
import { EditorContext, useEditorParts, useEditorStore } from '../state/use-editor.ts';
import styles from './bay.module.css';
import { bayFitOut } from './bay-fit-out.ts';
import { type CutAway, keptOf } from './cut-away.ts';
import { frontOf } from './marks/front.ts';
import { FeelerTag } from './overlay/feeler-tag.tsx';
import { HandleRings } from './overlay/handle-rings.tsx';
import { HoverTag } from './overlay/hover-tag.tsx';
import { Labels } from './overlay/labels.tsx';
import { ViewpointChips } from './overlay/viewpoint-chips.tsx';
import { PAGE_PACE, pacedEditor } from './paced-editor.ts';
import { pickableThings, type Thing } from './pick/things.ts';
import { attachPointer } from './pointer/attach-pointer.ts';
import { type BayGround, createBayTools } from './pointer/bay-tools.ts';
import { BayScene } from './scene/bay-scene.tsx';
import { useSceneRoot } from './scene/use-scene-root.tsx';
import { sceneColours } from './scene-colours.ts';
import { sceneRoom } from './scene-room.ts';
import { useBayKeys } from './use-bay-keys.ts';
import { useCamera } from './use-camera.ts';
import { useStage, wantsStillness } from './use-stage.ts';
import { canDrawScene } from './webgl.ts';

const HOW_TO =
  'The bay in three dimensions. Arrow keys walk round, with Shift they slide, plus and minus go nearer and farther, Enter opens or closes what is selected.';

/** How long it stays said on what a mover stopped. */
const STOP_SHOWN_MS = 3500;

/** The bay with everything over it: places to stand, names, handles, the tag of what is pointed at. */
const DrawnBay = () => {
  const editor = useEditorStore();
  const { catalog } = useBench();
  const theme = useTheme().shown;
  const { fitOut, judgedSpace, surveyed } = useEditorParts((state) => ({
    fitOut: bayFitOut(state.fitOut),
    judgedSpace: state.judgement?.space,
    surveyed: state.history.design.survey.stations.length > 0,
  }));
  const space = judgedSpace?.ok ? judgedSpace.value : null;
  const room = useMemo(() => sceneRoom(space, fitOut.carcasses), [space, fitOut.carcasses]);
  const colours = useMemo(() => sceneColours(theme), [theme]);
  const [cut, setCut] = useState<CutAway | null>(null);
  const [stop, setStop] = useState<string | null>(null);
  const [pointer, setPointer] = useState<Vec2 | null>(null);
  const kept = useMemo(() => keptOf(cut, room), [cut, room]);
  const { stage, hold } = useStage(fitOut, space, room);
  const { standing, choose, walkedOff, limits, resized } = useCamera(stage, room);

  const things = useMemo(() => pickableThings(fitOut, space), [fitOut, space]);
  const ground = useRef<BayGround | null>(null);
  ground.current = {
    things,
    closures: useMemo(
      () =>
        (space?.bodies ?? [])
          .filter((body) => body.kind === 'closure')
          .map(
            (body): Thing => ({
              id: body.id,
              origin: body.origin,
              what: 'vehicle',
              shape: body.shape,
              mover: body.closure,
            }),
          ),
      [space],
    ),
    fronts: useMemo(
      () =>
        new Map(
          fitOut.movers.flatMap((mover) => frontOf(fitOut, mover.id).map((panel) => [panel.id, mover.id] as const)),
        ),
      [fitOut],
    ),
    kept,
    limits: limits(),
    fitOut,
    space,
  };
  const tools = useMemo(
    () =>
      createBayTools(
        stage,
        editor,
        () => {
          if (!ground.current) throw new Error('the bay was pointed at before it stood');
          return ground.current;
        },
        setStop,
      ),
    [stage, editor],
  );

  const host = useRef<HTMLDivElement>(null);
  const scene = useMemo(
    () => (
      <EditorContext value={editor}>
        <BayScene stage={stage} catalog={catalog} space={space} room={room} colours={colours} kept={kept} />
      </EditorContext>
    ),
    [editor, stage, catalog, space, room, colours, kept],
  );
  const { lost, again } = useSceneRoot(host, scene, resized);
  const held = useRef(hold);
  held.current = (mover) => {
    hold(mover);
    if (mover !== null) editor.getState().setFelt(mover);
  };
  useEffect(() => {
    if (!host.current) return;
    return attachPointer(host.current, tools, {
      onWalked: walkedOff,
      onRest: setPointer,
      onHold: (mover) => held.current(mover),
      gently: () => !wantsStillness(),
    });
  }, [tools, walkedOff]);
  useEffect(() => {
    if (stop === null) return;
    const timer = setTimeout(() => setStop(null), STOP_SHOWN_MS);
    return () => clearTimeout(timer);
  }, [stop]);
  const onKeyDown = useBayKeys(tools, walkedOff);

  return (
    <div className={styles.bay}>
      <div
        ref={host}
        className={styles.scene}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the scene is walked round by keyboard
        tabIndex={0}
        aria-label={HOW_TO}
        onKeyDown={onKeyDown}
      >
        <Labels tools={tools} space={space} />
        <HandleRings tools={tools} space={space} onHold={(mover) => held.current(mover)} />
        <FeelerTag stage={stage} />
        <HoverTag at={pointer} width={stage.view().width} catalog={catalog} space={space} />
      </div>
      <ViewpointChips viewpoint={standing} onChoose={choose} cut={cut} onCut={setCut} />
      <p className={styles.stop} role="status" hidden={stop === null}>
        {stop === null ? '' : `Stops here, on ${stop}`}
      </p>
      {surveyed || space ? null : <p className={styles.hint}>The vehicle stands here once its survey has stations.</p>}
      {lost ? (
        <div className={styles.lost} role="alert">
          <p>The graphics card took the picture away. Your design is not affected.</p>
          <Button onClick={again}>Draw it again</Button>
        </div>
      ) : null}
    </div>
  );
};

/**
 * The three-dimensional bay. It fills its parent. Where the browser cannot draw it, a sentence says so and the sheets
 * go on working.
 */
export const Bay = () => {
  const [able] = useState(canDrawScene);
  const editor = useEditorStore();
  const paced = useMemo(() => pacedEditor(editor, PAGE_PACE), [editor]);
  if (able)
    return (
      <EditorContext value={paced}>
        <DrawnBay />
      </EditorContext>
    );
  return (
    <div className={styles.lost} role="status">
      <p>
        This browser cannot draw in three dimensions here, so the bay stays empty. Every sheet works without it; to see
        the bay, switch graphics acceleration on in the browser’s settings.
      </p>
    </div>
  );
};

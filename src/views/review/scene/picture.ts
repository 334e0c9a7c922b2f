import { AmbientLight, DirectionalLight, type Group, PerspectiveCamera, Scene, Vector2, WebGLRenderer } from 'three';
import { boxMiddle, type Pose, placed, subtract, turned, unit, type Vec3 } from '../../../base/index.ts';
import type { ReviewData } from '../../../shop/index.ts';
import {
  type CameraLimits,
  type CameraState,
  cameraBetween,
  eased,
  eyeOf,
  orbited,
  panned,
  screenAxes,
  towardsEye,
  zoomed,
} from '../../camera-state.ts';
import { moverPoses } from '../../motion-pose.ts';
import { frameOf, movingParts, type PictureColours, poseMatrix } from './solids.ts';
import { type Ray, standing } from './touch-ray.ts';

const FIELD_RAD = 0.82;
const GLIDE_MS = 450;
const STANDING_EYE_UP = 1650;
const FARTHEST_MM = 12_000;
const NEAREST_MM = 250;
/** A part fills about this share of the height of the picture when it is flown to. */
const PART_SHARE = 0.32;
const LEAST_PART_MM = 260;

type Shares = Readonly<Record<string, number>>;

/** The drawn picture of a copy: what stands where, the eye, and nothing of React. */
export interface Picture {
  readonly resize: () => void;
  readonly show: (shares: Shares) => void;
  readonly mark: (id: string | null) => void;
  readonly flyTo: (id: string | null, shares: Shares) => void;
  readonly orbit: (turnRad: number, riseRad: number) => void;
  readonly pan: (rightPx: number, downPx: number) => void;
  readonly zoom: (factor: number) => void;
  readonly rayAt: (x: number, y: number) => Ray;
  readonly poses: () => ReadonlyMap<string, Pose>;
  readonly dispose: () => void;
}

const overview = (data: ReviewData): CameraState => {
  const { room, floorUpMm } = data.scene;
  const [x, y, z] = boxMiddle(room);
  const wide = Math.max(room.max[1] - room.min[1], (room.max[2] - room.min[2]) * 1.3);
  const distance = wide / (2 * Math.tan(FIELD_RAD / 2)) + (room.max[0] - room.min[0]) / 2;
  const up = STANDING_EYE_UP - floorUpMm - z;
  return {
    target: [x, y, z],
    azimuthRad: Math.PI,
    elevationRad: Math.asin(Math.max(-0.2, Math.min(0.8, up / distance))),
    distance,
  };
};

const limitsOf = ({ scene }: ReviewData): CameraLimits => ({
  within: {
    min: [scene.room.min[0] - 1500, scene.room.min[1] - 800, scene.room.min[2] - 400],
    max: [scene.room.max[0] + 800, scene.room.max[1] + 800, scene.room.max[2] + 800],
  },
  nearest: NEAREST_MM,
  farthest: FARTHEST_MM,
});

/** Starts drawing on a canvas. Throws where the browser cannot draw in three dimensions. */
export const createPicture = (
  canvas: HTMLCanvasElement,
  data: ReviewData,
  paint: PictureColours,
  still: boolean,
): Picture => {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.setPixelRatio(Math.min(2, globalThis.devicePixelRatio));
  const scene = new Scene();
  const lens = new PerspectiveCamera((FIELD_RAD * 180) / Math.PI, 1, 60, 30_000);
  lens.up.set(0, 0, 1);
  const sun = new DirectionalLight('#ffffff', 1.5);
  scene.add(new AmbientLight('#ffffff', 1.9), sun, sun.target);
  const parts = movingParts(data.scene, paint);
  scene.add(...parts.map(({ group }) => group));
  const limits = limitsOf(data);
  let camera = overview(data);
  let flight: { readonly from: CameraState; readonly to: CameraState; readonly began: number } | null = null;
  let drawnShares: Record<string, number> = {};
  let wanted: Shares = {};
  let glide: { readonly from: Shares; readonly began: number } | null = null;
  let poses: ReadonlyMap<string, Pose> = moverPoses(data.scene.movers, {});
  let frame: { readonly id: string; readonly group: Group } | null = null;
  let asked = 0;
  const size = new Vector2();

  const boxOf = (id: string) => data.scene.touch.find((box) => box.id === id);
  const place = (): void => {
    poses = moverPoses(data.scene.movers, drawnShares);
    for (const { mover, group } of parts) {
      const pose = mover === null ? undefined : poses.get(mover);
      if (pose) group.matrix.copy(poseMatrix(pose));
      group.matrixWorldNeedsUpdate = true;
    }
    const box = frame ? boxOf(frame.id) : undefined;
    if (frame && box) {
      frame.group.matrix.copy(poseMatrix(standing(box, poses)));
      frame.group.matrixWorldNeedsUpdate = true;
    }
  };
  const shareAt = (shares: Shares, id: string): number => shares[id] ?? 0;
  const advance = (now: number): boolean => {
    if (flight) {
      const done = still ? 1 : Math.min(1, (now - flight.began) / GLIDE_MS);
      camera = cameraBetween(flight.from, flight.to, eased(done));
      if (done === 1) flight = null;
    }
    if (glide) {
      const { from, began } = glide;
      const done = still ? 1 : Math.min(1, (now - began) / GLIDE_MS);
      drawnShares = Object.fromEntries(
        data.scene.movers.map(({ id }) => {
          const start = shareAt(from, id);
          return [id, start + (shareAt(wanted, id) - start) * eased(done)];
        }),
      );
      if (done === 1) glide = null;
      place();
    }
    return flight !== null || glide !== null;
  };
  const draw = (now: number): void => {
    asked = 0;
    const more = advance(now);
    const eye = eyeOf(camera);
    lens.position.set(...eye);
    lens.lookAt(...camera.target);
    sun.position.set(eye[0] - 300, eye[1] + 500, eye[2] + 900);
    sun.target.position.set(...camera.target);
    renderer.render(scene, lens);
    if (more) ask();
  };
  const ask = (): void => {
    if (asked === 0) asked = requestAnimationFrame(draw);
  };
  const setCamera = (next: CameraState): void => {
    flight = null;
    camera = next;
    ask();
  };
  const fly = (to: CameraState): void => {
    flight = { from: camera, to, began: performance.now() };
    ask();
  };
  return {
    resize: () => {
      const [width, height] = [Math.max(1, canvas.clientWidth), Math.max(1, canvas.clientHeight)];
      renderer.getSize(size);
      if (size.x === width && size.y === height) return;
      renderer.setSize(width, height, false);
      lens.aspect = width / height;
      lens.updateProjectionMatrix();
      ask();
    },
    show: (shares) => {
      glide = { from: drawnShares, began: performance.now() };
      wanted = shares;
      ask();
    },
    mark: (id) => {
      if (frame) scene.remove(frame.group);
      const box = id === null ? undefined : boxOf(id);
      frame = id !== null && box ? { id, group: frameOf(box, paint.petrol) } : null;
      if (frame) scene.add(frame.group);
      place();
      ask();
    },
    flyTo: (id, shares) => {
      const box = id === null ? undefined : boxOf(id);
      if (!box) return fly(overview(data));
      const pose = standing(box, moverPoses(data.scene.movers, shares));
      const half = box.size.map((side) => side / 2);
      const target = placed(pose, [
        box.from[0] + (half[0] ?? 0),
        box.from[1] + (half[1] ?? 0),
        box.from[2] + (half[2] ?? 0),
      ]);
      // The viewer stands before the open face: depth runs away from the eye.
      const out: Vec3 = turned(box.pose, [0, -1, 0]);
      const big = Math.max(LEAST_PART_MM, ...box.size);
      const narrow = Math.min(1, lens.aspect);
      const distance = big / PART_SHARE / narrow / (2 * Math.tan(FIELD_RAD / 2));
      fly({ target, azimuthRad: Math.atan2(out[1], out[0]), elevationRad: 0.5, distance });
    },
    orbit: (turnRad, riseRad) => setCamera(orbited(camera, turnRad, riseRad, limits)),
    pan: (rightPx, downPx) => {
      const mmPerPx = (2 * camera.distance * Math.tan(FIELD_RAD / 2)) / Math.max(1, canvas.clientHeight);
      setCamera(panned(camera, -rightPx * mmPerPx, downPx * mmPerPx, limits));
    },
    zoom: (factor) => setCamera(zoomed(camera, factor, null, limits)),
    rayAt: (x, y) => {
      const bounds = canvas.getBoundingClientRect();
      const up = Math.tan(FIELD_RAD / 2);
      const across = up * (bounds.width / Math.max(1, bounds.height));
      const [u, v] = [
        ((x - bounds.left) / bounds.width) * 2 - 1,
        1 - ((y - bounds.top) / Math.max(1, bounds.height)) * 2,
      ];
      const axes = screenAxes(camera);
      const back = towardsEye(camera);
      const aim = (axis: 0 | 1 | 2): number => axes.right[axis] * u * across + axes.up[axis] * v * up;
      return { from: eyeOf(camera), way: unit(subtract([aim(0), aim(1), aim(2)], back)) };
    },
    poses: () => poses,
    dispose: () => {
      cancelAnimationFrame(asked);
      renderer.dispose();
    },
  };
};

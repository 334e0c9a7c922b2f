import { BufferGeometry, Float32BufferAttribute } from 'three';
import { boxAround, boxCorners, placed } from '../../../../base/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import type { SceneColours } from '../scene-colours.ts';
import { useDisposed } from './use-disposed.ts';

/** How far the shade reaches round a carcass, and how far it stands over the floor so that it is not lost in it. */
const REACH = 70;
const LIFT = 0.6;
const FADES = [
  [0, 1],
  [0.4, 0.42],
  [1, 0],
] as const;

/** A soft dark edge on the floor round every carcass that stands on it. Positions and darkness. */
const shadeRings = (carcasses: FitOut['carcasses'], floor: number): { positions: number[]; colours: number[] } => {
  const positions: number[] = [];
  const colours: number[] = [];
  for (const carcass of carcasses) {
    const local = boxCorners({ min: [0, 0, 0], max: carcass.size }).map((corner) => placed(carcass.pose, corner));
    const { min, max } = boxAround(local);
    if (min[2] - floor > REACH) continue;
    const ring = (grow: number): readonly (readonly [number, number])[] => [
      [min[0] - grow, min[1] - grow],
      [max[0] + grow, min[1] - grow],
      [max[0] + grow, max[1] + grow],
      [min[0] - grow, max[1] + grow],
    ];
    FADES.slice(1).forEach(([far, dark], i) => {
      const [near, nearDark] = FADES[i] ?? [0, 1];
      const [inner, outer] = [ring(near * REACH), ring(far * REACH)];
      for (let side = 0; side < 4; side++) {
        const next = (side + 1) % 4;
        const [a, b, c, d] = [inner[side], outer[side], outer[next], inner[next]];
        for (const [corner, share] of [
          [a, nearDark],
          [b, dark],
          [c, dark],
          [a, nearDark],
          [c, dark],
          [d, nearDark],
        ] as const) {
          if (!corner) continue;
          positions.push(corner[0], corner[1], floor + LIFT);
          colours.push(0, 0, 0, share);
        }
      }
    });
  }
  return { positions, colours };
};

interface ContactShadeProps {
  readonly floor: number;
  readonly colours: SceneColours;
}

/** Lets the carcasses stand on the floor instead of floating over it. */
export const ContactShade = ({ floor, colours }: ContactShadeProps) => {
  const carcasses = useEditor((editor) => editor.fitOut.carcasses);
  const geometry = useDisposed(() => {
    const made = shadeRings(carcasses, floor);
    const shade = new BufferGeometry();
    shade.setAttribute('position', new Float32BufferAttribute(made.positions, 3));
    shade.setAttribute('color', new Float32BufferAttribute(made.colours, 4));
    return shade;
  }, [carcasses, floor]);
  return (
    <mesh geometry={geometry} renderOrder={-1}>
      <meshBasicMaterial vertexColors transparent opacity={colours.contact} depthWrite={false} />
    </mesh>
  );
};

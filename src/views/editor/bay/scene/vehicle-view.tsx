import { useFrame } from '@react-three/fiber';
import { useRef } from 'react';
import { DoubleSide, FrontSide, type Group, Vector3 } from 'three';
import { distance, HOME, placed, subtract } from '../../../../base/index.ts';
import { capsuleShape } from '../../../../bodies/index.ts';
import { type CargoSpace, strutEnds } from '../../../../envelope/index.ts';
import {
  emptyMesh,
  fullLight,
  type LineData,
  lengthwiseLines,
  pushConvex,
  skinFaces,
  stationRings,
} from '../../../../shop/index.ts';
import type { SceneColours } from '../scene-colours.ts';
import type { Stage } from '../stage.ts';
import { facesGeometry, lineGeometry, meshGeometry } from './geometry.ts';
import { MovingGroup, SECOND } from './moving-group.tsx';
import { useDisposed } from './use-disposed.ts';

interface PartProps {
  readonly space: CargoSpace;
  readonly colours: SceneColours;
}

const Shell = ({ space, colours }: PartProps) => {
  const rings = useDisposed(() => lineGeometry(stationRings(space.sections)), [space]);
  const lengthwise = useDisposed(() => lineGeometry(lengthwiseLines(space.sections)), [space]);
  const floor = useDisposed(() => facesGeometry(skinFaces(space.skin).floor), [space]);
  const walls = useDisposed(() => facesGeometry(skinFaces(space.skin).walls), [space]);
  return (
    <>
      <mesh geometry={walls} renderOrder={-2}>
        <meshLambertMaterial
          color={colours.wall}
          transparent
          opacity={colours.wallShare}
          depthWrite={false}
          side={FrontSide}
        />
      </mesh>
      <mesh geometry={floor} receiveShadow>
        <meshLambertMaterial color={colours.floor} side={DoubleSide} polygonOffset polygonOffsetFactor={2} />
      </mesh>
      <lineSegments geometry={rings}>
        <lineBasicMaterial color={colours.vehicleLine} />
      </lineSegments>
      <lineSegments geometry={lengthwise}>
        <lineBasicMaterial color={colours.vehicleFaint} />
      </lineSegments>
    </>
  );
};

interface SolidsProps extends PartProps {
  readonly stage: Stage;
  readonly bodies: CargoSpace['bodies'];
  readonly closure: string | null;
}

/** Obstacles and closures as quiet bodies that are seen through, so that they never hide the cabinet. */
const VehicleSolids = ({ stage, bodies, closure, colours, space }: SolidsProps) => {
  const made = (what: 'mesh' | 'lines') => {
    const mesh = emptyMesh();
    const lines: LineData = [];
    for (const body of bodies) pushConvex(body.shape, { mesh, lines, colour: [1, 1, 1], shadeAt: fullLight });
    return what === 'mesh' ? meshGeometry(mesh) : lineGeometry(lines);
  };
  const mesh = useDisposed(() => made('mesh'), [space, closure]);
  const lines = useDisposed(() => made('lines'), [space, closure]);
  const still = closure === null;
  return (
    <MovingGroup stage={stage} mover={closure}>
      <mesh geometry={mesh} renderOrder={2}>
        <meshBasicMaterial
          color={still ? colours.obstacle : colours.closure}
          transparent
          opacity={still ? colours.obstacleShare : colours.closureShare}
          depthWrite={false}
          side={still ? FrontSide : DoubleSide}
        />
      </mesh>
      <lineSegments geometry={lines}>
        <lineBasicMaterial color={colours.vehicleLine} />
      </lineSegments>
    </MovingGroup>
  );
};

interface StrutProps {
  readonly body: CargoSpace['bodies'][number];
  readonly stage: Stage;
  readonly colours: SceneColours;
}

/** A strut between its two ball points, in every frame: one stays on the body, the other goes with the closure. */
const Strut = ({ body, stage, colours }: StrutProps) => {
  const group = useRef<Group>(null);
  const ends = strutEnds(body);
  const whole = ends ? distance(ends.stays, ends.goes) : 1;
  const mesh = useDisposed(() => {
    const made = emptyMesh();
    const shape = capsuleShape([0, 0, 0], [0, 0, whole], body.shape.radius);
    pushConvex(shape, { mesh: made, lines: [], colour: [1, 1, 1], shadeAt: fullLight });
    return meshGeometry(made);
  }, [body]);
  useFrame(() => {
    if (!group.current || !ends) return;
    const goes = placed((body.closure !== null && stage.poses().get(body.closure)) || HOME, ends.goes);
    const way = new Vector3(...subtract(goes, ends.stays));
    const long = way.length();
    group.current.position.set(...ends.stays);
    group.current.quaternion.setFromUnitVectors(new Vector3(0, 0, 1), way.normalize());
    group.current.scale.set(1, 1, long / whole);
  }, SECOND);
  return (
    <group ref={group}>
      <mesh geometry={mesh} renderOrder={2}>
        <meshBasicMaterial
          color={colours.closure}
          transparent
          opacity={Math.min(1, 2 * colours.closureShare)}
          depthWrite={false}
        />
      </mesh>
    </group>
  );
};

const Zones = ({ space, colours }: PartProps) => {
  const lines = useDisposed(() => {
    const drawn: LineData = [];
    for (const zone of space.zones)
      pushConvex(zone.shape, { mesh: emptyMesh(), lines: drawn, colour: [1, 1, 1], shadeAt: fullLight });
    return lineGeometry(drawn);
  }, [space]);
  return (
    <lineSegments geometry={lines}>
      <lineBasicMaterial color={colours.zone} transparent opacity={0.35} />
    </lineSegments>
  );
};

interface VehicleViewProps extends PartProps {
  readonly stage: Stage;
}

/** The vehicle from its survey: a quiet line drawing that the cabinet stands in. */
export const VehicleView = ({ space, stage, colours }: VehicleViewProps) => {
  const carriers = [null, ...space.closures.map((closure) => closure.id)];
  return (
    <>
      <Shell space={space} colours={colours} />
      <Zones space={space} colours={colours} />
      {carriers.map((closure) => (
        <VehicleSolids
          key={closure ?? 'still'}
          space={space}
          stage={stage}
          colours={colours}
          closure={closure}
          bodies={space.bodies.filter((body) => body.closure === closure && !body.stays)}
        />
      ))}
      {space.bodies
        .filter((body) => body.stays)
        .map((body) => (
          <Strut key={body.id} body={body} stage={stage} colours={colours} />
        ))}
    </>
  );
};

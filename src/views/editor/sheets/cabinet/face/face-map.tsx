import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Carcass } from '../../../../../design/index.ts';
import { Heading } from '../../../parts/index.ts';
import { carcassWords } from '../names.ts';
import { useCabinet } from '../use-cabinet.ts';
import { bodiesAtFace } from './bodies-at-face.ts';
import { ChainFigures } from './chain-figures.tsx';
import { type Chain, type ChainPiece, dimensionChains } from './dimension-chains.ts';
import { DividerHandle } from './divider-handle.tsx';
import styles from './face.module.css';
import { FaceDrawing } from './face-drawing.tsx';
import { type FaceLayout, faceLayout } from './face-layout.ts';
import { faceOf } from './face-model.ts';
import { createGuide, GuideWords } from './guide.tsx';
import { LayerTabs } from './layer-tabs.tsx';
import { RoomButton } from './room-button.tsx';
import { roomLoads, roomsAround } from './rooms-around.ts';
import { SizePopover } from './size-popover.tsx';

interface FaceMapProps {
  readonly carcass: Carcass;
  readonly onMenu: (x: number, y: number) => void;
}

const SEEN_FROM: Readonly<Record<Carcass['facing'], string>> = {
  rear: 'from the hatch',
  left: 'from the left',
  right: 'from the right',
  front: 'from the front',
};

/** The drawing never takes more than this share of the window's height. */
const TALLEST_SHARE = 0.53;
const TALLEST_LEAST_PX = 260;

const useBoardSize = () => {
  const board = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState({ width: 520, tallest: 420 });
  useLayoutEffect(() => {
    const element = board.current;
    if (!element) return;
    const measure = (): void =>
      setSize({
        width: element.clientWidth,
        tallest: Math.max(TALLEST_LEAST_PX, globalThis.innerHeight * TALLEST_SHARE),
      });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { board, size };
};

type Chains = ReturnType<typeof dimensionChains>;

/** The piece as it stands after an edit, so that an open figure follows the design. */
const currentPiece = (chains: Chains, piece: ChainPiece): ChainPiece =>
  chains.flatMap((chain) => chain.pieces).find((now) => sameTarget(now.sets, piece.sets)) ?? piece;

const sameTarget = (a: ChainPiece['sets'], b: ChainPiece['sets']): boolean =>
  a.kind === 'part' && b.kind === 'part'
    ? a.parent === b.parent && a.index === b.index
    : a.kind === 'carcass' && b.kind === 'carcass' && a.side === b.side;

const POPOVER_PX = { width: 190, height: 150 };

/** Beside its figure, kept on the board. */
const popoverPlace = (
  side: string,
  middle: number,
  layout: FaceLayout,
): { readonly left: number; readonly top: number } => {
  const wanted =
    side === 'bottom'
      ? { left: layout.x(middle) - POPOVER_PX.width / 2, top: layout.height - POPOVER_PX.height - 44 }
      : { left: side === 'left' ? 4 : layout.width - POPOVER_PX.width - 4, top: layout.y(middle) - 20 };
  return {
    left: Math.max(4, Math.min(layout.width - POPOVER_PX.width - 4, wanted.left)),
    top: Math.max(4, wanted.top),
  };
};

/** The open face of a carcass in true scale, with what is in it, the dividers to take hold of, and the figures round it. */
export const FaceMap = ({ carcass, onMenu }: FaceMapProps) => {
  const { design, fitOut, chosen } = useCabinet();
  const { board, size } = useBoardSize();
  const [layerOf, setLayerOf] = useState<Readonly<Record<string, number>>>({});
  const guide = useMemo(createGuide, []);
  const [typing, setTyping] = useState<{ readonly piece: ChainPiece; readonly side: string } | null>(null);
  const selected = chosen.opening?.id ?? null;
  const face = useMemo(() => faceOf(carcass, fitOut, layerOf), [carcass, fitOut, layerOf]);
  const chains = useMemo(
    () => dimensionChains({ carcass, fitOut, layerOf, selected }),
    [carcass, fitOut, layerOf, selected],
  );
  const bodies = useMemo(() => bodiesAtFace(fitOut, carcass.id), [fitOut, carcass.id]);
  const layout = useMemo(() => faceLayout(face, chains, size), [face, chains, size]);
  const roomOf = useMemo(() => roomsAround(carcass, face.rooms), [carcass, face.rooms]);
  const loads = useMemo(() => roomLoads(design.gear, roomOf), [design.gear, roomOf]);
  const chosenRoom = selected === null ? undefined : roomOf.get(selected);
  const drawnChains = useRef(chains);
  drawnChains.current = chains;
  const typeFigure = useCallback((side: Chain['side'], rank: number, index: number): void => {
    const piece = drawnChains.current.find((chain) => chain.side === side && chain.rank === rank)?.pieces[index];
    if (piece) setTyping({ piece, side });
  }, []);
  const typePart = (parent: string, index: number): void => {
    for (const { pieces, side } of chains)
      for (const piece of pieces)
        if (piece.sets.kind === 'part' && piece.sets.parent === parent && piece.sets.index === index)
          setTyping({ piece, side });
  };
  const middle = typing ? (typing.piece.from + typing.piece.to) / 2 : 0;
  return (
    <section className={styles.faceMap}>
      <Heading
        title="Face map"
        aside={`${carcassWords(carcass)}, seen ${SEEN_FROM[carcass.facing]} · 1 : ${layout.oneTo}`}
      />
      <LayerTabs layers={face.layers} onShow={(parent, layer) => setLayerOf({ ...layerOf, [parent]: layer })} />
      <div ref={board} className={styles.board} style={{ height: layout.height }} data-face-board="">
        <FaceDrawing face={face} layout={layout} chains={chains} bodies={bodies} guide={guide} />
        {face.rooms.map((room) => (
          <RoomButton
            key={room.id}
            id={room.id}
            name={room.name}
            kind={room.kind}
            count={loads.get(room.id)?.count ?? 0}
            massKg={loads.get(room.id)?.massKg ?? 0}
            selected={room.id === chosenRoom}
            left={layout.x(room.rect.across)}
            top={layout.y(room.rect.up + room.rect.height)}
            width={room.rect.width * layout.pxPerMm}
            height={room.rect.height * layout.pxPerMm}
            onMenu={onMenu}
          />
        ))}
        {face.dividers.map((divider) => (
          <DividerHandle
            key={`${divider.parent} ${divider.index}`}
            face={face}
            divider={divider}
            layout={layout}
            guide={guide}
            onType={() => typePart(divider.parent, divider.index)}
          />
        ))}
        {chains.map((chain) => (
          <ChainFigures
            key={`${chain.side} ${chain.rank}`}
            chain={chain}
            layout={layout}
            selected={selected}
            onType={typeFigure}
          />
        ))}
        <GuideWords store={guide} layout={layout} width={face.width} height={face.height} />
        {typing ? (
          <SizePopover
            key={`${typing.side} ${typing.piece.from}`}
            carcass={carcass.id}
            piece={currentPiece(chains, typing.piece)}
            at={popoverPlace(typing.side, middle, layout)}
            onClose={() => setTyping(null)}
          />
        ) : null}
      </div>
    </section>
  );
};

import { type MarkedPart, sequenceOf, sheetStrips } from '../../../../../shop/index.ts';
import { DrawingBoard } from '../../../parts/index.ts';
import { useEditorParts } from '../../../state/use-editor.ts';
import styles from './layouts.module.css';
import type { ListedSheet } from './sheet-list.ts';

type Placed = ListedSheet['sheet']['parts'][number];

interface PartBoxProps {
  readonly placed: Placed;
  readonly part: MarkedPart | undefined;
  readonly name: string;
  readonly grain: boolean;
  readonly text: number;
}

const arrow = (placed: Placed, text: number): string => {
  const [cx, cy] = [placed.x + placed.length / 2, -(placed.y + text)];
  const [a, b] = [text * 1.4, text * 0.35];
  return placed.turned
    ? `M${cx} ${cy - a * 2}v${a * 2}m${-b} ${-b}l${b} ${b}l${b} ${-b}M${cx - b} ${cy - a * 2 + b}l${b} ${-b}l${b} ${b}`
    : `M${cx - a} ${cy}h${a * 2}m${-b} ${-b}l${b} ${b}l${-b} ${b}M${cx - a + b} ${cy - b}l${-b} ${b}l${b} ${b}`;
};

/** A part on the sheet: hover and selection are shared with the bay and the other lists. */
const PartBox = ({ placed, part, name, grain, text }: PartBoxProps) => {
  const ids = (part?.panels ?? []).map(({ id }) => id as string);
  const { selected, hovered, select, setHover } = useEditorParts((editor) => ({
    selected: ids.some((id) => (editor.selection as readonly string[]).includes(id)),
    hovered: editor.hover !== null && ids.includes(editor.hover),
    select: editor.select,
    setHover: editor.setHover,
  }));
  const panels = (part?.panels ?? []).map(({ id }) => id);
  const [wide, tall] = [placed.length / text, placed.width / text];
  const middle = [placed.x + placed.length / 2, -(placed.y + placed.width / 2)] as const;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a picture with the tables as its spoken twin
    <g
      className={styles.part}
      data-selected={selected}
      data-hovered={hovered}
      onClick={(event) => select(panels, event.shiftKey || event.ctrlKey ? 'add' : 'replace')}
      onPointerEnter={() => setHover(panels[0] ?? null)}
      onPointerLeave={() => setHover(null)}
    >
      <title>{`${placed.mark} ${name}`}</title>
      <rect x={placed.x} y={-(placed.y + placed.width)} width={placed.length} height={placed.width} />
      {wide > 1.4 && tall > 1 ? (
        <text x={middle[0]} y={middle[1] + text * 0.3} fontSize={text * 1.15} className={styles.partMark}>
          {placed.mark}
        </text>
      ) : null}
      {wide > name.length * 0.5 && tall > 3.4 ? (
        <text x={middle[0]} y={middle[1] + text * 1.3} fontSize={text * 0.85} className={styles.partName}>
          {name}
        </text>
      ) : null}
      {grain && wide > 3.6 && tall > 5 ? <path d={arrow(placed, text)} className={styles.grain} /> : null}
    </g>
  );
};

interface SheetPictureProps {
  readonly listed: ListedSheet;
  readonly parts: ReadonlyMap<string, MarkedPart>;
}

/** The sheet as it lies on the saw: reference corner low left, strips lettered, kept offcuts hatched. */
export const SheetPicture = ({ listed, parts }: SheetPictureProps) => {
  const { laid, sheet, at } = listed;
  const named = new Map(laid.board.parts.map((part) => [part.mark, part]));
  const place = sequenceOf(laid.sequences, at);
  const strips = place === null ? [] : sheetStrips(sheet, place.sequence);
  const { usable } = sheet;
  return (
    <DrawingBoard
      label={`Sheet ${at + 1} of ${laid.board.materialName}, ${sheet.parts.length} parts`}
      from={[0, 0]}
      to={[sheet.length, sheet.width]}
      margin={[26, 24, 8, 8]}
      tallest={270}
    >
      {(text) => (
        <>
          <defs>
            <pattern id="kept" width={text} height={text} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <path d={`M0 0V${text}`} className={styles.hatch} />
            </pattern>
          </defs>
          <rect x={0} y={-sheet.width} width={sheet.length} height={sheet.width} className={styles.stock} />
          <rect
            x={usable.x}
            y={-(usable.y + usable.width)}
            width={usable.length}
            height={usable.width}
            className={styles.trim}
          />
          {sheet.offcuts.map((rest) => (
            <rect
              key={`${rest.x} ${rest.y}`}
              x={rest.x}
              y={-(rest.y + rest.width)}
              width={rest.length}
              height={rest.width}
              fill="url(#kept)"
              className={styles.offcut}
            >
              <title>kept offcut</title>
            </rect>
          ))}
          {sheet.parts.map((placed) => (
            <PartBox
              key={`${placed.x} ${placed.y}`}
              placed={placed}
              part={parts.get(placed.mark)}
              name={named.get(placed.mark)?.name ?? ''}
              grain={named.get(placed.mark)?.grain === 'length'}
              text={text}
            />
          ))}
          {strips.map(({ name, by, piece }) => (
            <text
              key={name}
              className={styles.letter}
              fontSize={text * 1.15}
              x={by === 'rip' ? -text * 1.1 : piece.x + piece.length / 2}
              y={by === 'rip' ? -(piece.y + piece.width / 2) + text * 0.4 : text * 1.35}
            >
              {name}
            </text>
          ))}
          <circle cx={usable.x} cy={-usable.y} r={text * 0.35} className={styles.corner}>
            <title>reference corner</title>
          </circle>
        </>
      )}
    </DrawingBoard>
  );
};

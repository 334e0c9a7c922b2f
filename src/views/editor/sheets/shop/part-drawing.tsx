import { useMemo, useState } from 'react';
import { type CutListRow, drawingToSvg, heldPages, type MarkedPart, panelFigure } from '../../../../shop/index.ts';
import { Button, Dialog, Dimension, DrawingBoard, Heading, useTheme } from '../../parts/index.ts';
import { useEditor } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import { saveOne } from './save-packet.ts';
import styles from './shop.module.css';
import type { ShopLists } from './shop-lists.ts';
import { StrokeShape } from './stroke-shape.tsx';
import { useFreshInspection } from './use-packet-wish.ts';

const INK = { light: '#1d2328', dark: '#e8e4da' } as const;

const addressOf = (svg: string): string => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

interface PartProps {
  readonly part: MarkedPart;
  readonly row: CutListRow;
}

/** The part seen on face a, length to the right, with its finished size. */
const Figure = ({ part, row }: PartProps) => {
  const units = useUnits();
  const { length, width } = part.panel;
  return (
    <DrawingBoard
      label={`${part.mark}, ${row.name}, seen on face a`}
      from={[0, 0]}
      to={[length, width]}
      margin={[12, 42, 84, 8]}
      tallest={230}
    >
      {(text) => (
        <>
          <rect x={0} y={-width} width={length} height={width} fill="var(--field)" />
          {panelFigure(part.panel).map((stroke, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: strokes of one figure come in a fixed order
            <StrokeShape key={i} stroke={stroke} width={stroke.layer === 'outline' ? 1.8 : 1} />
          ))}
          {part.panel.grain === 'length' ? (
            <path
              d={`M${length / 2 - text * 2} ${-width / 2}h${text * 4}m${-text * 0.5} ${-text * 0.3}l${text * 0.5} ${text * 0.3}l${-text * 0.5} ${text * 0.3}M${length / 2 - text * 1.5} ${-width / 2 - text * 0.3}l${-text * 0.5} ${text * 0.3}l${text * 0.5} ${text * 0.3}`}
              fill="none"
              stroke="var(--ink-2)"
              vectorEffect="non-scaling-stroke"
            />
          ) : null}
          <Dimension from={[0, 0]} to={[length, 0]} offset={-text * 1.5} text={text} units={units} />
          <Dimension from={[length, 0]} to={[length, width]} offset={-text * 1.5} text={text} units={units} />
        </>
      )}
    </DrawingBoard>
  );
};

const Paper = ({
  lists,
  part,
  row,
  onClose,
}: PartProps & { readonly lists: ShopLists; readonly onClose: () => void }) => {
  const { shown } = useTheme();
  const inspection = useFreshInspection();
  const drawn = useMemo(() => lists.drawings.draw(part.mark) ?? [], [lists, part]);
  // Nothing is saved until this very design is inspected: what is held back has to say so.
  const sheets = inspection ? heldPages(drawn, inspection) : drawn;
  const save = (): void => {
    for (const [i, drawing] of sheets.entries())
      saveOne({
        path: `${part.mark}${i === 0 ? '' : `-${i + 1}`}.svg`,
        kind: 'part-drawing',
        about: drawing.title,
        text: drawingToSvg(drawing),
      });
  };
  return (
    <Dialog
      title={`Drawing ${part.mark}`}
      wide
      onClose={onClose}
      foot={
        <>
          <Button onClick={save} disabled={inspection === null}>
            Save as SVG
          </Button>
          <Button look="main" onClick={onClose}>
            Done
          </Button>
        </>
      }
    >
      {sheets.map((drawing) => (
        <img
          key={drawing.title}
          className={styles.paper}
          src={addressOf(drawingToSvg(drawing, { ink: INK[shown] }))}
          alt={`Drawing of ${part.mark}, ${row.name}, with its dimensions and work`}
        />
      ))}
    </Dialog>
  );
};

/** The part that is selected in any view: its figure here, its drawing as it comes on paper a press away. */
export const PartDrawing = ({ lists }: { readonly lists: ShopLists }) => {
  const selection = useEditor((editor) => editor.selection);
  const [open, setOpen] = useState(false);
  const { marks, rows } = lists.drawings;
  const selected = marks.parts.find((part) => part.panels.some((panel) => selection.includes(panel.id)));
  const row = rows.find((one) => one.mark === selected?.mark) ?? rows[0];
  const part = marks.parts.find((one) => one.mark === row?.mark);
  if (!part || !row) return null;
  return (
    <section className={styles.drawing} aria-label={`Part ${part.mark}`}>
      <Heading
        level={3}
        title={part.mark}
        aside={`${row.name}, ${row.where}`}
        actions={
          <Button small onClick={() => setOpen(true)}>
            Drawing on paper…
          </Button>
        }
      />
      <Figure part={part} row={row} />
      {open ? <Paper lists={lists} part={part} row={row} onClose={() => setOpen(false)} /> : null}
    </section>
  );
};

// The small controls that every sheet is made of.
export { Button } from './button.tsx';
export { CheckField } from './check-field.tsx';
export { Chip, ToggleChip } from './chip.tsx';
export { type Choice, ChoiceField } from './choice-field.tsx';
export { classNames } from './class-names.ts';
export { Dialog } from './dialog.tsx';
export { Dimension } from './dimension.tsx';
export { DrawingBoard } from './drawing-board.tsx';
export { Heading } from './heading.tsx';
export { Figure, Length, Mass } from './length.tsx';
export { LengthField } from './length-field.tsx';
export { MassField, NumberField } from './number-field.tsx';
export { quantityText } from './quantity.ts';
export { Segment } from './segment.tsx';
export { SeverityMark } from './severity-mark.tsx';
export { Row, Table, tableStyles } from './table.tsx';
export { TextField } from './text-field.tsx';
export { startTheme, THEMES, useTheme } from './theme.ts';

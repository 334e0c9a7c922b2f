// The small controls that every sheet is made of.
export { Button, type ButtonProps } from './button.tsx';
export { CheckField, type CheckFieldProps } from './check-field.tsx';
export { Chip, ToggleChip } from './chip.tsx';
export { type Choice, ChoiceField, type ChoiceFieldProps } from './choice-field.tsx';
export { classNames } from './class-names.ts';
export { Dialog } from './dialog.tsx';
export { Dimension } from './dimension.tsx';
export { DrawingBoard } from './drawing-board.tsx';
export { Field, type FieldFrame } from './field.tsx';
export { Heading } from './heading.tsx';
export { Figure, Length, Mass } from './length.tsx';
export { LengthField, type LengthFieldProps, readLengthDraft } from './length-field.tsx';
export {
  MassField,
  type MassFieldProps,
  NumberField,
  type NumberFieldProps,
  readNumberDraft,
} from './number-field.tsx';
export { quantityText } from './quantity.ts';
export { Segment } from './segment.tsx';
export { SeverityMark } from './severity-mark.tsx';
export { Row, Table, tableStyles } from './table.tsx';
export { TextField, type TextFieldProps } from './text-field.tsx';
export { startTheme, THEMES, type Theme, themeStore, useTheme } from './theme.ts';
export { type Draft, useDraft } from './use-draft.ts';

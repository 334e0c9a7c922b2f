/** One file of the packet. Text is UTF-8; bytes are for formats that are not text. */
export type PacketFile = {
  /** Relative, with `/`, made of letters, digits, `-`, `.` alone. */
  readonly path: string;
  readonly kind:
    | 'first-page'
    | 'list'
    | 'part-drawing'
    | 'router'
    | 'book'
    | 'paper'
    | 'view'
    | 'layout'
    | 'sheet'
    | 'contents';
  readonly about: string;
} & ({ readonly text: string } | { readonly bytes: Uint8Array });

/** What this room uses of pdfkit. Its published types lag behind the package and bring those of Node with them. */
declare module 'pdfkit' {
  export interface PdfInfo {
    readonly Title: string;
    readonly Subject: string;
    readonly Creator: string;
    readonly Producer: string;
    readonly CreationDate: Date;
    readonly ModDate: Date;
  }
  export interface PdfTextOptions {
    readonly lineBreak: false;
    readonly baseline: 'alphabetic';
    /** In hundredths of the natural width. */
    readonly horizontalScaling: number;
  }
  /** An object of the file that others point to. */
  export interface PdfReference {
    readonly id: number;
  }
  export default class PDFDocument {
    constructor(options: {
      /** No built-in face: those are not embedded. */
      readonly font: null;
      readonly autoFirstPage: false;
      readonly pdfVersion: '1.7';
      readonly info: PdfInfo;
    });
    /** Takes each finished piece of the file. */
    push(piece: Uint8Array | null): boolean;
    ref(data: { readonly PrintScaling: 'None' }): PdfReference;
    readonly _root: { readonly data: { ViewerPreferences?: PdfReference } };
    registerFont(name: string, face: Uint8Array): this;
    /** Sizes in points. */
    addPage(options: { readonly size: readonly [number, number]; readonly margin: 0 }): this;
    font(name: string): this;
    fontSize(points: number): this;
    widthOfString(words: string): number;
    text(words: string, x: number, y: number, options: PdfTextOptions): this;
    save(): this;
    restore(): this;
    rotate(angleDeg: number, options: { readonly origin: readonly [number, number] }): this;
    lineWidth(points: number): this;
    lineCap(cap: 'round'): this;
    lineJoin(join: 'round'): this;
    dash(length: number, options: { readonly space: number }): this;
    undash(): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): this;
    closePath(): this;
    stroke(): this;
    fill(rule: 'even-odd'): this;
    end(): void;
  }
}

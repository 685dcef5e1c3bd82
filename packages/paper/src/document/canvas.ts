import PDFDocument from 'pdfkit';
import { facesOf, type Line } from '../text/index.ts';
import { lines_pt, sheetHeight_pt, sheetWidth_pt } from './sheetSize.ts';

type Pdf = InstanceType<typeof PDFDocument>;
type Element = ReturnType<Pdf['struct']>;

/** Parts of a text for those who hear it: names of ISO 32000 for what a piece of the page is. */
export type Role =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'P'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'L'
  | 'LI'
  | 'LBody'
  | 'Figure'
  | 'Note';

/** A place in the tree of the document. */
export interface Branch {
  readonly element: Element;
}

/** What a document says of itself. */
export interface DocumentFacts {
  readonly title: string;
  readonly author: string;
  /** A tag of BCP 47. */
  readonly language: string;
  /** Milliseconds since 1970: given, never read from a clock, so that the same pack is the same file. */
  readonly madeAt_ms: number;
}

/**
 * A document that keeps what it writes. As a stream it would hold itself in the queue of what is done later, and a hundred
 * documents made one after another would all stay in memory until then.
 */
class KeptDocument extends PDFDocument {
  // Without a value of its own: the first lines are written while it is being made.
  declare written: Uint8Array[] | undefined;

  override push(chunk: Uint8Array | null): boolean {
    this.written ??= [];
    if (chunk !== null) this.written.push(chunk);
    return true;
  }
}

/**
 * A document being drawn: letters, lines and grounds in points from the upper left corner of the sheet. Everything of pdfkit is
 * behind it.
 */
export class Canvas {
  readonly #pdf: KeptDocument;
  readonly root: Branch;

  constructor({ title, author, language, madeAt_ms }: DocumentFacts) {
    const made = new Date(madeAt_ms);
    this.#pdf = new KeptDocument({
      size: 'A4',
      margin: 0,
      autoFirstPage: false,
      pdfVersion: '1.7',
      lang: language,
      tagged: true,
      displayTitle: true,
      info: {
        Title: title,
        Author: author,
        Creator: 'Eavewell',
        Producer: 'Eavewell',
        CreationDate: made,
        ModDate: made,
      },
    });
    for (const weight of ['plain', 'strong'] as const)
      for (const { name, bytes } of facesOf(weight)) this.#pdf.registerFont(name, bytes);
    const element = this.#pdf.struct('Document');
    this.#pdf.addStructure(element);
    this.root = { element };
  }

  addPage(): void {
    this.#pdf.addPage({ size: [sheetWidth_pt, sheetHeight_pt], margin: 0 });
  }

  /** A new place in the tree. `alt`: what is said of a picture. */
  branch(under: Branch, role: Role, alt?: string): Branch {
    const element = this.#pdf.struct(role, alt === undefined ? {} : { alt });
    under.element.add(element);
    return { element };
  }

  /** What is drawn belongs to a place of the tree. */
  within(branch: Branch, role: Role, draw: () => void): void {
    const content = this.#pdf.markStructureContent(role);
    draw();
    this.#pdf.endMarkedContent();
    branch.element.add(content);
  }

  /** What is drawn is not read out: lines, heads and feet that come again. */
  unread(draw: () => void): void {
    this.#pdf.markContent('Artifact', { type: 'Layout' });
    draw();
    this.#pdf.endMarkedContent();
  }

  /** A line of letters, its left end at x, the foot of its letters at y. */
  letters({ runs, says, isTurned }: Line, x: number, y: number, size_pt: number, color = '#000'): void {
    // What is drawn from right to left is found and copied in the order it is read.
    if (isTurned) this.#pdf.markContent('Span', { actual: says });
    let at = x;
    for (const { face, text, width_pt } of runs) {
      this.#pdf.font(face.name, size_pt).fillColor(color);
      // An own list of features, though empty, keeps a run in one piece: from right to left, words laid one by one would stand in
      // the wrong order. From left to right they do not, and are known again.
      const whole = isTurned ? { features: [] } : {};
      this.#pdf.text(text, at, y, { lineBreak: false, baseline: 'alphabetic', ...whole });
      at += width_pt;
    }
    if (isTurned) this.#pdf.endMarkedContent();
  }

  rule(x: number, y: number, width: number, thick_pt: number = lines_pt.hair, color = '#000'): void {
    this.#pdf
      .moveTo(x, y)
      .lineTo(x + width, y)
      .lineWidth(thick_pt)
      .undash()
      .stroke(color);
  }

  box(x: number, y: number, width: number, height: number, thick_pt: number = lines_pt.edge): void {
    this.#pdf.rect(x, y, width, height).lineWidth(thick_pt).undash().stroke('#000');
  }

  fill(x: number, y: number, width: number, height: number, color: string): void {
    this.#pdf.rect(x, y, width, height).fill(color);
  }

  /** Many squares as one shape, so that no seam shows between them. */
  squares(all: readonly (readonly [number, number])[], side: number): void {
    for (const [x, y] of all) this.#pdf.rect(x, y, side, side);
    if (all.length > 0) this.#pdf.fill('#000');
  }

  /** For drawings to scale: pdfkit itself, its state kept. */
  drawing(draw: (pdf: Pdf) => void): void {
    this.#pdf.save();
    draw(this.#pdf);
    this.#pdf.restore();
  }

  /** The file. */
  finish(): Uint8Array {
    this.root.element.end();
    this.#pdf.end();
    return new Uint8Array(Buffer.concat(this.#pdf.written ?? []));
  }
}

export type { Pdf };

import { fileURLToPath } from 'node:url';
import PDFDocument from 'pdfkit';

const font = (path: string): string => fileURLToPath(import.meta.resolve(`@expo-google-fonts/${path}`));
const TURNS = font('noto-sans-mono/500Medium/NotoSansMono_500Medium.ttf');
const WORDS = font('source-sans-3/400Regular/SourceSans3_400Regular.ttf');

/** One stretch of text; a label is set in the face for words. Points, from the top left of the page. */
export interface Mark {
  readonly x: number;
  readonly y: number;
  readonly turns?: string;
  readonly label?: string;
  readonly size?: number;
  /** Degrees, clockwise, about its own start. */
  readonly rotate?: number;
}

/** Primes are printed as ′. */
export function smallPdf(pages: readonly (readonly Mark[])[], alts: readonly string[] = []): Promise<Uint8Array> {
  const date = new Date(0);
  const doc = new PDFDocument({
    autoFirstPage: false,
    tagged: true,
    lang: 'en-GB',
    pdfVersion: '1.7',
    info: { Title: 'Tuesday evening', CreationDate: date, ModDate: date },
  });
  const chunks: Buffer[] = [];
  doc.on('data', (chunk: Buffer) => chunks.push(chunk));
  const done = new Promise<Uint8Array>((resolve) => doc.on('end', () => resolve(Buffer.concat(chunks))));
  const root = doc.struct('Document');
  doc.addStructure(root);
  for (const [i, marks] of pages.entries()) {
    doc.addPage({ size: 'A4', margin: 0 });
    for (const { x, y, turns, label, size = turns === undefined ? 8 : 11, rotate = 0 } of marks) {
      const text = turns === undefined ? label! : turns.replaceAll("'", '′');
      doc.save().rotate(rotate, { origin: [x, y] });
      doc
        .font(turns === undefined ? WORDS : TURNS)
        .fontSize(size)
        .text(text, x, y, { lineBreak: false });
      doc.restore();
    }
    const alt = alts[i];
    if (alt !== undefined) {
      root.add(doc.struct('Figure', { alt }, () => doc.rect(400, 600, 50, 50).fill('#888888')));
    }
  }
  root.end();
  doc.end();
  return done;
}

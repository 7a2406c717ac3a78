/** The text of a PDF with its places, page by page. */
/** One stretch of text as it stands on the page, in points. */
export interface TextItem {
  readonly text: string;
  /** Of its start, in the direction of reading; so that rotated text reads like upright text. */
  readonly along: number;
  /** Of its baseline, growing upwards as the reader sees it. */
  readonly across: number;
  readonly width: number;
  readonly size: number;
  /** Direction of reading in degrees, anticlockwise from the page's right. */
  readonly angle: number;
  /** Same name, same font; the name itself means nothing. */
  readonly font: string;
}

export interface PdfPage {
  /** All items in the order of the file, single spaces, ′ turned back to '. */
  readonly text: string;
  readonly items: readonly TextItem[];
}

export interface PdfText {
  readonly pages: readonly PdfPage[];
  readonly title: string | undefined;
  readonly language: string | undefined;
  /** Tagged figures in the order of the structure tree; `page` is physical, 1-based. */
  readonly figures: readonly { readonly page: number; readonly alt: string }[];
}

interface RawItem {
  readonly str: string;
  readonly transform: readonly number[];
  readonly width: number;
  readonly fontName: string;
}

interface RawNode {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly RawNode[];
}

const round = (value: number): number => Math.round(value * 100) / 100;

function textItem({ str, transform, width, fontName }: RawItem): TextItem {
  const [a = 1, b = 0, c = 0, d = 1, x = 0, y = 0] = transform;
  const stretch = Math.hypot(a, b) || 1;
  const [right, up] = [a / stretch, b / stretch];
  return {
    text: str.replaceAll('′', "'"),
    along: round(x * right + y * up),
    across: round(y * right - x * up),
    width: round(width),
    size: round(Math.hypot(c, d)),
    angle: Math.round((Math.atan2(b, a) * 180) / Math.PI),
    font: fontName,
  };
}

function altsOf(node: RawNode | null): string[] {
  if (!node) return [];
  const own = node.role === 'Figure' ? [node.alt ?? ''] : [];
  return [...own, ...(node.children ?? []).flatMap(altsOf)];
}

const stringOrNothing = (value: unknown): string | undefined =>
  typeof value === 'string' && value !== '' ? value : undefined;

/** Rejects when the bytes are no PDF that can be read. */
export async function readPdf(bytes: Uint8Array): Promise<PdfText> {
  // Loaded here and not at the top: a large package that only audits need.
  const { getDocument, VerbosityLevel } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  // The reader takes its bytes over and empties them, hence the copy.
  const task = getDocument({ data: Uint8Array.from(bytes), verbosity: VerbosityLevel.ERRORS, useSystemFonts: false });
  try {
    const pdf = await task.promise;
    const info = (await pdf.getMetadata()).info as Record<string, unknown>;
    const pages: PdfPage[] = [];
    const figures: { page: number; alt: string }[] = [];
    for (let number = 1; number <= pdf.numPages; number++) {
      const page = await pdf.getPage(number);
      const content = await page.getTextContent();
      const items = (content.items as readonly (RawItem | { type: string })[])
        .filter((item): item is RawItem => 'str' in item && item.str.trim() !== '')
        .map(textItem);
      const text = items
        .map((item) => item.text)
        .join(' ')
        .replace(/\s+/g, ' ')
        .trim();
      pages.push({ text, items });
      const alts = altsOf((await page.getStructTree()) as RawNode | null);
      figures.push(...alts.map((alt) => ({ page: number, alt })));
    }
    return { pages, title: stringOrNothing(info['Title']), language: stringOrNothing(info['Language']), figures };
  } finally {
    await task.destroy();
  }
}

/**
 * Pages -> the bytes of a PDF 1.7 file, tagged. Lays out nothing: every item is drawn where it stands. The bytes
 * depend on the pages alone, for a given version of zlib.
 */
import PDFDocument from 'pdfkit';
import type { Label, Line, Point, Polygon, Scene, Stroke } from '../svg/scene.ts';
import { fontForWriter, widthOf } from './fonts.ts';
import type { Face, Frame, Item, Pages, Part, PlacedScene } from './frames.ts';
import { length, round } from './pieces.ts';
import { belowMiddle } from './type.ts';

type Doc = PDFKit.PDFDocument;
type Element = PDFKit.PDFStructureElement;

/** A file has no clock: the same pages are the same bytes on any day. */
const created = new Date(Date.UTC(2000, 0, 1));

/** What XML 1.0 cannot hold is left out of the metadata; the title in Info keeps it. */
const escapeXml = (text: string): string =>
  [...text]
    .filter((character) => {
      const code = character.codePointAt(0)!;
      const isLoneSurrogate = code >= 0xd800 && code <= 0xdfff;
      return (code >= 0x20 || '\t\n\r'.includes(character)) && !isLoneSurrogate && code !== 0xfffe && code !== 0xffff;
    })
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');

/** pdfkit writes the title into the XMP metadata as it is: swap it once Info is written and before XMP is. */
const escapeMetadata = (doc: Doc): void => {
  const endMetadata = doc.endMetadata.bind(doc);
  doc.endMetadata = () => {
    doc.info = { ...doc.info, Title: escapeXml(doc.info.Title ?? '') };
    endMetadata();
  };
};

/** After each text pdfkit moves a cursor on by its width. Every text has its place here, and a width takes as long as the rest. */
const holdCursor = (doc: Doc): void => {
  doc.widthOfString = () => 0;
};

/** pdfkit turns each operator into bytes by itself, tens of thousands of times in a file of papers: here once a page. */
const writeByPage = (doc: Doc): void => {
  const addContent = doc.addContent.bind(doc);
  const flushPages = doc.flushPages.bind(doc);
  let content: string[] = [];
  doc.addContent = (operators) => {
    content.push(String(operators));
    return doc;
  };
  doc.flushPages = () => {
    if (content.length > 0) addContent(content.join('\n'));
    content = [];
    flushPages();
  };
};

const drawText = (doc: Doc, text: string, x: number, y: number, { font, size, colour }: Face): void => {
  doc.fillColor(colour).font(font, size).text(text, x, y, { lineBreak: false, baseline: 'alphabetic' });
};

/** Never rounded to nothing: a width of 0 is as thin as the device can, and a dash of 0 is refused by pdfkit. */
const thickness = (n: number): number => Math.max(round(n), 0.01);

/** `#rrggbb` as the three operands of rg and RG; a palette has few, and they are asked for by every mark. */
const operands = (hex: string): string => {
  const known = knownOperands.get(hex);
  if (known !== undefined) return known;
  const parts = [1, 3, 5].map((i) => Math.round((Number.parseInt(hex.slice(i, i + 2), 16) / 255) * 1000) / 1000);
  knownOperands.set(hex, parts.join(' '));
  return parts.join(' ');
};
const knownOperands = new Map<string, string>();

/**
 * The operators of a run of lines and polygons (ISO 32000-1, 8.5), handed to pdfkit in one piece: its drawing calls one
 * by one take three times as long, and there are forty marks in a picture. Round joins and caps hold in it.
 */
const operatorsOf = (marks: readonly (Polygon | Line)[], x: number, y: number, scale: number): string => {
  const at = (point: Point): string => `${round(x + point.x * scale)} ${round(y + point.y * scale)}`;
  const pen = ({ colour, width: lineWidth, dash }: Stroke): string => {
    const dashes = dash?.every((n) => length(n) > 0) ? dash.map((n) => thickness(n * scale)).join(' ') : '';
    return `${thickness(lineWidth * scale)} w ${operands(colour)} RG [${dashes}] 0 d`;
  };
  const shape = (mark: Polygon | Line): string => {
    const fill = mark.kind === 'polygon' ? mark.fill : undefined;
    const { points, stroke } = mark;
    if (points.length === 0 || (fill === undefined && !stroke)) return '';
    const path = points.map((point, i) => `${at(point)} ${i === 0 ? 'm' : 'l'}`).join(' ');
    const close = mark.kind === 'polygon' ? ' h' : '';
    const colours = [...(fill === undefined ? [] : [`${operands(fill)} rg`]), ...(stroke ? [pen(stroke)] : [])];
    const paint = fill === undefined ? 'S' : stroke ? 'B' : 'f';
    return `${colours.join(' ')} ${path}${close} ${paint}`;
  };
  return ['1 j 1 J', ...marks.map(shape)].join('\n');
};

/** A scene at a width, each run of shapes between labels a form of its own (ISO 32000-1, 8.10). */
type Forms = readonly string[];

/** Pictures that stand in a file more than once are kept in it once. */
interface Store {
  /** How often a scene is drawn. */
  readonly uses: ReadonlyMap<Scene, number>;
  readonly forms: Map<Scene, Map<number, Forms>>;
  /** By the name that pages call it. */
  readonly references: Map<string, PDFKit.PDFKitReference>;
}

const startStore = ({ frames }: Pages): Store => {
  const uses = new Map<Scene, number>();
  for (const item of frames.flatMap((frame) => frame.items)) {
    if (item.kind === 'scene') uses.set(item.scene, (uses.get(item.scene) ?? 0) + 1);
  }
  return { uses, forms: new Map(), references: new Map() };
};

/** Cut at the labels, which pdfkit draws in their turn. */
const runsOf = (scene: Scene) => {
  const runs: { shapes: (Polygon | Line)[]; label?: Label }[] = [{ shapes: [] }];
  for (const mark of scene.marks) {
    if (mark.kind !== 'label') runs.at(-1)!.shapes.push(mark);
    else {
      runs.at(-1)!.label = mark;
      runs.push({ shapes: [] });
    }
  }
  return runs;
};

const formsOf = (doc: Doc, scene: Scene, { width, height }: PlacedScene, store: Store): Forms => {
  const byWidth = store.forms.get(scene) ?? new Map<number, Forms>();
  store.forms.set(scene, byWidth);
  const known = byWidth.get(width);
  if (known) return known;
  const names = runsOf(scene).map(({ shapes }) => {
    if (shapes.length === 0) return '';
    const name = `Fm${store.references.size + 1}`;
    // Thick lines at the rim of a picture may reach beyond it.
    const rim = width / 10;
    const BBox = [-rim, -rim, width + rim, height + rim].map(round);
    const form = doc.ref({ Type: 'XObject', Subtype: 'Form', BBox, Resources: {} });
    form.end(operatorsOf(shapes, 0, 0, width / scene.width));
    store.references.set(name, form);
    return name;
  });
  byWidth.set(width, names);
  return names;
};

const drawScene = (doc: Doc, placed: PlacedScene, store: Store): void => {
  const { scene, x, y, width } = placed;
  const scale = width / scene.width;
  const forms = (store.uses.get(scene) ?? 0) > 1 ? formsOf(doc, scene, placed, store) : undefined;
  runsOf(scene).forEach(({ shapes, label }, i) => {
    const form = forms?.[i];
    if (form) {
      doc.page.xobjects[form] = store.references.get(form)!;
      doc.addContent(`q 1 0 0 1 ${x} ${y} cm /${form} Do Q`);
    } else if (shapes.length > 0) doc.addContent(`q ${operatorsOf(shapes, x, y, scale)}\nQ`);
    if (!label) return;
    const size = round(label.size * scale);
    const face = { font: 'sans-strong', size, colour: label.colour } as const;
    const left = x + label.x * scale - widthOf(face.font, label.text, size) / 2;
    const base = y + label.y * scale + belowMiddle(face.font, size);
    drawText(doc, label.text, round(left), round(base), face);
  });
};

const drawItem = (doc: Doc, item: Item, store: Store): void => {
  switch (item.kind) {
    case 'text':
      drawText(doc, item.text, item.x, item.y, item);
      break;
    case 'line':
      doc.lineWidth(item.width).strokeColor(item.colour).moveTo(item.x1, item.y1).lineTo(item.x2, item.y2).stroke();
      break;
    case 'box':
      doc.roundedRect(item.x, item.y, item.width, item.height, item.radius);
      if (item.fill !== undefined) doc.fillColor(item.fill);
      if (item.line) doc.lineWidth(item.line.width).strokeColor(item.line.colour);
      if (item.fill !== undefined && item.line) doc.fillAndStroke();
      else if (item.line) doc.stroke();
      else doc.fill();
      break;
    case 'scene':
      drawScene(doc, item, store);
      break;
  }
};

/** For each part, the item (counted over all pages) after which neither it nor a part in it is drawn again. */
const lastUses = ({ frames, parts }: Pages): readonly number[] => {
  const last = parts.map(() => -1);
  for (const [i, item] of frames.flatMap((frame) => frame.items).entries()) {
    for (let part = item.part; part !== undefined; part = parts[part]?.parent) last[part] = i;
  }
  return last;
};

const boxOf = (item: Item): [number, number, number, number] | undefined =>
  item.kind === 'scene' ? [item.x, item.y, round(item.x + item.width), round(item.y + item.height)] : undefined;

/** The structure tree, grown as items are drawn: an element is ended with its last item, which frees its memory. */
const growTree = (doc: Doc, pages: Pages) => {
  const store = startStore(pages);
  const elements: (Element | undefined)[] = [];
  const last = lastUses(pages);

  const elementOf = (number: number, item: Item): Element => {
    const known = elements[number];
    if (known) return known;
    const part: Part = pages.parts[number]!;
    const bbox = part.role === 'Figure' ? boxOf(item) : undefined;
    const made = doc.struct(part.role, { ...(part.alt && { alt: part.alt }), ...(bbox && { bbox }) });
    if (part.parent === undefined) doc.addStructure(made);
    else elementOf(part.parent, item).add(made);
    elements[number] = made;
    return made;
  };

  return {
    /** Draws items of one part in a row, or decoration if there is none. */
    draw(items: readonly Item[], part: number | undefined): void {
      const element = part === undefined ? undefined : elementOf(part, items[0]!);
      const content = part === undefined ? undefined : doc.markStructureContent(pages.parts[part]!.role);
      if (!content) doc.markContent('Artifact', { type: 'Layout' });
      for (const item of items) drawItem(doc, item, store);
      doc.endMarkedContent();
      if (content) element?.add(content);
    },
    /** Ends the elements that item number `drawn` of part `part` was the last of, from the inside outwards. */
    endAfter(part: number | undefined, drawn: number): void {
      for (let one = part; one !== undefined && last[one] === drawn; one = pages.parts[one]?.parent)
        elements[one]?.end();
    },
  };
};

const headingDepth: Partial<Record<Part['role'], number>> = { H1: 1, H2: 2, H3: 3 };

/** Outline entries nest as the headings do; what is no heading goes to the innermost. */
const startOutline = (doc: Doc) => {
  const path: { readonly depth: number; readonly entry: PDFKit.PDFOutline }[] = [];
  return (title: string, role: Part['role'], top: number, pageWidth: number): void => {
    const depth = headingDepth[role] ?? 4;
    while (path.length > 0 && path.at(-1)!.depth >= depth) path.pop();
    const parent = path.at(-1)?.entry ?? doc.outline;
    // pdfkit counts `left` from the right edge.
    path.push({ depth, entry: parent.addItem(title, { fit: false, top, left: pageWidth, expanded: true }) });
  };
};

/** Items in their order, cut where the part changes. */
const sequences = (frame: Frame): readonly Item[][] => {
  const found: Item[][] = [];
  for (const item of frame.items) {
    const current = found.at(-1);
    if (current && current[0]!.part === item.part) current.push(item);
    else found.push([item]);
  }
  return found;
};

const drawPages = (doc: Doc, pages: Pages): void => {
  const tree = growTree(doc, pages);
  const addBookmark = startOutline(doc);
  const bookmarked = new Set<number>();
  let drawn = -1;
  for (const frame of pages.frames) {
    doc.addPage();
    for (const items of sequences(frame)) {
      const { part } = items[0]!;
      const bookmark = part === undefined ? undefined : pages.parts[part]?.bookmark;
      if (part !== undefined && bookmark !== undefined && !bookmarked.has(part)) {
        bookmarked.add(part);
        addBookmark(bookmark, pages.parts[part]!.role, topOf(items[0]!), pages.width);
      }
      tree.draw(items, part);
      drawn += items.length;
      tree.endAfter(part, drawn);
    }
  }
};

const topOf = (item: Item): number => {
  if (item.kind === 'text') return round(Math.max(item.y - 2 * item.size, 0));
  return item.kind === 'line' ? item.y1 : item.y;
};

/**
 * The file. Pages are drawn as they are, so that pages of a layout with faults give a file with the same faults.
 * `compress`: deflate the streams; tests compare files without, as zlib's output differs by version.
 */
export const writePdf = (pages: Pages, { compress = true } = {}): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const doc: Doc = new PDFDocument({
      autoFirstPage: false,
      compress,
      displayTitle: true,
      font: '',
      info: {
        Title: pages.title,
        Producer: 'turnsheet',
        Creator: 'turnsheet',
        CreationDate: created,
        ModDate: created,
      },
      lang: pages.language,
      margin: 0,
      pdfVersion: '1.7',
      size: [pages.width, pages.height],
      tagged: true,
    });
    holdCursor(doc);
    writeByPage(doc);
    escapeMetadata(doc);
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('end', () => resolve(Buffer.concat(chunks)));
    doc.on('error', reject);
    for (const name of ['sans', 'sans-strong', 'mono'] as const) {
      // The types ask for bytes; pdfkit takes an opened font too, which saves parsing each file a second time.
      doc.registerFont(name, fontForWriter(name) as unknown as Buffer);
    }
    drawPages(doc, pages);
    doc.end();
  });

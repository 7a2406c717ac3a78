import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { layOut } from '../../src/layout/layout.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { everything, sheet, text, turns } from './sample.ts';

const build = (): Promise<Uint8Array> => writePdf(layOut(everything(), { paper: 'a4' }).pages);
const sha = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
/** pdfjs takes the bytes it is given away. */
const open = (bytes: Uint8Array) => getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly bbox?: readonly number[];
  readonly children?: readonly Node[];
}
const nodesOf = (node: Node): readonly Node[] => [node, ...(node.children ?? []).flatMap(nodesOf)];

let bytes: Uint8Array;
beforeAll(async () => {
  const { pages, faults } = layOut(everything(), { paper: 'a4' });
  expect(faults).toEqual([]);
  expect(pages.frames.map((frame) => frame.claims)).toEqual([
    ['claim-1', 'claim-2', 'claim-3', 'claim-4'],
    ['claim-late'],
  ]);
  bytes = await writePdf(pages);
});

describe('read back by pdfjs', () => {
  const pageText = async (number: number): Promise<string> => {
    const page = await (await open(bytes)).getPage(number);
    const { items } = await page.getTextContent();
    return items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
  };

  test('texts come in reading order, turns with single spaces and primes', async () => {
    const words = (await pageText(1)).replace(/\s+/g, ' ');
    const inOrder = [
      'Turns & tests <one>',
      'See, then turn',
      'Put the',
      'green edge in with R′ U2 R, then look again.',
      ...[1, 2, 3, 4].map((n) => `Case ${n} R′ U2 R F′ U′ F edge out insert 6`),
      'left foot',
      'page 1 of 2',
    ];
    let from = 0;
    for (const one of inOrder) {
      const at = words.indexOf(one, from);
      expect(at, `${one} after position ${from} of ${words}`).toBeGreaterThanOrEqual(from);
      from = at + one.length;
    }
    expect((await pageText(2)).replace(/\s+/g, ' ')).toContain('Name On the second page');
  });

  test('turns that words push apart still have single spaces', async () => {
    const body = [turns(['U', 'turn the top'], ["R' F", 'then insert it'], ['U2', 'look'])];
    const page = await (await open(await writePdf(layOut(sheet(body), { paper: 'a4' }).pages))).getPage(1);
    const { items } = await page.getTextContent();
    const read = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
    expect(read.split('\n')[0]).toBe('U R′ F U2');
  });

  test('the structure has headings, paragraphs, figures with description and box, spans', async () => {
    const page = await (await open(bytes)).getPage(1);
    const nodes = nodesOf((await page.getStructTree()) as Node);
    const count = (role: string): number => nodes.filter((node) => node.role === role).length;
    expect(count('Document')).toBe(1);
    expect([count('H1'), count('H2'), count('H3'), count('Figure'), count('Span')]).toEqual([1, 1, 4, 4, 4]);
    const figures = nodes.filter((node) => node.role === 'Figure');
    expect(figures.map((node) => node.alt)).toEqual([1, 2, 3, 4].map((n) => `Drawing number ${n}`));
    for (const { bbox } of figures) {
      expect(bbox![2]! - bbox![0]!).toBeCloseTo(96, 1);
      expect(bbox![3]! - bbox![1]!).toBeCloseTo(96 * 0.8, 1);
    }
    expect(nodes.filter((node) => node.role === 'Span').map((node) => node.alt)).toEqual(Array(4).fill('6 turns'));
  });

  test('title, language, outline', async () => {
    const doc = await open(bytes);
    const { info, metadata } = await doc.getMetadata();
    expect(info).toMatchObject({ Title: 'Turns & tests <one>', Language: 'en', PDFFormatVersion: '1.7' });
    expect(metadata.get('dc:title')).toBe('Turns & tests <one>');
    const outline = await doc.getOutline();
    expect(outline.map((entry) => [entry.title, entry.items.map((item: { title: string }) => item.title)])).toEqual([
      ['Turns & tests', ['See']],
    ]);
  });

  test('every glyph is from our three fonts, and nothing is an image', async () => {
    const found = Buffer.from(
      await writePdf(layOut(everything(), { paper: 'a4' }).pages, { compress: false }),
    ).toString('latin1');
    const fonts = new Set([...found.matchAll(/\/BaseFont \/[A-Z]+\+(\S+)/g)].map((match) => match[1]));
    expect([...fonts].toSorted()).toEqual(['NotoSansMono-Medium', 'SourceSans3-Regular', 'SourceSans3-SemiBold']);
    expect(found).not.toMatch(/\/Subtype \/(Type1|Image)\b/);
  });
});

describe('the same bytes', () => {
  test('of two builds in one process', async () => {
    expect(sha(await build())).toBe(sha(bytes));
    const { pages } = layOut(everything(), { paper: 'a4' });
    const [a, b] = [await writePdf(pages, { compress: false }), await writePdf(pages, { compress: false })];
    expect(sha(a)).toBe(sha(b));
    expect(a.length).toBeGreaterThan(bytes.length);
  });

  test.each([
    { TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
    { TZ: 'America/St_Johns', LANG: 'C', LC_ALL: 'C' },
  ])('of another process in %o', (place) => {
    const script = fileURLToPath(new URL('print-digest.ts', import.meta.url));
    const printed = execFileSync(process.execPath, ['--import', 'tsx', script], { env: { ...process.env, ...place } });
    expect(printed.toString().trim()).toBe(sha(bytes));
  });
});

describe('odd content', () => {
  test.each([
    ['no body', sheet([])],
    ['an odd title', sheet([text('x')], { title: 'a\u0000b ]]> \ud83d & “c”' })],
    ['a bookmark of other letters', sheet([text('x', { bookmark: 'Рёбра (один)' })])],
  ])('%s is still a file', async (_, odd) => {
    const doc = await open(await writePdf(layOut(odd, { paper: 'letter' }).pages));
    expect(doc.numPages).toBe(1);
  });
});

const has = (tool: string): boolean => spawnSync(tool, ['--version']).error === undefined;

describe('checked by other programs', () => {
  const folder = mkdtempSync(join(tmpdir(), 'layout-'));
  const file = join(folder, 'sheet.pdf');
  beforeAll(() => writeFileSync(file, bytes));
  afterAll(() => rmSync(folder, { recursive: true }));

  test.skipIf(!has('qpdf'))('qpdf finds no error', () => {
    expect(execFileSync('qpdf', ['--check', file]).toString()).toContain('No syntax or stream encoding errors found');
  });

  test.skipIf(!has('pdffonts'))('pdffonts: each font is embedded, a subset, and maps to Unicode', () => {
    const rows = execFileSync('pdffonts', [file]).toString().trim().split('\n').slice(2);
    expect(rows.length).toBe(3);
    for (const row of rows) expect(row).toMatch(/yes yes yes/);
  });

  test.skipIf(!has('pdftotext'))('pdftotext has every line of turns', () => {
    const read = execFileSync('pdftotext', [file, '-']).toString();
    expect(read.match(/R′ U2 R F′ U′ F/g)?.length).toBe(4);
  });
});

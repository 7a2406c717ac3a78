/** Several documents as one file, and pictures that stand in it more than once. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { bound } from '../../src/layout/bind.ts';
import { layOut } from '../../src/layout/layout.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import type { Scene } from '../../src/svg/scene.ts';
import { scene, sheet, text } from './sample.ts';

const volume = (words: string, pages: number, picture: Scene) =>
  layOut(
    sheet(
      Array.from({ length: pages }, (_, i) => [
        text(`${words} ${i + 1}`),
        { kind: 'figure', scene: picture, width: 100 } as const,
        { kind: 'space', height: 700 } as const,
      ]).flat(),
    ),
    { paper: 'a4' },
  ).pages;

const hasPdftoppm = spawnSync('pdftoppm', ['-v']).status === 0;

/** The pixels of all pages. */
function rendered(bytes: Uint8Array): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'turnsheet-bind-'));
  writeFileSync(join(folder, 'a.pdf'), bytes);
  const { status } = spawnSync('pdftoppm', ['-r', '60', '-singlefile', join(folder, 'a.pdf'), join(folder, 'a')]);
  expect(status).toBe(0);
  const pixels = readFileSync(join(folder, 'a.ppm'));
  rmSync(folder, { recursive: true });
  return pixels;
}

describe('bound volumes', () => {
  it('keep their pages and the numbers on them', async () => {
    const picture = scene('A picture');
    const { pages, figures } = await readPdf(
      await writePdf(bound([volume('one', 2, picture), volume('two', 3, picture)])),
    );
    expect(pages.map((p) => /page (\d of \d)/.exec(p.text)?.[1])).toEqual([
      '1 of 2',
      '2 of 2',
      '1 of 3',
      '2 of 3',
      '3 of 3',
    ]);
    expect(pages.map((p) => p.text.slice(0, 5))).toEqual(['one 1', 'one 2', 'two 1', 'two 2', 'two 3']);
    expect(figures).toEqual([1, 2, 3, 4, 5].map((page) => ({ page, alt: 'A picture' })));
  });

  it('have one document, whose parts stand after their parents', () => {
    const { parts, frames } = bound([volume('one', 2, scene('A')), volume('two', 2, scene('B'))]);
    expect(parts.filter((part) => part.parent === undefined)).toHaveLength(1);
    expect(parts.every((part, i) => part.parent === undefined || part.parent < i)).toBe(true);
    const used = frames.flatMap((frame) => frame.items.flatMap((item) => item.part ?? []));
    expect(used).toEqual([...used].sort((a, b) => a - b));
    expect(Math.max(...used)).toBe(parts.length - 1);
  });

  it('are the volume itself where there is one', () => {
    const one = volume('one', 1, scene('A'));
    expect(bound([one])).toBe(one);
  });
});

describe('a picture that stands in a file more than once', () => {
  const twice = (a: Scene, b: Scene) =>
    writePdf(
      layOut(
        sheet([
          { kind: 'figure', scene: a, width: 100 },
          { kind: 'figure', scene: b, width: 140 },
          { kind: 'figure', scene: a, width: 100 },
          { kind: 'figure', scene: b, width: 140 },
        ]),
        { paper: 'a4' },
      ).pages,
      { compress: false },
    );
  const one = scene('The same');

  it('is kept once at each width', async () => {
    const file = Buffer.from(await twice(one, one)).toString('latin1');
    // The sample has one run of shapes before its label: a form for each of the two widths, drawn twice.
    expect(file.match(/\/Subtype \/Form/g)).toHaveLength(2);
    expect(file.match(/\/Fm\d+ Do/g)).toHaveLength(4);
    const each = Buffer.from(await twice(scene('The same'), scene('Another'))).toString('latin1');
    expect(each.match(/\/Subtype \/Form/g)).toHaveLength(2);
  });

  it.skipIf(!hasPdftoppm)('looks the same as if it were drawn each time', async () => {
    const marks = () => ({ ...scene('The same'), marks: scene('x').marks.map((mark) => ({ ...mark })) });
    const single = layOut(sheet([0, 1, 2].map(() => ({ kind: 'figure', scene: marks(), width: 100 }) as const)), {
      paper: 'a4',
    });
    const shared = layOut(sheet([0, 1, 2].map(() => ({ kind: 'figure', scene: one, width: 100 }) as const)), {
      paper: 'a4',
    });
    const [a, b] = [rendered(await writePdf(single.pages)), rendered(await writePdf(shared.pages))];
    let differing = 0;
    for (let i = 0; i < a.length; i++) if (Math.abs(a[i]! - b[i]!) > 8) differing++;
    // Coordinates are rounded in another frame, a hundredth of a point at most.
    expect(differing / a.length).toBeLessThan(0.001);
    expect(a.some((value) => value !== a[a.length - 1])).toBe(true);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Span } from '../../src/layout/blocks.ts';
import { widthOf } from '../../src/layout/fonts.ts';
import { breakLines, type Line } from '../../src/layout/lines.ts';
import { typeScale } from '../../src/layout/type.ts';
import { plain } from './sample.ts';

const body = typeScale.body;
const textOf = (line: Line): string => line.runs.map((run) => run.text).join('');
const set = (spans: readonly Span[], width: number): readonly string[] =>
  breakLines(spans, body, width).lines.map(textOf);
const wide = (text: string): number => widthOf(body.font, text, body.size);

describe('line breaking', () => {
  test('a line ends at a space, which is dropped', () => {
    expect(set([plain('one two three')], wide('one two') + 0.1)).toEqual(['one two', 'three']);
  });

  test('words that fit exactly stay', () => {
    expect(set([plain('one two three')], wide('one two three'))).toEqual(['one two three']);
  });

  test.each([
    ['spaces, tabs and line ends count as one', '  one \n\t two  ', ['one two']],
    ['a no-break space keeps', 'one\u00a0two', ['one\u00a0two']],
    ['nothing', '', []],
    ['only spaces', '   ', []],
  ])('%s', (_, text, lines) => {
    expect(set([plain(text)], 300)).toEqual(lines);
  });

  test('spans without a space between are one word', () => {
    const spans: Span[] = [plain('so '), { kind: 'strong', text: 'split' }, plain(', then')];
    const { lines } = breakLines(spans, body, wide('so split') + 2);
    expect(lines.map(textOf)).toEqual(['so ', 'split, ', 'then'].map((one) => one.trim()));
  });

  test('a line of turns ends between turns only, and primes are printed', () => {
    const spans: Span[] = [plain('do '), { kind: 'turns', turns: ["R'", 'U2', "Rw'", 'U'] }, plain('.')];
    for (let width = 30; width < 120; width += 3) {
      const words = set(spans, width).join(' ').split(' ');
      expect(words).toEqual(['do', 'R\u2032', 'U2', 'Rw\u2032', 'U.']);
    }
  });

  test('an apostrophe in ordinary text is printed as given', () => {
    expect(set([plain("don't")], 100)).toEqual(["don't"]);
  });

  test('two spans of turns are two words', () => {
    const spans: Span[] = [
      { kind: 'turns', turns: ['R'] },
      { kind: 'turns', turns: ['U'] },
    ];
    expect(set(spans, 100)).toEqual(['R U']);
  });

  test.each(['green', ' green', 'green '])('a swatch keeps to its word, given as "%s"', (name) => {
    for (let width = 40; width < 100; width += 2) {
      const { lines } = breakLines([plain('the '), { kind: 'swatch', text: name, fill: '#2fae8c' }], body, width);
      const holding = lines.filter((line) => line.swatches.length > 0);
      expect(holding.length).toBe(1);
      expect(textOf(holding[0]!)).toContain('green');
    }
  });

  test('the last line is not left with one short word', () => {
    const words = 'a paragraph whose measure would leave the last word all by itself at the end of it';
    const width = wide(words.slice(0, words.lastIndexOf(' '))) + 1;
    const lines = set([plain(words)], width);
    expect(lines.at(-1)).toBe('of it');
    expect(lines.join(' ')).toBe(words);
  });
});

describe('findings', () => {
  test('a word wider than the line is named, kept whole, and the rest goes on', () => {
    const { lines, findings } = breakLines([plain('a Rindfleischetikettierung b')], body, 60);
    expect(findings).toEqual([{ code: 'word-too-wide', what: 'Rindfleischetikettierung' }]);
    expect(lines.map(textOf)).toEqual(['a', 'Rindfleischetikettierung', 'b']);
  });

  test.each([
    ['↻', '↻'],
    ['a\u0007b', '\u0007'],
    ['😀', '😀'],
    ['漢', '漢'],
  ])('%s cannot be printed', (text, what) => {
    expect(breakLines([plain(text)], body, 300).findings).toEqual([{ code: 'missing-glyph', what }]);
  });

  test('what the sheets print can be', () => {
    const { findings } = breakLines([plain('Žluťoučký ß “quoted” · → ′ ’ … – ✓ ✗ ☐ Привет')], body, 900);
    expect(findings).toEqual([]);
  });
});

test('any text: no line is wider than asked, no word is lost, runs follow each other (seed 11)', () => {
  const word = fc.string({ unit: fc.constantFrom(...'abcdefgilmnorstuvAVTW.,’-'), minLength: 1, maxLength: 9 });
  const span: fc.Arbitrary<Span> = fc.oneof(
    fc.array(word, { maxLength: 12 }).map((words) => plain(words.join(' '))),
    fc.array(word, { maxLength: 4 }).map((words) => ({ kind: 'strong', text: ` ${words.join(' ')} ` }) as const),
    fc
      .array(fc.constantFrom('R', "U'", 'F2', "Rw'"), { maxLength: 6 })
      .map((list) => ({ kind: 'turns', turns: list }) as const),
    word.map((text) => ({ kind: 'swatch', text, fill: '#2fae8c' }) as const),
  );
  fc.assert(
    fc.property(fc.array(span, { maxLength: 8 }), fc.integer({ min: 90, max: 400 }), (spans, width) => {
      const { lines, findings } = breakLines(spans, body, width);
      const tooWide = findings.some((finding) => finding.code === 'word-too-wide');
      for (const line of lines) {
        if (!tooWide) expect(line.width).toBeLessThanOrEqual(width + 0.011);
        for (const [i, run] of line.runs.entries()) {
          const next = line.runs[i + 1];
          const end = run.x + widthOf(run.font, run.text, run.size);
          expect(end).toBeLessThanOrEqual((next?.x ?? line.width) + 0.001);
        }
      }
      const given = spans.map((one) =>
        one.kind === 'turns' ? one.turns.join(' ').replaceAll("'", '\u2032') : one.text,
      );
      expect(lines.map(textOf).join('').replace(/\s/g, '')).toBe(given.join('').replace(/\s/g, ''));
    }),
    { seed: 11, numRuns: 300 },
  );
});

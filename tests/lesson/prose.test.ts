import { describe, expect, it } from 'vitest';
import { readProse } from '../../src/lesson/prose.ts';

const same = (offset: number): number => offset;
const read = (text: string) => readProse(text, same);

const said = (text: string) =>
  read(text).prose.map(({ kind, phrases }) => [
    kind,
    phrases.map((p) => {
      if (p.kind === 'turns') return `turns:${p.turns.map((t) => t.text).join(' ')}`;
      return p.kind === 'colour' ? `colour:${p.colour}` : `${p.kind}:${p.text}`;
    }),
  ]);

describe('texts of a lesson', () => {
  const rows: readonly [name: string, text: string, prose: ReturnType<typeof said>][] = [
    ['nothing', '', []],
    ['blank lines only', '\n\n \n', []],
    ['lines of one paragraph', 'one\ntwo', [['paragraph', ['plain:one two']]]],
    [
      'an empty line between paragraphs',
      'one\n\ntwo\n',
      [
        ['paragraph', ['plain:one']],
        ['paragraph', ['plain:two']],
      ],
    ],
    [
      'a heading, at once followed by its text',
      '# Look\nAnd see.',
      [
        ['heading', ['plain:Look']],
        ['paragraph', ['plain:And see.']],
      ],
    ],
    [
      'a list, one item over two lines',
      '- one\n- two\n  more',
      [
        ['item', ['plain:one']],
        ['item', ['plain:two more']],
      ],
    ],
    ['emphasis', 'a *b c* d', [['paragraph', ['plain:a ', 'strong:b c', 'plain: d']]]],
    ['a colour', 'see {red}.', [['paragraph', ['plain:see ', 'colour:red', 'plain:.']]]],
    ['turns, in normal form', 'do `r U2’`', [['paragraph', ['plain:do ', 'turns:Rw U2']]]],
    ['a star alone', '3 * 4', [['paragraph', ['plain:3 * 4']]]],
    [
      'a sentence that says a fact, over two lines',
      'see [that *it*\nis {red}](so it is), and on',
      [['paragraph', ['plain:see ', 'plain:that ', 'strong:it', 'plain: is ', 'colour:red', 'plain:, and on']]],
    ],
    ['square brackets that mark nothing', 'a [b] (c) \\[d](e) [f', [['paragraph', ['plain:a [b] (c) [d](e) [f']]]],
    ['signs meant as themselves', 'a \\*b\\* \\{c\\}', [['paragraph', ['plain:a *b* {c}']]]],
    ['a minus that is no list', 'so - yes', [['paragraph', ['plain:so - yes']]]],
  ];

  it.each(rows)('%s', (_, text, prose) => {
    expect(said(text)).toEqual(prose);
    expect(read(text).problems).toEqual([]);
  });

  it('marks every phrase of a sentence with the names of its facts, and where it stands', () => {
    const text = 'First [all *of* it](one, the other). Then not.';
    const phrases = read(text).prose[0]!.phrases;
    expect(phrases.map(({ says }) => says?.names)).toEqual([
      undefined,
      ...Array(3).fill(['one', 'the other']),
      undefined,
    ]);
    const { span } = phrases[1]!.says!;
    expect(text.slice(span.start, span.end)).toBe('all *of* it');
    expect(new Set(phrases.slice(1, 4).map(({ says }) => says)).size).toBe(1);
  });

  it('tells of every bad mark, where it stands, and reads on', () => {
    const text = 'a *b\n\n{rde} `R U4` c `` {';
    const { problems } = read(text);
    expect(problems.map((p) => [text.slice(p.span.start, p.span.end), p.code])).toEqual([
      ['*', 'text-mark'],
      ['{rde}', 'text-mark'],
      ['4', 'turns-unreadable'],
      ['``', 'turns-missing'],
      ['{', 'text-mark'],
    ]);
    expect(problems[1]!.hint).toBe('write {red}');
  });
});

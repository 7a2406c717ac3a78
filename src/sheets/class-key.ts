/** The key for a class on one page: a line a student, with the check words of the paper and the answers of its choices. */
import { type Block, mm, type Sheet } from '../layout/blocks.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import { columns, h1, space, whole } from './blocks.ts';
import { headRule } from './heading.ts';
import type { Making } from './making.ts';
import { plainText } from './phrases.ts';
import { itemsByKind, kindWords, rightLetters } from './practice-texts.ts';
import { note, plain, strong } from './texts.ts';

const STUDENT = mm(26);
const PAPER = mm(14);
const WORDS = mm(46);
const GAP = mm(4);

/** What is written down for it: letters, or where a piece is; nothing for what is solved by turns. */
const answerOf = ({ exercise, ...item }: PaperItem): string => {
  switch (exercise.form) {
    case 'choice':
      return rightLetters({ exercise, ...item });
    case 'place':
      return `${exercise.at}:${exercise.faces}`;
    case 'solve':
      return '';
  }
};

const rangeOf = (items: readonly PaperItem[]): string => {
  const [first, last] = [items[0]!.number, items.at(-1)!.number];
  return first === last ? `${first}` : `${first}–${last}`;
};

/** `9–12 E N E T`, one for each kind. */
function answersOf(paper: PracticePaper): string[] {
  return itemsByKind(paper).flatMap(([, items]) => {
    const answers = items.map(answerOf).filter((answer) => answer !== '');
    return answers.length === 0 ? [] : [[rangeOf(items), ...answers].join('\u00a0')];
  });
}

const row = (...[student, paper, words, answers]: readonly [Block, Block, Block, Block]): Block =>
  columns(GAP, [STUDENT, student], [PAPER, paper], [WORDS, words], ['rest', answers]);

/** What the numbers are of: `1–4 Like or unlike?` */
const kindsOf = (paper: PracticePaper, making: Making): string =>
  itemsByKind(paper)
    .map(([, items]) => `${rangeOf(items)} ${kindWords(items[0]!, making).title}`)
    .join(' · ');

/** Of papers of one lesson, in the order in which the students sit. */
export function classKey(papers: readonly PracticePaper[], making: Making): Sheet {
  const { practice, handout, language } = making.words;
  const { lesson } = papers[0]!.student.proved;
  const title = practice.classKey.title(plainText(lesson.title, making));
  const heads = practice.classKey.heads.map((head) => note(strong(head))) as [Block, Block, Block, Block];
  const rows = papers.map((paper) =>
    whole(
      mm(1),
      { kind: 'rule', weight: 'thin' },
      row(
        note(strong(paper.student.code ?? '–')),
        note(plain(paper.code)),
        note(plain(paper.checkWords.join(' '))),
        note(plain(answersOf(paper).join(' · '))),
      ),
    ),
  );
  return {
    title,
    language,
    body: [
      h1([plain(title)], { bookmark: title }),
      ...headRule(),
      note(plain(kindsOf(papers[0]!, making))),
      space(mm(3)),
      row(...heads),
      space(mm(1)),
      ...rows,
    ],
    foot: { left: [title, practice.classKey.short], right: handout.page },
  };
}

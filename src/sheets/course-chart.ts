/** A course -> its chart: the evenings, and which case is shown when, practised how often, or never. For the coach. */

import { type Block, mm, type Sheet, type Span } from '../layout/blocks.ts';
import type { CoverageClaim } from '../lesson/claim.ts';
import type { Course, Evening } from '../lesson/course.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { positionAt } from '../lesson/source.ts';
import { wordsIn } from '../steps/languages.ts';
import type { Step } from '../steps/step.ts';
import { stepOf, USUAL_STEP } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import { drawCase } from '../svg/draw.ts';
import type { Ink } from '../svg/palette.ts';
import { groupedBy } from '../text/grouped.ts';
import { columns, figure, grid, h1, h2, h3, space, whole } from './blocks.ts';
import { headRule } from './heading.ts';
import type { Making } from './making.ts';
import { lineSpans, plainText } from './phrases.ts';
import { printable } from './print-text.ts';
import { grey, line, note, plain, strong } from './texts.ts';

const PICTURE = mm(15);
const CELL = mm(19);

/** An evening with its proved lesson and papers. */
export interface TaughtEvening {
  readonly evening: Evening;
  readonly proved: ProvedLesson;
  /** Of all its sheets. */
  readonly pages: number;
  /** By case: how many items of its papers ask for it. */
  readonly practised: ReadonlyMap<string, number>;
}

const shownIn = ({ proved }: TaughtEvening): ReadonlySet<string> =>
  new Set(proved.cases.map(({ subject }) => subject.caseAddress));

/** What the course is about: the steps of its lessons. */
const stepsOf = (taught: readonly TaughtEvening[]): readonly Step[] =>
  taught.length === 0 ? [USUAL_STEP] : [...new Set(taught.map(({ proved }) => proved.lesson.step))];

/** Those that can be listed. */
const casesToTeach = (taught: readonly TaughtEvening[]): readonly Subject[] =>
  stepsOf(taught).flatMap(({ families, cases }) => families.flatMap((family) => cases(family) ?? []));

/** A claim for each case that can be taught. */
export function coverageClaims(course: Course, taught: readonly TaughtEvening[]): CoverageClaim[] {
  const shown = taught.map((one) => ({ number: one.evening.number, cases: shownIn(one) }));
  return casesToTeach(taught).map(({ step, caseAddress, family }) => ({
    id: `case ${caseAddress}`,
    kind: 'coverage',
    file: course.source.file,
    line: positionAt(course.source, course.title.span.start).line,
    step,
    case: caseAddress,
    family,
    evenings: shown.filter(({ cases }) => cases.has(caseAddress)).map(({ number }) => number),
    practised: taught.reduce((sum, { practised }) => sum + (practised.get(caseAddress) ?? 0), 0),
  }));
}

/** How the chart is made: in the language of its first lesson, without the words of any one club. */
const makingFor = (taught: readonly TaughtEvening[], ink: Ink): Making => ({
  words: wordsIn(taught[0]?.proved.lesson.language ?? 'en'),
  ink,
  wide: 'Rw',
});

function eveningRow({ evening, proved, pages }: TaughtEvening, making: Making): Block {
  const { course: words } = making.words;
  const { title } = proved.lesson;
  return columns(
    mm(4),
    [mm(18), note(strong(words.evening(evening.number)))],
    [mm(20), note(grey(evening.date ?? ''))],
    ['rest', note(...(title ? lineSpans(title, making) : [plain(printable(evening.lesson))]))],
    [mm(24), note(plain(words.cases(proved.differentCases)))],
    [mm(16), note(plain(words.pages(pages)))],
  );
}

function caseCell(
  subject: Subject,
  claim: CoverageClaim,
  practice: boolean,
  first: ProvedLesson | undefined,
  making: Making,
): Block {
  const { course: words } = making.words;
  const look = { ...making, colours: first!.lesson.colours, small: true };
  const when: Span = claim.evenings.length > 0 ? strong(claim.evenings.join(', ')) : grey(words.never);
  return {
    ...whole(
      0,
      figure(drawCase(subject.cube, subject, 'open', look), PICTURE),
      note(when, ...(practice && claim.practised > 0 ? [plain(` · ${words.practised(claim.practised)}`)] : [])),
    ),
    claims: [claim.id],
  };
}

/** Evenings and coverage on paper; `claims` are those of `coverageClaims`, in their order. */
export function courseChart(
  course: Course,
  taught: readonly TaughtEvening[],
  claims: readonly CoverageClaim[],
  ink: Ink,
): Sheet {
  const making = makingFor(taught, ink);
  const { course: words, handout, language } = making.words;
  const practice = claims.some(({ practised }) => practised > 0);
  const shown = (some: readonly CoverageClaim[]): number => some.filter(({ evenings }) => evenings.length > 0).length;
  const cases = casesToTeach(taught);
  const ofFamilies = groupedBy(
    cases.map((subject, i) => ({ subject, claim: claims[i]! })),
    ({ subject }) => `${subject.step} ${subject.family}`,
  );
  const charts = stepsOf(taught).map(({ sheets }) => sheets.words(making.words).chart);
  const title = plainText(course.title, making);
  return {
    title,
    language,
    body: [
      ...(course.club ? [{ ...line('label', ...lineSpans(course.club, making)), origin: course.club.span }] : []),
      h1(lineSpans(course.title, making), { bookmark: title, origin: course.title.span }),
      note(plain(words.about(shown(claims), claims.length))),
      ...headRule(),
      h2([plain(words.evenings)]),
      space(mm(1)),
      ...taught.map((one) => eveningRow(one, making)),
      space(mm(4)),
      h2([plain(words.coverage)]),
      note(plain(charts.map((what) => words.howToRead(what, practice)).join(' '))),
      space(mm(3)),
      ...[...ofFamilies.values()].flatMap((ofFamily): Block[] => {
        const some = ofFamily.map(({ claim }) => claim);
        const { subject } = ofFamily[0]!;
        const said = stepOf(subject).sheets.words(making.words).family(subject.family);
        const cells = ofFamily.map((one) => caseCell(one.subject, one.claim, practice, taught[0]?.proved, making));
        const heading = words.family(said, shown(some), some.length);
        return [
          h3([strong(heading)], { bookmark: heading }),
          space(mm(1.5)),
          grid(cells, { columns: 9, least: CELL, gap: 0, rowGap: mm(1.5) }),
          space(mm(4)),
        ];
      }),
    ],
    // A title that is too wide for the foot stands at the head.
    foot: { left: [title, ''], right: handout.page },
  };
}

/**
 * Problems: what is wrong with a lesson, as values. They carry offsets into the source; line, column and the line itself
 * are added where they are shown (source.ts). The list of codes is closed but for those that a step tells of.
 */
import { steps } from '../steps/steps.ts';
import type { ProblemKind, Severity } from '../text/problem-kind.ts';

const kindOf =
  (severity: Severity) =>
  (cause: string, remedy: string): ProblemKind => ({ severity, cause, remedy });
const error = kindOf('error');
const warning = kindOf('warning');
const hint = kindOf('hint');

export const PROBLEM_KINDS = {
  'file-unreadable': error('The file is not there or may not be read.', 'Check the name and the folder.'),
  'file-not-utf8': error('The file holds bytes that are not UTF-8 text.', 'Save it as UTF-8 in your editor.'),
  'file-empty': error(
    'The file holds no lesson: it is empty, or has comments only.',
    'Copy a sample lesson and change it.',
  ),
  'file-huge': error(
    'The file is larger than any lesson (1 MB).',
    'Check that it is a lesson; split a long one in two.',
  ),
  'not-a-lesson': error(
    'The file is YAML but not a table of keys such as title and cases.',
    'Begin with a line "title: …".',
  ),
  'yaml-syntax': error(
    'The text breaks a rule of YAML, such as a bracket or a quote that is never closed.',
    'Mend the place shown. Text with ": " or " #" in it stands in quotes.',
  ),
  'yaml-tab': error('A line is indented with a tab.', 'Indent with spaces, two for each level.'),
  'yaml-indent': error(
    'A line is indented differently from its neighbours.',
    'Line it up with the keys it belongs to.',
  ),
  'yaml-quote': error(
    'A text that begins with a quote does not end with it, often because a prime ended it.',
    'Leave the quotes out, or use double quotes.',
  ),
  'yaml-sign': error(
    'A text begins with a sign that has a meaning of its own in YAML, such as { | > - @ or a backtick.',
    'Put the whole text in double quotes.',
  ),
  'yaml-space': error('There is no space after the dash of a list or the colon of a key.', 'Put one there.'),
  'yaml-duplicate-key': error('The same key stands twice in one table.', 'Keep one of them.'),
  'yaml-alias': error(
    'A word that begins with * or & is a reference in YAML; lessons have none.',
    'Put the text in quotes.',
  ),
  'yaml-tag': error(
    'A word that begins with ! names a type in YAML, a line that begins with % is an order to its reader; lessons have none.',
    'Put the text in double quotes.',
  ),
  'key-unknown': error(
    'A lesson has no such key at this place.',
    'Use the key named in the hint, or take the line out.',
  ),
  'key-missing': error('A key that every lesson, case or solution needs is not there.', 'Add it.'),
  'value-kind': error(
    'The value is of the wrong kind, such as a list where a text belongs.',
    'Write it as the hint shows.',
  ),
  'value-unknown': error('The word is none of those that this key knows.', 'Use one of the words in the hint.'),
  'text-mark': error(
    'A mark inside a text is not closed, or names something unknown.',
    "Write *emphasis*, {green} for a colour, `R U R'` for turns; \\* for a plain star.",
  ),
  'turns-unreadable': error('The turns cannot be read.', 'Mend the character shown.'),
  'turns-missing': error('There are no turns where some belong.', 'Write at least one turn.'),
  'turns-not-text': error(
    'Turns are written as a list or a number: YAML reads [R, U] as a list and 2 as a number.',
    "Write them as one text: R U R'.",
  ),
  'turns-cut-off': error(
    'A # after a space begins a comment in YAML, and the turns behind it are not read.',
    'Take the # out.',
  ),
  'address-unreadable': error(
    'The text is not the address of a pair.',
    'Write one such as UFR:R UB:U, with the own slot seen as FR.',
  ),
  'address-elsewhere': error(
    'An address listed for a family is a case of another.',
    'Take it out, or list it under its own family.',
  ),
  'case-named-twice': error('A case has a set-up and an address; one of them may be wrong.', 'Keep one.'),
  'hold-impossible': error(
    'The two colours of a hold are the same or opposite: no cube can be held so.',
    'Choose a front colour that borders the cross colour.',
  ),
  'colour-in-words': warning(
    'A text names a colour as a plain word, and the lesson is built for other colours.',
    'Write the colour in braces: {green}. It then changes with the cube.',
  ),
  'variation-impossible': error(
    'The lesson is to be built for a hold that no cube can be held in.',
    'Choose a front colour that borders the cross colour.',
  ),
  'part-empty': warning('A heading has no cases below it.', 'Add cases, or take the heading out.'),
  'text-cut-off': warning(
    'A # after a space begins a comment in YAML, and the words behind it are not printed.',
    'Put the text in double quotes.',
  ),
  'scheme-impossible': error('A colour stands at two faces of the scheme.', 'Give each face a colour of its own.'),
  'setup-rotates': error(
    'The set-up leaves the cube with another colour down.',
    'Turn the cube back at its end; turning about the vertical axis (y) is fine.',
  ),
  'setup-breaks-base': error(
    'After the set-up the cross or a kept slot is not whole.',
    'Mend the set-up, or list the slot as open.',
  ),
  'setup-hides-pair': error(
    'After the set-up a piece of the pair is in the bottom layer outside a slot.',
    'Mend the set-up.',
  ),
  'setup-other-family': error(
    'The set-up gives a case of another family than the lesson teaches.',
    'Mend the set-up, name another slot, or name the right family.',
  ),
  'family-other': error(
    'Most set-ups give cases of one family, and the lesson names another.',
    'Name the family of the hint; if the set-ups are wrong, mend them. What else is wrong is told after that.',
  ),
  'solution-longer': hint(
    'There are solutions with fewer turns than the shortest that is listed for the case.',
    'Nothing, if the longer one teaches more; else list one of those named.',
  ),
  'solution-harder': hint(
    'A solution that is as short as those listed is clearly easier for hands, by the cost model of docs/hands.md.',
    'List it too or in their place, or leave it: yours may teach more.',
  ),
  'solution-twice': error('A case has the same solution twice.', 'Take one of them out.'),
  'case-twice': error(
    'A case stands in the lesson twice: also if it is seen from another side or after a turn of U.',
    'Take one out, or put it under a part with again: true.',
  ),
  'name-elsewhere': error(
    'The name of a case speaks of a slot that none of its pieces has to do with.',
    'Mend the name, the slot or the set-up.',
  ),
  'claim-cases': error(
    'The lesson claims to have all cases of its families, and some are not there.',
    'Add them, or claim a selection.',
  ),
  'claim-turns': error('A solution has more turns than the lesson claims.', 'Shorten it, or claim more.'),
  'claim-rotations': error(
    'The lesson claims that no solution turns the cube, and one does.',
    'Write it without x, y and z, or take the claim out.',
  ),
  'solution-fails': error('The solution leaves pieces unsolved that it should solve.', 'Mend the turns.'),
  'rule-unclear': error(
    'The parts of a rule do not go together.',
    'A rule either lifts, with an aim, or turns the cube.',
  ),
  'choose-without-rules': error(
    'Solutions are to be chosen by the rules of a lesson that has none.',
    'Add rules, or write choose: easiest.',
  ),
  'rule-without-family': error(
    'There are rules, and the lesson does not say of which families of cases.',
    'Add the key "family".',
  ),
  'rule-fails': error(
    'A rule applies to cases, and its advice works in none of them.',
    'Mend the advice: the face, the aim, how, or the number of turns.',
  ),
  'rule-exceptions': warning(
    'The advice of a rule does not work in every case that the rule applies to.',
    'Add the condition of the hint, or leave it: the exceptions are printed with the rule.',
  ),
  'rule-some-ways': hint(
    'The advice of a rule can be followed in every case, but not every way works that its words allow.',
    'Add the keys of the hint, or say in your own words which way is meant.',
  ),
  'rule-never-applies': warning(
    'No case fits the conditions of a rule, or earlier rules take them all.',
    'Check the conditions and the order of the rules.',
  ),
  'rule-empty-condition': warning(
    'The advice of a rule works just as well where its conditions do not hold, so they teach nothing.',
    'Leave the conditions out, or say with which face to lift.',
  ),
  'rules-leave-out': warning(
    'Some cases of the family fit none of the rules.',
    'Add a rule, or leave "see" out of the last one.',
  ),
  'fact-false': error(
    'A sentence says a fact of the cases that is not so.',
    'Mend what the fact says, and the sentence with it; the hint has a set-up that shows it.',
  ),
  'fact-unknown': error('A sentence names a fact that the lesson has not.', 'Add it under "facts", or mend its name.'),
  'fact-unsaid': warning(
    'No sentence says a fact of the lesson.',
    'Mark the sentence that does, or take the fact out.',
  ),
  'course-lesson-missing': error(
    'A course names a lesson file that is not there, or that is no lesson.',
    'Name it as it is seen from the folder of the course file.',
  ),
  'course-lesson-twice': error(
    'A course has the same lesson on two evenings.',
    'Name another lesson, or take one of the two out.',
  ),
  'course-dates': warning(
    'The evenings of a course are not in the order of their dates.',
    'Put the lessons in their order, or mend the date.',
  ),
  'plan-too-short': error(
    'There are too few minutes for what the lesson shows.',
    'Plan more minutes, or show fewer rules or parts.',
  ),
  'print-word-too-wide': error('A word is wider than the column it is printed in.', 'Use a shorter word, or part it.'),
  'print-glyph-missing': error('The fonts of the page have no such character.', 'Write it another way.'),
  'print-too-wide': error('Something is wider than the place it is printed in.', 'Make it smaller.'),
  'print-too-tall': error('Something that must stay together is taller than a page.', 'Shorten it.'),
  'practice-too-few': error(
    'A practice paper asks for more different exercises of a kind than can be made of what was taught.',
    'Ask for fewer, or teach more cases.',
  ),
  'practice-no-rule': error(
    'Practice is asked for by the number of a rule that the lesson has not.',
    'Number the rules from 1, in the order of the lesson.',
  ),
  'practice-words': error(
    'The right answers of a practice paper cannot spell words of the list: no lengths add up to their number.',
    'List words of other lengths too, or leave the list out.',
  ),
  'practice-uneven': warning(
    'There is too little to choose from for papers of the same difficulty.',
    'Teach more cases, or ask for fewer exercises.',
  ),
  'practice-shown': warning(
    'A practice paper prints turns in one item that solve another, since there is too little to choose from.',
    'Teach more cases, or ask for fewer exercises.',
  ),
  'practice-missing': error(
    'A roster is given for a lesson that asks for no practice.',
    'Give the lesson the key practice.',
  ),
  'roster-unreadable': error(
    'A roster is not a table: it is empty, has no line of headings, or a quote is never closed.',
    'Begin with a line of headings: code,cross,hand,level.',
  ),
  'roster-column': error(
    'A heading of a roster is no column that is known, or stands twice.',
    'The columns are code or initials, cross, front, scheme, hand, level.',
  ),
  'roster-value': error(
    'A field of a roster says nothing that is known, or a row has more fields than there are headings.',
    'Write one of the words that are named, or leave it empty.',
  ),
  'roster-twice': error('Two students of a roster have the same code.', 'Give each one of their own.'),
  'roster-names': warning(
    'A roster has what looks like names of people, which would be printed on papers.',
    'Give codes or initials.',
  ),
  'roster-hold': error(
    'A student of a roster would have the cross and front colour opposite each other, or the same.',
    'Choose another front colour.',
  ),
};

/** Or one that a step tells of. */
export type ProblemCode = keyof typeof PROBLEM_KINDS | (string & Record<never, never>);

/** All there are, those of the steps last. */
export const problemKinds = (): Readonly<Record<string, ProblemKind>> =>
  Object.assign({}, PROBLEM_KINDS, ...steps().map(({ lesson }) => lesson.problems));

/** Offsets into the source, in UTF-16 units; the end is not part of it. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Of a file as a whole, and of what stands in none. */
export const NOWHERE: Span = { start: 0, end: 0 };

/** Something wrong in a file, with its place and what would be right. */
export interface Problem {
  readonly code: ProblemCode;
  readonly span: Span;
  /** What is wrong with what is written. */
  readonly message: string;
  /** What would be right. */
  readonly hint: string;
}

/** error: nothing is printed. warning and hint: all is. */
export const severityOf = ({ code }: Problem): Severity => problemKinds()[code]!.severity;

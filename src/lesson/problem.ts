/**
 * Problems: what is wrong with a lesson, as values. They carry offsets into the source; line, column and the line itself
 * are added where they are shown (source.ts). The list of codes is closed but for those that a step tells of.
 */
import type { Told } from '../steps/lesson-part.ts';
import { steps } from '../steps/steps.ts';
import type { ProblemKind, Severity } from '../text/problem-kind.ts';

export const PROBLEM_KINDS = {
  'file-unreadable': {
    severity: 'error',
    cause: 'The file is not there or may not be read.',
    remedy: 'Check the name and the folder.',
  },
  'file-not-utf8': {
    severity: 'error',
    cause: 'The file holds bytes that are not UTF-8 text.',
    remedy: 'Save it as UTF-8 in your editor.',
  },
  'file-empty': {
    severity: 'error',
    cause: 'The file holds no lesson: it is empty, or has comments only.',
    remedy: 'Copy a sample lesson and change it.',
  },
  'file-huge': {
    severity: 'error',
    cause: 'The file is larger than any lesson (1 MB).',
    remedy: 'Check that it is a lesson; split a long one in two.',
  },
  'not-a-lesson': {
    severity: 'error',
    cause: 'The file is YAML but not a table of keys such as title and cases.',
    remedy: 'Begin with a line "title: …".',
  },
  'yaml-syntax': {
    severity: 'error',
    cause: 'The text breaks a rule of YAML, such as a bracket or a quote that is never closed.',
    remedy: 'Mend the place shown. Text with ": " or " #" in it stands in quotes.',
  },
  'yaml-tab': {
    severity: 'error',
    cause: 'A line is indented with a tab.',
    remedy: 'Indent with spaces, two for each level.',
  },
  'yaml-indent': {
    severity: 'error',
    cause: 'A line is indented differently from its neighbours.',
    remedy: 'Line it up with the keys it belongs to.',
  },
  'yaml-quote': {
    severity: 'error',
    cause: 'A text that begins with a quote does not end with it, often because a prime ended it.',
    remedy: 'Leave the quotes out, or use double quotes.',
  },
  'yaml-sign': {
    severity: 'error',
    cause: 'A text begins with a sign that has a meaning of its own in YAML, such as { | > - @ or a backtick.',
    remedy: 'Put the whole text in double quotes.',
  },
  'yaml-space': {
    severity: 'error',
    cause: 'There is no space after the dash of a list or the colon of a key.',
    remedy: 'Put one there.',
  },
  'yaml-duplicate-key': {
    severity: 'error',
    cause: 'The same key stands twice in one table.',
    remedy: 'Keep one of them.',
  },
  'yaml-alias': {
    severity: 'error',
    cause: 'A word that begins with * or & is a reference in YAML; lessons have none.',
    remedy: 'Put the text in quotes.',
  },
  'yaml-tag': {
    severity: 'error',
    cause:
      'A word that begins with ! names a type in YAML, a line that begins with % is an order to its reader; lessons have none.',
    remedy: 'Put the text in double quotes.',
  },
  'key-unknown': {
    severity: 'error',
    cause: 'A lesson has no such key at this place.',
    remedy: 'Use the key named in the hint, or take the line out.',
  },
  'key-missing': {
    severity: 'error',
    cause: 'A key that every lesson, case or solution needs is not there.',
    remedy: 'Add it.',
  },
  'value-kind': {
    severity: 'error',
    cause: 'The value is of the wrong kind, such as a list where a text belongs.',
    remedy: 'Write it as the hint shows.',
  },
  'value-unknown': {
    severity: 'error',
    cause: 'The word is none of those that this key knows.',
    remedy: 'Use one of the words in the hint.',
  },
  'text-mark': {
    severity: 'error',
    cause: 'A mark inside a text is not closed, or names something unknown.',
    remedy: "Write *emphasis*, {green} for a colour, `R U R'` for turns; \\* for a plain star.",
  },
  'turns-unreadable': {
    severity: 'error',
    cause: 'The turns cannot be read.',
    remedy: 'Mend the character shown.',
  },
  'turns-missing': {
    severity: 'error',
    cause: 'There are no turns where some belong.',
    remedy: 'Write at least one turn.',
  },
  'turns-not-text': {
    severity: 'error',
    cause: 'Turns are written as a list or a number: YAML reads [R, U] as a list and 2 as a number.',
    remedy: "Write them as one text: R U R'.",
  },
  'turns-cut-off': {
    severity: 'error',
    cause: 'A # after a space begins a comment in YAML, and the turns behind it are not read.',
    remedy: 'Take the # out.',
  },
  'address-unreadable': {
    severity: 'error',
    cause: 'The text is not the address of a pair.',
    remedy: 'Write one such as UFR:R UB:U, with the own slot seen as FR.',
  },
  'address-elsewhere': {
    severity: 'error',
    cause: 'An address listed for a family is a case of another.',
    remedy: 'Take it out, or list it under its own family.',
  },
  'case-named-twice': {
    severity: 'error',
    cause: 'A case has a set-up and an address; one of them may be wrong.',
    remedy: 'Keep one.',
  },
  'hold-impossible': {
    severity: 'error',
    cause: 'The two colours of a hold are the same or opposite: no cube can be held so.',
    remedy: 'Choose a front colour that borders the cross colour.',
  },
  'colour-in-words': {
    severity: 'warning',
    cause: 'A text names a colour as a plain word, and the lesson is built for other colours.',
    remedy: 'Write the colour in braces: {green}. It then changes with the cube.',
  },
  'variation-impossible': {
    severity: 'error',
    cause: 'The lesson is to be built for a hold that no cube can be held in.',
    remedy: 'Choose a front colour that borders the cross colour.',
  },
  'part-empty': {
    severity: 'warning',
    cause: 'A heading has no cases below it.',
    remedy: 'Add cases, or take the heading out.',
  },
  'text-cut-off': {
    severity: 'warning',
    cause: 'A # after a space begins a comment in YAML, and the words behind it are not printed.',
    remedy: 'Put the text in double quotes.',
  },
  'scheme-impossible': {
    severity: 'error',
    cause: 'A colour stands at two faces of the scheme.',
    remedy: 'Give each face a colour of its own.',
  },
  'setup-rotates': {
    severity: 'error',
    cause: 'The set-up leaves the cube with another colour down.',
    remedy: 'Turn the cube back at its end; turning about the vertical axis (y) is fine.',
  },
  'setup-breaks-base': {
    severity: 'error',
    cause: 'After the set-up the cross or a kept slot is not whole.',
    remedy: 'Mend the set-up, or list the slot as open.',
  },
  'setup-hides-pair': {
    severity: 'error',
    cause: 'After the set-up a piece of the pair is in the bottom layer outside a slot.',
    remedy: 'Mend the set-up.',
  },
  'setup-other-family': {
    severity: 'error',
    cause: 'The set-up gives a case of another family than the lesson teaches.',
    remedy: 'Mend the set-up, name another slot, or name the right family.',
  },
  'family-other': {
    severity: 'error',
    cause: 'Most set-ups give cases of one family, and the lesson names another.',
    remedy: 'Name the family of the hint; if the set-ups are wrong, mend them. What else is wrong is told after that.',
  },
  'solution-longer': {
    severity: 'hint',
    cause: 'There are solutions with fewer turns than the shortest that is listed for the case.',
    remedy: 'Nothing, if the longer one teaches more; else list one of those named.',
  },
  'solution-harder': {
    severity: 'hint',
    cause:
      'A solution that is as short as those listed is clearly easier for hands, by the cost model of docs/hands.md.',
    remedy: 'List it too or in their place, or leave it: yours may teach more.',
  },
  'solution-twice': {
    severity: 'error',
    cause: 'A case has the same solution twice.',
    remedy: 'Take one of them out.',
  },
  'case-twice': {
    severity: 'error',
    cause: 'A case stands in the lesson twice: also if it is seen from another side or after a turn of U.',
    remedy: 'Take one out, or put it under a part with again: true.',
  },
  'name-elsewhere': {
    severity: 'error',
    cause: 'The name of a case speaks of a slot that none of its pieces has to do with.',
    remedy: 'Mend the name, the slot or the set-up.',
  },
  'claim-cases': {
    severity: 'error',
    cause: 'The lesson claims to have all cases of its families, and some are not there.',
    remedy: 'Add them, or claim a selection.',
  },
  'claim-turns': {
    severity: 'error',
    cause: 'A solution has more turns than the lesson claims.',
    remedy: 'Shorten it, or claim more.',
  },
  'claim-rotations': {
    severity: 'error',
    cause: 'The lesson claims that no solution turns the cube, and one does.',
    remedy: 'Write it without x, y and z, or take the claim out.',
  },
  'solution-fails': {
    severity: 'error',
    cause: 'The solution leaves pieces unsolved that it should solve.',
    remedy: 'Mend the turns.',
  },
  'rule-unclear': {
    severity: 'error',
    cause: 'The parts of a rule do not go together.',
    remedy: 'A rule either lifts, with an aim, or turns the cube.',
  },
  'rule-without-family': {
    severity: 'error',
    cause: 'There are rules, and the lesson does not say of which families of cases.',
    remedy: 'Add the key "family".',
  },
  'rule-fails': {
    severity: 'error',
    cause: 'A rule applies to cases, and its advice works in none of them.',
    remedy: 'Mend the advice: the face, the aim, how, or the number of turns.',
  },
  'rule-exceptions': {
    severity: 'warning',
    cause: 'The advice of a rule does not work in every case that the rule applies to.',
    remedy: 'Add the condition of the hint, or leave it: the exceptions are printed with the rule.',
  },
  'rule-never-applies': {
    severity: 'warning',
    cause: 'No case fits the conditions of a rule, or earlier rules take them all.',
    remedy: 'Check the conditions and the order of the rules.',
  },
  'rule-empty-condition': {
    severity: 'warning',
    cause: 'The advice of a rule works just as well where its conditions do not hold, so they teach nothing.',
    remedy: 'Leave the conditions out, or say with which face to lift.',
  },
  'rules-leave-out': {
    severity: 'warning',
    cause: 'Some cases of the family fit none of the rules.',
    remedy: 'Add a rule, or leave "see" out of the last one.',
  },
  'course-lesson-missing': {
    severity: 'error',
    cause: 'A course names a lesson file that is not there, or that is no lesson.',
    remedy: 'Name it as it is seen from the folder of the course file.',
  },
  'course-lesson-twice': {
    severity: 'error',
    cause: 'A course has the same lesson on two evenings.',
    remedy: 'Name another lesson, or take one of the two out.',
  },
  'course-dates': {
    severity: 'warning',
    cause: 'The evenings of a course are not in the order of their dates.',
    remedy: 'Put the lessons in their order, or mend the date.',
  },
  'plan-too-short': {
    severity: 'error',
    cause: 'There are too few minutes for what the lesson shows.',
    remedy: 'Plan more minutes, or show fewer rules or parts.',
  },
  'print-word-too-wide': {
    severity: 'error',
    cause: 'A word is wider than the column it is printed in.',
    remedy: 'Use a shorter word, or part it.',
  },
  'print-glyph-missing': {
    severity: 'error',
    cause: 'The fonts of the page have no such character.',
    remedy: 'Write it another way.',
  },
  'print-too-wide': {
    severity: 'error',
    cause: 'Something is wider than the place it is printed in.',
    remedy: 'Make it smaller.',
  },
  'print-too-tall': {
    severity: 'error',
    cause: 'Something that must stay together is taller than a page.',
    remedy: 'Shorten it.',
  },
  'practice-too-few': {
    severity: 'error',
    cause: 'A practice paper asks for more different exercises of a kind than can be made of what was taught.',
    remedy: 'Ask for fewer, or teach more cases.',
  },
  'practice-no-rule': {
    severity: 'error',
    cause: 'Practice is asked for by the number of a rule that the lesson has not.',
    remedy: 'Number the rules from 1, in the order of the lesson.',
  },
  'practice-words': {
    severity: 'error',
    cause: 'The right answers of a practice paper cannot spell words of the list: no lengths add up to their number.',
    remedy: 'List words of other lengths too, or leave the list out.',
  },
  'practice-uneven': {
    severity: 'warning',
    cause: 'There is too little to choose from for papers of the same difficulty.',
    remedy: 'Teach more cases, or ask for fewer exercises.',
  },
  'practice-shown': {
    severity: 'warning',
    cause: 'A practice paper prints turns in one item that solve another, since there is too little to choose from.',
    remedy: 'Teach more cases, or ask for fewer exercises.',
  },
  'practice-missing': {
    severity: 'error',
    cause: 'A roster is given for a lesson that asks for no practice.',
    remedy: 'Give the lesson the key practice.',
  },
  'roster-unreadable': {
    severity: 'error',
    cause: 'A roster is not a table: it is empty, has no line of headings, or a quote is never closed.',
    remedy: 'Begin with a line of headings: code,cross,hand,level.',
  },
  'roster-column': {
    severity: 'error',
    cause: 'A heading of a roster is no column that is known, or stands twice.',
    remedy: 'The columns are code or initials, cross, front, scheme, hand, level.',
  },
  'roster-value': {
    severity: 'error',
    cause: 'A field of a roster says nothing that is known, or a row has more fields than there are headings.',
    remedy: 'Write one of the words that are named, or leave it empty.',
  },
  'roster-twice': {
    severity: 'error',
    cause: 'Two students of a roster have the same code.',
    remedy: 'Give each one of their own.',
  },
  'roster-hold': {
    severity: 'error',
    cause: 'A student of a roster would have the cross and front colour opposite each other, or the same.',
    remedy: 'Choose another front colour.',
  },
} as const satisfies Record<string, ProblemKind>;

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

/** Something wrong in a file, with its place and what would be right. */
export interface Problem {
  readonly code: ProblemCode;
  readonly span: Span;
  /** What is wrong with what is written. */
  readonly message: string;
  /** What would be right. */
  readonly hint: string;
}

/** What a step tells of, at its place. */
export const problemOf = ({ code, message, hint }: Told, span: Span): Problem => ({ code, span, message, hint });

/** error: nothing is printed. warning and hint: all is. */
export const severityOf = ({ code }: Problem): Severity => problemKinds()[code]!.severity;

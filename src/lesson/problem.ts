/**
 * Problems: what is wrong with a lesson, as values. They carry offsets into the source; line, column and the line itself
 * are added where they are shown (source.ts). The list of codes is closed.
 */

export type Severity = 'error' | 'warning' | 'hint';

interface Kind {
  readonly severity: Severity;
  /** What leads to it, for the page of problems. */
  readonly cause: string;
  /** What to do about it. */
  readonly remedy: string;
}

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
  'hold-impossible': {
    severity: 'error',
    cause: 'The two colours of a hold are the same or opposite: no cube can be held so.',
    remedy: 'Choose a front colour that borders the cross colour.',
  },
  'slot-open': {
    severity: 'error',
    cause: "The pair's own slot is listed as open; it always is.",
    remedy: 'List only other slots, or leave the key out.',
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
  'solution-fails': {
    severity: 'error',
    cause: 'The solution leaves pieces unsolved that it should solve.',
    remedy: 'Mend the turns.',
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
} as const satisfies Record<string, Kind>;

export type ProblemCode = keyof typeof PROBLEM_KINDS;

/** Offsets into the source, in UTF-16 units; the end is not part of it. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface Problem {
  readonly code: ProblemCode;
  readonly span: Span;
  /** What is wrong with what is written. */
  readonly message: string;
  /** What would be right. */
  readonly hint: string;
}

export const severityOf = (problem: Problem): Severity => PROBLEM_KINDS[problem.code].severity;

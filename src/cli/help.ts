/** The one text of help. */
import type { CommandName } from './options.ts';

const ABOUT: Readonly<Record<CommandName, string>> = {
  check: `turnsheet check LESSON… [--json]

  Reads the lessons, proves every set-up and every solution, and tells what is wrong and where.
  Writes no file.

  --json          one JSON document on standard output

  turnsheet check lessons/edge-away.yaml
`,
  new: `turnsheet new FILE [--json]

  Writes a short lesson with comments to begin with; it builds as it is. A file that is there is left alone.

  turnsheet new lessons/my-lesson.yaml
`,
  build: `turnsheet build LESSON… [--out DIR] [--paper a4|letter|a5] [--ink colour|mono] [--pictures]
                       [--cross COLOUR] [--front COLOUR] [--hand left] [--scheme COLOURS] [--wide r] [--json]

  Proves the lessons and writes, for each NAME.yaml, a handout NAME.pdf and NAME.claims.json: everything that the
  handout claims, in a form that other programs can check. If any lesson has errors, nothing is written.

  --out DIR       folder to write to, made if it is not there; "out" without it
  --paper PAPER   a4, letter or a5; a4 without it
  --ink INK       colour, or mono for black-and-white printers and copiers: letters on the stickers
  --cross COLOUR  for students who hold another colour down: everything is proved again as it is printed
  --front COLOUR  with this colour in front
  --hand left     mirrored, for those who lead with the left hand
  --scheme C,C,…  for cubes of other colours: six, up,front,right,down,back,left
  --wide r        wide turns as small letters
  --watch         go on, and build again whatever is saved
  --pictures      also write the picture of each case as an SVG file, for slides, to NAME-pictures/
  --json          one JSON document on standard output

  turnsheet build lessons/edge-away.yaml
  turnsheet build lessons/*.yaml --paper letter --ink mono --out print
`,
};

const WHOLE = `turnsheet proves a coach's lesson plans on the cube and prints them as class material.

  turnsheet check LESSON…     tell what is wrong with a lesson
  turnsheet build LESSON…     write its handout as PDF
  turnsheet new FILE          write a lesson to begin with
  turnsheet help COMMAND      more about a command, with examples
  turnsheet --version

Exit code: 0 done; 1 the lesson has errors; 2 wrong usage; 3 a fault in turnsheet itself.
`;

export const helpText = (about: CommandName | undefined): string => (about ? ABOUT[about] : WHOLE);

/** The one text of help. */
import type { CommandName } from './options.ts';

const ABOUT: Readonly<Record<CommandName, string>> = {
  check: `npx turnsheet check LESSON… [--json]

  Reads the lessons, proves every set-up and every solution, and tells what is wrong and where.
  Writes no file.

  --json          one JSON document on standard output

  npx turnsheet check lessons/edge-away.yaml
`,
  new: `npx turnsheet new FILE [--json]

  Writes a short lesson with comments to begin with; it builds as it is. A file that is there is left alone.

  npx turnsheet new lessons/my-lesson.yaml
`,
  build: `npx turnsheet build LESSON… [--out DIR] [--paper a4|letter|a5] [--ink colour|mono] [--pictures]
                    [--cross COLOUR] [--front COLOUR] [--hand left] [--scheme COLOURS] [--wide r]
                    [--roster FILE] [--json]

  Proves the lessons and writes, for each NAME.yaml, a handout NAME.pdf, a practice paper NAME-practice.pdf and its key
  NAME-key.pdf if the lesson asks for practice, and NAME.claims.json: everything that they claim, in a form that other
  programs can check. If any lesson has errors, nothing is written.

  --out DIR       folder to write to, made if it is not there; "out" without it
  --paper PAPER   a4, letter or a5; a4 without it
  --ink INK       colour, or mono for black-and-white printers and copiers: letters on the stickers
  --cross COLOUR  for students who hold another colour down: everything is proved again as it is printed
  --front COLOUR  with this colour in front
  --hand left     mirrored, for those who lead with the left hand; files for other students are called after what is
                  other, NAME-red-down-left.pdf, so that they stand beside those for all
  --scheme C,C,…  for cubes of other colours: six, up,front,right,down,back,left
  --wide r        wide turns as small letters
  --roster FILE   a table of students, CSV with headings: code (the student code) or initials, cross, front, scheme,
                  hand, level. Each gets a practice paper with a paper code of its own; the lesson has to ask for
                  practice. Goes with one lesson
  --watch         go on, and build again whatever is saved
  --pictures      also write the picture of each case as an SVG file, for slides, to NAME-pictures/
  --json          one JSON document on standard output

  npx turnsheet build lessons/edge-away.yaml
  npx turnsheet build lessons/edge-away.yaml --roster class.csv
  npx turnsheet build lessons/*.yaml --paper letter --ink mono --out print
`,
  find: `npx turnsheet find --pair "CORNER EDGE" [--keep SLOTS|none] [--longer N] [--json]
npx turnsheet find --setup TURNS [--slot SLOT] [--keep SLOTS|none] [--longer N] [--json]

  Finds every shortest solution of a case, as turns of the six faces, and proves that there is no shorter one.

  --pair ADDRESS  where the pair is, its own slot at FR: the corner's place, the face that its cross-colour sticker is
                  on, the edge's place, the face that its F-coloured sticker is on
  --setup TURNS   the case that these turns make of a solved cube
  --slot SLOT     with --setup: the pair's own slot, FR, FL, BL or BR; FR without it
  --keep SLOTS    slots that are solved and stay so, with commas; "none"; without it every slot without a stuck piece
  --longer N      also the solutions of up to N turns more
  --faces FACES   only turns of these, as in --faces UDRLF, without the back face
  --begins TURNS  only solutions with these first turns
  --ends TURNS    only solutions with these last turns
  --hands         also which are easiest for hands: as chosen for sheets, with the cube held still, from behind, with the
                  left hand
  --allow LIST    as --hands, and what they may use besides turns of faces: wide, slices, rotations, tipping, with commas
  --json          one JSON document on standard output

  npx turnsheet find --pair "UFR:R UB:U" --keep FL,BL,BR
  npx turnsheet find --setup "L' U' L" --slot FL --longer 1
  npx turnsheet find --pair "UFR:R FL:F" --hands
`,
  explain: `npx turnsheet explain TURNS [--json]
npx turnsheet explain TURNS --setup TURNS [--slot SLOT] [--json]

  Tells why turns work: what in them is begun, done and taken back, and which triggers they are made of; of all ways to
  read them so the one with the fewest things to remember, at most 100 turns. A turn that ends one part and begins the
  next is told of where it saves something to remember. The reading is done again and gives the same turns.

  --setup TURNS   the case that these turns make of a solved cube: also what each stretch of its solution does to the
                  pieces
  --slot SLOT     with --setup: the pair's own slot, FR, FL, BL or BR; FR without it
  --json          one JSON document on standard output; [A: B] stands for A B A', [A, B] for A B A' B'

  npx turnsheet explain "F R U R' U' F'"
  npx turnsheet explain "L' U L R U R'" --setup "R U' R' L' U' L"
`,
  cases: `npx turnsheet cases [FAMILY] [--every-address] [--every-keep] [--longer N] [--json]
npx turnsheet cases [FAMILY] --print [LESSON…] [--out DIR] [--paper a4|letter|a5] [--ink colour|mono]

  The catalogue: for each case the length of its shortest solutions, proved, and how many there are. A family is the
  whereabouts of corner and edge: top-top, home-top, top-home, home-home, top-away, away-top, home-away, away-home,
  away-away.

  --every-address also what turns of U make of each case: 384 addresses instead of 168 cases
  --every-keep    a row for every set of slots that can be kept, not only for the largest
  --longer N      also count the solutions of up to N turns more, 1 or 2
  --print         a booklet instead, cases.pdf: each case from four sides, with a set-up, the shortest solution and
                  the easiest for hands; of lessons that are named it says where they show each case
  --json          one JSON document on standard output

  npx turnsheet cases top-away
  npx turnsheet cases --every-address --every-keep --longer 1 --json
  npx turnsheet cases top-away --print lessons/*.yaml
`,
  rules: `npx turnsheet rules [FAMILY] [--over N] [--features NAMES | --all-features] [--some-way] [--json]

  Finds the fewest rules of thumb that solve a family of cases without exception, as seen from all four sides, and
  writes them as a lesson has them. They speak of what students see at a glance, and every way works that their words
  allow. Without a family it lists what rules can speak of.

  --over N        no rule may cost more turns than so many over the shortest solution; the least that can be without it
  --features A,B  what rules may speak of, by name, with commas
  --all-features  also what is not seen at a glance
  --some-way      also rules of which only some of the ways work that their words allow
  --json          one JSON document on standard output

  npx turnsheet rules top-away
  npx turnsheet rules away-top --features "cross colour,edge,edge top and corner sideways"
`,
  mark: `npx turnsheet mark CLAIMS SUBMISSIONS… [--roster FILE] [--out DIR] [--paper a4|letter|a5]
                   [--ink colour|mono] [--scheme COLOURS] [--small-letters outer] [--json]
npx turnsheet mark --type CLAIMS [ANSWERS.csv] [--roster FILE] [--json]

  Does each answer on the cube after its set-up: whatever solves is right, whether or not it is the key's. CLAIMS is the
  NAME.claims.json that "build" writes with a lesson's PDF files; it is proved again. SUBMISSIONS are CSV files with the
  columns student, item and answer (and paper and mark if you like), YAML, or text with a line for each answer, such as
  K7 3 R U R', or with the paper code before the item, K7 39C 21 R U R'; or folders of such files.

  An item is the number of a case, 3, or of a solution, 3.1, or, with its paper code in the column paper, an item of a
  practice paper. A row without a paper code is of the handout; where its answer is right on a practice paper instead,
  or is a letter, it is "unmatched" and says so. A handout is named as the paper by its file's name, edge-away; with
  several CLAIMS files it has to be. Every row is told; what matches no item is "unmatched".

  --roster FILE   the roster that the papers were built with: an answer without a paper is taken for the handout or the paper of its
                  student, one without a student is given to whom the paper belongs, and a paper that comes back under
                  another's code is told
  --out DIR       write there NAME-slips.pdf, a slip for each student; NAME-class.csv and NAME-class.json, the class as
                  a table; NAME-report.pdf, for the coach. Your own marks in the column "mark" of NAME-class.csv, right,
                  wrong or a number from 0 to 1, win and are kept on the next run
  --paper, --ink  of what is printed, as for "build"
  --scheme C,C,…  the colours of your cubes in the pictures, if not the usual ones, as for "build"
  --small-letters outer
                  an answer with small letters that is right as turns of one layer counts as right; without it a small
                  letter is a wide turn, and what it would have been is said
  --type          asks for student code, paper code (where there are practice papers; empty for the handout), item and
                  answer, shows each verdict at once, and keeps the answers in ANSWERS.csv (NAME-answers.csv if you
                  name none, in DIR with --out), where you can go on another time
  --json          one JSON document on standard output

  npx turnsheet mark out/edge-away.claims.json lessons/class/edge-away-answers.csv --out out
  npx turnsheet mark --type out/edge-away.claims.json
`,
  verify: `npx turnsheet verify CLAIMS… [--json]

  Proves the solutions of claims files again with a second checker, which reads turns and turns stickers in its own way
  and shares nothing with what made them; of questions "name the rule" it reads the printed words and finds which one is
  true. Tells of each claim what is wrong with it. CLAIMS are the NAME.claims.json that "build" writes. Claims of other
  kinds, such as rules and other answers by letter, are counted and not looked at.

  --json          one JSON document on standard output

  npx turnsheet verify out/edge-away.claims.json
`,
};

const WHOLE = `turnsheet proves a coach's lesson plans on the cube and prints them as class material.

  npx turnsheet check LESSON…     tell what is wrong with a lesson
  npx turnsheet build LESSON…     write its handout as PDF, and what else it asks for
  npx turnsheet new FILE          write a lesson to begin with
  npx turnsheet find …            every shortest solution of a case, proved
  npx turnsheet explain TURNS     why turns work: what is begun, done and taken back
  npx turnsheet cases [FAMILY]    the catalogue: shortest lengths and numbers of solutions
  npx turnsheet rules [FAMILY]    the fewest rules of thumb for a family, proved
  npx turnsheet mark CLAIMS …     mark what students hand in
  npx turnsheet verify CLAIMS…    prove what was printed again, with a second checker
  npx turnsheet help COMMAND      more about a command, with examples
  npx turnsheet --version

Run it in turnsheet's own folder. Lessons and other files may lie anywhere: give their path.
Exit code: 0 done; 1 the lesson has errors; 2 wrong usage; 3 a fault in turnsheet itself.
`;

export const helpText = (about: CommandName | undefined): string => (about ? ABOUT[about] : WHOLE);

/** The page that explains the cost model for hands: made from its figures. */
import { HANDS } from '../cube/search/hands.ts';
import { EASIER_BY } from './better.ts';

const LETTERS = Object.entries(HANDS.quarter);

/** Markdown. */
export function handsPage(): string {
  return `# How easily hands do a solution

The same turns of the faces can be executed in many ways: turn the cube first, turn two layers in place of the opposite
face, turn a slice in place of two faces. turnsheet chooses what a coach would show: a solution without turns of B before
one with them, then one without turns of D, then the one with the lowest cost. A club that gives B or D a cost as low as
our F has them treated like any other face.

A solution is written as turns of faces, with a \`y\` before the first turn where that spares turns of B. With
\`allow\` it may use more: \`wide\` turns, \`slices\`, \`rotations\` (a \`y\` anywhere), \`tipping\` (x and z too, so
that the cross may leave the bottom). Of all ways to execute it that are allowed, over all ways to hold the cube and all
grips of two hands, the one with the lowest cost is found: an exact minimum.

**The cost is this project's own.** No published measure of how hard a turn is is known to us. The figures come from
what coaches say is easy (common practice, no source). They are in units of one turn of U, and your club can change each
with the key \`hands\` of a lesson.

A quarter turn costs:

| ${LETTERS.map(([letter]) => letter).join(' | ')} |
| ${LETTERS.map(() => '---').join(' | ')} |
| ${LETTERS.map(([, cost]) => cost).join(' | ')} |

M, E and S are slices; x, y and z turn the whole cube.

| key | what it adds | figure |
| --- | --- | --- |
| \`half\` | a half turn over a quarter | ${HANDS.half} |
| \`wide\` | a wide turn over its face | ${HANDS.wide} |
| \`regrip\` | a hand lets go and takes hold anew, since its wrist can turn no further: R and L turn a wrist by a quarter either way from where it is at ease | ${HANDS.regrip} |
| \`flow\` | *less*, for a turn that the hand of the one before goes on with, as in a trigger | ${HANDS.flow} |

Taking hold of the cube at the start, and after a turn of the whole cube, is free: the wrists begin where the next turns
want them. For those who lead with the left hand the same figures are used in a mirror.

\`\`\`yaml
hands: { B: 2, y: 3, regrip: 1, allow: [wide] }
\`\`\`

The figures are used where solutions are chosen (\`choose\`, keys of practice papers), in \`npx turnsheet find --hands\`, in the booklet of cases, and in
the hint of \`check\` where another solution is no longer than the one that is listed and costs ${EASIER_BY} less or better.
`;
}

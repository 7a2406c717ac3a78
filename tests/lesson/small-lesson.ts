/** A small lesson without faults, for tests to change. Line numbers are those of its lines, from 1. */
export const SMALL_LESSON = `title: A small lesson
hold:
  cross: white
  front: green
family: top-away
text: |
  # Look
  Lift {green} with \`L' U L\`, *not* both.
cases:
  - name: The first
    setup: R U R' L' U L
    solutions:
      - L' U L R U R'
  - setup: R U' R' L U' L'
    solutions:
      - turns: L U L' R U R'
        remark: Now the *back* counts.
    watch: A wall behind.
`;

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The small lesson with another text, in line 6, and facts from line 8 on. */
export const withFacts = (text: string, ...facts: string[]): string =>
  SMALL_LESSON.replace(
    /text: [\s\S]*cases:/,
    [`text: "${text}"`, ...(facts.length > 0 ? ['facts:', ...facts] : []), 'cases:'].join('\n'),
  );

/** The small lesson with one line replaced, or left out, or several for one. */
export function withLine(line: number, ...instead: string[]): string {
  const lines = SMALL_LESSON.split('\n');
  lines.splice(line - 1, 1, ...instead);
  return lines.join('\n');
}

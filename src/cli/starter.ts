/** The lesson that `turnsheet new` writes: short, commented, and it builds. `schema` is for the help of editors. */
export const starterLesson = (schema: string): string => `# yaml-language-server: $schema=${schema}
# Your lesson. Change what you like; to print it:  npx turnsheet build this-file.yaml

title: The edge is away
club: Our club
course: Evening 1

# How the solved cube is held before each set-up: the colour held down, and the one in front.
hold:
  cross: white
  front: green

# Where corner and edge of the pair are: home, top or away. Every set-up is held to it.
family: top-away

# The explanation. *Stars* for emphasis, {green} for a colour, backticks for turns.
text: |
  # Look before you lift
  The edge sits in a slot that is not its own. Lift it so that the corner on top can use it *straight away*:
  \`L' U L\` takes it out of the front left slot.

# One entry for each case. Turns as in the competition regulations: R U R', Rw, y, and so on.
cases:
  - name: Front left
    setup: R U R' L' U L
    solutions:
      - L' U L R U R'
    watch: The edge shows you {green}.

  - name: Back left
    setup: R U' R' L U' L'
    solutions:
      - turns: L U L' R U R'
        remark: Now the back wall counts.

  # No solution: the panel has a line to write on.
  - name: Try this one
    setup: R U R' U2 R' U R
`;

import { describe, expect, it } from 'vitest';
import { coloursHeld, type Hold, USUAL_SCHEME } from '../../../src/cube/colours.ts';
import { type Cube, solvedCube } from '../../../src/cube/cube.ts';
import { centreAt } from '../../../src/cube/view.ts';
import { wordsIn } from '../../../src/steps/languages.ts';
import { readAddress, writeAddress } from '../../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../../src/steps/pair/cases.ts';
import { describeCase } from '../../../src/steps/pair/describe.ts';
import { cubeWithPair } from '../../../src/steps/pair/place-pair.ts';
import { goalOf, SLOTS, type Slot } from '../../../src/steps/pair/slots.ts';

const english = wordsIn('en');

/** One hold for each colour down, fronts mixed. */
const HOLDS: readonly Hold[] = [
  { up: 'yellow', front: 'green' },
  { up: 'white', front: 'red' },
  { up: 'blue', front: 'orange' },
  { up: 'green', front: 'white' },
  { up: 'orange', front: 'yellow' },
  { up: 'red', front: 'blue' },
];

const words = (cube: Cube, slot: Slot, hold: Hold, kept: readonly Slot[] = []): string =>
  describeCase(cube, goalOf(slot, kept), coloursHeld(USUAL_SCHEME, hold)!, english);

const LETTER: Record<string, string> = { up: 'U', down: 'D', front: 'F', back: 'B', right: 'R', left: 'L' };
const AROUND = 'FRBL';

/**
 * The address, read from the words alone: written without the engine's geometry. Sides are turned about the vertical
 * axis so that the pair's own slot comes to the front right.
 */
function addressInWords(text: string): string {
  const [, down] = /^(\w+) down/.exec(text)!;
  const [, first, second, slotNear, slotSide] = /The pair (\w+) and (\w+) belongs in the (\w+) (\w+) slot\./.exec(
    text,
  )!;
  const own = `${LETTER[slotNear!]}${LETTER[slotSide!]}`;
  const quarters = ['FR', 'BR', 'BL', 'FL'].indexOf(own);
  const turned = (side: string): string =>
    AROUND.includes(side) ? AROUND[(AROUND.indexOf(side) - quarters + 4) % 4]! : side;
  // The colour of the side that comes to the front; the pair's colours are named front or back first.
  const frontColour = quarters % 2 === 0 ? first : second;
  if (text.includes('It is solved.')) return 'DFR:D FR:F';

  const pieceAt = (piece: string): { place: string; colour: string; side: string } | 'solved' => {
    const sentence = new RegExp(`The ${piece} is ([^.]*)\\.`).exec(text)![1]!;
    if (sentence === 'in its own slot, solved') return 'solved';
    const parts = /^(.*), (\w+) (?:to the )?(\w+)$/.exec(sentence)!;
    const where = parts[1]!;
    const sides = where.startsWith('in its own slot')
      ? own
      : [...where.matchAll(/front|back|left|right/g)].map((m) => LETTER[m[0]]).join('');
    const layer = where.startsWith('on top') ? 'U' : piece === 'corner' ? 'D' : '';
    return { place: layer + sides, colour: parts[2]!, side: LETTER[parts[3]!]! };
  };
  const places = (names: string[]) => (turnedSides: string) =>
    names.find((n) => [...n].sort().join('') === [...turnedSides].sort().join(''))!;

  const corner = pieceAt('corner');
  const edge = pieceAt('edge');
  let cornerText = 'DFR:D';
  if (corner !== 'solved') {
    expect(corner.colour).toBe(down!.toLowerCase());
    const named = places(['UFR', 'UFL', 'UBL', 'UBR', 'DFR', 'DFL', 'DBL', 'DBR']);
    cornerText = `${named([...corner.place].map(turned).join(''))}:${turned(corner.side)}`;
  }
  let edgeText = 'FR:F';
  if (edge !== 'solved') {
    const place = places(['UF', 'UL', 'UB', 'UR', 'FR', 'FL', 'BL', 'BR'])([...edge.place].map(turned).join(''));
    const side = turned(edge.side);
    const other = [...place].find((s) => s !== side)!;
    edgeText = `${place}:${edge.colour === frontColour ? side : other}`;
  }
  return `${cornerText} ${edgeText}`;
}

const at = (address: string, slot: Slot): Cube => cubeWithPair(readAddress(address)!, slot);
const WHITE_DOWN: Hold = { up: 'yellow', front: 'green' };

describe('a case in words', () => {
  // By hand, on the common colour scheme (white opposite yellow, from memory): white down and green in front has orange right.
  it.each([
    [
      'UFR:R BL:L',
      'FR',
      'White down, green in front. The pair green and orange belongs in the front right slot. The corner is on top at ' +
        'the front right, white to the right. The edge is stuck in the back left slot, orange to the back.',
    ],
    [
      'DFR:R UB:U',
      'FR',
      'White down, green in front. The pair green and orange belongs in the front right slot. The corner is in its own ' +
        'slot but twisted, white to the right. The edge is on top at the back, green up.',
    ],
    [
      'DFR:D FR:F',
      'BL',
      'White down, green in front. The pair blue and red belongs in the back left slot. It is solved.',
    ],
    [
      'DFR:D FR:R',
      'FL',
      'White down, green in front. The pair green and red belongs in the front left slot. The corner is in its own ' +
        'slot, solved. The edge is in its own slot but flipped, red to the front.',
    ],
  ] as const)('%s, own slot %s', (address, slot, expected) => {
    expect(words(at(address, slot), slot, WHITE_DOWN)).toBe(expected);
  });

  it('names the slots that are kept', () => {
    const cube = at('UFR:R UB:U', 'FR');
    expect(words(cube, 'FR', WHITE_DOWN, ['FL', 'BL', 'BR'])).toMatch(
      /The front left, back left and back right slots are kept\.$/,
    );
    expect(words(cube, 'FR', WHITE_DOWN, ['BL'])).toMatch(/The back left slot is kept\.$/);
  });

  it.each(HOLDS)('gives every address of every slot back, $up up and $front in front', (hold) => {
    for (const slot of SLOTS) {
      for (const address of ADDRESSES) {
        const text = words(cubeWithPair(address, slot), slot, hold);
        expect(addressInWords(text), text).toBe(writeAddress(address));
      }
    }
  });

  it('gives the address back after the whole cube is turned about its vertical axis', () => {
    const upright = Array.from({ length: 24 }, (_, view) => view).filter((view) => centreAt(view, 'U') === 'U');
    expect(upright).toHaveLength(4);
    for (const view of upright) {
      for (const address of ADDRESSES) {
        const text = words({ ...cubeWithPair(address, 'BR'), view }, 'BR', HOLDS[2]!);
        expect(addressInWords(text), text).toBe(writeAddress(address));
      }
    }
  });

  it('keeps every two addresses apart however the cube is held', () => {
    for (let view = 0; view < 24; view++) {
      const all = ADDRESSES.map((a) => words({ ...cubeWithPair(a, 'FR'), view }, 'FR', WHITE_DOWN));
      expect(new Set(all).size, `view ${view}`).toBe(384);
      for (const text of all) expect(text).not.toMatch(/undefined|stuck in the \w+ slot,.*stuck in the slot/);
    }
  });

  it('says how the cube is held now, not how it was held before it was turned', () => {
    const yDone = Array.from({ length: 24 }, (_, view) => view).find(
      (view) => centreAt(view, 'U') === 'U' && centreAt(view, 'F') === 'R',
    )!;
    expect(words({ ...solvedCube(), view: yDone }, 'FR', WHITE_DOWN)).toBe(
      'White down, orange in front. The pair orange and green belongs in the front left slot. It is solved.',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { type Colour, coloursHeld, type Hold, USUAL_SCHEME } from '../../src/cube/colours.ts';
import { afterTurns, type Cube, solvedCube } from '../../src/cube/cube.ts';
import { readTurns } from '../../src/cube/notation.ts';
import { wordsIn } from '../../src/steps/languages.ts';
import { readAddress, stuckSlots, writeAddress } from '../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../src/steps/pair/cases.ts';
import { cubeWithPair } from '../../src/steps/pair/place-pair.ts';
import { goalOf, SLOTS, type Slot } from '../../src/steps/pair/slots.ts';
import { drawnFor } from '../../src/steps/pair/subject.ts';
import { drawCase } from '../../src/svg/draw.ts';
import { BLACK, contrast, type Ink, PALETTES } from '../../src/svg/palette.ts';
import type { Point, Polygon, Scene } from '../../src/svg/scene.ts';
import { VIEWS, type ViewName } from '../../src/svg/views.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { pixelsOf } from './pixels.ts';

const english = wordsIn('en');

const WHITE_UP: Hold = { up: 'white', front: 'green' };
const look = (ink: Ink, hold: Hold = WHITE_UP) => ({ colours: coloursHeld(USUAL_SCHEME, hold)!, ink, words: english });

function turned(text: string): Cube {
  const reading = readTurns(text);
  if (!reading.ok) throw new Error(reading.message);
  return afterTurns(solvedCube(), reading.turns);
}

const { full, pale, hole, paper } = PALETTES.colour;

/**
 * By hand, holding a cube of the common colour scheme (from memory) white up and green in front, doing the turns and
 * looking at it. In words first, so that it can be checked without reading code. Points are in the drawing's units of
 * a hundredth of its width, read off a printed drawing with a ruler.
 */
const BY_HAND: readonly {
  turns: string;
  slot: Slot;
  view: ViewName;
  see: readonly [what: string, x: number, y: number, hex: string][];
}[] = [
  {
    turns: 'R',
    slot: 'FR',
    view: 'open',
    see: [
      ['edge on top at the right, green up', 64, 50, full.green],
      ['its red to the right', 75, 50, full.red],
      ['corner at the front right, green up', 64, 64, full.green],
      ['its yellow to the front', 67, 75, full.yellow],
      ['its red to the right', 75, 67, full.red],
      ['white centre on top', 50, 50, full.white],
      ['green centre in front', 50, 84, full.green],
      ['orange centre at the left', 16, 50, full.orange],
      ['own slot empty, front side', 74, 84, hole],
      ['the back left slot kept: blue at the back', 26, 6, pale.blue],
      ['and orange at the left', 6, 26, pale.orange],
      ['top back left does not matter', 36, 36, paper],
    ],
  },
  {
    turns: 'F2',
    slot: 'FR',
    view: 'open',
    see: [
      ['edge in the front left slot, green to the front', 26, 84, full.green],
      ['its red to the left', 16, 74, full.red],
      ['corner on top at the front left, yellow up', 36, 64, full.yellow],
      ['its green to the front', 33, 75, full.green],
      ['its red to the left', 25, 67, full.red],
    ],
  },
  {
    turns: 'B',
    slot: 'BR',
    view: 'open',
    see: [
      ['edge on top at the back, red up', 50, 36, full.red],
      ['its blue to the back', 50, 25, full.blue],
      ['corner at the back right, red up', 64, 36, full.red],
      ['its blue to the back', 67, 25, full.blue],
      ['its yellow to the right', 75, 33, full.yellow],
    ],
  },
  {
    turns: "R U R'",
    slot: 'FR',
    view: 'open',
    see: [
      ['edge on top at the front, green to the top', 50, 64, full.green],
      ['its red to the front', 50, 75, full.red],
    ],
  },
  {
    turns: 'y',
    slot: 'FR',
    view: 'open',
    see: [
      ['the whole cube turned: pair now front left, green to the left', 16, 74, full.green],
      ['its red to the front', 26, 84, full.red],
      ['red centre in front', 50, 84, full.red],
    ],
  },
  {
    turns: 'x',
    slot: 'FR',
    view: 'open',
    see: [
      ['green centre on top', 50, 50, full.green],
      ['yellow centre in front', 50, 84, full.yellow],
      ['pair at the top right: its edge green on top', 64, 50, full.green],
      ['its red to the right', 75, 50, full.red],
      ['its corner green on top', 64, 64, full.green],
      ['yellow to the front', 67, 75, full.yellow],
    ],
  },
  {
    turns: 'R',
    slot: 'FR',
    view: 'corner',
    see: [
      ['corner: green up', 54, 42, full.green],
      ['its yellow to the front', 46, 52, full.yellow],
      ['its red to the right', 61, 52, full.red],
      ['edge: green up', 69, 32, full.green],
      ['its red to the right', 77, 43, full.red],
      ['white centre on top', 50, 29, full.white],
      ['green centre in front', 28, 64, full.green],
      ['the front left slot kept, green in front', 10, 76, pale.green],
    ],
  },
];

describe('what is seen', () => {
  for (const { turns, slot, view, see } of BY_HAND) {
    const kept = SLOTS.filter((s) => s !== slot && s !== 'FL');
    const scene = drawCase(
      turned(turns),
      drawnFor(goalOf(slot, view === 'corner' ? [...kept, 'FL'] : kept)),
      view,
      look('colour'),
    );
    const pixels = pixelsOf(scene);
    describe(`after ${turns}, pair of ${slot}, ${view} view`, () => {
      it.each(see)('%s', (_, x, y, hex) => expect(pixels.at(x, y)).toBe(hex));
    });
  }
});

/** Ray casting; points on the border are not asked for. */
function isInside({ x, y }: Point, polygon: readonly Point[]): boolean {
  return polygon.reduce((inside, a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    const crosses = a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x;
    return crosses ? !inside : inside;
  }, false);
}

const areaOf = (polygon: readonly Point[]): number =>
  Math.abs(
    polygon.reduce((sum, a, i) => {
      const b = polygon[(i + 1) % polygon.length]!;
      return sum + (a.x * b.y - b.x * a.y) / 2;
    }, 0),
  );

const polygonsOf = (scene: Scene): Polygon[] => scene.marks.filter((m): m is Polygon => m.kind === 'polygon');
const middleOf = (points: readonly Point[]): Point => ({
  x: points.reduce((s, p) => s + p.x, 0) / points.length,
  y: points.reduce((s, p) => s + p.y, 0) / points.length,
});

/** The bodies of pieces, and for each the stickers painted upon it before the next body. */
function piecesOf(scene: Scene): { body: Polygon; stickers: Polygon[] }[] {
  const pieces: { body: Polygon; stickers: Polygon[] }[] = [];
  for (const mark of polygonsOf(scene)) {
    if (mark.fill === BLACK) pieces.push({ body: mark, stickers: [] });
    else pieces.at(-1)?.stickers.push(mark);
  }
  return pieces;
}

const everyCase = function* (ink: Ink, view: ViewName, small = false) {
  for (const slot of SLOTS) {
    for (const address of ADDRESSES) {
      const kept = SLOTS.filter((s) => s !== slot && !stuckSlots(address, slot).includes(s));
      const scene = drawCase(cubeWithPair(address, slot), drawnFor(goalOf(slot, kept)), view, { ...look(ink), small });
      yield { address, slot, scene };
    }
  }
};

describe.each(VIEWS)('every address, %s view', (view) => {
  it('has one closed outline a visible piece, round that piece’s stickers and no others', () => {
    for (const { scene } of everyCase('colour', view)) {
      const tiles = polygonsOf(scene).slice(0, view === 'open' ? 45 : 27);
      const pieces = piecesOf(scene);
      expect(pieces.length).toBeLessThanOrEqual(2);
      if (view === 'open') expect(pieces).toHaveLength(2);
      for (const { body, stickers } of pieces) {
        expect(body.stroke).toMatchObject({ colour: BLACK });
        const within = tiles.filter((t) => isInside(middleOf(t.points), body.points));
        expect(stickers).toHaveLength(within.length);
        expect(stickers.every((s) => s.points.every((p) => isInside(p, body.points)))).toBe(true);
        const area = within.reduce((sum, t) => sum + areaOf(t.points), 0);
        expect(areaOf(body.points)).toBeCloseTo(area, 5);
      }
    }
  });

  it.each([false, true])('draws nothing outside its box, lines and letters along with it; small: %s', (small) => {
    for (const { scene } of everyCase('mono', view, small)) {
      const outside = scene.marks.filter((mark) => {
        const points = mark.kind === 'label' ? [mark] : mark.points;
        const reach = mark.kind === 'label' ? mark.size / 2 : (mark.stroke?.width ?? 0) / 2;
        return points.some(({ x, y }) => Math.min(x, y) < reach || x + reach > scene.width || y + reach > scene.height);
      });
      expect(outside).toEqual([]);
    }
  });

  it('dashes the own slot unless both pieces sit in it, and lines the slots a piece is stuck in', () => {
    for (const { address, slot, scene } of everyCase('colour', view)) {
      const dashed = polygonsOf(scene).filter((p) => p.stroke?.dash);
      const lined = polygonsOf(scene).filter((p) => !p.fill && p.stroke?.colour === BLACK && !p.stroke.dash);
      const isHidden = (s: Slot): boolean => view === 'corner' && s === 'BL';
      const isAtHome = /^DFR:. FR:.$/.test(writeAddress(address));
      expect(dashed).toHaveLength(isAtHome || isHidden(slot) ? 0 : 1);
      expect(lined).toHaveLength(stuckSlots(address, slot).filter((s) => !isHidden(s)).length);
    }
  });
});

describe('the look of a pair', () => {
  const holds: readonly Hold[] = [WHITE_UP, { up: 'red', front: 'white' }, { up: 'green', front: 'orange' }];

  // WCAG 2.2, 1.4.11: 3:1 against the neighbour. Where a sticker is too dark for that, a white rim stands between.
  it.each(['colour', 'mono'] as const)('parts every sticker from the black around it, %s ink', (ink) => {
    const seen = new Set<string>();
    for (const hold of holds) {
      const scene = drawCase(
        cubeWithPair(readAddress('UFR:R UB:U')!, 'FR'),
        drawnFor(goalOf('FR', [])),
        'open',
        look(ink, hold),
      );
      for (const { fill, stroke } of piecesOf(scene).flatMap((p) => p.stickers)) {
        seen.add(fill!);
        expect(contrast(stroke!.colour, BLACK)).toBeGreaterThanOrEqual(3);
        if (stroke!.colour !== fill) expect(contrast(stroke!.colour, fill!)).toBeGreaterThanOrEqual(3);
      }
    }
    expect(seen).toEqual(new Set(Object.values(PALETTES[ink].full)));
  });

  it('has letters on the pair and the centres in mono ink, none in colour ink', () => {
    const cube = turned('R');
    const labels = (ink: Ink) =>
      drawCase(cube, drawnFor(goalOf('FR', [])), 'open', look(ink)).marks.flatMap((m) =>
        m.kind === 'label' ? m.text : [],
      );
    expect(labels('colour')).toEqual([]);
    // White, green, red, blue, orange centres; edge green and red; corner yellow, green and red.
    expect(labels('mono').sort().join('')).toBe('BGGGORRRWY');
  });

  it('has kept pieces pale wherever they have gone', () => {
    const scene = drawCase(turned('U R'), drawnFor(goalOf('FL', ['FR'])), 'open', look('colour'));
    const colours: Colour[] = ['green', 'red', 'yellow'];
    // The corner of the kept slot FR is at the front right of the top: green up, yellow to the front, red to the right.
    const pixels = pixelsOf(scene);
    expect([pixels.at(64, 64), pixels.at(75, 67), pixels.at(67, 75)]).toEqual(colours.map((c) => pale[c]));
  });
});

describe('the same drawing every time', () => {
  it('gives equal scenes and equal SVG, whatever was drawn between', () => {
    const draw = (slot: Slot): Scene =>
      drawCase(cubeWithPair(readAddress('UBL:U FR:R')!, slot), drawnFor(goalOf(slot, [])), 'open', look('mono'));
    const first = draw('BR');
    const text = writeSvg(first, 'a');
    writeSvg(draw('FL'), 'b');
    expect(draw('BR')).toEqual(first);
    expect(writeSvg(draw('BR'), 'a')).toBe(text);
  });

  it('leaves the cube as it was', () => {
    const cube = turned("R U' F y");
    const before = { spots: [...cube.spots], view: cube.view };
    drawCase(cube, drawnFor(goalOf('FR', [])), 'corner', look('colour'));
    expect({ spots: [...cube.spots], view: cube.view }).toEqual(before);
  });
});

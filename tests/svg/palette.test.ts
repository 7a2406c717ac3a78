import { readFileSync } from 'node:fs';
import { converter, differenceCiede2000 } from 'culori';
import { describe, expect, it, test } from 'vitest';
import { COLOURS } from '../../src/cube/colours.ts';
import { wordsIn } from '../../src/steps/languages.ts';
import { contrast, letterInk, PALETTES, WHITE } from '../../src/svg/palette.ts';

const english = wordsIn('en');

const toLab = converter('lab65');
const toLinear = converter('lrgb');
const difference = differenceCiede2000();

/** Full severity. Machado, Oliveira, Fernandes, IEEE TVCG 15(6) 2009, 1291-1298; applied to linear RGB, clamped. */
const SIGHTS: readonly { sight: string; matrix: readonly (readonly [number, number, number])[] }[] = [
  {
    sight: 'normal',
    matrix: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  },
  {
    sight: 'protanopia',
    matrix: [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  },
  {
    sight: 'deuteranopia',
    matrix: [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  },
  {
    sight: 'tritanopia',
    matrix: [
      [1.255528, -0.076749, -0.178779],
      [-0.078411, 0.930809, 0.147602],
      [0.004733, 0.691367, 0.3039],
    ],
  },
];

function seenAs(hex: string, matrix: (typeof SIGHTS)[number]['matrix']) {
  const { r, g, b } = toLinear(hex);
  const [sr, sg, sb] = matrix.map((row) => Math.min(1, Math.max(0, row[0] * r + row[1] * g + row[2] * b)));
  return toLab({ mode: 'lrgb', r: sr!, g: sg!, b: sb! });
}

const pairs = COLOURS.flatMap((a, i) => COLOURS.slice(i + 1).map((b) => [a, b] as const));

// Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula", Color Research and Application 30(1) 2005, 21-30, Table 1.
describe('the measure itself: CIEDE2000 on the pairs of Sharma, Wu and Dalal', () => {
  const [, ...rows] = readFileSync(new URL('../data/ciede2000-sharma.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  it('has all 34', () => expect(rows).toHaveLength(34));
  test.each(rows)('%s', (row) => {
    const [, l1, a1, b1, l2, a2, b2, expected] = row.split(',').map(Number);
    const one = { mode: 'lab65', l: l1!, a: a1!, b: b1! } as const;
    const two = { mode: 'lab65', l: l2!, a: a2!, b: b2! } as const;
    expect(difference(one, two)).toBeCloseTo(expected!, 4);
  });
});

// WCAG 2.2, definitions of relative luminance and contrast ratio; figures computed from them beforehand.
test.each([
  ['#000000', '#ffffff', 21],
  ['#777777', '#ffffff', 4.478089],
  ['#767676', '#ffffff', 4.542225],
  ['#ff0000', '#ffffff', 3.998477],
  ['#00ff00', '#ffffff', 1.37219],
  ['#ffff00', '#ffffff', 1.073839],
  ['#ff0000', '#0000ff', 2.148936],
])('contrast of %s and %s is %f', (a, b, ratio) => {
  expect(contrast(a, b)).toBeCloseTo(ratio, 5);
  expect(contrast(b, a)).toBe(contrast(a, b));
});

describe.each(SIGHTS)('colour ink, $sight', ({ matrix }) => {
  test.each(pairs)('%s and %s differ by 10 in L* and by 20 in CIEDE2000', (a, b) => {
    const [one, two] = [a, b].map((c) => seenAs(PALETTES.colour.full[c], matrix));
    expect(Math.abs(one!.l - two!.l)).toBeGreaterThanOrEqual(10);
    expect(difference(one!, two!)).toBeGreaterThanOrEqual(20);
  });
});

/** Hue angles in CIELAB that people call by these names: from memory, no source; wide on purpose. */
test.each([
  ['yellow', 75, 100],
  ['green', 140, 175],
  ['blue', 265, 305],
  ['red', 15, 40],
  ['orange', 45, 70],
] as const)('%s is still called so', (colour, from, to) => {
  const { a, b } = toLab(PALETTES.colour.full[colour]);
  const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
  expect(hue).toBeGreaterThan(from);
  expect(hue).toBeLessThan(to);
  expect(Math.hypot(a, b)).toBeGreaterThan(28);
});

test.each(COLOURS.filter((c) => c !== 'white'))(
  'pale %s is lighter than full %s and has less than half its colour',
  (colour) => {
    const pale = toLab(PALETTES.colour.pale[colour]);
    const full = toLab(PALETTES.colour.full[colour]);
    expect(pale.l - full.l).toBeGreaterThanOrEqual(6);
    expect(Math.hypot(pale.a, pale.b)).toBeLessThan(Math.hypot(full.a, full.b) / 2);
  },
);

describe.each(['colour', 'mono'] as const)('%s ink', (ink) => {
  const palette = PALETTES[ink];
  // WCAG 2.2, 1.4.11: 3:1 for what must be told from its neighbour.
  it('has lines between stickers that show on white', () => {
    expect(contrast(palette.grid, WHITE)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.edges, WHITE)).toBeGreaterThanOrEqual(3);
  });

  // WCAG 2.2, 1.4.3.
  test.each(COLOURS)('a letter on %s has 4.5:1', (colour) => {
    expect(contrast(letterInk(palette.full[colour]), palette.full[colour])).toBeGreaterThanOrEqual(4.5);
  });
});

describe('mono ink', () => {
  const grey = (hex: string): number => Number.parseInt(hex.slice(1, 3), 16);

  it('has greys only', () => {
    const { full, pale, paper, hole, grid, edges } = PALETTES.mono;
    for (const hex of [...Object.values(full), ...Object.values(pale), paper, hole, grid, edges]) {
      expect(hex).toMatch(/^#([0-9a-f]{2})\1\1$/);
    }
  });

  test.each(pairs)('%s and %s differ by 10 in L*', (a, b) => {
    const [one, two] = [a, b].map((c) => toLab(PALETTES.mono.full[c]).l);
    expect(Math.abs(one! - two!)).toBeGreaterThanOrEqual(10);
  });

  // A copier that knows black and white only, set dark to light; the letter must not run into its ground.
  test.each([100, 115, 128, 140, 155, 170, 185])('every letter survives a copier that cuts at %i of 255', (cut) => {
    for (const colour of COLOURS) {
      const ground = PALETTES.mono.full[colour];
      expect(grey(letterInk(ground)) >= cut, colour).not.toBe(grey(ground) >= cut);
    }
  });

  // A copier that loses light and dark: the middle band of grey values is spread over the whole range.
  test.each([
    [40, 200],
    [60, 220],
    [80, 180],
  ])('every letter keeps 4.5:1 when %i to %i is all that is left', (dark, light) => {
    const crushed = (hex: string): string => {
      const value = Math.round((255 * Math.min(Math.max(grey(hex) - dark, 0), light - dark)) / (light - dark));
      return `#${value.toString(16).padStart(2, '0').repeat(3)}`;
    };
    for (const colour of COLOURS) {
      const ground = PALETTES.mono.full[colour];
      expect(contrast(crushed(letterInk(ground)), crushed(ground)), colour).toBeGreaterThanOrEqual(4.5);
    }
  });
});

it('has one capital for each colour, no two alike', () => {
  const letters = COLOURS.map((c) => english.colours[c].letter);
  expect(new Set(letters).size).toBe(6);
  for (const letter of letters) expect(letter).toMatch(/^[A-Z]$/);
});

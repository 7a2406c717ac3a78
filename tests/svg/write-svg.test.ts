import { describe, expect, it } from 'vitest';
import { coloursHeld, USUAL_SCHEME } from '../../src/cube/colours.ts';
import { wordsIn } from '../../src/steps/languages.ts';
import { drawHold, openViewLegend } from '../../src/svg/draw.ts';
import { PALETTES } from '../../src/svg/palette.ts';
import type { Scene } from '../../src/svg/scene.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { pixelsOf } from './pixels.ts';

const english = wordsIn('en');

const scene: Scene = {
  width: 20,
  height: 10.5,
  description: 'A square & a line < 3',
  marks: [
    {
      kind: 'polygon',
      points: [
        { x: 0, y: 0 },
        { x: 1 / 3, y: 0 },
        { x: 0, y: 5 },
      ],
      fill: '#ff0000',
    },
    { kind: 'polygon', points: [{ x: 1, y: 1 }], stroke: { colour: '#000000', width: 0.5, dash: [2, 1.006] } },
    {
      kind: 'line',
      points: [
        { x: 2, y: 2 },
        { x: 9, y: 3 },
      ],
      stroke: { colour: '#00ff00', width: 1 },
    },
    { kind: 'label', text: 'W', x: 5, y: 5, size: 4, colour: '#0000ff' },
  ],
};

describe('writeSvg', () => {
  const text = writeSvg(scene, 'R & <U>');

  // SVG 2 and the SVG accessibility mappings: role img, title and desc first; from memory.
  it('is one picture with a title and a description for a screen reader', () => {
    expect(text).toMatch(
      /^<svg [^>]*role="img"[^>]*><title>R &amp; &lt;U(>|&gt;)<\/title><desc>A square &amp; a line &lt; 3<\/desc>/,
    );
    expect(text).toContain('viewBox="0 0 20 10.5"');
  });

  it('writes each kind of mark', () => {
    expect(text).toContain('<polygon points="0,0 0.33,0 0,5" fill="#ff0000"></polygon>');
    expect(text).toContain('stroke-dasharray="2 1.01"');
    expect(text).toMatch(/<polyline points="2,2 9,3" fill="none" stroke="#00ff00"/);
    expect(text).toMatch(/<text x="5" y="6.32" font-size="4" fill="#0000ff"[^>]*>W<\/text>/);
  });

  it('has no ids, no svg.js data and no number with more than two decimals', () => {
    expect(text).not.toMatch(/\sid=|svgjs/i);
    expect(text).not.toMatch(/\d\.\d{3}/);
  });
});

describe('the other drawings', () => {
  const colours = coloursHeld(USUAL_SCHEME, { up: 'yellow', front: 'green' })!;
  const look = { colours, ink: 'colour', words: english } as const;

  // Common colour scheme, from memory: with yellow up and green in front, orange is at the right.
  it('shows how to hold the cube', () => {
    const hold = drawHold(look);
    const pixels = pixelsOf(hold);
    const { full, pale, paper } = PALETTES.colour;
    expect(pixels.at(50, 29)).toBe(full.yellow);
    expect(pixels.at(28, 64)).toBe(full.green);
    expect(pixels.at(77, 64)).toBe(full.orange);
    expect(pixels.at(46, 76)).toBe(pale.green);
    expect(pixels.at(10, 76)).toBe(pale.green);
    expect(pixels.at(54, 42)).toBe(paper);
    expect(hold.description).toBe('White down, green in front.');
  });

  it('names the flaps of the open view where they are', () => {
    const legend = openViewLegend(english, 'mono');
    const at = Object.fromEntries(legend.marks.flatMap((m) => (m.kind === 'label' ? [[m.text, [m.x, m.y]]] : [])));
    expect(Object.keys(at).sort()).toEqual(['back', 'front', 'left', 'right', 'top']);
    expect(at['top']).toEqual([50, 50]);
    expect(at['back']![1]).toBeLessThan(25);
    expect(at['front']![1]).toBeGreaterThan(75);
    expect(at['left']![0]).toBeLessThan(25);
    expect(at['right']![0]).toBeGreaterThan(75);
  });
});

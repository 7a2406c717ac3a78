/** Features of hand-made positions, and laws that hold for all. */
import { describe, expect, it } from 'vitest';
import { mirroredCondition, readCondition, valuesOf, wordsFor, writeCondition } from '../../../src/rules/conditions.ts';
import { readAddress, writeAddress } from '../../../src/steps/pair/address.ts';
import { FAMILIES } from '../../../src/steps/pair/cases.ts';
import { FEATURE_NAMES, type FeatureName, featuresOf, topsLike } from '../../../src/steps/pair/features.ts';
import { mirroredAddress } from '../../../src/steps/pair/mirrored.ts';
import { pairRuleWorld } from '../../../src/steps/pair/rule-world.ts';
import { type PairSighting, sightingsOf } from '../../../src/steps/pair/sighting.ts';
import type { Slot } from '../../../src/steps/pair/slots.ts';

const at = (address: string, side: Slot): PairSighting => ({ at: readAddress(address)!, side });
const EVERY = sightingsOf(FAMILIES);

/** Read off a cube by hand: where things are and what they show. */
const POSITIONS: readonly [string, Slot, Partial<Record<FeatureName, string>>][] = [
  // Own slot at the front right, edge at the front left with its front colour in front, corner above the back left.
  [
    'UBL:B FL:F',
    'FR',
    {
      'corner at': 'top',
      'edge at': 'away',
      'corner column': 'back left',
      'edge column': 'front left',
      'corner depth': 'behind',
      'edge depth': 'front',
      'corner from own slot': 'across',
      'edge from own slot': 'next',
      'edge from corner': 'next',
      // U takes the back left column to the back right, so it goes back to the front left.
      'U between': "U'",
      'cross colour': 'back',
      edge: 'good',
      // Brought over the edge, its cross colour looks left and the front shows the right colour over the front one.
      'corner over edge': 'no match',
      // L' takes the corner from above the back left down, what was behind to the bottom.
      'down when hidden by R or L': 'cross colour',
      'down when hidden by F or B': 'another colour',
      // The corner's top is the front colour, its left the right one: clockwise they are bottom, front, right.
      'edge front and corner top': 'like',
      'edge side and corner sideways': 'like',
      'edge front and corner sideways': 'unlike',
    },
  ],
  // The same cube seen after y: own slot front left, edge back left, corner above the back right.
  [
    'UBL:B FL:F',
    'FL',
    {
      'corner column': 'back right',
      'edge column': 'back left',
      'edge depth': 'behind',
      'cross colour': 'right',
      edge: 'good',
      // What was in front of the edge is at its left now: behind it is the other colour.
      'edge front and corner top': 'unlike',
      'edge side and corner top': 'like',
    },
  ],
  // Corner stuck at the back left, cross colour down, edge on top at the right with the left colour up.
  [
    'DFL:D UB:U',
    'FL',
    {
      'corner at': 'away',
      'edge at': 'top',
      'corner column': 'back left',
      'edge column': 'right',
      'edge depth': 'middle',
      'edge side': 'right',
      'corner from own slot': 'next',
      'edge from own slot': 'across',
      'cross colour': 'down',
      // Up is a colour of the left face: not one of front and back.
      edge: 'bad',
      'edge top and corner front': 'like',
      'edge top and corner side': 'unlike',
    },
  ],
  // All but solved: the corner home and twisted, the edge home.
  [
    'DFR:F FR:F',
    'FR',
    {
      'corner at': 'home',
      'edge at': 'home',
      'corner from own slot': 'same',
      'edge from corner': 'same',
      'cross colour': 'front',
      edge: 'good',
      'corner over edge': 'no match',
      'edge front and corner side': 'like',
    },
  ],
  // A joined pair on top: corner at the front right, edge behind it at the right, both showing the right colour there.
  [
    'UFR:F UR:R',
    'FR',
    {
      'edge column': 'right',
      'edge from corner': 'next',
      'cross colour': 'front',
      // From the middle of the cube, looking at the front right corner, the right side is at the left hand.
      'edge round the top': 'left',
      'edge top and corner top': 'unlike',
      'edge side and corner side': 'unlike',
    },
  ],
  ['UFR:U UF:U', 'FR', { 'cross colour': 'up', edge: 'good', 'edge round the top': 'right', 'edge column': 'front' }],
  ['UFR:U UF:F', 'FR', { edge: 'bad' }],
  ['UFR:U UL:U', 'BL', { 'edge column': 'right', edge: 'good', 'edge round the top': 'far right' }],
];

describe('what a viewer sees', () => {
  it.each(POSITIONS)('of %s with its own slot at %s', (address, seen, expected) => {
    expect(featuresOf(at(address, seen))).toMatchObject(expected);
  });

  it('has no meaning where there is nothing to see', () => {
    const joined = featuresOf(at('UFR:F UR:R', 'FR'));
    expect(joined).not.toHaveProperty('corner over edge');
    expect(joined).not.toHaveProperty('down when hidden by R or L');
    expect(featuresOf(at('DFL:D UB:U', 'FR'))).not.toHaveProperty('edge top and corner top');
    expect(featuresOf(at('UFR:U FL:F', 'FR'))).not.toHaveProperty('edge front and corner sideways');
  });

  it('is unlike where the corner shows the cross colour, which no edge of a pair has', () => {
    expect(featuresOf(at('UFR:U FL:F', 'FR'))).toMatchObject({ 'edge front and corner top': 'unlike' });
    expect(featuresOf(at('UFR:F FL:F', 'FR'))).toMatchObject({ 'edge front and corner front': 'unlike' });
    expect(topsLike(at('UFR:U FL:F', 'FR'))).toBeUndefined();
  });

  it.each(FEATURE_NAMES)('"%s" takes each of its values somewhere, and no other', (name) => {
    const taken = new Set(EVERY.map((s) => featuresOf(s)[name]).filter((value) => value !== undefined));
    // Two stickers of one piece that look the same way can never be the edge's top and the corner's top while both are up.
    expect([...taken].sort()).toEqual([...valuesOf(pairRuleWorld, name)].sort());
  });

  // Common practice, no source.
  it('a quarter turn of the cube makes a good edge bad on top, and leaves one in a slot as it is', () => {
    const AFTER: Readonly<Record<Slot, Slot>> = { FR: 'FL', FL: 'BL', BL: 'BR', BR: 'FR' };
    for (const { at: address, side } of EVERY) {
      const here = featuresOf({ at: address, side });
      const turned = featuresOf({ at: address, side: AFTER[side] });
      expect(here.edge !== turned.edge).toBe(here['edge at'] === 'top');
    }
  });

  it('in a mirror is the mirrored feature', () => {
    const MIRRORED: Readonly<Record<Slot, Slot>> = { FR: 'FL', FL: 'FR', BL: 'BR', BR: 'BL' };
    for (const { at: address, side } of EVERY.filter((_, i) => i % 5 === 0)) {
      const here = featuresOf({ at: address, side });
      const there = featuresOf({ at: mirroredAddress(address), side: MIRRORED[side] });
      for (const name of FEATURE_NAMES) {
        const value = here[name];
        const mirrored = value && mirroredCondition(pairRuleWorld, { feature: name, values: [value] }).values[0];
        expect([writeAddress(address), side, name, there[name]]).toEqual([writeAddress(address), side, name, mirrored]);
      }
    }
  });
});

describe('conditions', () => {
  it.each([
    ['cross colour', 'sideways', ['front', 'back', 'left', 'right'], 'sideways'],
    ['cross colour', 'up or down', ['up', 'down'], 'up or down'],
    ['cross colour', 'not sideways', ['up', 'down'], 'up or down'],
    ['corner column', 'not front left', ['front right', 'back left', 'back right'], 'not front left'],
    ['edge', 'not good', ['bad'], 'bad'],
    ['U between', "U, U'", ['U', "U'"], "U or U'"],
  ] as const)('"%s: %s"', (feature, text, values, written) => {
    const read = readCondition(pairRuleWorld, feature, text);
    expect(read).toEqual({ feature, values });
    expect(writeCondition(pairRuleWorld, { feature, values })).toBe(`${feature}: ${written}`);
  });

  it('are read back as they are written, every one', () => {
    for (const feature of FEATURE_NAMES) {
      for (const word of wordsFor(pairRuleWorld, feature)) {
        const read = readCondition(pairRuleWorld, feature, `not ${word}`);
        if ('unknown' in read) throw new Error(`${feature}: ${word}`);
        if (read.values.length === 0) continue;
        const text = writeCondition(pairRuleWorld, read).slice(feature.length + 2);
        expect(readCondition(pairRuleWorld, feature, text)).toEqual(read);
      }
    }
  });

  it('name the word that is none of theirs', () => {
    expect(readCondition(pairRuleWorld, 'cross colour', 'sidewards')).toEqual({ unknown: 'sidewards' });
    expect(readCondition(pairRuleWorld, 'edge', 'good or ugly')).toEqual({ unknown: 'ugly' });
  });
});

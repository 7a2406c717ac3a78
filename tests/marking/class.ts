/** Items and a marker for tests: the sample course as it would be read from its claims files, and what else is wanted. */
import { readdirSync, readFileSync } from 'node:fs';
import { loadLesson } from '../../src/lesson/load.ts';
import { readClaimsText } from '../../src/marking/claims-file.ts';
import { proveClaims } from '../../src/marking/gather-items.ts';
import type { Items } from '../../src/marking/items.ts';
import { type MarkingOptions, marker } from '../../src/marking/mark.ts';
import type { MarkedRow, Submission } from '../../src/marking/submission.ts';
import { wordsIn } from '../../src/steps/languages.ts';

const english = wordsIn('en');

const LESSONS = new URL('../../lessons/', import.meta.url);

export interface ClaimText {
  readonly id: string;
  /** Its case, and which of its solutions. */
  readonly item: string;
  readonly nth: number;
  readonly setup: string;
  readonly solution: string;
  readonly pair: 'FR' | 'FL' | 'BL' | 'BR';
  readonly kept: readonly ('FR' | 'FL' | 'BL' | 'BR')[];
}

/** A question of choice about the case of a claim. */
export function choiceOn(claim: ClaimText, rest: object): object {
  const { hold, cross, setup, pair, kept, base, goal } = claim as ClaimText & Readonly<Record<string, unknown>>;
  return { kind: 'choice', file: 'a.yaml', line: 1, hold, cross, setup, pair, kept, base, goal, ...rest };
}

/** The fields that say which item of which paper a claim of a pair is about. */
export const onPaper = (paper: string, item: number): object => ({
  id: `${paper}.${item}`,
  step: 'pairs',
  paper,
  item: `${item}`,
  nth: 1,
});

export const sampleBytes = (name: string): Uint8Array => readFileSync(new URL(`${name}.yaml`, LESSONS));

/** The claims of a sample lesson. */
export function claimsOf(name: string): ClaimText[] {
  const { claims, proved } = loadLesson(`${name}.yaml`, sampleBytes(name));
  if (!proved) throw new Error(`${name} is not proved`);
  return claims.map((claim) => ({ ...claim, sheet: `${name}.pdf`, page: 1 }) as never as ClaimText);
}

export const sampleNames = (): string[] =>
  readdirSync(LESSONS)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => name.replace('.yaml', ''))
    .sort();

/** A claims file as text. */
export const fileOf = (claims: readonly unknown[], lesson = 'A lesson'): string =>
  JSON.stringify({ lesson, file: 'a.yaml', sheets: ['a.pdf'], claims });

export function proved(json: string): ReturnType<typeof proveClaims> {
  const text = readClaimsText('a.claims.json', json);
  if ('unreadable' in text) throw new Error(text.unreadable);
  return proveClaims([text]);
}

export const optionsOf = (smallLetters: MarkingOptions['smallLetters'] = 'wide'): MarkingOptions => ({
  smallLetters,
  words: english,
});

export const submission = (item: string, answer: string, rest: Partial<Submission> = {}): Submission => ({
  file: 'a.csv',
  row: 2,
  student: 'K7',
  paper: '',
  item,
  answer,
  mark: '',
  ...rest,
});

/** One answer marked. */
export const marked = (items: Items, item: string, answer: string, rest: Partial<Submission> = {}): MarkedRow =>
  marker(items, optionsOf())(submission(item, answer, rest));

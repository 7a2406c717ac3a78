/**
 * What turns that cannot be read were likely meant to be. Each rule mends one habit of writing; all are applied, in this
 * order, and what then can be read is proposed. Which habits there are is common practice, no source.
 */
import { DOUBLE_PRIMES, FALSE_PRIMES, LOOKALIKES, readTurns } from '../cube/notation.ts';
import type { Turn } from '../cube/turns.ts';

const oneOf = (signs: string): RegExp => new RegExp(`[${signs}]`, 'gu');

/** A dead key sets the accent on the letter that is typed next: R´ U comes out as R Ú or RÚ; alone it stands on its own. */
const ACCENTED = /(\p{L})([\u0300\u0301\u0302])/gu;

/** A turn before which or after which something is mended. */
const TURN = '[UDLRFBMESxyzudlrfb]w?';

type Rule = (text: string) => string;
const replace =
  (pattern: RegExp, by: string | ((...groups: string[]) => string)): Rule =>
  (text) =>
    text.replace(pattern, by as string);

/** Signs that are another character than the one meant. */
const SIGNS: readonly Rule[] = [
  replace(oneOf(FALSE_PRIMES), "'"),
  (text) => text.normalize('NFKC'),
  (text) =>
    text
      .normalize('NFD')
      .replace(ACCENTED, (_, letter: string) => `'${letter}`)
      .normalize('NFC'),
  // An accent at the beginning, or after a space, belongs to its own letter.
  replace(/(^|\s)'(\p{L})/gu, "$1$2'"),
  (text) => [...text].map((sign) => LOOKALIKES[sign] ?? sign).join(''),
  replace(/[\p{Cf}\p{Cc}\p{Cs}]/gu, ' '),
];

/** Words, and signs between turns. */
const BETWEEN: readonly Rule[] = [
  replace(/\s*\b(?:prime|inverted|inverse|inv|counter-?clockwise)\b/gi, "'"),
  replace(/\s*\b(?:twice|double|squared)\b/gi, '2'),
  replace(/[[{]/g, '('),
  replace(/[\]}]/g, ')'),
  replace(/\)\s*[x*×·^]?\s*(\d)/g, ')$1'),
  replace(/[,;:|/.!?·]+/g, ' '),
  replace(/\s[-–—−>=→+]+(?=\s|$)/g, ' '),
];

/** How a turn's letter and its amount are written. */
const TURNS_WRITTEN: readonly Rule[] = [
  replace(/(?<![a-z])([UDLRFB])W/g, '$1w'),
  replace(/\b[XYZ](?=['’′2]|\s|$|\b)/g, (letter) => letter.toLowerCase()),
  replace(/(?<![A-Za-z])[mes](?![a-z])/g, (letter) => letter.toUpperCase()),
  replace(new RegExp(`(${TURN})\\s*['’′]\\s*w`, 'g'), "$1w'"),
  replace(new RegExp(`(${TURN})\\s*2\\s*w`, 'g'), '$1w2'),
  replace(new RegExp(`(${TURN})(?:i|-1|[-−–])(?![a-z0-9])`, 'g'), "$1'"),
  replace(new RegExp(`(${TURN})\\s*3(?!\\d)['’′]`, 'g'), '$1'),
  replace(new RegExp(`(${TURN})\\s*3(?!\\d)`, 'g'), "$1'"),
  replace(new RegExp(`(${TURN})\\s*1(?!\\d)`, 'g'), '$1'),
  replace(new RegExp(`(${TURN})['’′]\\s*2`, 'g'), '$12'),
  replace(new RegExp(`(${TURN})\\^?\\s*2(?=\\D|$)`, 'g'), '$12'),
  replace(new RegExp(`(${TURN})\\+(?![0-9])`, 'g'), '$1'),
  replace(new RegExp(`(${TURN}2?)\\s+['’′]`, 'g'), "$1'"),
];

const mended = (text: string, rules: readonly Rule[]): string => rules.reduce((t, rule) => rule(t), text);

/** Two marks after a letter: as often a half turn as a prime set twice. */
const DOUBLES = [
  replace(new RegExp(`(?:${oneOf(DOUBLE_PRIMES).source}|['’′]{2})`, 'g'), '2'),
  replace(new RegExp(`(?:${oneOf(DOUBLE_PRIMES).source}|['’′]{2})`, 'g'), "'"),
];

/** `2R` for R2: only where the wide reading `2Rw` is not meant. */
const numberFirst = replace(/(?<![\w')])2\s*([UDLRFB])(?!w)/g, '$12');
const withoutBrackets = replace(/[()]/g, ' ');

/** Readings that were likely meant, each sequence once; none where nothing helps or the text can be read as it is. */
export function likelyMeant(text: string): Turn[][] {
  if (readTurns(text).ok) return [];
  const found = new Map<string, Turn[]>();
  for (const double of DOUBLES) {
    const base = mended(double(mended(text, SIGNS)), [...BETWEEN, ...TURNS_WRITTEN]);
    for (const further of [base, numberFirst(base), withoutBrackets(base)]) {
      const reading = readTurns(further);
      if (!reading.ok || reading.turns.length === 0) continue;
      const key = reading.turns.map((t) => t.text).join(' ');
      if (!found.has(key)) found.set(key, reading.turns);
      break;
    }
  }
  return [...found.values()];
}

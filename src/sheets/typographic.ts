/** Signs as a printer sets them, for those that a keyboard has: curly quotes and primes after the letter of a turn. */
import { plainWords } from '../lesson/mirrored-words.ts';

export const typographic = (text: string): string =>
  plainWords(text)
    .replace(/(?<![\p{L}\d])([UDRLFBMESxyzrludfb]w?)'(?!\p{L})/gu, '$1\u2032')
    .replace(/(?<=^|[\s(\u2014\u2013])"/g, '\u201c')
    .replaceAll('"', '\u201d')
    .replace(/(?<=^|[\s(\u2014\u2013])'/g, '\u2018')
    .replaceAll("'", '\u2019');

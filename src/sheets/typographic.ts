/** Signs as a printer sets them, for those that a keyboard has: curly quotes and primes after the letter of a turn. */
import { plainWords } from '../lesson/mirrored-words.ts';

/** `follows`: whether the text goes on after a word, such as a colour set in another way. */
export const typographic = (text: string, follows = false): string =>
  plainWords(follows ? text.replace(/^'/, '\u2019').replace(/^"/, '\u201d') : text)
    .replace(/(?<![\p{L}\d])([UDRLFBMESxyzrludfb]w?)'(?!\p{L})/gu, '$1\u2032')
    .replace(/(?<=^|[\s(\u2014\u2013])"/g, '\u201c')
    .replaceAll('"', '\u201d')
    .replace(/(?<=^|[\s(\u2014\u2013])'/g, '\u2018')
    .replaceAll("'", '\u2019');

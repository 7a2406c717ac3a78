/** The text of a file as spreadsheets, editors and forms save it. */

/** Windows-1252 above 0x7f where it differs from Latin-1 (WHATWG Encoding Standard, index windows-1252), from 0x80 on. */
const UPPER = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** By hand: Node 20's own decoder takes it for Latin-1, where ’ is a control character. */
const windows1252 = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => (byte >= 0x80 && byte < 0xa0 ? UPPER[byte - 0x80] : String.fromCharCode(byte))).join('');

const decoded = (encoding: string, bytes: Uint8Array): string => new TextDecoder(encoding).decode(bytes);

export interface Decoded {
  readonly text: string;
  /** Whether it was taken for Windows-1252, the older encoding that spreadsheets still write: it can be any other. */
  readonly guessed: boolean;
}

/** UTF-8 and UTF-16 by their byte-order marks, which are dropped; else UTF-8; what is not, as Windows-1252. */
export function decode(bytes: Uint8Array): Decoded {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: decoded('utf-16le', bytes), guessed: false };
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return { text: decoded('utf-16be', bytes), guessed: false };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), guessed: false };
  } catch {
    return { text: windows1252(bytes), guessed: true };
  }
}

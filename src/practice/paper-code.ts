/** The short name of a paper, for its foot and its key: it says which paper it is and nothing of whose. */
import { hashOf } from './random.ts';

/** No letter or digit that looks like another: no 0 O Q D, 1 I L J, 2 Z, 5 S, 8 B, U V. */
const ALPHABET = '34679ACEFGHKMNPRTWXY';
const LENGTH = 3;
export const PAPER_CODES: number = ALPHABET.length ** LENGTH;
/** No common factor with their number: as many papers have codes of their own, and neighbours' do not look alike. */
const STRIDE = 3_089;

/** `position` from 0. Of one lesson and seed no two codes are the same, up to PAPER_CODES of them. */
export function paperCode(lesson: string, seed: number, position: number): string {
  let n = (hashOf(`${seed}/${lesson}`) + position * STRIDE) % PAPER_CODES;
  let code = '';
  for (let i = 0; i < LENGTH; i++) {
    code += ALPHABET[n % ALPHABET.length]!;
    n = Math.floor(n / ALPHABET.length);
  }
  return code;
}

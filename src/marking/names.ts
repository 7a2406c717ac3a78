/** Codes that look like names of people, which should not be in files and on slips. */
import type { Submission } from './submission.ts';

/** Two words or more, each a capital and small letters, whatever stands between them. */
const NAME = /^\p{Lu}\p{Ll}+(?:[\s,.-]+\p{Lu}(?:\p{Ll}+|\.))+$/u;

export const likeNames = (rows: readonly Submission[]): number =>
  new Set(rows.map(({ student }) => student).filter((student) => NAME.test(student))).size;

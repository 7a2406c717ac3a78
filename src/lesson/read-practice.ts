/** The `practice` key of a lesson -> what is asked of its papers. */

import type { z } from 'zod';
import { exerciseKinds, type PracticeRequest } from './practice.ts';
import { conditionsAt } from './read-rules.ts';
import type { Reader } from './reader.ts';
import type { practiceSchema } from './schema.ts';
import { spanAt } from './yaml-text.ts';

const listOf = <T>(value: T | readonly T[] | undefined): readonly T[] =>
  value === undefined ? [] : ([value].flat() as readonly T[]);

/** `rules`: how many the lesson has. */
export function practiceAt(
  r: Reader,
  written: z.infer<typeof practiceSchema> | undefined,
  rules: number,
): PracticeRequest | undefined {
  if (!written) return undefined;
  const { items, words } = written;
  const { family, rule, see, hand, turns, ...own } = written.only ?? {};
  const at = (...path: (string | number)[]) => spanAt(r.yaml, ['practice', ...path]);
  const asked = exerciseKinds(r.format.step).flatMap((kind) => {
    const count = (items as Readonly<Record<string, number | undefined>>)[kind] ?? 0;
    return count > 0 ? [{ kind, count, span: at('items', kind) }] : [];
  });
  if (asked.length === 0) {
    const message = 'no exercise is asked for';
    r.problems.push({ code: 'value-kind', span: at('items'), message, hint: 'say how many of which kind: solve: 6' });
  }
  const chosen = listOf(rule);
  chosen.forEach((number, i) => {
    if (number <= rules) return;
    const span = Array.isArray(rule) ? at('only', 'rule', i) : at('only', 'rule');
    const hint = rules === 0 ? 'add rules, or take "rule" out' : `the last one is rule ${rules}`;
    r.problems.push({ code: 'practice-no-rule', span, message: `the lesson has no rule ${number}`, hint });
  });
  return {
    seed: written.seed ?? 1,
    level: written.level ?? 'middle',
    asked,
    open: written.open ?? 0,
    only: {
      families: listOf(family),
      own,
      rules: chosen,
      see: conditionsAt(r, ['practice', 'only', 'see'], see) ?? [],
      hand,
      turns,
    },
    onlyAt: written.only && at('only'),
    earlier: (written.earlier ?? []).map((file, i) => ({ file, span: at('earlier', i) })),
    words: words?.map((word) => word.toUpperCase()),
    wordsAt: { span: words ? at('words') : at() },
    span: at(),
  };
}

/** Names of cases that speak of a slot: is it one that the pair has to do with? */
import { stuckSlots } from '../steps/pair/address.ts';
import { SLOT_WORDS, slotSaid } from '../steps/pair/slot-words.ts';
import { listed } from '../text/likely.ts';
import type { Problem } from './problem.ts';
import type { ProvedCase } from './proved.ts';

/**
 * A name such as "Front left, corner above" must name the pair's own slot or one that a piece of it is stuck in, as the
 * cube is held before a solution. Pieces on top are in no slot, so a case with both there is not judged.
 */
export function misnamed(cases: readonly ProvedCase[]): Problem[] {
  return cases.flatMap(({ case: c, address }) => {
    const stuck = stuckSlots(address, c.slot);
    const said = c.name?.phrases.map((p) => ('text' in p ? p.text : '')).join(' ') ?? '';
    const named = [...said.matchAll(/\b(front|back)[ -](left|right)\b/gi)].map(
      ([, depth, side]) => slotSaid(`${depth} ${side}`)!,
    );
    const stray = named.find((slot) => slot !== c.slot && !stuck.includes(slot));
    if (!stray || stuck.length === 0) return [];
    const right = [...stuck, c.slot].map((slot) => SLOT_WORDS[slot]);
    const message = `the name speaks of the ${SLOT_WORDS[stray]} slot, where no piece of this pair is or belongs`;
    return [{ code: 'name-elsewhere', span: c.name!.span, message, hint: `it is about ${listed(right)}` }];
  });
}

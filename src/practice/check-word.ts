/**
 * Letters for choices, so that the right ones spell a word: each choice of an item bears a letter of its own, the right
 * one the word's. The wrong letters are drawn so that no other word of the list can be spelt with the letters there are.
 */
import type { Random } from './random.ts';

/**
 * Without I, J, Q, U and V, which handwriting confuses. Letters of the list's words are drawn too: else one that only a
 * word can have would show which choice is right.
 */
const CLEAR_LETTERS = 'ABCDEFGHKLMNOPRSTWXYZ';
const lettersOf = (words: readonly string[]): string[] => [...new Set(CLEAR_LETTERS + words.join(''))].sort();

/** Word lengths that add up to `items`, few and long; undefined if the list has none that do. */
export function partsFor(items: number, words: readonly string[]): number[] | undefined {
  const lengths = [...new Set(words.map((w) => w.length))].sort((a, b) => b - a);
  // best[n]: the fewest words for n letters, the longest first.
  const best: (number[] | undefined)[] = [[]];
  for (let n = 1; n <= items; n++) {
    const ways = lengths.flatMap((length) => {
      const rest = n >= length ? best[n - length] : undefined;
      return rest ? [[length, ...rest]] : [];
    });
    best[n] = ways.reduce<number[] | undefined>((a, b) => (a && a.length <= b.length ? a : b), undefined);
  }
  return best[items];
}

/** Different words of these lengths where there are enough, those used longest ago. `used`: by word, on which paper last. */
export function drawWords(
  parts: readonly number[],
  words: readonly string[],
  used: ReadonlyMap<string, number>,
  random: Random,
): string[] {
  const drawn: string[] = [];
  const lastUse = (word: string): number => (drawn.includes(word) ? Number.POSITIVE_INFINITY : (used.get(word) ?? -1));
  for (const length of parts) {
    const fitting = random.shuffled(words.filter((w) => w.length === length));
    drawn.push(fitting.reduce((a, b) => (lastUse(b) < lastUse(a) ? b : a)));
  }
  return drawn;
}

/** Other words of the list that could be spelt with one letter of each item. */
export const alsoSpelt = (word: string, items: readonly (readonly string[])[], words: readonly string[]): string[] =>
  words.filter(
    (w) => w !== word && w.length === items.length && [...w].every((letter, i) => items[i]!.includes(letter)),
  );

/**
 * For each item its letters, the right choice's where `right` says; undefined if the list leaves none. `counts`: how many
 * choices each item has. Ends: each round bars a letter from an item for good.
 */
export function lettersFor(
  word: string,
  counts: readonly number[],
  right: readonly number[],
  words: readonly string[],
  random: Random,
): string[][] | undefined {
  const alphabet = lettersOf(words);
  const barred = counts.map((_, i) => new Set([word[i]!]));
  const free = (i: number, there: readonly string[]): string[] =>
    alphabet.filter((letter) => !barred[i]!.has(letter) && !there.includes(letter));
  const items = counts.map((count, i) => {
    const letters: string[] = [];
    for (let n = 0; n < count; n++) letters.push(n === right[i] ? word[i]! : random.pick(free(i, letters)));
    return letters;
  });
  for (let others = alsoSpelt(word, items, words); others.length > 0; others = alsoSpelt(word, items, words)) {
    const other = others[0]!;
    const differing = [...other].flatMap((letter, i) => (letter === word[i] ? [] : [i]));
    // Where most letters are left to choose from.
    const i = differing.reduce((a, b) => (barred[b]!.size < barred[a]!.size ? b : a));
    const n = items[i]!.indexOf(other[i]!);
    barred[i]!.add(other[i]!);
    const left = free(i, items[i]!);
    if (left.length === 0) return undefined;
    items[i]![n] = random.pick(left);
  }
  return items;
}

/**
 * The words that right answers spell, unless a club lists its own: of every length from three to nine letters, none with
 * I, J, Q, U or V, which handwriting confuses. So many that a class does not know them after a few weeks.
 */
export const CHECK_WORDS: readonly string[] = [
  'BOX HAT MAP PEN FOX TEN CAT DOG HEN BAT COW ANT KEY LEG NET OWL POT RAM SEA WAX',
  'LAMP FORK MOTH BOAT DESK FROG BARN CAMP DOOR FLAG GATE HAND LEAF MOON NEST PARK ROPE SAND TENT WOLF',
  'BAKER CLOTH FROST PLANT TRAMP STONE APPLE BEACH CAMEL CLOCK EAGLE GRAPE HORSE LEMON METAL OCEAN PEARL SHEEP TORCH WHALE',
  'BASKET CAMERA DRAGON FOREST MARKET PLANET BOTTLE CARPET DOCTOR FARMER GARDEN HAMMER KETTLE LADDER MONKEY PEPPER ROCKET SADDLE TEMPLE WARDEN',
  'BALCONY COMPASS FEATHER LANTERN THEATRE KEYHOLE CABBAGE COTTAGE LEOPARD PANCAKE CRYSTAL MONARCH NETWORK OCTAGON PATTERN SEAFOOD WEATHER ROOSTER HAMMOCK',
  'ELEPHANT NOTEBOOK FOOTSTEP CALENDAR SHAMROCK BOATYARD CROSSBOW FAREWELL ALPHABET DAYBREAK KEYBOARD LANDMARK TEAMWORK WOODLAND BEETROOT DOORSTEP SEASHELL HANDBOOK',
  'TELEPHONE ORCHESTRA HONEYCOMB AFTERNOON CROSSROAD KEYSTROKE CARDBOARD SANDSTONE NORTHEAST CHOCOLATE SPACEWALK WATERFALL YESTERDAY PARAGRAPH TRADEMARK GRASSLAND',
].flatMap((words) => words.split(' '));

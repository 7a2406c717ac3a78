/** The table of fixed words with a club's own words in place of ours. */
import type { Words } from './words.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Whole words only, singular and plural, small or capital first letter; not the places in braces where a word is put in. */
function renamer(words: Readonly<Record<string, string>>): (text: string) => string {
  const ours = Object.keys(words).sort((a, b) => b.length - a.length);
  const pattern = new RegExp(`(?<!\\{)\\b(${ours.join('|')})(s?)\\b`, 'gi');
  return (text) =>
    text.replace(pattern, (_, word: string, plural: string) => {
      const theirs = words[word.toLowerCase()]!;
      return (word[0] === word[0]!.toLowerCase() ? theirs : capital(theirs)) + plural;
    });
}

/** Applied to every text of a table, and to what its functions give. */
function deep<T>(value: T, rename: (text: string) => string): T {
  if (typeof value === 'string') return rename(value) as T;
  if (typeof value === 'function') return ((...args: unknown[]) => deep(value(...args), rename)) as T;
  if (Array.isArray(value)) return value.map((one) => deep(one, rename)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, deep(one, rename)])) as T;
}

export function withClubWords(words: Words, theirs: Readonly<Record<string, string>>): Words {
  if (Object.keys(theirs).length === 0) return words;
  const rename = renamer(theirs);
  const { language, colours, ...rest } = words;
  const renamed = deep(rest, rename);
  // The glossary has both words side by side.
  return { language, colours, ...renamed, handout: { ...renamed.handout, clubWord: words.handout.clubWord } };
}

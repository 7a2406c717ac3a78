/** Turns that students meet: choices made of others would be told by their looks. */
import type { Turn } from '../cube/turns.ts';
import type { Material } from './material.ts';

const FAMILIAR: readonly string[] = ['U', 'R', 'L', 'F'];

export type IsFamiliar = (turns: readonly Turn[]) => boolean;

/** No two half turns in a row, and no letter but those of the faces that anyone turns and those that were taught. */
export function familiarIn({ taught }: Material): IsFamiliar {
  const letters = new Set<string>([
    ...FAMILIAR,
    ...taught.flatMap(({ recommended }) => recommended.map(({ letter }) => letter)),
  ]);
  return (turns) =>
    turns.every(({ letter, quarters }, i) => letters.has(letter) && !(quarters === 2 && turns[i + 1]?.quarters === 2));
}

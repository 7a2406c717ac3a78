/** Several finished documents as one file: each keeps its pages and the numbers on them. */
import type { Frame, Item, Pages, Part } from './frames.ts';

/** Title, language and paper are those of the first; there is at least one. */
export function bound(volumes: readonly Pages[]): Pages {
  const [first] = volumes;
  if (!first) throw new RangeError('nothing to bind');
  if (volumes.length === 1) return first;
  const parts: Part[] = [first.parts[0]!];
  const frames: Frame[] = [];
  for (const volume of volumes) {
    // Part 0 is the document, which all share.
    const from = parts.length - 1;
    const moved = (part: number): number => (part === 0 ? 0 : part + from);
    parts.push(
      ...volume.parts.slice(1).map((part) => ({ ...part, parent: part.parent === undefined ? 0 : moved(part.parent) })),
    );
    const movedItem = (item: Item): Item => (item.part === undefined ? item : { ...item, part: moved(item.part) });
    frames.push(...volume.frames.map((frame) => ({ ...frame, items: frame.items.map(movedItem) })));
  }
  return { ...first, frames, parts };
}

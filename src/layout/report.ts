/** What measuring a sheet collects besides boxes: the parts of its structure, and what could not be laid out. */
import type { Block, Origin } from './blocks.ts';
import { missingGlyphs } from './fonts.ts';
import type { FontName, LayoutFault, Part } from './frames.ts';
import type { Finding } from './lines.ts';

export interface Report {
  readonly parts: readonly Part[];
  readonly faults: readonly LayoutFault[];
  /** Adds a part in reading order and gives its number; its parent is the document unless another is named. */
  addPart(part: Omit<Part, 'parent'>, parent?: number): number;
  /** Each fault is kept once for each origin. */
  addFaults(findings: readonly Finding[], origin: Origin | undefined): void;
  /** Missing glyphs of a text that is set without line breaking. */
  checkGlyphs(font: FontName, text: string, origin: Origin | undefined): void;
}

export const startReport = (): Report => {
  const parts: Part[] = [{ role: 'Document', parent: undefined }];
  const faults = new Map<string, LayoutFault>();
  const addFaults: Report['addFaults'] = (findings, origin) => {
    for (const finding of findings) {
      const key = `${finding.code} ${origin?.start}:${origin?.end} ${finding.what}`;
      if (!faults.has(key)) faults.set(key, { ...finding, ...(origin && { origin }) });
    }
  };
  return {
    parts,
    get faults() {
      return [...faults.values()];
    },
    addPart: (part, parent = 0) => parts.push({ ...part, parent }) - 1,
    addFaults,
    checkGlyphs: (font, text, origin) =>
      addFaults(
        missingGlyphs(font, text).map((what) => ({ code: 'missing-glyph', what })),
        origin,
      ),
  };
};

const longestName = 40;

const wordsOf = (block: Block): string => {
  switch (block.kind) {
    case 'text':
      return block.spans.map((span) => (span.kind === 'turns' ? span.turns.join(' ') : span.text)).join('');
    case 'turns':
      return block.groups.flatMap((group) => group.turns).join(' ');
    case 'figure':
      return block.scene.description;
    case 'write-line':
      return block.label;
    case 'boxes':
      return block.label ?? '';
    case 'stack':
      return firstOf(block.children);
    case 'columns':
      return firstOf(block.columns.map((column) => column.child));
    case 'grid':
      return firstOf(block.cells);
    case 'rule':
    case 'space':
      return '';
  }
};

const firstOf = (blocks: readonly Block[]): string => {
  for (const block of blocks) {
    const words = wordsOf(block);
    if (words !== '') return words;
  }
  return '';
};

/** The first words of a block, to name it in a fault. */
export const nameOf = (block: Block): string => {
  const words = wordsOf(block).trim();
  return words.length > longestName ? `${words.slice(0, longestName)}…` : words || block.kind;
};

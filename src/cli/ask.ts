/** Questions at a terminal, answers by the line; lines that come faster than questions wait. */
import { createInterface, type Interface } from 'node:readline';

export type Ask = (question: string) => Promise<string | undefined>;

/** Opens the input when the first question is asked; after its end every answer is undefined. */
export function asker(input: NodeJS.ReadableStream, output: NodeJS.WritableStream): { ask: Ask; close: () => void } {
  let lines: Interface | undefined;
  let ended = false;
  const waiting: string[] = [];
  let wanted: ((line: string | undefined) => void) | undefined;
  const open = (): Interface => {
    const opened = createInterface({ input, output, terminal: 'isTTY' in input && input.isTTY === true });
    opened.on('line', (line) => {
      if (!wanted) waiting.push(line);
      else {
        const answer = wanted;
        wanted = undefined;
        answer(line);
      }
    });
    opened.on('close', () => {
      ended = true;
      wanted?.(undefined);
    });
    return opened;
  };
  return {
    ask: (question) => {
      lines ??= open();
      const line = waiting.shift();
      if (line !== undefined || ended) return Promise.resolve(line);
      lines.setPrompt(question);
      lines.prompt();
      return new Promise((resolve) => {
        wanted = resolve;
      });
    },
    close: () => lines?.close(),
  };
}

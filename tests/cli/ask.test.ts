import { PassThrough } from 'node:stream';
import { expect, it } from 'vitest';
import { asker } from '../../src/cli/ask.ts';

function questions(): {
  input: PassThrough;
  said: () => string;
  ask: ReturnType<typeof asker>['ask'];
  close: () => void;
} {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let said = '';
  output.on('data', (data) => {
    said += String(data);
  });
  return { input, said: () => said, ...asker(input, output) };
}

it('asks, and answers line by line', async () => {
  const { input, said, ask, close } = questions();
  const first = ask('code: ');
  input.write('K7\n');
  expect(await first).toBe('K7');
  expect(said()).toBe('code: ');
  close();
});

it('keeps lines that come before they are asked for', async () => {
  const { input, ask } = questions();
  input.end('K7\r\n1\n\nlast');
  expect([await ask('a'), await ask('b'), await ask('c'), await ask('d')]).toEqual(['K7', '1', '', 'last']);
});

it('has no answer once the input has ended', async () => {
  const { input, ask } = questions();
  const first = ask('code: ');
  input.end();
  expect(await first).toBeUndefined();
  expect(await ask('again: ')).toBeUndefined();
});

it('opens nothing before it is asked', () => {
  const { input, close } = questions();
  expect(input.listenerCount('data')).toBe(0);
  close();
});

/** What a command may touch of the process it runs in. Only bin.ts makes the real one. */
export interface Io {
  /** Standard output: data. */
  readonly out: (text: string) => void;
  /** Standard error: messages. */
  readonly err: (text: string) => void;
  /** Asks the one at the terminal, or whatever feeds standard input; undefined once there is no more. */
  readonly ask: (question: string) => Promise<string | undefined>;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether messages go to a terminal, where progress is shown and colours are used. */
  readonly terminal: boolean;
  /** Aborted when the one at the terminal wants a command that waits to end; any other is ended without being asked. */
  readonly stop: AbortSignal;
  /** Folder that file names are relative to. */
  readonly folder: string;
}

/** 0 done; 1 the input has errors; 2 wrong usage; 3 a fault of ours. */
export type ExitCode = 0 | 1 | 2 | 3;

/** A value as the JSON document that a command writes. */
export const documentOf = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

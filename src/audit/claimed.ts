/** A field of a claim held against what the second checker finds. */
export const claimed = (field: string, is: unknown, said: unknown): string[] =>
  is === said ? [] : [`${field}: the claim says '${said}', it is '${is}'`];

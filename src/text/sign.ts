/** How a single sign is named in a message. */

/** In quotes; by its number where it shows nothing, or would steer the terminal or the text around it. */
export const shownSign = (sign: string): string =>
  /[\p{L}\p{N}\p{P}\p{S}]/u.test(sign)
    ? `"${sign}"`
    : `U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;

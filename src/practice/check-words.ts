/**
 * The words that right answers spell, unless a club lists its own: of every length from three to nine letters, none with
 * I, J, Q, U or V, which handwriting confuses.
 */
export const CHECK_WORDS: readonly string[] = [
  ['BOX', 'HAT', 'MAP', 'PEN', 'FOX', 'TEN'],
  ['LAMP', 'FORK', 'MOTH', 'BOAT', 'DESK', 'FROG'],
  ['BAKER', 'CLOTH', 'FROST', 'PLANT', 'TRAMP', 'STONE'],
  ['BASKET', 'CAMERA', 'DRAGON', 'FOREST', 'MARKET', 'PLANET'],
  ['BALCONY', 'COMPASS', 'FEATHER', 'LANTERN', 'THEATRE', 'KEYHOLE'],
  ['ELEPHANT', 'NOTEBOOK', 'FOOTSTEP', 'CALENDAR', 'SHAMROCK', 'BOATYARD'],
  ['TELEPHONE', 'ORCHESTRA', 'HONEYCOMB', 'AFTERNOON', 'CROSSROAD', 'KEYSTROKE'],
].flat();

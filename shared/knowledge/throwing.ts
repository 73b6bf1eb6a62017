/**
 * In whom the published limits of shoulder rotation were found: people who throw or hit overhead (sources with the rules
 * that use them). Which sports count is a convention, by words of the sport as entered.
 */
export const THROWING_SPORTS: readonly string[] = [
  'handball',
  'volleyball',
  'tennis',
  'badminton',
  'baseball',
  'softball',
  'cricket',
  'water polo',
  'javelin',
];

/** Sports whose name holds one of those words and that are none. */
export const NOT_THROWING: readonly string[] = ['table tennis'];

/** Whoever is filmed at one of these throws or hits overhead, whatever the sport. */
export const THROWING_MOVEMENTS: readonly string[] = [
  'handball-jump-throw',
  'overhead-throw',
  'tennis-serve',
  'volleyball-spike',
];

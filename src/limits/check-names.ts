/** Every limit, and every check, by its name: in the order in which they are listed. @module */

/** Every name of a limit, and of the check that holds a value against it. */
// biome-ignore format: one list
export const checkNames = [
  'pd-power', 'pse-power', 'pd-voltage', 'collapse', 'device-voltage', 'device-resistance', 'pse-voltage', 'pair-unbalance',
  'pair-to-pair-unbalance', 'voltage-drop', 'device-overvoltage', 'fault-current', 'channel-length', 'permanent-link-length',
  'connections', 'channel-loop', 'permanent-link-loop', 'channel-resistance', 'cable-category', 'derated-length',
  'insertion-loss-length', 'cord-length', 'conductor-gauge', 'cable-temperature', 'material', 'conductor-temperature',
  'bundle-rise', 'ampacity',
] as const;

/** The name of a check, and of the limit it holds a value against. */
export type CheckName = (typeof checkNames)[number];

/** How a port and a device find each other and stay together: detection, classification, maintaining power, Autoclass. @module */

/**
 * Figures of detection, classification, the maintain power signature and Autoclass, as printed.
 *
 * `[least, most]` pairs. Read in datasheets of TI, Linear Technology and Microchip that restate IEEE Std 802.3-2022, clauses
 * 33 and 145; `classification.portCurrent` and `signatures` in a weak source. What is from memory says so. A class
 * *signature* is not a class: classes 5 to 8 show signature 4 in the first two events and another in those that follow.
 *
 * @example The resistance by which a port knows a device
 * POE_SIGNALLING.detection.deviceResistance; // => [23700, 26300]
 */
// biome-ignore format: one fact a line
export const POE_SIGNALLING = {
  detection: {
    /** Incremental resistance that a device shows. [Ω] */
    deviceResistance: [23700, 26300],
    /** The same in an older print, 25 kΩ within 5 %. [Ω] */
    deviceResistanceOlder: [23750, 26250],
    /** What a port takes for a device; from memory. [Ω] */
    portAccepts: [19000, 26500],
    /** Voltage at the port while it probes. [V] */
    portVoltage: [2.8, 10],
    /** The same at the device. [V] */
    deviceVoltage: [2.7, 10.1],
    /** Between two class events the device shows less than this. [Ω] */
    markResistanceBelow: 12000,
  },
  classification: {
    /** [V] */
    portVoltage: [15.5, 20.5],
    /** [V] */
    deviceVoltage: [14.5, 20.5],
    /** Current that a device draws, by class signature 0 to 4. [A] */
    deviceCurrent: [[0.001, 0.004], [0.009, 0.012], [0.017, 0.02], [0.026, 0.03], [0.036, 0.044]],
    /** Current by which a port of Type 1 or 2 tells the signatures, 0 to 4. [A] */
    portCurrent: [[0, 0.005], [0.008, 0.013], [0.016, 0.021], [0.025, 0.031], [0.035, 0.045]],
    /** Signature in the first two events and in those that follow, classes 5 to 8. */
    signatures: { 5: [4, 0], 6: [4, 1], 7: [4, 2], 8: [4, 3] },
    /** Events that grant classes 0 to 8 on a port of Type 3 or 4; from memory. A Type 2 port uses 2 for class 4. */
    events: [1, 1, 1, 1, 3, 4, 4, 5, 5],
  },
  /** Without this much current the port takes the device for gone. */
  maintainPower: {
    /** A port of Type 1 or 2: the device draws [A], for [s], in every [s]. */
    type1And2: { current: 0.01, on: 0.075, every: 0.325 },
    /** A port of Type 3 or 4: classes 1 to 4 and the times from memory; classes 5 to 8 as seen at the port. [A] [s] */
    type3And4: { current: 0.01, currentClasses5To8: 0.016, on: 0.007, offAtMost: 0.31 },
    /** What the port looks for: this long [s], in every window of so long [s]. */
    portType1And2: { on: 0.06, every: [0.3, 0.4] },
    portType3And4: { on: 0.006, every: [0.32, 0.4] },
    /** A port of Type 1 or 2 takes a device for gone up to the first current, may do either up to the second. [A] */
    portGoneBelow: 0.005,
    portEitherBelow: 0.01,
    /** Alternating-current signature, Types 1 and 2 only: less than this, in parallel with that. [Ω] [F] */
    acResistanceBelow: 26300,
    acCapacitance: 0.05e-6,
  },
  /** Peaks of a device. */
  peak: {
    /** Largest share of the time, a fraction. */
    duty: 0.05,
    /** Longest peak; from memory. [s] */
    time: 0.05,
  },
  /** A device shows its highest draw once, and the port sets that aside instead of the class. Optional for Types 3 and 4. */
  autoclass: {
    optional: true,
    /** When the device draws its most, after power-up. [s] */
    window: [1.35, 3.65],
    /** Over how long the port averages. [s] */
    average: [0.15, 0.3],
    /** Until LLDP grants more, the device keeps to what it drew. */
    holdsUntilLldp: true,
  },
  /** Current of one conductor that ISO/IEC TS 29125 covers, with four powered pairs and on one pair. [A] */
  conductorCurrent: { fourPairs: 0.5, onePair: 1 },
  /** Pins of the pairs of each alternative (Table 145-3). */
  alternatives: { A: ['1,2', '3,6'], B: ['4,5', '7,8'] },
} as const;

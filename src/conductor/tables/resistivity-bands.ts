/** Greatest mass resistivity of coated and hard-drawn copper by wire diameter, at 20 °C. @module */

/** For each metal, thickest first: from this diameter [in] up, at most this mass resistivity [Ω·g/m²]. */
// biome-ignore format: trailing zeros as printed
export const RESISTIVITY_BANDS = {
  // ASTM B33-04 Table 2
  'tinned-copper': [
    [0.290, 0.15695],
    [0.103, 0.15776],
    [0.0201, 0.15940],
    [0.0111, 0.16279],
    [0.0030, 0.16454],
  ],
  // ASTM B1, from memory
  'hard-drawn-copper': [
    [0.325, 0.15775],
    [0.0403, 0.15940],
  ],
} as const;

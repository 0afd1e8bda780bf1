/** Sources about heat in bundles, ampacity and remote powering. @module */
/** Citations by key. */
export const HEAT_SOURCES = {
  'bundle-model-open-air': {
    title: 'Heated cylinder fitted to a contribution to IEEE 802.3at on current de-rating against temperature',
    locus: '15 points of 100 cables in air, 0.5 to 1.6 A per pair: 6.05 K·m/W, 6.9 % rms',
    status: 'derived',
    note: 'Current in all four pairs is inferred and diameters are assumed. One printed point that falls where the current rises is left out.',
  },
  'bundle-model-conduit': {
    title: 'Heated cylinder fitted to NFPA 70-2017 (NEC), Table 725.144',
    locus: '24, 23 and 22 AWG: 8 K·m/W and 4.5 W/(m²·K), 8.2 % rms of current',
    status: 'derived',
    note: 'That the tests behind the table were made in closed conduit follows from another description of them.',
  },
  'heated-cylinder': {
    title: 'A heated cylinder in the steady state',
    locus:
      'from middle to surface Q ρ/(4 π), from surface to air Q/(π D h), the heat Q that of conductors as hot as the middle; N cables are 1.15 d √N across',
    status: 'derived',
    note: 'Hexagonal bundles of 7 to 91 are 1.13 to 1.15 times d √N across.',
  },
  'wound-drum': {
    title: 'Cable left wound on its drum',
    locus: 'sheds its heat from the outer layer alone: unwind it before it is powered',
    status: 'common practice',
  },
  'churchill-chu': {
    title: 'Churchill and Chu, free convection from a horizontal cylinder',
    locus: 'the correlation for all Rayleigh numbers up to 1e12',
    status: 'published',
    note: 'Read in the source of an open library of heat transfer. Emissivity 0.9 is an assumption.',
  },
  'still-air': {
    title: 'Air and radiation, textbook figures',
    locus:
      "Sutherland's viscosity (1.458e-6 and 110.4 K), a perfect gas of 287.05 J/(kg·K), conductivity 0.0242 W/(m·K) at 0 °C and as T^0.81, Prandtl number 0.707, 9.80665 m/s², 5.670374419e-8 W/(m²·K⁴)",
    status: 'memory',
    note: 'Good to about 2 % from -50 to 150 °C.',
  },
  'bundle-rise-15': {
    title: 'TIA TSB-184-A, Guidelines for supporting power delivery over balanced twisted-pair cabling',
    locus: 'recommended temperature rise of a bundle: at most 15 K',
    status: 'published',
    note: 'Read on a page of a cable maker that restates it.',
  },
  'bundle-rise-10': {
    title: 'TIA recommendation of the time of IEEE 802.3at, and its design basis',
    locus: 'recommended temperature rise of a bundle: at most 10 K',
    status: 'published',
    note: 'Read in two papers that restate it; that its number was TSB-184 is remembered.',
  },
  'nec-725.144': {
    title: 'NFPA 70-2017 (NEC), 725.144',
    locus: 'Table 725.144: ampacity of each conductor of 4-pair cable at 30 °C, all loaded; notes 1 and 2',
    status: 'published',
    note: 'Read in a public copy. Editions from 2020 on have other figures, none lower, which were not found.',
  },
  'nec-310.15-ambient': {
    title: 'NFPA 70-2017 (NEC), Table 310.15(B)(2)(a)',
    locus: 'ambient temperature correction factors, 30 °C',
    status: 'published',
    note: 'Read in a public copy.',
  },
  'remote-powering-categories': {
    title: 'EN 50174-2 and ISO/IEC 14763-2, remote powering categories',
    locus: 'mean conductor current: RP1 at most 212 mA, RP2 at most 500 mA',
    status: 'memory',
  },
  'apart-bundles': {
    title: 'Bundles kept apart',
    locus: 'at least one bundle diameter of free air between bundles, so that each sheds its heat as if alone',
    status: 'common practice',
  },
} as const;

/** The columns of the runs. @module */

import type { Installation } from '../../cable/heat/bundle-rise.ts';
import type { Load } from '../../circuit/operating-point.ts';
import type { PoeClassNumber } from '../../ethernet/class-table.ts';
import type { ResistanceLimit } from '../../plan/device-resistance.ts';
import type { PortPriority } from '../../plan/switch/switch-budget.ts';
import type { SupplyVoltage } from '../../plan/two-wire-input.ts';
import { type NamedCable, type ReadCord, readCables, readCords } from '../cells/read-cable.ts';
import { named, pieces, quantity, readLoad, readSupply, whole } from '../cells/read-values.ts';
import type { Column } from './column.ts';

/** What each column of the runs holds. */
export interface RunColumns {
  readonly run: Column<string>;
  readonly switch: Column<string>;
  readonly port: Column<number>;
  readonly device: Column<string>;
  readonly poeClass: Column<PoeClassNumber>;
  readonly pdPower: Column<number>;
  readonly minimumVoltage: Column<number>;
  readonly maximumResistance: Column<number>;
  readonly resistanceLoop: Column<ResistanceLimit['loop']>;
  readonly cable: Column<readonly NamedCable[]>;
  readonly length: Column<readonly number[]>;
  readonly cords: Column<readonly ReadCord[]>;
  readonly connections: Column<number>;
  readonly ambient: Column<readonly number[]>;
  readonly bundle: Column<number>;
  readonly installation: Column<Installation & string>;
  readonly measuredLoop: Column<readonly number[]>;
  readonly priority: Column<PortPriority>;
  readonly supply: Column<SupplyVoltage>;
  readonly load: Column<Load>;
}

const NOT_JUDGED = 'the run is not judged';

/** The columns in the order of the documents and of the blank template. */
export const RUN_COLUMNS: RunColumns = {
  run: {
    title: 'Run',
    also: ['Circuit', 'Cable number', 'Cable no.', 'Run number'],
    about: "the run's own name, as the drawings have it",
    allowed: 'a name of its own for each run',
    read: 'name',
    needed: 'always',
    instead: 'runs are named by their lines',
  },
  switch: {
    title: 'Switch',
    also: ['Switch name'],
    about: 'what feeds it; empty for a two-wire run',
    allowed: 'the name of a switch',
    read: 'name',
    needed: 'powered',
    instead: NOT_JUDGED,
  },
  port: {
    title: 'Port',
    also: ['Switch port', 'Port number'],
    about: 'its port on the switch',
    allowed: 'a whole number from 1',
    read: whole({ from: 1, to: 1_000_000 }, 'port'),
    needed: 'powered',
    instead: NOT_JUDGED,
  },
  device: {
    title: 'Device',
    also: [],
    about: 'what is at the far end',
    allowed: 'what is at the far end',
    read: 'name',
    instead: 'the device has no name',
  },
  poeClass: {
    title: 'PoE class',
    also: ['Class'],
    about: 'the class of the device, as IEEE 802.3 has it',
    allowed: 'a whole number from 0 to 8',
    read: whole<PoeClassNumber>({ from: 0, to: 8 }, 'class'),
    needed: 'powered',
    instead: NOT_JUDGED,
  },
  pdPower: {
    title: 'PD power',
    also: ['Device power'],
    about: 'what the device draws at its own input; not the power at the switch port',
    allowed: 'a power above 0, such as 12.95 W or 4200 mW',
    quantity: ['power'],
    read: quantity('power', { above: 0 }),
    instead: 'all that its class allows is used',
    noted: true,
    bearsOn: ['power'],
    poweredOnly: true,
  },
  minimumVoltage: {
    title: 'Minimum voltage',
    also: ['Min. voltage', 'Device minimum voltage'],
    about: "from the device's data sheet; without it, a powered device is held to the minimum of its class alone",
    allowed: 'a voltage above 0, such as 37 V',
    quantity: ['voltage'],
    read: quantity('voltage', { above: 0 }),
    instead: 'it is not checked',
    bearsOn: ['power'],
  },
  maximumResistance: {
    title: 'Maximum resistance',
    also: ['Max. resistance'],
    about: "line resistance from the device's data sheet",
    allowed: 'a resistance above 0, such as 13 ohm',
    quantity: ['resistance'],
    read: quantity('resistance', { above: 0 }),
    instead: 'it is not checked',
    bearsOn: ['power'],
  },
  resistanceLoop: {
    title: 'Resistance loop',
    also: ['Loop'],
    about: 'which of the [three loops](three-loops.md) the data sheet means',
    allowed: 'pair loop, one pairset, two pairsets or unstated',
    read: named({
      pairloop: 'pairLoop',
      onepairset: 'twoPair',
      '1pairset': 'twoPair',
      twopairsets: 'fourPair',
      '2pairsets': 'fourPair',
      unstated: 'unstated',
    }),
    instead: 'unstated is used',
  },
  cable: {
    title: 'Cable',
    also: ['Cable type'],
    about: 'the installed cable; [below](#two-wire-cable) for a two-wire run',
    allowed: 'a category such as cat5e, cat6 or cat6a; for a two-wire run 18 AWG, 1.5 mm2, cat5e 2 pairs or 39 ohm/km',
    read: readCables,
    needed: 'always',
    instead: NOT_JUDGED,
  },
  length: {
    title: 'Length',
    also: ['Installed length', 'Cable length'],
    about: 'installed cable, one way, without cords',
    allowed: 'a length from 0 to 100 km, such as 65 m or 212 ft',
    quantity: ['length'],
    read: pieces('length', { from: 0, to: 100_000 }),
    needed: 'always',
    instead: NOT_JUDGED,
  },
  cords: {
    title: 'Cords',
    also: ['Cord', 'Patch cords'],
    about: 'the cords at both ends together',
    allowed: 'each a length and a kind, such as 2 m cord-24 + 5 m 28 AWG; kinds are 24, 26 and 28 AWG',
    quantity: ['length'],
    read: readCords,
    instead: 'the run is judged without cords',
    noted: true,
    bearsOn: ['power', 'cabling'],
    poweredOnly: true,
  },
  connections: {
    title: 'Connections',
    also: ['Connection'],
    about: 'mated plugs and jacks; an in-line coupler is two',
    allowed: 'a whole number from 0 to 1000',
    read: whole({ from: 0, to: 1000 }),
    instead: '0 is used',
    noted: true,
    bearsOn: ['power', 'cabling'],
  },
  ambient: {
    title: 'Ambient',
    also: ['Temperature', 'Ambient temperature'],
    about: 'temperature of the installed cable; of the air, where a bundle is given',
    allowed: 'a temperature from -100 to 400 °C, such as 35 °C or 95 degF',
    quantity: ['temperature'],
    read: pieces('temperature', { from: -100, to: 400 }),
    instead: '20 °C is used',
    noted: true,
    bearsOn: ['power', 'cabling'],
  },
  bundle: {
    title: 'Bundle',
    also: ['Bundle size', 'Cables in bundle'],
    about: 'how many cables lie together, all loaded alike; [the rise](heat.md) is then added to the ambient',
    allowed: 'how many cables lie together, a whole number from 1 to 10000',
    read: whole({ from: 1, to: 10_000 }),
    instead: 'the heat of its bundle is not judged',
    bearsOn: ['power', 'cabling'],
    poweredOnly: true,
  },
  installation: {
    title: 'Installation',
    also: [],
    about: 'where the bundle lies',
    allowed: 'open air, closed conduit or drum',
    read: named({
      openair: 'open-air',
      closedconduit: 'closed-conduit',
      conduit: 'closed-conduit',
      drum: 'wound-drum',
      wounddrum: 'wound-drum',
    }),
    instead: 'open air is used',
    noted: true,
    bearsOn: ['power', 'cabling', 'heat'],
    poweredOnly: true,
  },
  measuredLoop: {
    title: 'Measured loop',
    also: ['Measured', 'Measured loops', 'Measured resistance'],
    about: 'a meter on shorted pairs, connections included, cords not',
    allowed:
      'what a meter read on shorted pairs of the installed cable, such as 14.1 ohm, or up to four in the order of the pins: 14.1 ohm + 14.2 ohm',
    quantity: ['resistance'],
    read: pieces('resistance', { above: 0, to: 100_000 }, 4),
    instead: 'the run is judged by its cable',
    bearsOn: ['power', 'cabling'],
    poweredOnly: true,
  },
  priority: {
    title: 'Priority',
    also: [],
    about: 'who keeps power when there is not enough, as in RFC 3621',
    allowed: 'critical, high or low',
    read: named({ critical: 'critical', high: 'high', low: 'low' }),
    instead: 'low is used',
    noted: true,
    poweredOnly: true,
  },
  supply: {
    title: 'Supply',
    also: ['Supply voltage'],
    about: 'two-wire: lowest and highest voltage of its supply',
    allowed: 'a voltage above 0, such as 24 V, or a range from low to high, such as 21 V to 27.6 V',
    quantity: ['voltage'],
    read: readSupply,
    needed: 'two-wire',
    instead: NOT_JUDGED,
  },
  load: {
    title: 'Load',
    also: [],
    about: 'two-wire: what the device draws',
    allowed: 'above 0 and with its unit: 6 W, 250 mA or 96 ohm',
    quantity: ['power', 'current', 'resistance'],
    read: readLoad,
    needed: 'two-wire',
    instead: NOT_JUDGED,
  },
};

/** The columns of the switches. @module */
import type { PseType } from '../../ethernet/class-table.ts';
import { PSE_VOLTAGE_MAX } from '../../ethernet/port-table.ts';
import { pieces, quantity, readPortType, whole } from '../cells/read-values.ts';
import type { Column } from './column.ts';

/** What each column of the switches holds. */
export interface SwitchColumns {
  readonly switch: Column<string>;
  readonly type: Column<PseType>;
  readonly ports: Column<number>;
  readonly budget: Column<number>;
  readonly supplies: Column<readonly number[]>;
  readonly systemLoad: Column<number>;
  readonly minimumVoltage: Column<number>;
}

const NOT_USED = 'the switch is not used';

/** The columns in the order of the documents and of the blank template. */
export const SWITCH_COLUMNS: SwitchColumns = {
  switch: {
    title: 'Switch',
    also: ['Switch name'],
    about: 'its name, as the runs have it',
    allowed: 'a name of its own for each switch',
    read: 'name',
    needed: 'always',
    instead: NOT_USED,
  },
  type: {
    title: 'Type',
    also: ['Switch type', 'Port type', 'PSE type'],
    about: 'the type of its ports, as IEEE 802.3 has it',
    allowed: '1 to 4, 802.3af, 802.3at, 802.3bt type 3 or 802.3bt type 4',
    read: readPortType,
    needed: 'always',
    instead: NOT_USED,
  },
  ports: {
    title: 'Ports',
    also: ['Number of ports'],
    about: 'how many it has',
    allowed: 'a whole number from 1 to 1000000',
    read: whole({ from: 1, to: 1_000_000 }),
    needed: 'always',
    instead: NOT_USED,
  },
  budget: {
    title: 'Budget',
    also: ['Power budget'],
    about: 'published power budget for the ports',
    allowed: 'a power from 0 to 1 MW, such as 370 W',
    quantity: ['power'],
    read: quantity('power', { from: 0, to: 1e6 }),
    instead: 'its budget is not judged by it',
  },
  supplies: {
    title: 'Supplies',
    also: ['Power supplies'],
    about: 'ratings of the supplies that work; capacity is then an estimate, and labelled so',
    allowed: 'powers above 0, at most 1 MW each, such as 150 W + 150 W',
    quantity: ['power'],
    read: pieces('power', { above: 0, to: 1e6 }),
    instead: 'its budget is not judged by them',
  },
  systemLoad: {
    title: 'System load',
    also: [],
    about: 'what the switch itself takes from its supplies',
    allowed: 'a power from 0 to 1 MW, such as 35 W',
    quantity: ['power'],
    read: quantity('power', { from: 0, to: 1e6 }),
    instead: 'nothing is subtracted from the supplies',
    noted: true,
  },
  minimumVoltage: {
    title: 'Minimum output voltage',
    also: ['Minimum voltage', 'Min. output voltage'],
    about: 'lowest voltage at its ports, from its data sheet',
    allowed: `a voltage above 0 and up to ${PSE_VOLTAGE_MAX} V, such as 50 V`,
    quantity: ['voltage'],
    read: quantity('voltage', { above: 0, to: PSE_VOLTAGE_MAX }),
    instead: 'the lowest of its type is used',
    noted: true,
  },
};

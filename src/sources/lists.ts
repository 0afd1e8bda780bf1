/** The lists of sources, by what they are about. @module */
export { CABLING_SOURCES } from './cabling-sources.ts';
export { CONDUCTOR_SOURCES } from './conductor-sources.ts';
export { ETHERNET_SOURCES } from './ethernet-sources.ts';
export { FIELD_SOURCES } from './field-sources.ts';
export { GENERAL_SOURCES } from './general-sources.ts';
export { HEAT_SOURCES } from './heat-sources.ts';

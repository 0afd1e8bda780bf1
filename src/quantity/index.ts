/** Numbers that know their unit: flavours, conversions, reading text, and the one error. Imports nothing. @module */
export {
  btuPerHour,
  circularMils,
  fahrenheit,
  fahrenheitDifference,
  feet,
  inches,
  kilohms,
  milliamperes,
  milliwatts,
  mils,
  ohmsPerKilofoot,
  ohmsPerKilometre,
} from './convert.ts';
export { InputError, type InputErrorCode, type InputErrorJson, isInputError } from './input-error.ts';
export { type ParsedQuantity, type ParseQuantityOptions, parseQuantity, type QuantityName, type QuantityUnit } from './parse-quantity.ts';
export type {
  Amperes,
  Celsius,
  Flavour,
  Kelvins,
  Metres,
  Millimetres,
  Ohms,
  OhmsPerMetre,
  SquareMillimetres,
  Volts,
  Watts,
} from './units.ts';

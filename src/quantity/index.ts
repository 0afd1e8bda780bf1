/** Numbers that know their unit: flavours, conversions, reading text, and the one error. Imports nothing. @module */
export {
  btuPerHour,
  kilohms,
  milliamperes,
  milliohms,
  milliwatts,
  ohmsPerHundredMetres,
  ohmsPerKilofoot,
  ohmsPerKilometre,
  toBtuPerHour,
  toKilohms,
  toMilliamperes,
  toMilliohms,
  toMilliwatts,
  toOhmsPerHundredMetres,
  toOhmsPerKilofoot,
  toOhmsPerKilometre,
} from './convert-electrical.ts';
export { circularMils, feet, inches, kilofeet, mils, toCircularMils, toFeet, toInches, toKilofeet, toMils } from './convert-length.ts';
export { fahrenheit, fahrenheitDifference, toFahrenheit, toFahrenheitDifference } from './convert-temperature.ts';
export { type FormatOptions, formatQuantity } from './format-quantity.ts';
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

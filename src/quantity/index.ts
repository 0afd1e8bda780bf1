/** Numbers that know their unit: flavours, conversions, reading text, and the one error. Imports nothing. @module */
export {
  btuPerHour,
  circularMils,
  fahrenheit,
  fahrenheitDifference,
  feet,
  inches,
  kilofeet,
  kilohms,
  milliamperes,
  milliohms,
  milliwatts,
  mils,
  ohmsPerHundredMetres,
  ohmsPerKilofoot,
  ohmsPerKilometre,
} from './convert.ts';
export {
  toBtuPerHour,
  toCircularMils,
  toFahrenheit,
  toFahrenheitDifference,
  toFeet,
  toInches,
  toKilofeet,
  toKilohms,
  toMilliamperes,
  toMilliohms,
  toMilliwatts,
  toMils,
  toOhmsPerHundredMetres,
  toOhmsPerKilofoot,
  toOhmsPerKilometre,
} from './convert-back.ts';
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

/**
 * Flavoured numbers: a plain `number` that remembers its unit at compile time.
 *
 * A literal is accepted anywhere; handing `Ohms` to a parameter of `Metres` does not compile.
 * Arithmetic returns plain `number`, so the flavour guards hand-overs, not algebra.
 * @module
 */

declare const unit: unique symbol;

/** A number in the unit named by `U`; assignable from any plain number, not from another flavour. */
export type Flavour<U extends string> = number & { readonly [unit]?: U | undefined };

/** Length in metres. [m] */
export type Metres = Flavour<'m'>;
/** Length in millimetres. [mm] */
export type Millimetres = Flavour<'mm'>;
/** Area in square millimetres. [mm²] */
export type SquareMillimetres = Flavour<'mm²'>;
/** Resistance in ohms. [Ω] */
export type Ohms = Flavour<'Ω'>;
/** Resistance of one conductor per metre of its length. [Ω/m] */
export type OhmsPerMetre = Flavour<'Ω/m'>;
/** Voltage in volts. [V] */
export type Volts = Flavour<'V'>;
/** Current in amperes. [A] */
export type Amperes = Flavour<'A'>;
/** Power in watts. [W] */
export type Watts = Flavour<'W'>;
/** Temperature in degrees Celsius. [°C] */
export type Celsius = Flavour<'°C'>;
/** Temperature difference in kelvins. [K] */
export type Kelvins = Flavour<'K'>;

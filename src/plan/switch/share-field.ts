/** A fraction of something that is never nothing: an efficiency, a power factor. @module */
import type { OptionalField } from '../../quantity/fields.ts';

/** @internal */
export const SHARE_FIELD: OptionalField<number> = { between: [1e-12, 1], is: 'a fraction', optional: true };

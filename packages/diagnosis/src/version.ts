/** Version of this package, as results state it in their provenance. */
export const version = '0.1.0';

// Domains that several functions share. Upper ends are far beyond any fastener; they and the small lower ends keep every
// result finite.

/** Coefficient of friction. @internal */
export const frictionSpec = { type: 'number', unit: '1', above: 0, max: 1 } as const;

/** Share of the yield strength. @internal */
export const utilisationSpec = { type: 'number', unit: '1', min: 0.01, max: 1, optional: true } as const;

/** Force in N. @internal */
export const forceSpec = { type: 'number', unit: 'N', min: 0, max: 1e9 } as const;

/** Torque in Nm. @internal */
export const torqueSpec = { type: 'number', unit: 'Nm', min: 0, max: 1e9 } as const;

/** Modulus of elasticity in GPa. @internal */
export const modulusSpec = { type: 'number', unit: 'GPa', min: 0.001, max: 1500 } as const;

/** Strength or pressure in MPa. @internal */
export const strengthRange = { type: 'number', unit: 'MPa', min: 0.1, max: 10_000 } as const;

/** What scripts/package-shape.mjs says about one package. */
export interface PackageSpec {
  name: string;
  description: string;
  /** Entry name (`.`, `./schema`) to source file, relative to the package. */
  entries: Record<string, string>;
  data?: boolean;
  /** Names that the API pages may leave out although a public type mentions them. */
  hidden?: string[];
  bin?: Record<string, string>;
  dependencies?: Record<string, string>;
}

export const packages: Record<string, PackageSpec>;
export function manifestOf(
  folder: string,
  own: { version: string; dependencies?: Record<string, string> },
): Record<string, unknown>;
export function versionSourceOf(version: string): string;
export function tsupConfigOf(folder: string): string;
export function typedocOf(folder: string): string;
export function tsconfigOf(folder: string): string;

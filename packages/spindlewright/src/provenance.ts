/** What a result rests on: enough to make it again. */
export interface Provenance {
  /** Version of each package that took part, by name. */
  versions: Readonly<Record<string, string>>;
  /** Edition of the standards data. */
  dataEdition: string;
  /** Ids in the register of sources, sorted, without repeats. */
  sources: readonly string[];
}

/** Edition of the data shipped with this package; it stands in every result that used data. */
export const dataEdition = '2026.11';

/** Edition of the data that this version ships; every result that used data repeats it. */
export const dataEdition = '2026.11';

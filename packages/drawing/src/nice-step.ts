/** Smallest step of 1, 2 or 5 times a power of ten that divides a length into at most so many parts. @internal */
export function niceStep(length: number, parts: number): number {
  const power = 10 ** Math.floor(Math.log10(length / parts));
  return [1, 2, 5].map((digit) => digit * power).find((step) => length / step <= parts) ?? 10 * power;
}

/** One thing that is wrong with an input. */
export interface DomainIssue {
  /** Where: the key path inside the input, such as `spindle.faceAngleDeg`; empty for the input itself. */
  path: string;
  /** What came, rendered as text. */
  received: string;
  /** What is allowed there. */
  allowed: string;
  /** The known name that was probably meant, when a name was not recognised. */
  nearest?: string;
}

// A registered symbol, not `instanceof`: the ESM build, the CJS build and second copies of the package each have a
// class of their own, and an error thrown by one has to be recognised by the others.
const BRAND = /* @__PURE__ */ Symbol.for('@spindlewright/DomainError');

// A long list with one fault a row would otherwise make a message that no log can take; `issues` holds them all.
const QUOTED_ISSUES = 10;

/**
 * Thrown for misuse: wrong type, non-finite, wrong sign, unknown key or id, crossed limits, outside the stated domain.
 * Carries every issue found; the first is repeated as `path`, `received`, `allowed` and `nearest`. The message quotes the
 * first ten. Copied by structuredClone (a message to a worker) it turns into a plain Error: send `issues` instead.
 */
export class DomainError extends Error {
  /** Always `DomainError`. */
  override readonly name = 'DomainError';
  /** Every issue found, in the order of the input's fields; at least one. */
  readonly issues: readonly DomainIssue[];
  /** Path of the first issue. */
  readonly path: string;
  /** What came at the first issue. */
  readonly received: string;
  /** What is allowed at the first issue. */
  readonly allowed: string;
  /** The name probably meant at the first issue, if one is near. */
  readonly nearest: string | undefined;

  /**
   * @param where - Name of the function that refuses.
   * @param issues - What is wrong; at least one.
   */
  constructor(where: string, issues: readonly [DomainIssue, ...DomainIssue[]]) {
    const more = issues.length > QUOTED_ISSUES ? `; and ${issues.length - QUOTED_ISSUES} more` : '';
    super(`${where}: ${issues.slice(0, QUOTED_ISSUES).map(describeIssue).join('; ')}${more}`);
    const [first] = issues;
    this.issues = [...issues];
    this.path = first.path;
    this.received = first.received;
    this.allowed = first.allowed;
    this.nearest = first.nearest;
    Object.defineProperty(this, BRAND, { value: true });
  }
}

const describeIssue = (issue: DomainIssue): string =>
  `${issue.path || 'input'}: received ${issue.received}; allowed: ${issue.allowed}${
    issue.nearest === undefined ? '' : ` (did you mean "${issue.nearest}"?)`
  }`;

/**
 * Tells whether a caught value is a {@link DomainError}, also one thrown by another copy or module format of the package.
 *
 * @remarks
 * Formula: none; looks for a registered symbol on the value.
 *
 * Validity: any value; `false` for one that refuses to be looked at, such as a revoked proxy.
 *
 * Accuracy: exact.
 *
 * @param value - Anything, usually what a `catch` caught.
 * @returns `true` when the value carries the brand of a DomainError.
 * @throws Nothing.
 * @example
 * ```ts
 * import { convert, isDomainError } from '@spindlewright/quantity';
 * let path = '';
 * try {
 *   convert(Number.NaN, 'in', 'mm');
 * } catch (error) {
 *   if (isDomainError(error)) path = error.path;
 * }
 * path; // => 'value'
 * ```
 * @see ECMA-262, 15th edition, clause 20.4.2.2 (`Symbol.for`).
 */
export function isDomainError(value: unknown): value is DomainError {
  try {
    return typeof value === 'object' && value !== null && (value as Record<symbol, unknown>)[BRAND] === true;
  } catch {
    return false;
  }
}

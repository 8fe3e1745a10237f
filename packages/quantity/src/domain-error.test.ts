import { describe, expect, it } from 'vitest';
import { DomainError, type DomainIssue, isDomainError } from './domain-error.ts';

const issue = (path: string, nearest?: string): DomainIssue => ({
  path,
  received: '1',
  allowed: 'less',
  ...(nearest === undefined ? {} : { nearest }),
});

describe('DomainError', () => {
  it('repeats the first issue and keeps all', () => {
    const error = new DomainError('predictSeat', [issue('arm', 'rim'), issue('spindle.faceAngleDeg')]);
    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe('DomainError');
    expect(error).toMatchObject({ path: 'arm', received: '1', allowed: 'less', nearest: 'rim' });
    expect(error.issues).toEqual([issue('arm', 'rim'), issue('spindle.faceAngleDeg')]);
    expect(error.message).toBe(
      'predictSeat: arm: received 1; allowed: less (did you mean "rim"?); spindle.faceAngleDeg: received 1; allowed: less',
    );
  });

  it('names the input itself for an empty path, and no nearest name where there is none', () => {
    const error = new DomainError('limits', [issue('')]);
    expect(error.message).toBe('limits: input: received 1; allowed: less');
    expect(error.path).toBe('');
    expect(error.nearest).toBeUndefined();
  });

  it('keeps its issues when the list of the caller changes', () => {
    const issues: [DomainIssue, ...DomainIssue[]] = [issue('a')];
    const error = new DomainError('x', issues);
    issues.push(issue('b'));
    expect(error.issues).toEqual([issue('a')]);
  });

  it.each([
    [10, /issue9: received 1; allowed: less$/],
    [11, /issue9: received 1; allowed: less; and 1 more$/],
    [50_000, /; and 49990 more$/],
  ])('quotes at most ten of %i issues', (count, ending) => {
    const [first = issue('none'), ...rest] = Array.from({ length: count }, (_, index) => issue(`issue${index}`));
    const error = new DomainError('column', [first, ...rest]);
    expect(error.message).toMatch(ending);
    expect(error.message.length).toBeLessThan(1000);
    expect(error.issues).toHaveLength(count);
  });

  it('gives its issues to JSON and to structuredClone', () => {
    const { issues } = new DomainError('x', [issue('a', 'b')]);
    expect(JSON.parse(JSON.stringify(issues))).toEqual(issues);
    expect(structuredClone(issues)).toEqual(issues);
  });
});

describe('isDomainError', () => {
  it('knows the errors of this copy', () => {
    expect(isDomainError(new DomainError('x', [issue('a')]))).toBe(true);
  });

  it('knows the errors of another copy, which instanceof does not', async () => {
    // The query makes a second module with a class of its own, as a CJS build or a nested install would be.
    const address = './domain-error.ts?copy';
    const copy: typeof import('./domain-error.ts') = await import(/* @vite-ignore */ address);
    expect(copy.DomainError).not.toBe(DomainError);
    const foreign: unknown = new copy.DomainError('x', [issue('a', 'b')]);
    expect(foreign).not.toBeInstanceOf(DomainError);
    expect(isDomainError(foreign)).toBe(true);
    expect(copy.isDomainError(new DomainError('x', [issue('a')]))).toBe(true);
    expect(isDomainError(foreign) && foreign.nearest).toBe('b');
  });

  it.each<[string, unknown]>([
    ['nothing', undefined],
    ['null', null],
    ['a text', 'DomainError'],
    ['a function', DomainError],
    ['another error', new TypeError('x')],
    ['a lookalike', { name: 'DomainError', issues: [issue('a')], path: 'a' }],
    ['another brand', { [Symbol('@spindlewright/DomainError')]: true }],
  ])('refuses %s', (_name, value) => {
    expect(isDomainError(value)).toBe(false);
  });

  it('does not throw for a revoked proxy', () => {
    const revocable = Proxy.revocable({}, {});
    revocable.revoke();
    expect(isDomainError(revocable.proxy)).toBe(false);
  });

  it('says no to the clone of an error, which carries a message only', () => {
    const error = new DomainError('x', [issue('a')]);
    const clone: unknown = structuredClone(error);
    expect(isDomainError(clone)).toBe(false);
    expect((clone as Error).message).toBe(error.message);
  });
});

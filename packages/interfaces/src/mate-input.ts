import { DomainError } from '@spindlewright/quantity';
import type { Side } from './mate-neighbours.ts';
import { type PartRecord, requirePart } from './require-part.ts';
import { requireRecord } from './require-record.ts';

/** A pair to check, by sex. @internal */
export interface MatePair {
  male: PartRecord;
  female: PartRecord;
  /** The two threads to compare, where one was named. */
  sides: { male: Side; female: Side } | undefined;
}

const WHERE = 'checkMate';
const SIDES = ['maleSide', 'femaleSide'] as const;

/** Reads the input of `checkMate`, whatever came, and refuses what is no pair. @internal */
export function mateInputOf(input: unknown): MatePair {
  const given = typeof input === 'object' && input !== null ? (input as Record<string, unknown>) : {};
  const keys = Object.keys(given).filter((key) => given[key] !== undefined);
  const pair = keys.filter((key) => !(SIDES as readonly string[]).includes(key)).sort();
  if (pair.join() === 'arm,spindle' && pair.length === keys.length) {
    const { spindle, arm } = given;
    requireRecord(WHERE, 'spindle', spindle);
    requireRecord(WHERE, 'arm', arm);
    return { male: spindle, female: arm, sides: undefined };
  }
  if (pair.join() !== 'female,male') throw refusal('', keys.length === 0 ? 'no pair' : `the keys ${keys.sort()}`, PAIR);
  const { male, female } = given;
  requirePart(WHERE, 'male', male);
  requirePart(WHERE, 'female', female);
  return { male, female, sides: sidesOf(given, male, female) };
}

const PAIR = '{ spindle, arm } or { male, female, maleSide?, femaleSide? }';

const refusal = (path: string, received: string, allowed: string): DomainError =>
  new DomainError(WHERE, [{ path, received, allowed }]);

function sidesOf(given: Record<string, unknown>, male: PartRecord, female: PartRecord): MatePair['sides'] {
  for (const key of SIDES) {
    const side = given[key];
    if (side === undefined) continue;
    if (side !== 'left' && side !== 'right') throw refusal(key, JSON.stringify(side) ?? typeof side, 'left, right');
    const hasSides = 'threads' in male && 'threads' in female;
    if (!hasSides) throw refusal(key, JSON.stringify(side), 'nothing: these parts have no threads by side');
  }
  const [ofMale, ofFemale] = [given.maleSide, given.femaleSide] as [Side | undefined, Side | undefined];
  const side = ofMale ?? ofFemale;
  return side === undefined ? undefined : { male: ofMale ?? side, female: ofFemale ?? side };
}

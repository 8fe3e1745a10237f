import {
  checkMate,
  getInterface,
  getNeighbour,
  listInterfaces,
  listNeighbours,
  type MateInput,
  type MateResult,
} from '@spindlewright/interfaces';
import type { Limits } from '@spindlewright/quantity';
import { MATE_STATES } from '../mate-decision.ts';
import type { Circle, MateEntry, MateLookup, MateQuestion } from './decide-facts.ts';
import type { PartKind } from './part.ts';

/** The records by id, once; each question is asked once too. @internal */
export function mateLookup(wanted: PartKind): MateLookup {
  const joints = new Set(listInterfaces().map(({ id }) => id));
  const neighbours = new Set(listNeighbours().map(({ id }) => id));
  const asked = new Map<string, MateEntry | undefined>();
  const ask = (question: MateQuestion, part: string, need: string): MateEntry | undefined => {
    const ofJoint = question === 'joint';
    if (!(ofJoint ? joints : neighbours).has(part)) return undefined;
    const needsJoint = ofJoint || question === 'fixing' || question === 'puller';
    if (!(needsJoint ? joints : neighbours).has(need)) return undefined;
    return entryOf(checkMate(pairOf(question, part, need, wanted)), question);
  };
  return (question, part, need) => {
    const key = `${question} ${part} ${need}`;
    if (!asked.has(key)) asked.set(key, ask(question, part, need));
    return asked.get(key);
  };
}

function pairOf(question: MateQuestion, part: string, need: string, wanted: PartKind): MateInput {
  if (question === 'joint') {
    const [ofPart, ofNeed] = [getInterface(part), getInterface(need)];
    return wanted === 'spindle' ? { spindle: ofPart, arm: ofNeed } : { spindle: ofNeed, arm: ofPart };
  }
  const record = getNeighbour(part);
  if (question === 'fixing' || question === 'puller') {
    const joint = getInterface(need);
    // A nut takes the stud of the spindle in; every other fixing goes into the joint.
    return record.kind === 'fixing' && record.form === 'spindle-nut'
      ? { male: joint, female: record }
      : { male: record, female: joint };
  }
  const female = getNeighbour(need);
  const sided = record.kind === 'pedal-thread' && female.kind === 'pedal-thread';
  if (question === 'left-thread' && sided) return { male: record, female, maleSide: 'left' };
  if (question === 'right-thread' && sided) return { male: record, female, maleSide: 'right' };
  return { male: record, female };
}

/** What a finding of the records leaves to be found out. */
const DECIDES: Readonly<Record<string, string>> = {
  'maker-specific': 'partMakerStatement',
  'pitch-not-known': 'thread.pitchMm',
  'fixing-thread-not-known': 'fixing.spindleThread',
  'interface-does-not-tell': 'thread',
};

function entryOf(mate: MateResult, question: MateQuestion): MateEntry {
  const state = MATE_STATES[mate.verdict];
  const [first, ...rest] = mate.findings;
  // Beside the reason only what asks for care; the record keeps the rest.
  const findings = first === undefined ? [] : [first, ...rest.filter(({ severity }) => severity !== 'note')];
  const shiftMm = enclosing(mate.shiftMm.map((one) => one.shiftMm));
  const missing = state === 'cannot-tell' ? missingOf(mate, question) : undefined;
  return {
    state,
    ...(missing === undefined ? {} : { missingFact: missing }),
    codes: findings.map(({ code }) => code),
    findings,
    ...(shiftMm === undefined ? {} : { shiftMm }),
  };
}

function missingOf(mate: MateResult, question: MateQuestion): string {
  const named = mate.findings.map(({ code }) => (Object.hasOwn(DECIDES, code) ? DECIDES[code] : undefined));
  const found = named.find((fact) => fact !== undefined);
  if (found !== undefined) return found;
  if (question === 'fixing') return 'fixing.spindleThread';
  if (question === 'puller') return 'arm.pullerThread';
  if (question !== 'joint') return 'partMakerStatement';
  const away = mate.shiftMm.some(({ direction }) => direction === 'away-from-frame');
  return away ? 'trialFit.shoulderGapMm' : 'trialFit.endGapMm';
}

/** Bounds that hold every published set; the nominal value is the middle of the sets' own. */
function enclosing(all: readonly Limits[]): Limits | undefined {
  if (all.length === 0) return undefined;
  const nominals = all.map(({ nominal }) => nominal);
  return {
    lower: Math.min(...all.map(({ lower }) => lower)),
    nominal: (Math.min(...nominals) + Math.max(...nominals)) / 2 + 0,
    upper: Math.max(...all.map(({ upper }) => upper)),
  };
}

/** A bolt circle in numbers; undefined for any other id. @internal */
export function circleOf(id: string | undefined): Circle | undefined {
  const record = listNeighbours({ kind: 'bolt-circle' }).find((one) => one.id === id);
  if (record?.kind !== 'bolt-circle') return undefined;
  return {
    boltCircleMm: record.boltCircleDiameterMm.value,
    boltCount: record.armCount.value,
    smallestRing: record.smallestRing.value,
  };
}

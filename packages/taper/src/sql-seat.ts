import type { ArmRow } from './arm-row.ts';
import type { Joint, ResolvedPressing } from './joint.ts';
import type { SeatVerdict } from './seat.ts';
import type { ReadSources, TermTriple } from './sql-arms.ts';
import { boundOf, CORNERS, type Corner, opposite, sqlPress } from './sql-press.ts';
import {
  all,
  any,
  atLeast,
  atMost,
  greatest,
  least,
  less,
  minus,
  more,
  type Names,
  not,
  over,
  plus,
  type Term,
  times,
} from './sql-terms.ts';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

/**
 * Writes the verdicts of an arm over named pieces: the same steps as `createRowJudge`, in the same order.
 * @internal
 */
export function verdictSteps(input: {
  spindle: Joint['spindle'];
  pressing: ResolvedPressing | undefined;
  row: Record<keyof ArmRow, TermTriple>;
  names: Names;
  state: ReadSources['state'];
}): { verdict: string; worstLower: string; worstUpper: string } {
  const { spindle, pressing, row, names, state } = input;
  const tan = Math.tan((spindle.faceAngleDeg.nominal * Math.PI) / 180);
  const named = (name: string, corner: Corner, term: Term): Term => names.define(`${name}_${CORNERS[corner]}`, term);
  const triple = (name: string, make: (corner: Corner) => Term): TermTriple => [
    named(name, 0, make(0)),
    named(name, 1, make(1)),
    named(name, 2, make(2)),
  ];

  const mouth = triple('mouth', (corner) =>
    over(over(minus(row.acrossFlatsAtMouthMm[corner], boundOf(spindle.acrossFlatsAtEndMm, opposite(corner))), 2), tan),
  );
  const endGap = triple('end_gap', (corner) =>
    minus(minus(row.boltSeatFromMouthMm[corner], row.seatIntrusionMm[opposite(corner)]), mouth[opposite(corner)]),
  );
  const shoulderGap = triple('shoulder_gap', (corner) => {
    const runOut = plus(boundOf(spindle.flatLengthMm, corner), row.mouthChamferMm[corner]);
    const wall = boundOf(spindle.shoulderFromEndMm, corner);
    return minus(Number.isFinite(wall) ? least(wall, runOut) : runOut, mouth[opposite(corner)]);
  });
  const nearest = triple('nearest', (corner) => least(endGap[corner], shoulderGap[corner]));
  const middle = triple('middle', (corner) =>
    plus(
      boundOf(spindle.acrossFlatsAtEndMm, corner),
      times(
        plus(
          greatest(boundOf(spindle.endChamferMm, corner), minus(mouth[corner], row.boreLengthMm[opposite(corner)])),
          least(minus(mouth[corner], row.mouthChamferMm[opposite(corner)]), boundOf(spindle.flatLengthMm, corner)),
        ),
        tan,
      ),
    ),
  );

  const travelPasses = sqlPress({ spindle, pressing, row, names, places: { mouth, nearest, middle } });

  const verdictAt = (corner: Corner): { text: string; seats: string } => {
    const other = opposite(corner);
    const label = CORNERS[corner];
    const end = endGap[other];
    const wall = shoulderGap[other];
    const starts = more(
      minus(minus(mouth[corner], row.mouthChamferMm[other]), boundOf(spindle.endChamferMm, other)),
      0,
    );
    const stops = travelPasses(corner, `stopped_${label}`, nearest[other], atLeast);
    const usable = least(
      minus(boundOf(spindle.flatLengthMm, other), boundOf(spindle.endChamferMm, corner)),
      minus(row.boreLengthMm[other], row.mouthChamferMm[corner]),
    );
    const wanted = names.define(`wanted_${label}`, times(USABLE_FLAT_SHARE, usable));
    const reaches = minus(
      plus(plus(wanted, row.mouthChamferMm[other]), boundOf(spindle.endChamferMm, other)),
      mouth[corner],
    );
    const leaves = minus(
      minus(plus(boundOf(spindle.flatLengthMm, corner), row.boreLengthMm[corner]), mouth[other]),
      wanted,
    );
    const little = any(
      less(minus(row.boreLengthMm[corner], row.mouthChamferMm[other]), wanted),
      less(minus(boundOf(spindle.flatLengthMm, corner), boundOf(spindle.endChamferMm, other)), wanted),
      not(travelPasses(corner, `reach_${label}`, reaches, atLeast)),
      travelPasses(other, `leave_${label}`, leaves, more),
    );
    const near = travelPasses(corner, `near_${label}`, minus(nearest[other], CLEAR_GAP_MM), more);
    const verdict = (name: SeatVerdict): string => `'${name}'`;
    const ladder = [
      `WHEN ${not(starts).text} THEN ${verdict('does-not-start')}`,
      `WHEN ${stops.text} AND ${atMost(end, wall).text} THEN ${verdict('bottoms-on-end')}`,
      `WHEN ${stops.text} THEN ${verdict('hits-shoulder')}`,
      `WHEN ${little.text} THEN ${verdict('too-little-engagement')}`,
      `WHEN ${near.text} THEN ${verdict('marginal')}`,
    ];
    return {
      text: `CASE ${unjudged(state)} ${ladder.join('\n    ')} ELSE 'seats' END`,
      seats: all(starts, not(stops), not(little), not(near)).text,
    };
  };
  const lower = verdictAt(0);
  const upper = verdictAt(2);
  const nominal = verdictAt(1);
  return {
    verdict: nominal.text.replace(
      /ELSE 'seats' END$/,
      `WHEN NOT (${lower.seats} AND ${upper.seats}) THEN 'marginal' ELSE 'seats' END`,
    ),
    worstLower: lower.text,
    worstUpper: upper.text,
  };
}

const unjudged = ({ unknown, refused }: ReadSources['state']): string =>
  `WHEN ${unknown} THEN 'cannot-tell'\n    WHEN ${refused} THEN 'refused'\n   `;

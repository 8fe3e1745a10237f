import { nearestName } from '@spindlewright/quantity';
import torqueJson from '../data/trade-torques.json' with { type: 'json' };
import type { TradeTorqueRow } from './data.ts';
import { refuse } from './refuse.ts';

/**
 * Lists the tightening torques that the trade states for a kind of joint or an interface, each source by itself.
 *
 * @remarks
 * Formula: none; rows whose `joint` or one of whose `interfaces` is the id.
 *
 * Validity: a trade torque is no rule: the part maker's own value comes first. Rows of different sources contradict each
 * other and are not merged; misprints are kept with a note.
 *
 * Accuracy: Nm by exact factors from the unit that was printed first.
 *
 * @param id - Id of a joint (`square-taper-bolt`, `pinch-bolts`, `pedal`, ...) or of an interface
 * (`square-taper-jis`, ...); all rows when absent.
 * @returns Rows with torques in their printed unit and in Nm.
 * @throws {@link DomainError} for an id that no row has, with the nearest.
 * @example
 * ```ts
 * import { listTradeTorques } from '@spindlewright/torque/data';
 * listTradeTorques('pinch-bolts').map((row) => [row.minNm, row.maxNm]); // => [[12, 15], [12, 14]]
 * ```
 * @see Each row's own `sources`.
 */
export function listTradeTorques(id?: string): TradeTorqueRow[] {
  const rows = torqueJson.rows as readonly TradeTorqueRow[];
  if (id === undefined) return [...rows];
  const found = rows.filter((row) => row.joint === id || row.interfaces.includes(id));
  if (found.length > 0) return found;
  const known = [...new Set(rows.flatMap((row) => [row.joint, ...row.interfaces]))];
  const nearest = typeof id === 'string' ? nearestName({ name: id, known }) : undefined;
  throw refuse('listTradeTorques', 'id', JSON.stringify(id), known.join(', '), nearest);
}

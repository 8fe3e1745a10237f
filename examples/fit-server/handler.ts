// A fetch handler for a shop's server: "does part X fit?", as JSON that may be cached. It runs wherever Request and Response
// are at hand. The shop's parts are invented.
import { createFitChecker, type FitAnswer, type FitData, type Need, type PartKind } from 'spindlewright';

const KINDS: readonly string[] = ['arm', 'spindle', 'bolt', 'chainring', 'pedals', 'puller'] satisfies PartKind[];
const MOST_PARTS = 200;
const LONGEST_ID = 100;

/** What the shop adds to an answer of the checker. */
export interface ShopAnswer extends FitAnswer {
  /** The part that was asked for. */
  part: string;
}

/**
 * Makes the handler: GET /fit?part=ID&part=ID&for=arm&interface=ID&side=drive. `revision` names the state of the shop's
 * parts, as `dataEdition` names that of the standards: both together say whether an old answer still stands.
 */
export function fitHandler(data: FitData, revision: string): (request: Request) => Response {
  const checker = createFitChecker(data);
  const tag = `"${checker.dataEdition}.${revision.replace(/[^\w.-]/g, '')}"`;
  return (request) => {
    const { pathname, searchParams } = new URL(request.url);
    if (pathname !== '/fit') return told(404, { error: 'not found', allowed: '/fit' });
    if (request.method !== 'GET') return told(405, { error: 'method', allowed: 'GET' }, { allow: 'GET' });
    const need = needOf(searchParams);
    const parts = searchParams.getAll('part');
    if (need === undefined) return told(400, { error: 'for', allowed: KINDS.join(', ') });
    if (parts.length === 0 || parts.length > MOST_PARTS || parts.some((part) => part.length > LONGEST_ID)) {
      return told(400, { error: 'part', allowed: `1 to ${MOST_PARTS} part ids` });
    }
    const cached = { etag: tag, 'cache-control': 'public, max-age=3600' };
    if (request.headers.get('if-none-match') === tag) return new Response(null, { status: 304, headers: cached });
    const answers = parts.map((part): ShopAnswer => ({ part, ...checker.check({ part, need }) }));
    return told(200, { answers }, cached);
  };
}

function needOf(query: URLSearchParams): Need | undefined {
  const wanted = query.get('for') ?? '';
  if (!KINDS.includes(wanted)) return undefined;
  const need: Need = { format: 'spindlewright-need-1', for: wanted as PartKind };
  for (const field of ['interface', 'thread', 'boltCircle', 'shell'] as const) {
    const value = query.get(field);
    if (value !== null) need[field] = value;
  }
  const side = query.get('side');
  if (side === 'drive' || side === 'non-drive') need.side = side;
  const lengthMm = Number(query.get('armLengthMm') ?? Number.NaN);
  if (lengthMm > 0 && lengthMm < 1000) need.armLengthMm = lengthMm;
  return need;
}

const told = (status: number, body: object, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify(body), {
    status,
    headers: { 'content-type': 'application/json; charset=utf-8', 'x-content-type-options': 'nosniff', ...headers },
  });

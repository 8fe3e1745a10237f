import { CatalogueRefusal, LONGEST_ROW } from './fault.ts';

/** Encodings that are told apart. @internal */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** A block of whole lines; the last of a file may lack its line feed. */
export interface TextBlock {
  /** The text. */
  text: string;
  /** Present when a line was too long to be read: it stands here in place of that line. */
  tooLong?: true;
}

const PROBE = 1 << 16;
const LINE_FEED = 0x0a;

/** Tells the encoding by a mark, by zeros in every other byte, or by whether the bytes are UTF-8. */
function detectEncoding(head: Uint8Array): { encoding: Encoding; markLength: number } {
  if (head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf) return { encoding: 'utf-8', markLength: 3 };
  if (head[0] === 0xff && head[1] === 0xfe) return { encoding: 'utf-16le', markLength: 2 };
  if (head[0] === 0xfe && head[1] === 0xff) return { encoding: 'utf-16be', markLength: 2 };
  let even = 0;
  let odd = 0;
  let control = 0;
  for (let at = 0; at < head.length; at++) {
    const byte = head[at] ?? 0;
    if (byte === 0) {
      if (at % 2 === 0) even++;
      else odd++;
    } else if (byte < 0x09 || (byte > 0x0d && byte < 0x20 && byte !== 0x1b)) control++;
  }
  const half = head.length / 2;
  if (odd > 0.3 * half && even < 0.02 * half) return { encoding: 'utf-16le', markLength: 0 };
  if (even > 0.3 * half && odd < 0.02 * half) return { encoding: 'utf-16be', markLength: 0 };
  if (even + odd + control > 0.01 * head.length) {
    throw new CatalogueRefusal('this is a binary file; export the catalogue as CSV, NDJSON or JSON');
  }
  return { encoding: isUtf8(head) ? 'utf-8' : 'windows-1252', markLength: 0 };
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    // As a stream, so that a character cut off at the end of the probe is no fault.
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

/**
 * Decodes a stream of bytes into blocks of whole lines, or cut `anywhere` where lines mean nothing; `tell` hears how the
 * text begins and says which. @internal
 */
export async function* decodeLines(
  source: AsyncIterable<Uint8Array | string>,
  tell: (encoding: Encoding, head: string) => 'lines' | 'anywhere' = () => 'lines',
): AsyncGenerator<TextBlock> {
  let head: Buffer[] = [];
  let headLength = 0;
  let decoder: BlockDecoder | undefined;
  const start = (): { decoder: BlockDecoder; rest: Buffer } => {
    const probe = Buffer.concat(head);
    head = [];
    const { encoding, markLength } = detectEncoding(probe.subarray(0, PROBE));
    const rest = probe.subarray(markLength);
    const cut = tell(encoding, new TextDecoder(encoding).decode(rest.subarray(0, PROBE)));
    return { decoder: cut === 'lines' ? blockDecoder(encoding) : pieces(encoding), rest };
  };
  for await (const chunk of source) {
    const bytes = typeof chunk === 'string' ? Buffer.from(chunk) : asBuffer(chunk);
    if (decoder !== undefined) {
      yield* decoder.push(bytes);
      continue;
    }
    // A copy: the source may use the piece again.
    head.push(Buffer.from(bytes));
    headLength += bytes.length;
    if (headLength >= PROBE) {
      const started = start();
      decoder = started.decoder;
      yield* decoder.push(started.rest);
    }
  }
  if (decoder === undefined) {
    const started = start();
    decoder = started.decoder;
    yield* decoder.push(started.rest);
  }
  yield* decoder.end();
}

const asBuffer = (bytes: Uint8Array): Buffer => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);

interface BlockDecoder {
  push(bytes: Buffer): Iterable<TextBlock>;
  end(): Iterable<TextBlock>;
}

/** UTF-16 is brought to UTF-8 first, so that lines are cut in one place only. */
function blockDecoder(encoding: Encoding): BlockDecoder {
  if (encoding === 'utf-8') return lineBlocks(decodeUtf8);
  if (encoding === 'windows-1252') return lineBlocks(decode1252);
  const wide = new TextDecoder(encoding);
  const inner = lineBlocks(decodeUtf8);
  return {
    push: (bytes) => inner.push(Buffer.from(wide.decode(bytes, { stream: true }))),
    *end() {
      yield* inner.push(Buffer.from(wide.decode()));
      yield* inner.end();
    },
  };
}

function pieces(encoding: Encoding): BlockDecoder {
  const decoder = new TextDecoder(encoding);
  return {
    push: (bytes) => [{ text: decoder.decode(bytes, { stream: true }) }],
    end: () => [{ text: decoder.decode() }],
  };
}

function lineBlocks(decode: (bytes: Buffer) => string): BlockDecoder {
  let kept: Buffer[] = [];
  let keptLength = 0;
  let skipping = false;
  const keep = (bytes: Buffer): void => {
    if (bytes.length === 0) return;
    // A copy: the tail must not hold on to the whole chunk.
    kept.push(Buffer.from(bytes));
    keptLength += bytes.length;
  };
  const flush = (bytes: Buffer): Buffer => {
    const all = kept.length === 0 ? bytes : Buffer.concat([...kept, bytes]);
    kept = [];
    keptLength = 0;
    return all;
  };
  return {
    *push(bytes) {
      let rest = bytes;
      if (skipping) {
        const feed = rest.indexOf(LINE_FEED);
        if (feed < 0) return;
        skipping = false;
        yield { text: '', tooLong: true };
        rest = rest.subarray(feed + 1);
      }
      const last = rest.lastIndexOf(LINE_FEED);
      if (last >= 0) {
        const block = flush(rest.subarray(0, last + 1));
        if (block.length > 0) yield { text: decode(block) };
        rest = rest.subarray(last + 1);
      }
      keep(rest);
      if (keptLength > 4 * LONGEST_ROW) {
        flush(Buffer.alloc(0));
        skipping = true;
      }
    },
    *end() {
      if (skipping) yield { text: '', tooLong: true };
      else if (keptLength > 0) yield { text: decode(flush(Buffer.alloc(0))) };
    },
  };
}

const REPLACED = '\ufffd';

function decodeUtf8(bytes: Buffer): string {
  const text = bytes.toString('utf8');
  return text.includes(REPLACED) ? lineByLine(bytes) : text;
}

/** Feeds are glued together from several systems: a line that is no UTF-8 is read as Windows-1252. */
function lineByLine(bytes: Buffer): string {
  const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  let text = '';
  for (let from = 0; from < bytes.length; ) {
    const feed = bytes.indexOf(LINE_FEED, from);
    const to = feed < 0 ? bytes.length : feed + 1;
    const line = bytes.subarray(from, to);
    try {
      text += strict.decode(line);
    } catch {
      text += decode1252(line);
    }
    from = to;
  }
  return text;
}

function decode1252(bytes: Buffer): string {
  return new TextDecoder('windows-1252').decode(bytes);
}

import { open } from 'node:fs/promises';

const PIECE = 1 << 16;

/** Bytes of a file in pieces; each piece is only good until the next is asked for, so that a long file costs one piece. @internal */
export async function* fileBytes(path: string): AsyncGenerator<Uint8Array> {
  const handle = await open(path);
  try {
    const piece = Buffer.allocUnsafeSlow(PIECE);
    for (;;) {
      const { bytesRead } = await handle.read(piece, 0, PIECE, null);
      if (bytesRead === 0) return;
      yield piece.subarray(0, bytesRead);
    }
  } finally {
    await handle.close();
  }
}

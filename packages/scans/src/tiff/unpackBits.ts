/**
 * Unpacks PackBits: a count, then that many bytes as they are, or one byte repeated.
 *
 * @source tiff-6 section 9
 */
export async function* unpackBits(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let literal = 0;
  let repeats = 0;
  for await (const piece of pieces) {
    // One byte in can stand for 64 out, with its count.
    const out = new Uint8Array(piece.length * 64 + 128);
    let o = 0;
    for (let i = 0; i < piece.length; ) {
      if (literal > 0) {
        const many = Math.min(literal, piece.length - i);
        out.set(piece.subarray(i, i + many), o);
        o += many;
        i += many;
        literal -= many;
        continue;
      }
      const byte = piece[i++] as number;
      if (repeats > 0) {
        out.fill(byte, o, o + repeats);
        o += repeats;
        repeats = 0;
      } else if (byte < 128) literal = byte + 1;
      else if (byte > 128) repeats = 257 - byte;
    }
    yield out.subarray(0, o);
  }
}

import { PictureProblem } from "../pictureProblem.ts";

const CLEAR = 256;
const END = 257;
const FIRST = 258;
const MOST = 4096;
// What one table can give before the next clear code: each entry is one byte longer than the longest before it.
const WINDOW_BYTES = 1 << 24;

/**
 * Unpacks LZW as TIFF has it: codes of 9 to 12 bits, highest bit first, a bit wider one code early.
 *
 * Method   an entry is a place and a length in what was unpacked already, not a copy: nothing is put together twice.
 *          What lies before the last clear code is given away, so that a picture in one strip needs no room for all of it.
 *
 * @source tiff-6 section 13
 */
export async function* unpackLzw(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const places = new Uint32Array(MOST + 1);
  const lengths = new Uint32Array(MOST + 1);
  let out = new Uint8Array(1 << 20);
  let o = 0;
  let given = 0;
  let width = 9;
  let next = FIRST;
  let beforeAt = -1;
  let beforeLength = 0;
  let bits = 0;
  let held = 0;
  for await (const piece of pieces) {
    let i = 0;
    const n = piece.length;
    for (;;) {
      while (held < width && i < n) {
        bits = (bits << 8) | (piece[i++] as number);
        held += 8;
      }
      if (held < width) break;
      const code = (bits >>> (held - width)) & ((1 << width) - 1);
      held -= width;
      bits &= (1 << held) - 1;
      if (code === END) {
        if (o > given) yield out.subarray(given, o);
        return;
      }
      if (code === CLEAR) {
        width = 9;
        next = FIRST;
        beforeAt = -1;
        // Nothing points back past a clear code: a full window may begin anew.
        if (o > 1 << 19) {
          if (o > given) yield out.subarray(given, o);
          o = 0;
          given = 0;
        }
        continue;
      }
      let from: number;
      let length: number;
      if (code < CLEAR) {
        from = -1;
        length = 1;
      } else if (code < next) {
        from = places[code] as number;
        length = lengths[code] as number;
      } else if (code === next && beforeAt >= 0) {
        from = beforeAt;
        length = beforeLength + 1;
      } else {
        throw new PictureProblem("pictureBroken", "its LZW codes do not follow from one another");
      }
      if (o + length > out.length) {
        if (o + length > WINDOW_BYTES) throw new PictureProblem("pictureBroken", "its LZW codes never begin anew");
        const wider = new Uint8Array(Math.min(WINDOW_BYTES, Math.max(out.length * 2, o + length)));
        wider.set(out);
        out = wider;
      }
      const start = o;
      if (from < 0) out[o++] = code;
      else for (let k = 0; k < length; k++) out[o++] = out[from + k] as number;
      if (beforeAt >= 0 && next <= MOST) {
        places[next] = beforeAt;
        lengths[next] = beforeLength + 1;
        next++;
      }
      beforeAt = start;
      beforeLength = length;
      if (next + 1 >= 1 << width && width < 12) width++;
    }
  }
  if (o > given) yield out.subarray(given, o);
}

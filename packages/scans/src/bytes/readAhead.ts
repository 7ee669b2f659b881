import type { ByteSource } from "../picture.ts";

/** Each call to a file or Blob costs about a millisecond: small reads that follow each other are answered from a larger one. */
export function readAhead(source: ByteSource, pieceBytes = 1 << 20): ByteSource {
  let held = new Uint8Array(0);
  let heldAt = 0;
  return {
    size: source.size,
    read: async (offset, length) => {
      if (length >= pieceBytes) return source.read(offset, length);
      if (offset < heldAt || offset + length > heldAt + held.length) {
        const most = Math.max(length, Math.min(pieceBytes, source.size - offset));
        held = new Uint8Array(await source.read(offset, most));
        heldAt = offset;
      }
      return held.subarray(offset - heldAt, offset - heldAt + length);
    },
  };
}

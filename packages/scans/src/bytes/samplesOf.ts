const HERE_LITTLE = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;

/** 16-bit samples of bytes in either order; the bytes are changed in place where the order is not this machine's. */
export function wordsOf(bytes: Uint8Array, littleEndian: boolean): Uint16Array {
  const own = bytes.byteOffset % 2 === 0 ? bytes : bytes.slice();
  if (littleEndian !== HERE_LITTLE) {
    for (let i = 0; i + 1 < own.length; i += 2) {
      const first = own[i] as number;
      own[i] = own[i + 1] as number;
      own[i + 1] = first;
    }
  }
  return new Uint16Array(own.buffer, own.byteOffset, own.length >> 1);
}

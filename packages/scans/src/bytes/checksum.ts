/** The CRC of PNG (ISO 3309), going on from an earlier one; begin with 0. */
export function checksum(bytes: Uint8Array, before = 0): number {
  const [t0, t1, t2, t3] = TABLES as [Uint32Array, Uint32Array, Uint32Array, Uint32Array];
  let crc = ~before;
  let i = 0;
  // Four bytes a step: a scan has hundreds of megabytes of them.
  for (const end = bytes.length - 3; i < end; i += 4) {
    crc ^= byteAt(bytes, i) | (byteAt(bytes, i + 1) << 8) | (byteAt(bytes, i + 2) << 16) | (byteAt(bytes, i + 3) << 24);
    crc =
      wordAt(t3, crc & 255) ^ wordAt(t2, (crc >>> 8) & 255) ^ wordAt(t1, (crc >>> 16) & 255) ^ wordAt(t0, crc >>> 24);
  }
  for (; i < bytes.length; i++) crc = wordAt(t0, (crc ^ byteAt(bytes, i)) & 255) ^ (crc >>> 8);
  return ~crc >>> 0;
}

const byteAt = (bytes: Uint8Array, at: number) => bytes[at] as number;
const wordAt = (table: Uint32Array, at: number) => table[at] as number;
const TABLES = makeTables();

function makeTables(): readonly Uint32Array[] {
  const first = Uint32Array.from({ length: 256 }, (_, byte) => {
    let value = byte;
    for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
    return value;
  });
  const tables = [first];
  for (let n = 1; n < 4; n++) {
    const before = tables[n - 1] as Uint32Array;
    tables.push(before.map((value) => (wordAt(first, value & 255) ^ (value >>> 8)) >>> 0));
  }
  return tables;
}

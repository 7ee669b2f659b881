const table = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** CRC-32 of a text's UTF-8 bytes, eight hexadecimal digits: it finds what a disk or a hand has altered. */
export function checksum(text: string): string {
  let crc = 0xffffffff;
  const add = (byte: number) => {
    crc = (crc >>> 8) ^ (table[(crc ^ byte) & 0xff] ?? 0);
  };
  for (let place = 0; place < text.length; place++) {
    let code = text.charCodeAt(place);
    if (code < 0x80) {
      add(code);
      continue;
    }
    const next = text.charCodeAt(place + 1);
    if (code >= 0xd800 && code < 0xdc00 && next >= 0xdc00 && next < 0xe000) {
      code = 0x10000 + ((code - 0xd800) << 10) + (next - 0xdc00);
      place++;
      add(0xf0 | (code >> 18));
      add(0x80 | ((code >> 12) & 0x3f));
    } else if (code < 0x800) {
      add(0xc0 | (code >> 6));
      add(0x80 | (code & 0x3f));
      continue;
    } else {
      add(0xe0 | (code >> 12));
    }
    add(0x80 | ((code >> 6) & 0x3f));
    add(0x80 | (code & 0x3f));
  }
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, "0");
}

import { expect, test } from "vitest";
import { checksum } from "./checksum.ts";

test('CRC-32 of "123456789" is cbf43926, the published check value of this CRC [common practice]', () => {
  expect(checksum("123456789")).toBe("cbf43926");
});

test("the CRC of the UTF-8 bytes, also beyond ASCII [its definition, bit by bit]", () => {
  for (const text of ["", "ä", "f/5.6⅓", "🛶 upturned skiff"]) {
    expect(checksum(text)).toBe(bitByBit(new TextEncoder().encode(text)));
  }
});

test("one altered character is found", () => {
  expect(checksum('{"rating":4}')).not.toBe(checksum('{"rating":5}'));
});

function bitByBit(bytes: Uint8Array): string {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    for (let bit = 0; bit < 8; bit++) {
      const differs = ((crc ^ (byte >> bit)) & 1) === 1;
      crc = (crc >>> 1) ^ (differs ? 0xedb88320 : 0);
    }
  }
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, "0");
}

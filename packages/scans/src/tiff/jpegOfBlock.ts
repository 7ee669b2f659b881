/**
 * A JPEG that stands alone, of a block of a TIFF: the tables the directory holds for all blocks are put at its front,
 * and a word on its colours, which in a TIFF the directory says.
 *
 * @source tiff-techNote2: abbreviated streams and JPEGTables (from memory); Adobe’s APP14 marker (common practice)
 */
export function jpegOfBlock(block: Uint8Array, tables: Uint8Array | undefined, photometric: number): Uint8Array {
  // SOI … EOI: of the tables what lies between, of the block all but its SOI.
  const middle = tables === undefined || tables.length < 4 ? new Uint8Array(0) : tables.subarray(2, tables.length - 2);
  const colours = photometric === 2 ? RGB : photometric === 6 ? YCC : new Uint8Array(0);
  const whole = new Uint8Array(2 + colours.length + middle.length + Math.max(0, block.length - 2));
  whole.set([0xff, 0xd8]);
  whole.set(colours, 2);
  whole.set(middle, 2 + colours.length);
  whole.set(block.subarray(2), 2 + colours.length + middle.length);
  return whole;
}

const adobe = (transform: number) =>
  Uint8Array.of(0xff, 0xee, 0, 14, 0x41, 0x64, 0x6f, 0x62, 0x65, 0, 100, 0, 0, 0, 0, transform);
const RGB = adobe(0);
const YCC = adobe(1);

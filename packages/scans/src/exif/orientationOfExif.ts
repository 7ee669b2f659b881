import { viewOf } from "../bytes/view.ts";

const ORIENTATION = 274;

/** How the picture is turned, from an Exif block (which is a small TIFF); 1, upright, where it does not say. */
export function orientationOfExif(block: Uint8Array): number {
  if (block.length < 14) return 1;
  const view = viewOf(block);
  const order = view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return 1;
  const little = order === 0x4949;
  const at = view.getUint32(4, little);
  if (at + 2 > block.length) return 1;
  const count = Math.min(view.getUint16(at, little), 500);
  for (let i = 0; i < count; i++) {
    const entry = at + 2 + i * 12;
    if (entry + 12 > block.length) return 1;
    if (view.getUint16(entry, little) === ORIENTATION) {
      const value = view.getUint16(entry + 8, little);
      return value >= 1 && value <= 8 ? value : 1;
    }
  }
  return 1;
}

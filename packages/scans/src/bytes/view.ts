/** A view of bytes that may lie anywhere in their buffer. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** Letters of a byte string up to its first zero; what is no plain letter is left out. */
export function lettersOf(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) {
    if (byte === 0) break;
    if (byte >= 32 && byte < 127) text += String.fromCharCode(byte);
  }
  return text.trim();
}

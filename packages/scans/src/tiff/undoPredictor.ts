/**
 * Undoes horizontal differencing in place: each sample was stored as its difference from the one to its left.
 *
 * @source tiff-6 section 14
 */
export function undoPredictor(data: Uint8Array | Uint16Array, rows: number, channels: number): void {
  const rowSamples = data.length / rows;
  // The array itself keeps sums to its width, 8 or 16 bits.
  for (let row = 0; row < rows; row++) {
    const from = row * rowSamples;
    const end = from + rowSamples;
    if (channels === 1) {
      let sum = 0;
      for (let i = from; i < end; i++) {
        sum += data[i] as number;
        data[i] = sum;
      }
    } else {
      for (let i = from + channels; i < end; i++) data[i] = (data[i] as number) + (data[i - channels] as number);
    }
  }
}

/** The generator xoshiro128** of Blackman and Vigna: whole numbers of 32 bits from four of them, not all 0. */
export function xoshiro128(state: Uint32Array): () => number {
  return () => {
    const [a = 0, b = 0, c = 0, d = 0] = state;
    const scrambled = Math.imul(turned(Math.imul(b, 5), 7), 9) >>> 0;
    const fourth = d ^ b;
    const third = c ^ a;
    state[1] = b ^ third;
    state[0] = a ^ fourth;
    state[2] = third ^ (b << 9);
    state[3] = turned(fourth, 11);
    return scrambled;
  };
}

function turned(value: number, by: number): number {
  return ((value << by) | (value >>> (32 - by))) >>> 0;
}

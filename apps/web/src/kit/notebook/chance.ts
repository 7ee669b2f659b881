const alphabet = "0123456789abcdefghijklmnopqrstuvwxyz";

/** Chance in [0, 1) that nobody can guess; also where the page has no secure origin. */
export function chance(): number {
  const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
  return drawn / 2 ** 32;
}

/** So many characters of 0–9 and a–z. */
export function drawName(characters: number): string {
  return Array.from({ length: characters }, () => alphabet.charAt(Math.floor(chance() * 36))).join("");
}

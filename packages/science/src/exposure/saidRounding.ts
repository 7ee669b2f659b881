/** How finely a time is said: by whole seconds from 2 s up, by half seconds below. Inner helper of `plan` and `findSlips`. */
export function saidRounding(saidTimeS: number): number {
  return saidTimeS >= 2 ? 1 : 0.5;
}

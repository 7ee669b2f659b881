const most = 900;

/**
 * Seconds a constant factor apart from a first one on, to half seconds below ten and whole ones above, each later than the one before.
 *
 * For a strip whose steps the person chooses.
 */
export function flashTimes({
  firstS,
  factor,
  steps,
}: {
  readonly firstS: number;
  readonly factor: number;
  readonly steps: number;
}): readonly number[] {
  const timesS: number[] = [];
  for (let index = 0; index < steps; index++) {
    const ideal = Math.min(most, firstS * factor ** index);
    const rounded = ideal < 10 ? Math.round(ideal * 2) / 2 : Math.round(ideal);
    timesS.push(Math.max(rounded, (timesS.at(-1) ?? 0) + (timesS.length === 0 ? 0.5 : 1)));
  }
  return timesS;
}

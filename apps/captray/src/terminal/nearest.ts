/** The names most like a mistyped one, the nearest first; none where nothing comes near. */
export function nearest(name: string, names: readonly string[], most = 3): readonly string[] {
  const typed = name.slice(0, 60).toLowerCase();
  return names
    .map((known) => ({ known, steps: distance(typed, known.toLowerCase()) }))
    .filter(({ known, steps }) => steps <= Math.max(2, known.length / 3))
    .sort((a, b) => a.steps - b.steps)
    .slice(0, most)
    .map(({ known }) => known);
}

/** Least number of single letters put in, taken out or changed. */
function distance(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (const [row, letter] of [...from].entries()) {
    const here = [row + 1];
    for (const [column, wanted] of [...to].entries()) {
      const changed = (above[column] ?? 0) + (letter === wanted ? 0 : 1);
      here.push(Math.min(changed, (above[column + 1] ?? 0) + 1, (here[column] ?? 0) + 1));
    }
    above = here;
  }
  return above.at(-1) ?? 0;
}

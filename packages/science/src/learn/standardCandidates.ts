import type { CandidateInput, ControlKind, Lever, LeverSettings } from "./nextTypes.ts";

const CONTROLS: readonly ControlKind[] = ["black", "fogged", "baseProcessed", "bleachOnly"];
const NAMES: { readonly [Kind in ControlKind]: string } = {
  black: "black patch",
  fogged: "fogged patch",
  base: "base patch",
  baseProcessed: "base patch through all baths",
  bleachOnly: "patch bleached only",
};

/** What is tried next to the settings of now: one lever at a time, control patches, step tests, the best settings. Inner helper. */
export function standardCandidates(
  now: LeverSettings,
  best: LeverSettings,
  levers: readonly Lever[],
): readonly CandidateInput[] {
  const moved = (lever: Lever, name: string, by: number): CandidateInput[] =>
    levers.includes(lever) ? [{ name, settings: { [lever]: now[lever] + by } }] : [];
  return [
    { name: "repeat" },
    ...moved("stops", "1 stop less", -1),
    ...moved("stops", "½ stop less", -0.5),
    ...moved("stops", "½ stop more", 0.5),
    ...moved("stops", "1 stop more", 1),
    ...[0, 3, 6, 10]
      .filter((flashS) => flashS !== now.flashS && levers.includes("flashS"))
      .map((flashS) => ({ name: flashS === 0 ? "no flash" : `flash ${flashS} s`, settings: { flashS } })),
    ...moved("log2u1", "first development × 1.5", Math.log2(1.5)),
    ...moved("log2u1", "first development × 2", 1),
    ...moved("log2u1", "first development × 0.7", Math.log2(0.7)),
    ...moved("rounds", "one round of bleach more", 1),
    ...moved("log2u2", "second development × 1.5", Math.log2(1.5)),
    ...moved("log2u2", "second development × 0.5", -1),
    ...CONTROLS.map((kind) => ({ name: `repeat with ${NAMES[kind]}`, controls: [kind] })),
    { name: "repeat with four patches", controls: CONTROLS },
    { name: "step test", test: "stepTest" },
    { name: "split step test", test: "splitStepTest" },
    { name: "best settings", settings: best },
    { name: "best settings with four patches", settings: best, controls: CONTROLS },
  ];
}

import type { StepDoes } from "@captray/science/process";

/** What a stay that was too long or too short is expected to do: how much it matters, and in plain words. */
export interface DeviationCost {
  /** `nothing`: harmless; `repairable`: on the spot, by doing it again; `small`; `lasting`: nothing brings it back. */
  readonly weight: "nothing" | "repairable" | "small" | "lasting";
  readonly words: string;
}

type Words = Readonly<Record<"longer" | "shorter" | "skipped", DeviationCost>>;

const nothing = (words: string): DeviationCost => ({ weight: "nothing", words });
const small = (words: string): DeviationCost => ({ weight: "small", words });
const lasting = (words: string): DeviationCost => ({ weight: "lasting", words });
const repairable = (words: string): DeviationCost => ({ weight: "repairable", words });

/** The table of slips; common practice, but for the first developer, whose cost is reckoned. */
const table: Readonly<Record<StepDoes, Words>> = {
  firstDevelop: {
    longer: lasting("Cannot be taken back: lighter whites, a little more speed, and with fog weaker blacks."),
    shorter: lasting("Cannot be repaired: what was not developed stays as grey in the whites."),
    skipped: lasting("Without it there is no first image: the sheet comes out black."),
  },
  develop: {
    longer: lasting("Cannot be taken back: denser, with a little more speed, and fog if it was much."),
    shorter: lasting("Cannot be repaired: thin, with a weak black."),
    skipped: lasting("Without it there is no picture."),
  },
  stop: {
    longer: nothing("Harmless, up to twice the time."),
    shorter: small("Streaks; alkali carried on, which in a bleach means gas in the layer and wasted peroxide."),
    skipped: lasting("Development went on in the next bath, and its alkali with it: streaks, blisters in a bleach."),
  },
  rinse: {
    longer: nothing("Harmless, up to twice the time."),
    shorter: small("Halide and alkali carried on: greyer whites after a bleach, a bath that tires sooner."),
    skipped: small("Halide and alkali carried on: greyer whites after a bleach, a bath that tires sooner."),
  },
  bleach: {
    longer: small("Softer gelatin: scratches come easily, lifting where the first image was densest."),
    shorter: repairable("Dark silver may be left: one more round brings it out, before the clearing."),
    skipped: repairable("Dark silver is left: a round of bleach brings it out, before the clearing."),
  },
  clear: {
    longer: small("Dissolves halide: the blacks weaken slowly."),
    shorter: small("Peroxide or stain left: brown or yellow in the second developer."),
    skipped: small("Peroxide or stain left: brown or yellow in the second developer."),
  },
  reexpose: {
    longer: nothing("Harmless."),
    shorter: repairable("Weak or patchy blacks; more light before the second developer repairs it."),
    skipped: lasting("Without light the second developer finds next to nothing: a pale or empty print."),
  },
  redevelop: {
    longer: nothing("Harmless: it runs to its end."),
    shorter: repairable("Weak or patchy blacks; back into the second developer repairs it while the sheet is wet."),
    skipped: lasting("Without it there is no picture; what is left darkens by itself."),
  },
  fix: {
    longer: small("The edges of resin-coated paper soak; much longer takes the finest tones off."),
    shorter: repairable("What is not fixed yellows and darkens later; a fresh fixer repairs it."),
    skipped: repairable("The sheet darkens in the light; a fixer repairs it, if soon."),
  },
  wash: {
    longer: nothing("Harmless for some minutes; paper on a fibre base softens after an hour."),
    shorter: repairable("Stain later; washing again repairs it."),
    skipped: repairable("Stain later; washing repairs it."),
  },
  other: {
    longer: nothing("Nothing is known of it."),
    shorter: nothing("Nothing is known of it."),
    skipped: nothing("Nothing is known of it."),
  },
};

/** Up to twice the time a stop or a rinse forgives; beyond that resin-coated paper soaks at its edges. */
const forgivenTimes = 1;

/** What a deviation is expected to cost, by what the step is for. The first developer's numbers come from the model, beside this. */
export function costOfDeviation({
  does,
  kind,
  against,
  shareOff,
}: {
  readonly does: StepDoes;
  readonly kind: "negative" | "positive";
  readonly against: "asPlanned" | "longer" | "shorter" | "skipped";
  /** How far off, as a share of the time due. */
  readonly shareOff: number;
}): DeviationCost {
  if (against === "asPlanned") return nothing("As planned.");
  if ((does === "stop" || does === "rinse") && against === "longer" && shareOff > forgivenTimes) {
    return small("More than twice the time: harmless to the picture, but the edges soak.");
  }
  if (does === "rinse" && kind === "negative" && against !== "longer") {
    return small("What it was to take out is carried on: the next bath tires sooner.");
  }
  return table[does][against];
}

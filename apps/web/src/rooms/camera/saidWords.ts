import type { SaidAnswer } from "@captray/science/exposure";
import { showTime } from "@captray/science/notation";

/** What each slip is, so that a sentence can say “… would explain it”. */
const slipWords: Readonly<Record<string, string>> = {
  "bellows-linear": "taking the extension’s ratio once instead of twice",
  "bellows-forgotten": "leaving out the extension",
  "bellows-twice": "counting the extension twice",
  "bellows-inverted": "counting the extension the wrong way",
  "clicks-as-stops": "taking clicks of the dial for whole stops",
  "bridge-forgotten": "leaving out the step from the dial’s ISO to the EI",
  "ei-wrong-way": "counting the EI the wrong way",
  "bridge-one-more": "one stop too many from the dial to the EI",
  "bridge-one-less": "one stop too few from the dial to the EI",
  "aperture-forgotten": "leaving out the change of f-number",
  "aperture-linear": "taking the f-numbers’ ratio once instead of twice",
  "aperture-nominal": "taking the f-number on the mount for the one measured",
  "nd-density-as-stops": "taking the filter’s density for stops",
  "nd-forgotten": "leaving out the grey filter",
  "filter-forgotten": "leaving out the filter",
  "reciprocity-forgotten": "leaving out the long exposure",
  "reciprocity-twice": "counting the long exposure twice",
  "fraction-inverted": "reading a fraction of a second as whole seconds",
};

/** What hand reckoning may rightly leave out: said as such, and not as a mistake. */
const leftOut: Readonly<Record<string, string>> = {
  "colour-not-counted": "the colour of the light",
  "glass-not-counted": "the glass",
};

/** The answer to “I worked it out as …”: the two sums compared, and which slip would explain the difference. */
export function saidWords({ said, saidTimeS, timeS }: { said: SaidAnswer; saidTimeS: number; timeS: number }): string {
  const mine = showTime({ timeS: saidTimeS });
  if (said.verdict === "agrees") return `${mine} agrees with this sum.`;
  const off = `${Math.abs(said.offStops).toFixed(said.offStops !== 0 && Math.abs(said.offStops) < 0.1 ? 2 : 1)} stop`;
  const compared = `${mine} is ${off}${Math.abs(said.offStops) >= 1.05 ? "s" : ""} ${said.offStops < 0 ? "short of" : "more than"} this sum.`;
  const likely = said.ranked.filter(({ slips }) => slips.length > 0);
  const [first] = likely;
  if (said.verdict === "slip" && first !== undefined && first.share >= 0.5)
    return `${compared} ${sentence(first.slips, first.stops)}`;
  const could = likely.filter(({ share }) => share >= 0.15).slice(0, 3);
  if (said.verdict === "slip" && could.length > 0) {
    return `${compared} It could be ${could.map(({ slips }) => phrase(slips)).join(", or ")}.`;
  }
  const nearest = first === undefined ? "" : `; nearest: ${phrase(first.slips)}`;
  return `${compared} No known slip explains it (you have ${mine}, the ledger ${showTime({ timeS })})${nearest}.`;
}

function sentence(slips: readonly string[], stops: number): string {
  const size = `(${Math.abs(stops).toFixed(2)})`;
  const only = slips.length === 1 ? leftOut[slips[0] ?? ""] : undefined;
  if (only !== undefined) return `You left out ${only} ${size}, which this ledger counts.`;
  const words = phrase(slips);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} ${size} would explain it.`;
}

function phrase(slips: readonly string[]): string {
  return slips
    .map((slip) =>
      leftOut[slip] === undefined
        ? (slipWords[slip] ?? slip)
        : `leaving out ${leftOut[slip]}, which this ledger counts`,
    )
    .join(" and ");
}

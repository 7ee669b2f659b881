import type { Recipe } from "@captray/notebook/records";

/** Seconds as they are said of a bath: “45 s”, “2 min”, “1 min 30”. */
export function bathTime(timeS: number): string {
  const whole = Math.round(timeS);
  if (timeS < 60) return `${Number(timeS.toFixed(1))} s`;
  if (whole >= 6 * 3600) return `${Number((timeS / 3600).toPrecision(3))} h`;
  const minutes = Math.floor(whole / 60);
  const seconds = whole % 60;
  return seconds === 0 ? `${minutes} min` : `${minutes} min ${String(seconds).padStart(2, "0")}`;
}

/** A whole recipe is said to the half minute. */
export function totalTime(timeS: number): string {
  if (timeS < 90) return bathTime(timeS);
  const halves = Math.round(timeS / 30);
  if (halves >= 120) {
    const minutes = Math.round(timeS / 60);
    return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")}`;
  }
  return `${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""} min`;
}

/** Under the name of a recipe: “a direct positive; 11 steps; 3 rounds of bleach; to be tested first”. */
export function recipeLineWords(recipe: Recipe): string {
  const { result, steps = [], bleachRounds, assumed = [] } = recipe;
  const rounds =
    bleachRounds === undefined || result !== "positive"
      ? ""
      : bleachRounds === 1
        ? "1 round of bleach"
        : `${bleachRounds} rounds of bleach`;
  const count = steps.length === 0 ? "no steps laid out" : steps.length === 1 ? "1 step" : `${steps.length} steps`;
  const untested = steps.length > 0 && assumed.includes("steps") ? "to be tested first" : "";
  const gives =
    result === undefined ? "not said what it gives" : result === "positive" ? "a direct positive" : "a paper negative";
  return [gives, count, rounds, untested].filter(Boolean).join("; ");
}

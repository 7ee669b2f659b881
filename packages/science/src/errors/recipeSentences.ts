import type { Message } from "./words.ts";

/** What these sentences are made with: a fact as a sentence says it, "" where there is none. */
interface Said {
  readonly value: (key: string) => string;
}

/** `"the stop"` with a space before it; nothing where the step has no name. */
const named = ({ value }: Said) => (value("step") === "" ? "" : ` ${value("step")}`);

/** Refusals of a run that is simulated. */
function nonsense(said: Said): Message {
  const finding = said.value("finding").replaceAll('"', "");
  const { message, hint } = recipeSentences[finding]?.(said) ?? {
    message: "The steps of this recipe do not go together.",
    hint: "Look at their order.",
  };
  return { message, hint: `${hint} If it is meant so, set "override" in the recipe.` };
}

/** What is wrong with a recipe, by the code of the finding: what, why, and what to do. */
export const recipeSentences: Readonly<Record<string, (said: Said) => Message>> = {
  recipeNonsense: nonsense,
  eventsNotRising: ({ value }) => ({
    message: `An event${value("atS") === "" ? "" : ` (${value("atS")})`} is earlier than the one before it${value("beforeS") === "" ? "" : ` (${value("beforeS")})`}.`,
    hint: "Give the events in the order in which they happened, in seconds from the first bath on.",
  }),
  recipeEmpty: () => ({
    message: "The recipe has no step.",
    hint: "Add the baths in the order the sheet goes through them, or begin with a starting frame.",
  }),
  tooManySteps: ({ value }) => ({
    message: `The recipe has ${value("steps") || "too many"} steps; nobody goes through more than ${value("most") || "300"} in one sitting.`,
    hint: "Look whether it was pasted twice; what is done over and over is one step with rounds.",
  }),
  stepTakesNoTime: (said) => ({
    message: `The step${named(said)} takes ${said.value("timeS") || "no time"}; every step takes time.`,
    hint: "Write its time, drain included, or take the step out.",
  }),
  stepTooLong: (said) => ({
    message: `The step${named(said)} is longer than a day.`,
    hint: "Look whether minutes were written as hours, or a digit is too many.",
  }),
  roundsOutOfOrder: (said) => ({
    message: `The rounds of${named(said) || " this step"} are not whole numbers from the least to the most${said.value("most") === "" ? "" : `, 1 to ${said.value("most")}`}.`,
    hint: "Write the least number of rounds and then the most, such as 1 to 4.",
  }),
  groupTornApart: (said) => ({
    message: `The step${named(said)} belongs to rounds whose other steps stand elsewhere.`,
    hint: "Move the steps that are repeated together next to each other.",
  }),
  reexposureBeforeBleach: (said) => ({
    message: `The light comes on${said.value("step") === "" ? "" : ` (${said.value("step")})`} before a bleach${said.value("bleach") === "" ? "" : ` (${said.value("bleach")})`}: what it prints there is bleached away with the first image.`,
    hint: "Move the re-exposure behind the last bleach.",
  }),
  noStopBeforeBleach: (said) => ({
    message: `There is no stop before the first bleach${said.value("step") === "" ? "" : ` (${said.value("step")})`}: developer is carried into it, the alkali makes the peroxide foam away inside the layer, and the paper blisters.`,
    hint: "Put a stop between the developer and the bleach, and a rinse after it.",
  }),
  whiteLightBeforeStop: (said) => ({
    message: `White light is on${said.value("step") === "" ? "" : ` (${said.value("step")})`} before the first development is stopped: the fog becomes first image, is bleached away, and the blacks stay weak.`,
    hint: "Keep safelight until the sheet is in the stop.",
  }),
  whiteLightBeforeFix: (said) => ({
    message: `White light is on${said.value("step") === "" ? "" : ` (${said.value("step")})`} before the negative is in the fixer: what is not developed yet turns dark.`,
    hint: "Keep safelight until the sheet is in the fixer.",
  }),
  noSecondDeveloper: () => ({
    message: "There is no second developer: after the bleach nothing makes the picture visible.",
    hint: "Add a second developer after the re-exposure, or call the recipe a negative.",
  }),
  temperatureOutOfRange: ({ value }) => {
    const limits = `${value("least") || "14"} and ${value("most") || "28"} °C`;
    const isDevelopment = value("most") !== "50";
    return {
      message: `${value("step") || (isDevelopment ? "Development" : "A bath")} at ${value("bathC") || "no temperature"}${value("bathC") === "" ? "" : " °C"}: ${isDevelopment ? "developers work" : "a bath for paper lies"} between ${limits}; ${isDevelopment ? "colder they all but stop, warmer they fog and soften the gelatin" : "warmer the gelatin runs off"}.`,
      hint: "Bring the bath to about 20 °C, or look at the thermometer again.",
    };
  },
  noDeveloper: () => ({
    message: "No step develops: the sheet stays white.",
    hint: "Add a developer, or say which step it is.",
  }),
  noFirstDeveloper: () => ({
    message: "No step is a first developer: nothing is there for the bleach to take away.",
    hint: "Add a first developer, or say which step it is.",
  }),
  noBleach: () => ({
    message: "There is no bleach: the first image stays, and the second developer turns the rest black as well.",
    hint: "Add a bleach between the stop and the second developer, or call the recipe a negative.",
  }),
  noReexposure: () => ({
    message: "There is no re-exposure: what is left has had no light, and a plain developer does not find it.",
    hint: "Add a step in white light before the second developer.",
  }),
  reexposureAfterSecondDeveloper: (said) => ({
    message: `The light comes on${said.value("step") === "" ? "" : ` (${said.value("step")})`} only after the second developer.`,
    hint: "Move the re-exposure before it.",
  }),
  reexposureWithoutWhiteLight: (said) => ({
    message: `The re-exposure${named(said)} is marked for ${said.value("light") || "red or no light"}: it does nothing there.`,
    hint: "Mark it as white light required.",
  }),
  fixBeforeSecondDeveloper: (said) => ({
    message: `The fixer${named(said)} comes before the second developer: it dissolves what the picture is made of.`,
    hint: "Fix after the second developer, or not at all.",
  }),
  noRinseBeforeBleach: (said) => ({
    message: `Nothing rinses the sheet between the stop and the first bleach${said.value("step") === "" ? "" : ` (${said.value("step")})`}: bromide and alkali carried on leave grey whites and waste the bleach.`,
    hint: "Add a rinse in one or two changes of water.",
  }),
  noFix: () => ({
    message: "There is no fixer: what was not developed stays in the paper and darkens in daylight.",
    hint: "Add a fixer, or label the sheet as not fixed and keep it in the dark.",
  }),
  noWash: () => ({
    message: "There is no wash at the end: what is left in the paper stains it later.",
    hint: "Add a wash.",
  }),
  developmentMayWait: (said) => ({
    message: `The step${named(said)} is marked as one that may wait; development and stop never wait.`,
    hint: "Take the mark away; a rinse or the wash may wait.",
  }),
  drainLongerThanStep: (said) => ({
    message: `The drain of${named(said) || " this step"} (${said.value("drainS") || "too long"}) is as long as the whole step${said.value("timeS") === "" ? "" : ` (${said.value("timeS")})`}.`,
    hint: "The time of a step includes its drain; write the whole time, from touching this bath to touching the next.",
  }),
};

import { measureSentences } from "./measureSentences.ts";
import { recipeSentences } from "./recipeSentences.ts";
import { isCount, listed, quoted, textOf } from "./sayValue.ts";
import { type Message, type MessageInput, messageOf, type Sentences } from "./words.ts";

/**
 * The sentence for an input that was refused, also by the trays, by mixing, by learning and by measuring: what every screen
 * would otherwise have to fetch.
 *
 * Method   as messageOf, with the tables of those parts beside the one that all share.
 * Units    as messageOf.
 * Holds    for every code and whatever facts come with it.
 *
 * @source none: words of the trade (common practice)
 * @example furtherMessageOf({ code: "recipeEmpty", facts: {}, key: "" }).message // "The recipe has no step."
 */
export function furtherMessageOf(input: Omit<MessageInput, "also">): Message {
  return messageOf({ ...input, also: FURTHER });
}

const FURTHER: Sentences = {
  ...recipeSentences,
  ...measureSentences,
  handTooSlow: ({ value }) => ({
    message: `One move takes ${value("handS") || "longer than ten minutes"}: no line of trays can be planned with that.`,
    hint: "Give the seconds the hands need to lift a sheet, let it drain and lay it into the next tray: about 8.",
  }),

  strengthOutOfRange: ({ given, facts }) => {
    const what = textOf(facts.what);
    return what === undefined
      ? {
          message: `The strength${given === "" ? "" : ` is ${given}; it`} must be from 0 to that of peroxide of 50 % w/w, beyond which nothing is mixed here.`,
          hint: "Look what the label says the figure is; buy weaker peroxide: 3 to 12 % does all that a bleach needs.",
        }
      : {
          message: `The strength${given === "" ? "" : ` is ${given}; it`} is more than a litre can hold of ${what}.`,
          hint: "Look what the label says the figure is, and whether a digit slipped in.",
        };
  },
  targetStrongerThanStock: ({ value }) => ({
    message: `The bath wanted${value("target") === "" ? "" : ` (${value("target")})`} is stronger than the stock${value("stock") === "" ? "" : ` (${value("stock")})`}; water cannot do that.`,
    hint: "Ask for a weaker bath, and for more rounds of bleach rather than more strength; look what each figure means.",
  }),
  targetOutsideStrengths: ({ given }) => ({
    message: `The strength wanted${given === "" ? "" : ` (${given})`} does not lie between two different strengths to mix.`,
    hint: "Ask for one between the two; water counts as a strength of 0.",
  }),
  notTheSameSalt: ({ value }) => ({
    message: `${value("from") === "" ? "What the recipe names" : value("from")} and ${value("to") === "" ? "what is in the jar" : value("to")} are not one salt with different crystal water.`,
    hint: "Write both as salt and water, like Na2SO3 and Na2SO3.7H2O; another salt needs another recipe.",
  }),

  ratioAmbiguous: ({ facts }) => ({
    message: `${typeof facts.text === "string" ? quoted(facts.text) : "Such a ratio"} is read in two ways: one part with so many, or one part in so many.`,
    hint: Array.isArray(facts.readings)
      ? `Look at the recipe and write it with a plus: ${facts.readings.map(String).join("; ")}.`
      : "Look at the recipe and write it with a plus, like 1+4.",
  }),
  basisMissing: ({ given, facts }) => ({
    message: `The strength${given === "" ? "" : ` of ${given}`} does not say what it is a part of; above 6 % that makes a difference.`,
    hint:
      Array.isArray(facts.readings) && facts.readings.length > 0
        ? `Look at the label and give the basis: ${facts.readings.map(String).join("; ")}.`
        : "Look at the label and give the basis: percentWv is grams in 100 mL, percentWw grams in 100 g.",
  }),
  densityUnknown: ({ facts }) => ({
    message: `The density of ${textOf(facts.what) ?? "this solution"} is not known here, so grams in 100 g cannot be turned into grams in 100 mL.`,
    hint: "Give the strength as percentWv or gramsPerL; the label or the safety data sheet has the density.",
  }),
  mixRefused: ({ facts }) => ({
    message: textOf(facts.reason) ?? "These two must not come together.",
    hint: textOf(facts.way) ?? "Keep them apart, and read both safety data sheets.",
  }),
  carryOverTooLarge: ({ bracket }) => ({
    message: `A sheet cannot bring along${bracket("carryMl")} as much as the whole bath holds${bracket("volumeMl")}.`,
    hint: "Weigh a drained wet sheet and a dry one: the difference in grams is the liquid in mL.",
  }),
  shareOutOfRange: ({ It, given, facts }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must lie ${isCount(facts.above) ? "between" : "from"} 0 ${isCount(facts.above) ? "and" : "to"} 1.`,
    hint: "A share is a part of the whole: 0.05 for five in a hundred, not 5.",
  }),

  unknownSheet: ({ facts }) => ({
    message: `No sheet is named ${typeof facts.sheet === "string" ? quoted(facts.sheet) : "so"}.`,
    hint: Array.isArray(facts.sheets)
      ? `Give the patch to one of the sheets listed: ${listed(facts.sheets)}.`
      : "Give the patch to one of the sheets listed, or list its sheet.",
  }),
  wetAndDryMixed: () => ({
    message: "Patches measured wet stand beside patches measured dry.",
    hint: "Wet paper is darker: learn from the dry ones, or from the wet ones, never from both at once.",
  }),
  papersMixed: ({ facts }) => ({
    message: `The patches are of more than one paper${typeof facts.paper === "string" && typeof facts.first === "string" ? `: ${listed([facts.first, facts.paper])}` : ""}.`,
    hint: "Learn each paper from its own prints.",
  }),
  processesMixed: () => ({
    message: "Negatives stand beside direct positives.",
    hint: "Learn each process from its own sheets, and compare what was learnt.",
  }),
  notAReversal: () => ({
    message: "This is asked of direct positives, and the sheets are negatives.",
    hint: "Give sheets of a reversal process; the densities of a negative are read with fit.",
  }),
  moreFaultsThanSheets: ({ value }) => ({
    message: `More sheets have the fault${value("faults") === "" || value("sheets") === "" ? " than there are" : ` (${value("faults")}) than there are (${value("sheets")})`}.`,
    hint: "Count each sheet once, however often the fault comes on it.",
  }),
};

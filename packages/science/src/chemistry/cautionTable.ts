import type { Caution, CautionWhen } from "./cautionTypes.ts";

/** The day the limits of the table were last looked at; beyond two years it is told with every caution. */
export const CAUTIONS_CHECKED_ON = "2026-11-25";

/** What reminds people, where the act is. The supplier's safety data sheet and local rules come first. */
export const CAUTIONS: readonly Caution[] = [
  ranked("ox-eye", 1, {
    id: "ox-eye5",
    when: { has: "h2o2", minW: 5 },
    text: "Peroxide at this strength irritates eyes. Goggles and gloves while pouring.",
    source: "echa-peroxide",
  }),
  ranked("ox-eye", 2, {
    id: "ox-eye8",
    when: { has: "h2o2", minW: 8 },
    text: "Peroxide at this strength can blind and feeds fire. Sealed goggles, gloves, no rags or paper towels left wet with it. Dilute once, in cold water, in the open air or a ventilated room.",
    source: "echa-peroxide, gischem-peroxide",
  }),
  plain({
    id: "ox-12",
    // The rule says more than 12 %.
    when: { has: "h2o2", minW: 12.0001 },
    text: "In the EU this strength is not sold to or held by private persons without a licence. Buy weaker.",
    source: "eu-2019-1148",
  }),
  plain({
    id: "ox-35",
    when: { has: "h2o2", minW: 35 },
    text: "This strength burns skin and lungs. Not for a home darkroom.",
    source: "echa-peroxide",
  }),
  lasting({
    id: "ox-vent",
    when: { has: "h2o2", act: ["mix", "store", "discard"] },
    text: "Never stopper mixed or used bleach: it makes gas and the bottle can burst. Vented cap or open tray, then discard.",
    source: "peroxide-maker, none",
  }),
  plain({
    id: "ox-back",
    when: { has: "h2o2", act: ["finish"] },
    text: "Nothing goes back into the peroxide bottle.",
    source: "none",
  }),
  plain({
    id: "ox-metal",
    when: { has: "h2o2", act: ["mix"] },
    text: "Plastic or glass only: metal, rust and dirt make peroxide decompose, hot.",
    source: "peroxide-maker",
  }),
  lasting({
    id: "ox-solvent",
    when: { all: ["h2o2", "solvent"] },
    text: "Stop. Peroxide and solvents can form explosives. Do not mix.",
    source: "general-chemistry",
  }),
  plain({
    id: "ox-acetic",
    when: { all: ["h2o2", "acetic"], act: ["mix", "store"] },
    text: "These make a little peracetic acid, which stings eyes and lungs. Only dilute, fresh, ventilated; keep the stocks apart; never strong with strong.",
    source: "peracetic-article",
  }),
  lasting({
    id: "cl-acid",
    when: { room: "hypochlorite", any: ["acetic", "citric", "fixer", "h2o2"] },
    text: "No chlorine bleach near these baths, not even for cleaning trays: it frees poisonous gas.",
    source: "poison-centres",
  }),
  ranked("ac", 1, {
    id: "ac-10",
    when: { has: "acetic", minW: 10 },
    text: "Irritates skin and eyes. Gloves, goggles, air.",
    source: "clp-acetic",
  }),
  ranked("ac", 2, {
    id: "ac-25",
    when: { has: "acetic", minW: 25 },
    text: "Burns skin and eyes; vapour chokes. Pour acid into water. Above 80 % it also catches fire.",
    source: "clp-acetic, icsc-0363",
  }),
  plain({
    id: "ci",
    when: { has: "citric", act: ["mix"] },
    text: "Powder and splashes irritate eyes and throat: no dust.",
    source: "clp-citric",
  }),
  plain({
    id: "dev-skin",
    when: { any: ["metol", "hydroquinone"], act: ["mix", "run"] },
    text: "Developers can make skin allergic for life. Gloves or tongs every time; wash splashes at once.",
    source: "icsc-1528, ipcs-101",
  }),
  plain({
    id: "dev-powder",
    when: { any: ["metol", "hydroquinone"], form: "powder" },
    text: "Do not breathe developer powder: mask, still air, wipe up wet.",
    source: "icsc-1528",
  }),
  plain({
    id: "dev-drain",
    when: { any: ["metol", "hydroquinone"], act: ["discard"] },
    text: "Very harmful to water life: local rules, not the garden or a septic tank.",
    source: "sids-hydroquinone",
  }),
  plain({
    id: "so2",
    when: { any: ["sulfite", "metabisulfite", "thiosulfate"], with: ["acid"] },
    text: "Acid on sulfite or fixer gives off choking gas. Rinse between; people with asthma leave the room.",
    source: "icsc-1200",
  }),
  plain({
    id: "clear-hot",
    when: { all: ["sulfite", "h2o2"] },
    text: "Sulfite and peroxide react with heat. Dilute only; never pour stock into stock.",
    source: "none",
  }),
  plain({
    id: "fix-am",
    when: { has: "ammonium thiosulfate", with: ["alkali"] },
    text: "Alkali drives out ammonia. Rinse between.",
    source: "general-chemistry",
  }),
  plain({
    id: "ag-nh3",
    when: { all: ["silver", "ammonia"] },
    text: "Never add ammonia to silver-bearing baths or let such a mix stand: it can leave an explosive deposit.",
    source: "general-chemistry",
  }),
  plain({
    id: "ag-waste",
    when: { any: ["fixer", "bleach"], act: ["discard"] },
    text: "Used fixer and bleach hold silver. Ask what your local rules allow; collect rather than pour.",
    source: "none",
  }),
  lasting({
    id: "waste-apart",
    when: { any: ["fixer", "bleach", "h2o2"], act: ["discard"] },
    text: "Two waste vessels: never used fixer and used bleach together (heat, choking gas), and none with peroxide in it closed. Ask what your local rules allow.",
    source: "general-chemistry",
  }),
  plain({
    id: "mains",
    when: { act: ["run"] },
    text: "Wet hands and mains do not meet: lamp out of reach of splashes, low voltage or a protected socket, switch by a dry hand or foot; phone on its battery.",
    source: "none",
  }),
  plain({
    id: "cr6",
    when: { has: "dichromate" },
    text: "Causes cancer, harms fertility, sensitises. We advise against it; a peroxide process exists.",
    source: "echa-dichromate",
  }),
  plain({
    id: "mn7",
    when: { has: "permanganate" },
    text: "Strong oxidiser, stains, harms water life; with salt or hydrochloric acid it gives chlorine. Skilled users only.",
    source: "permanganate-sheets",
  }),
  plain({
    id: "h2so4",
    when: { has: "sulfuric", minW: 5 },
    text: "Corrosive. Acid into water, slowly, sealed goggles. Above 15 % restricted in the EU.",
    source: "eu-2019-1148, general-chemistry",
  }),
  plain({
    id: "food",
    when: { act: ["mix", "store"] },
    text: "No kitchen measures, no drink bottles, nothing to eat in the darkroom. Lock away from children and animals. Vinegar used here is no longer food.",
    source: "none",
  }),
  plain({
    id: "air",
    when: { act: ["run"], any: ["acetic", "fixer", "h2o2", "sulfite"] },
    text: "Move the air: an outlet at tray height, fresh air behind you. A headache or cough means stop and leave.",
    source: "none",
  }),
  lasting({
    id: "help",
    when: {},
    text: "Splash in the eye: rinse with plain water for many minutes, lenses out, and get medical help. Swallowed or breathed in: poison centre or emergency number, label in hand; do not make anyone vomit.",
    source: "icsc-0363",
  }),
];

interface Row {
  readonly id: string;
  readonly when: CautionWhen;
  readonly text: string;
  readonly source: string;
}

function plain(row: Row): Caution {
  return { ...row, family: row.id, rank: 1, dismissible: true };
}

function lasting(row: Row): Caution {
  return { ...plain(row), dismissible: false };
}

function ranked(family: string, rank: number, row: Row): Caution {
  return { ...plain(row), family, rank };
}

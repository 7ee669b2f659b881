import type { ColourOfLightFacts } from "../errors/ledgerFacts.ts";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { actinicSd } from "../light/actinicSd.ts";
import { actinicStops } from "../light/actinicStops.ts";
import type { GlassWord, PlanFoundWith, SensitivityWord } from "./planTypes.ts";

/** Beyond this the model has only the tail of the paper's response left. */
const farthestStops = 4;

/** The ledger's line of the colour of the light. Inner helper of `plan`; without a light it computes nothing. */
export function colourOfLight(input: {
  readonly source: string | undefined;
  readonly sensitivity: SensitivityWord;
  readonly glass: GlassWord;
  readonly foundWith: PlanFoundWith | undefined;
}): ColourOfLightFacts {
  const { source, sensitivity, glass, foundWith } = input;
  const ownSheets = foundWith !== undefined;
  if (source === undefined) {
    return {
      stops: 0,
      sd: 0,
      source: null,
      sensitivity,
      glass,
      actinicStops: null,
      thenSource: null,
      thenGlass: null,
      thenActinicStops: null,
      inIndex: ownSheets,
      ownSheets,
    };
  }
  const paper = sensitivity === "blue" ? "chlorobromide" : sensitivity;
  const now = at("light/source", () => actinicStops({ source, paper, lens: glass }));
  if (Math.abs(now) > farthestStops) {
    throw new OutOfDomain("lampHasNoLightForThisPaper", { source, paper, actinicStops: now }, "light/source");
  }
  const thenSource = foundWith?.source ?? source;
  const thenGlass = foundWith?.glass ?? glass;
  const then = ownSheets
    ? at("paper/foundWith/source", () => actinicStops({ source: thenSource, paper, lens: thenGlass }))
    : 0;
  const inIndex = ownSheets && thenSource === source && thenGlass === glass;
  const found = ownSheets ? { foundSource: thenSource, foundLens: thenGlass } : {};
  return {
    stops: then - now,
    sd: actinicSd({ source, paper: sensitivity, lens: glass, ...found }),
    source,
    sensitivity,
    glass,
    actinicStops: now,
    thenSource: ownSheets ? thenSource : null,
    thenGlass: ownSheets ? thenGlass : null,
    thenActinicStops: ownSheets ? then : null,
    inIndex,
    ownSheets,
  };
}

function at<Value>(key: string, compute: () => Value): Value {
  try {
    return compute();
  } catch (fault) {
    if (fault instanceof OutOfDomain) throw new OutOfDomain(fault.code, fault.facts, key);
    throw fault;
  }
}

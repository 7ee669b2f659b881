import { OutOfDomain } from "@captray/science/errors";
import { reciprocityEffectiveTime, reciprocityFromTable, reciprocityTime } from "@captray/science/exposure";
import {
  contactFromPapers,
  type DrawnPapers,
  drawPapers,
  lightness,
  marksFromPapers,
  type PlanFromPapers,
  type PrintFromPapers,
  planFromPapers,
  printFromPapers,
} from "@captray/science/tone";
import type { RecordId } from "../records/index.ts";
import type {
  ExpectedPrint,
  ExpectedPrintArea,
  ExpectedPrintAsked,
  ExpectedPrintOf,
  ExpectedPrintPoint,
  ExpectedPrintRecommendation,
  ExpectedPrintVerdict,
  Interval,
  WantedTone,
} from "./expectedPrintTypes.ts";
import { flashRateOf } from "./flashRateOf.ts";
import type { Kit } from "./kit.ts";
import { exposureOfMid, logExposureOfPlaced, papersAskedOf } from "./papersAskedOf.ts";
import type { PlanOf } from "./planOf.ts";

type Planned = Extract<PlanOf, { readonly kind: "plan" }>;

const LOG_STOP = Math.log10(2);
const NINE_IN_TEN = 1.6448536269514722;
/** Tones less apart than this nobody sees to differ between two prints in hand. */
const TOLD_APART = 0.03;
/** Areas less apart in light than this are not said to print alike: they are alike. */
const APART_IN_LIGHT_STOPS = 0.2;
const SHORT_SECOND_DEVELOPMENT = 0.7;
const LEAST_STOPS = -5;
const MOST_STOPS = 4;

/**
 * What the print of a scene will look like with its kit: areas on the paper's curve with their doubt, what is wanted, what would
 * bring it, and what cannot be.
 *
 * Until prints are measured the curve is assumed and only its place is known, by the exposure index. Whatever the index, a tone placed
 * on mid is expected at its aim.
 */
export function expectedPrintOf({ kit, plan, papers, choice, measured }: ExpectedPrintAsked): ExpectedPrintOf {
  if (plan.kind !== "plan") return plan;
  try {
    const drawn = papers ?? drawPapers(papersAskedOf({ kit, plan, measured }).input);
    return { ...printOf(kit, plan, drawn, choice ?? {}), basis: basisOf(measured) };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

function printOf(
  kit: Kit,
  plan: Planned,
  papers: DrawnPapers,
  choice: NonNullable<ExpectedPrintAsked["choice"]>,
): Omit<ExpectedPrint, "basis"> {
  const { scene, flashLamp } = kit;
  const zero = logExposureOfPlaced(plan);
  const stopsOf = (logExposure: number) => (logExposure - zero) / LOG_STOP;
  const ledgerS = plan.answer.timeS;
  const inHandS = choice.timeS ?? scene.chosenTimeS?.value ?? ledgerS;
  const { effectiveOf, timeFor } = longExposureOf(plan);
  const slidStops = Math.log2(effectiveOf(inHandS) / effectiveOf(ledgerS));
  const wishedS = choice.flashS ?? kit.flash?.timeS ?? 0;
  const rate = flashRateOf({ flashLamp, paperBoxId: kit.paperBox?.id, exposureIndexId: kit.exposureIndex?.id }) ?? null;
  const countedS = rate === null ? 0 : wishedS;

  const metered = plan.answer.areas.map(({ logExposure }) => logExposure);
  const logExposure = metered.map((value) => value + LOG_STOP * slidStops);
  const print = printFromPapers({ papers, logExposure, flashS: countedS });
  const ringIs = countedS > 0 ? "withoutFlash" : Math.abs(slidStops) > 1e-9 ? "atTheLedgersTime" : null;
  const others = ringIs === "withoutFlash" ? logExposure : metered;
  const rings =
    ringIs === null ? null : marksFromPapers({ papers, logExposure: others, meanLogExposure: meanOf(others) });
  const contact = contactOf(papers, print, kit, plan);
  const ids = areaIdsOf(kit);
  const areas = print.areas.map((area, index): ExpectedPrintArea => {
    const ring = rings?.[index];
    const held = contact?.[index];
    return {
      areaId: ids[index] as RecordId,
      name: plan.answer.areas[index]?.area ?? "",
      fromPlacedStops: stopsOf(metered[index] ?? zero),
      atStops: stopsOf(area.logTotal),
      density: area.density,
      interval: area.interval,
      lightness: area.lightness,
      beyondPaper: area.beyondPaper,
      ring:
        ring === undefined
          ? null
          : { atStops: stopsOf(ring.logTotal), density: ring.density, lightness: lightness({ density: ring.density }) },
      contactPrint: held === undefined ? null : { ...held, lightness: lightness({ density: held.density }) },
    };
  });
  const marks = areas.map(({ atStops }) => atStops);
  const { planned, wanted } = wantedOf(papers, metered, kit, stopsOf, keptOf(metered, ids, scene.letGoAreaIds));
  const low = wanted.shadow.atStops;
  const high = wanted.highlight.atStops;
  const [fromStops, toStops] = [Math.min(...marks), Math.max(...marks)];
  return {
    kind: "print",
    process: papers.settings.process,
    areas,
    ring: ringIs,
    curve: curveOf(papers, stopsOf, [...marks, ...(rings ?? []).map(({ logTotal }) => stopsOf(logTotal))]),
    aim: { density: print.aimDensity, atStops: stopsOf(Math.log10(exposureOfMid(plan))) },
    reach: print.reach,
    scene: {
      stops: (Math.max(...metered) - Math.min(...metered)) / LOG_STOP,
      onPaperStops: toStops - fromStops,
      fromStops,
      toStops,
    },
    paper:
      low === null || high === null
        ? null
        : { stops: high - low, fromStops: Math.min(low, high), toStops: Math.max(low, high) },
    wanted,
    time: { ledgerS, inHandS, slidStops },
    flash: {
      countedS,
      wishedS,
      when: kit.flash?.when ?? null,
      rate,
      intervalS: rate === null || countedS === 0 ? null : flashInterval(countedS, rate.sdLn),
    },
    recommendation: recommendationOf(planned, wanted, rate, (factor) => timeFor(effectiveOf(ledgerS) * factor)),
    verdicts: [
      ...rangeVerdicts(planned),
      ...reachVerdicts(planned, wanted),
      ...areaVerdicts(areas, print, scene.letGoAreaIds ?? []),
      ...(papers.settings.process === "reversal" && papers.settings.u2 < SHORT_SECOND_DEVELOPMENT
        ? [{ kind: "shortSecondDevelopment" as const, dose: papers.settings.u2 }]
        : []),
      ...(wishedS > 0 && rate === null ? [{ kind: "flashNotTested" as const, flashS: wishedS }] : []),
    ],
  };
}

/** The areas that have a reading, in the order of the plan's answer. */
function areaIdsOf({ scene }: Kit): readonly RecordId[] {
  return scene.areas.flatMap((area) =>
    scene.readings.some(({ id, reading }) => id === area.readingId && reading !== undefined) ? [area.id] : [],
  );
}

/** The exposures planned for: those of areas that may be lost are left out, unless all may be. */
function keptOf(metered: readonly number[], ids: readonly RecordId[], letGo: readonly RecordId[] = []) {
  const kept = metered.filter((_, index) => !letGo.includes(ids[index] as RecordId));
  return kept.length === 0 ? metered : kept;
}

/** From seconds to those that count, and back, by what the ledger knows of long exposures. */
function longExposureOf({ input }: Planned) {
  const { exponent, fromS = 1, table } = input.paper.reciprocity ?? {};
  if (table !== undefined) {
    // With its columns changed over a table is read backwards.
    const backwards = table.map(([metered, needed]) => [needed, metered] as const);
    return {
      effectiveOf: (timeS: number) => reciprocityFromTable({ meteredTimeS: timeS, table: backwards }).timeS,
      timeFor: (meteredTimeS: number) => reciprocityFromTable({ meteredTimeS, table }).timeS,
    };
  }
  if (exponent === undefined) return { effectiveOf: (timeS: number) => timeS, timeFor: (timeS: number) => timeS };
  return {
    effectiveOf: (timeS: number) => reciprocityEffectiveTime({ timeS, exponent, fromS }),
    timeFor: (meteredTimeS: number) => reciprocityTime({ meteredTimeS, exponent, fromS }),
  };
}

/** log10 of the mean image exposure of some areas. */
function meanOf(logExposure: readonly number[]): number {
  return Math.log10(logExposure.reduce((sum, value) => sum + 10 ** value, 0) / logExposure.length);
}

/** The contact print of a negative, what is placed on mid grey there too. */
function contactOf(papers: DrawnPapers, print: PrintFromPapers, { scene }: Kit, plan: Planned) {
  if (papers.settings.process !== "negative") return null;
  const logTotal = print.areas.map((area) => area.logTotal);
  const placed = plan.answer.areas.findIndex(({ area }) => area === plan.input.place?.area);
  const isOnMid = placed >= 0 && (scene.place?.stops ?? 0) === 0;
  const logTotalOfMid = (isOnMid ? logTotal[placed] : undefined) ?? Math.log10(exposureOfMid(plan));
  return contactFromPapers({ papers, logTotal, logTotalOfMid });
}

function basisOf(measured: ExpectedPrintAsked["measured"]): ExpectedPrint["basis"] {
  if (measured === undefined) return "assumed";
  return "fit" in measured ? "fit" : "curve";
}

/** The points of the curve that the drawing needs to hold all marks, whole stops at either end. */
function curveOf(
  { band }: DrawnPapers,
  stopsOf: (logExposure: number) => number,
  marks: readonly number[],
): readonly ExpectedPrintPoint[] {
  const from = Math.min(LEAST_STOPS, ...marks.map((mark) => Math.floor(mark - 0.5))) - 1e-6;
  const to = Math.max(MOST_STOPS, ...marks.map((mark) => Math.ceil(mark + 0.5))) + 1e-6;
  const points: ExpectedPrintPoint[] = [];
  for (const [index, logExposure] of band.logExposure.entries()) {
    const stops = stopsOf(logExposure);
    if (stops < from || stops > to) continue;
    const at = { density: band.density[index] ?? 0, low: band.low[index] ?? 0, high: band.high[index] ?? 0 };
    points.push({ stops, ...at });
  }
  return points;
}

/** The tones to plan for and what they ask of the light; the lightest area shall be the white, the darkest the black. */
function wantedOf(
  papers: DrawnPapers,
  metered: readonly number[],
  { recipe }: Kit,
  stopsOf: (logExposure: number) => number,
  kept: readonly number[],
): { readonly planned: PlanFromPapers; readonly wanted: ExpectedPrint["wanted"] } {
  const meanLogExposure = meanOf(metered);
  const asked = {
    papers,
    logHighlight: Math.max(...kept),
    logShadow: Math.min(...kept),
    meanLogExposure,
  };
  const { wants } = planFromPapers(asked);
  const own = recipe?.wanted;
  const highlightDensity = own?.highlightDensity ?? asShown(wants.highlightDensity);
  const shadowDensity = own?.shadowDensity ?? asShown(wants.shadowDensity);
  const planned = planFromPapers({ ...asked, highlightDensity, shadowDensity });
  const tone = (density: number, logTotal: number | null): WantedTone => ({
    density,
    own: own !== undefined,
    atStops: logTotal === null ? null : stopsOf(logTotal),
    nearest: logTotal === null ? Math.min(Math.max(density, planned.reach.lightest), planned.reach.darkest) : null,
  });
  return {
    planned,
    wanted: {
      highlight: tone(highlightDensity, planned.logHighlightTotal),
      shadow: tone(shadowDensity, planned.logShadowTotal),
    },
  };
}

/** To the nearest 0.05. */
function asShown(density: number): number {
  return Math.round(density * 20) / 20;
}

function flashInterval(flashS: number, sdLn: number): Interval {
  const factor = Math.exp(NINE_IN_TEN * sdLn);
  return { low: flashS / factor, high: flashS * factor };
}

function recommendationOf(
  { plan, highlightFactor }: PlanFromPapers,
  { highlight, shadow }: ExpectedPrint["wanted"],
  rate: ExpectedPrint["flash"]["rate"],
  timeFor: (factor: number) => number,
): ExpectedPrintRecommendation | null {
  const tones = [
    ...(highlight.atStops === null ? ["highlight" as const] : []),
    ...(shadow.atStops === null ? ["shadow" as const] : []),
  ];
  if (tones.length > 0) return { kind: "toneOutOfReach", tones };
  if (plan === null || highlightFactor === null) return null;
  const alone = { timeS: timeFor(highlightFactor), exposureStops: Math.log2(highlightFactor) };
  if (plan.verdict === "sceneShorterThanPaper") return { kind: "exposureAlone", ...alone };
  if (rate === null) return { kind: "makeAFlashStrip", ...alone };
  const flashS = plan.flashLxS / rate.valueLx;
  return {
    kind: "exposureAndFlash",
    timeS: timeFor(plan.exposureFactor),
    exposureStops: plan.exposureStops,
    flashS,
    flashIntervalS: flashInterval(flashS, rate.sdLn),
  };
}

function rangeVerdicts({ plan }: PlanFromPapers): readonly ExpectedPrintVerdict[] {
  if (plan === null) return [];
  return [
    {
      kind: plan.verdict,
      byStops: Math.abs(plan.sceneLongerByStops),
      sceneStops: plan.sceneRange / LOG_STOP,
      paperStops: plan.paperRange / LOG_STOP,
    },
  ];
}

function reachVerdicts(
  { reach }: PlanFromPapers,
  { highlight, shadow }: ExpectedPrint["wanted"],
): readonly ExpectedPrintVerdict[] {
  return (
    [
      ["highlight", highlight],
      ["shadow", shadow],
    ] as const
  ).flatMap(([tone, { density, nearest }]) =>
    nearest === null ? [] : [{ kind: "toneOutOfReach" as const, tone, wanted: density, nearest, reach }],
  );
}

function areaVerdicts(
  areas: readonly ExpectedPrintArea[],
  print: PrintFromPapers,
  letGo: readonly RecordId[],
): readonly ExpectedPrintVerdict[] {
  const inLight = areas
    .map((area, index) => ({ area, imageShare: print.areas[index]?.imageShare ?? 1 }))
    .sort((left, right) => right.area.atStops - left.area.atStops);
  const beyond = areas.flatMap(({ areaId, name, beyondPaper }): ExpectedPrintVerdict[] =>
    beyondPaper === null || letGo.includes(areaId) ? [] : [{ kind: "beyondPaper", area: name, side: beyondPaper }],
  );
  const alike = inLight.slice(1).flatMap(({ area: darker }, index): ExpectedPrintVerdict[] => {
    const lighter = inLight[index]?.area ?? darker;
    const apart = Math.abs(toneOf(lighter) - toneOf(darker));
    return apart < TOLD_APART && lighter.fromPlacedStops - darker.fromPlacedStops >= APART_IN_LIGHT_STOPS
      ? [{ kind: "printAlike", areas: [lighter.name, darker.name] }]
      : [];
  });
  const darkest = inLight.at(-1);
  const flat = darkest !== undefined && darkest.imageShare < 0.5;
  return [...beyond, ...alike, ...(flat ? [{ kind: "flatShadow" as const, area: darkest.area.name }] : [])];
}

/** What the eye will judge: the print, of a negative the contact print. */
function toneOf({ density, contactPrint }: ExpectedPrintArea): number {
  return contactPrint?.density ?? density.value;
}

import type { ExpectedPrint, ExpectedPrintVerdict } from "@captray/notebook/answers";
import { showTime } from "@captray/science/notation";
import { rangeWords } from "../readingNow/barWords.ts";
import { capital } from "./printView.ts";

/** What a press under a note does. */
export type PrintWay =
  | { readonly does: "flashStrip" }
  | { readonly does: "letGo"; readonly areas: readonly string[] }
  | { readonly does: "take"; readonly timeS: number; readonly flashS: number; readonly words: string };

export interface PrintNote {
  readonly head: string;
  readonly say: string;
  readonly ways: readonly PrintWay[];
}

type Kind = ExpectedPrintVerdict["kind"];
/** The verdicts of a kind; two kinds share one shape. */
type Of<K extends Kind> = ExpectedPrintVerdict & { readonly kind: K };

/** What the expected print asks to be known, in words and in numbers of the scene; the heaviest first. */
export function printNotes({
  print,
  letGo,
}: {
  readonly print: ExpectedPrint;
  /** Names of areas that may be lost. */
  readonly letGo: readonly string[];
}): readonly PrintNote[] {
  const { verdicts } = print;
  const longer = find(verdicts, "sceneLongerThanPaper");
  const lost = verdicts.filter(
    (verdict): verdict is Of<"beyondPaper"> => verdict.kind === "beyondPaper" && !letGo.includes(verdict.area),
  );
  return [
    ...(lost.length > 0 || (longer !== undefined && longer.byStops >= 0.1) ? [rangeNote(print, longer, lost)] : []),
    ...verdicts.flatMap((verdict) => otherNote(print, verdict)),
  ];
}

function rangeNote(
  print: ExpectedPrint,
  longer: Of<"sceneLongerThanPaper"> | undefined,
  lost: readonly Of<"beyondPaper">[],
): PrintNote {
  const [first] = lost;
  const apart =
    longer === undefined
      ? ""
      : `${extremes(print)} are ${stops(print.scene.stops)} apart; this paper holds ${figure(longer.paperStops)}.`;
  const help = longer === undefined ? { say: "", ways: [] } : wayOut(print);
  return {
    head:
      first === undefined
        ? `The scene is ${stops(print.scene.stops)}, this paper holds ${figure(longer?.paperStops ?? 0)}`
        : lostHead(print, lost),
    say: [apart, help.say].filter((sentence) => sentence !== "").join(" "),
    ways: [...help.ways, ...(first === undefined ? [] : [{ does: "letGo" as const, areas: lostOn(lost, first.side) }])],
  };
}

function lostHead({ process }: ExpectedPrint, lost: readonly Of<"beyondPaper">[]): string {
  const [first] = lost;
  const side = first?.side ?? "black";
  const names = lostOn(lost, side);
  const tone =
    process === "reversal"
      ? side === "black"
        ? "be empty black"
        : "be blank, as light as this print gets"
      : side === "white"
        ? "be clear, and print black"
        : "be blocked, and print white";
  return `${capital(listed(names))} will ${tone}`;
}

function lostOn(lost: readonly Of<"beyondPaper">[], side: "white" | "black"): readonly string[] {
  return lost.filter((one) => one.side === side).map(({ area }) => area);
}

function wayOut(print: ExpectedPrint): { readonly say: string; readonly ways: readonly PrintWay[] } {
  const { recommendation, flash, wanted } = print;
  switch (recommendation?.kind) {
    case "makeAFlashStrip":
      return {
        say: "Flash would help. Your lamp has not been tested: make a flash strip first.",
        ways: [{ does: "flashStrip" }],
      };
    case "exposureAndFlash": {
      const { timeS, flashS, flashIntervalS } = recommendation;
      const given = `${showTime({ timeS })} and ${seconds(flashS)} of flash`;
      const doubt = `${rangeWords(flashIntervalS)} of flash would not surprise`;
      const tones = `${wanted.highlight.density.toFixed(2)} and ${wanted.shadow.density.toFixed(2)}`;
      const isTaken =
        Math.abs(flash.countedS - flashS) < 0.25 && Math.abs(Math.log2(print.time.inHandS / timeS)) < 0.05;
      return isTaken
        ? { say: `With ${given} both ends come as wanted, ${tones}; ${doubt}.`, ways: [] }
        : {
            say: `${capital(given)} would bring both ends as wanted, ${tones}; ${doubt}.`,
            ways: [{ does: "take", timeS, flashS, words: `Take ${given}` }],
          };
    }
    default:
      return { say: "", ways: [] };
  }
}

function otherNote(print: ExpectedPrint, verdict: ExpectedPrintVerdict): PrintNote[] {
  switch (verdict.kind) {
    case "toneOutOfReach": {
      const isLight = verdict.tone === "highlight" ? print.process === "reversal" : print.process === "negative";
      return [
        {
          head: `${capital(toneName(print, verdict.tone))} ${verdict.wanted.toFixed(2)} is out of reach`,
          say: `${isLight ? "The lightest" : "The darkest"} this paper gives with this recipe is ${verdict.nearest.toFixed(2)}.`,
          ways: [],
        },
      ];
    }
    case "sceneShorterThanPaper":
      return verdict.byStops < 0.5 ? [] : [shorterNote(print, verdict as Of<"sceneShorterThanPaper">)];
    case "printAlike": {
      const [lighter, darker] = verdict.areas;
      const say = "Nobody could tell them apart: a little less light parts them, if the darker end can bear it.";
      return [{ head: `${capital(lighter)} and ${darker} print alike`, say, ways: [] }];
    }
    case "flatShadow":
      return [
        {
          head: `The flash flattens ${verdict.area}`,
          say: "More than half of its contrast goes into the veil. Less flash, or let the darkest part go.",
          ways: [],
        },
      ];
    case "shortSecondDevelopment":
      return [
        {
          head: "The second development is short",
          say: `At ${verdict.dose.toFixed(2)} of the recipe’s the blacks stay grey; nothing here counts what is not developed through.`,
          ways: [],
        },
      ];
    case "flashNotTested":
      return [
        {
          head: "The flash is not counted",
          say: `${seconds(verdict.flashS)} of flash are wished, and this lamp has no strip: what they do nobody knows yet.`,
          ways: [{ does: "flashStrip" }],
        },
      ];
    default:
      return [];
  }
}

function shorterNote(print: ExpectedPrint, { byStops, paperStops }: Of<"sceneShorterThanPaper">): PrintNote {
  const { recommendation } = print;
  const ways: PrintWay[] =
    recommendation?.kind === "exposureAlone" && Math.abs(Math.log2(print.time.inHandS / recommendation.timeS)) > 0.08
      ? [
          {
            does: "take",
            timeS: recommendation.timeS,
            flashS: 0,
            words: `Take ${showTime({ timeS: recommendation.timeS })}`,
          },
        ]
      : [];
  const white = toneName(print, "highlight");
  const time =
    ways.length === 0
      ? ""
      : ` For the ${white}: ${ways[0]?.does === "take" ? showTime({ timeS: ways[0].timeS }) : ""}.`;
  return {
    head: `The scene is ${stops(byStops)} shorter than the paper`,
    say: `${extremes(print)} are ${stops(print.scene.stops)} apart; this paper holds ${figure(paperStops)}. It prints soft: flash cannot help, a harder paper or filter would.${time}`,
    ways,
  };
}

function toneName({ process }: ExpectedPrint, tone: "highlight" | "shadow"): string {
  if (process === "negative") return tone === "highlight" ? "wanted dense end" : "wanted thin end";
  return tone === "highlight" ? "wanted white" : "wanted black";
}

/** “Snow and shed door”: the lightest area and the darkest. */
function extremes({ areas }: ExpectedPrint): string {
  const inLight = [...areas].sort((one, other) => other.fromPlacedStops - one.fromPlacedStops);
  return `${capital(inLight[0]?.name ?? "")} and ${inLight.at(-1)?.name ?? ""}`;
}

function find<K extends Kind>(verdicts: readonly ExpectedPrintVerdict[], kind: K): Of<K> | undefined {
  return verdicts.find((verdict): verdict is Of<K> => verdict.kind === kind);
}

/** “snow, jug and hull”. */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** “7 stops”, “3.4 stops”. */
function stops(value: number): string {
  return `${figure(value)} ${figure(value) === "1" ? "stop" : "stops"}`;
}

function figure(value: number): string {
  return String(Number(value.toFixed(1)));
}

function seconds(timeS: number): string {
  return showTime({ timeS: Math.max(0.1, timeS) });
}

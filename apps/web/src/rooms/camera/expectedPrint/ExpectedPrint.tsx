import { type Across, acrossOf, toneDrawing, toneGround } from "@captray/drawings/tone";
import type { Kit, PlanOf, ExpectedPrint as Print } from "@captray/notebook/answers";
import { messageOf } from "@captray/science/errors";
import { showTime } from "@captray/science/notation";
import { memo, useMemo, useRef } from "react";
import { Choice } from "../../../kit/Choice.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { EyeStrip } from "../../../kit/EyeStrip.tsx";
import { Scale } from "../../../kit/Scale.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useRoomFor } from "../../../kit/useRoomFor.ts";
import { Word } from "../../../kit/Word.tsx";
import { rangeWords } from "../readingNow/barWords.ts";
import { flashAside, flashTicks, whenOptions } from "./flashWords.ts";
import { MadeHow } from "./MadeHow.tsx";
import type { PrintShown } from "./printShown.ts";
import { captionWords, eyeTones, type PrintDrawing, printDrawing, printOfWords } from "./printView.ts";
import { spokenTime } from "./spokenTime.ts";
import { timeTicks } from "./timeTicks.ts";
import { type PrintPart, useExpectedPrintPart } from "./useExpectedPrintPart.ts";
import "./ExpectedPrint.css";

type Planned = Extract<PlanOf, { kind: "plan" }>;

export interface ExpectedPrintProps {
  readonly kit: Kit;
  readonly plan: Planned;
  readonly shown: PrintShown;
}

/** The print to be expected: areas on the paper's curve, and the scales of cap time and flash that move them. */
export default function ExpectedPrint({ kit, plan, shown }: ExpectedPrintProps) {
  const part = useExpectedPrintPart({ kit, plan, shown });
  const { print } = part;
  const isNegative = print?.kind === "print" ? print.process === "negative" : kit.scene.result === "negative";
  return (
    <Section
      number={3}
      head={isNegative ? "Expected negative" : "Expected print"}
      aside={<Aside kit={kit} print={print} />}
    >
      {print?.kind === "print" ? (
        <Figure part={part} print={print} plan={plan} />
      ) : (
        <div className="Camera-Print-place">{print === undefined ? null : <NoPrint print={print} />}</div>
      )}
      <MadeHow kit={kit} wanted={print?.kind === "print" ? print.wanted : undefined} />
    </Section>
  );
}

function Figure({ part, print, plan }: { readonly part: PrintPart; readonly print: Print; readonly plan: Planned }) {
  const { kit } = part;
  const [widthPx, letterPx, place] = useRoomFor();
  // Until it is measured, as on a phone.
  const room = { widthPx: widthPx > 0 ? widthPx : 358, letterPx };
  const curve = useSteady(print.curve);
  const asked: PrintDrawing = printDrawing({ print: { ...print, curve }, of: printOfWords(kit) });
  const input = {
    ...asked,
    ...room,
    perDensityPx: perDensity(room.widthPx, asked.kind),
    leastNameRows: room.widthPx < 440 ? 2 : 1,
  };
  // All but the marks stays while a finger slides, and is not drawn anew.
  const { fromStops, toStops, kind } = asked;
  const wishes = asked.wanted.map(({ words }) => words).join();
  const made = useRef(input);
  made.current = input;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the ground is made of, and not where the marks are
  const ground = useMemo(
    () => toneGround(made.current),
    [curve, fromStops, toStops, kind, wishes, room.widthPx, room.letterPx],
  );
  const across = acrossOf(input);
  const placed = plan.input.place?.area;
  return (
    <figure className="Camera-Print">
      <div ref={place} className="Camera-Print-drawing">
        <Drawing drawing={toneDrawing(input, ground)} />
      </div>
      <CapTime part={part} print={print} plan={plan} across={across} room={room} />
      <Flash part={part} print={print} room={room} />
      <EyeStrip
        tones={eyeTones(print)}
        printedHead={
          print.process === "negative"
            ? `its contact print, about${placed === undefined ? "" : `, ${placed} at mid grey`}:`
            : undefined
        }
      />
      <figcaption className="small soft">{captionWords({ print, kit })}</figcaption>
    </figure>
  );
}

interface ScalePlace {
  readonly widthPx: number;
  readonly letterPx: number;
}

function CapTime(props: {
  readonly part: PrintPart;
  readonly print: Print;
  readonly plan: Planned;
  readonly across: Across;
  readonly room: ScalePlace;
}) {
  const { part, print, plan, across, room } = props;
  const { ledgerS, inHandS } = print.time;
  const perStopPx = across.x(1) - across.x(0);
  // From 28 px, so that half of the thumb is inside; and not below what any hand can do.
  const least = Math.max((28 - across.x(0)) / perStopPx, Math.min(-4, Math.log2(0.3 / ledgerS)));
  const most = (room.widthPx - 28 - across.x(0)) / perStopPx;
  const ticks = useMemo(
    () => timeTicks({ ledgerS, least, most, perStopPx, letterPx: room.letterPx }),
    [ledgerS, least, most, perStopPx, room.letterPx],
  );
  const ratio = inHandS / ledgerS;
  const { low, high } = plan.answer.timeIntervalS;
  const range = { low: low * ratio, high: high * ratio };
  const isSlid = Math.abs(Math.log2(ratio)) >= 0.01;
  return (
    <>
      <Scale
        label="Cap time"
        aside={`slide: longer is ${print.process === "negative" ? "darker" : "lighter"}`}
        value={Math.log2(ratio)}
        least={least}
        most={most}
        step={0.005}
        arrow={1 / 12}
        page={1 / 3}
        home={0}
        onSlide={(stops) => part.onTime(ledgerS * 2 ** stops)}
        onSettle={part.onSettle}
        ticks={ticks}
        leastPx={across.x(least)}
        mostPx={across.x(most)}
        thumb="cap"
        thumbWords={showTime({ timeS: inHandS })}
        valueWords={`${spokenTime({ timeS: inHandS })}, ${rangeWords(range).replace(/ s$/, "")}`}
      />
      {isSlid && <BackToLedger ledgerS={ledgerS} onTime={part.onTime} onSettle={part.onSettle} />}
    </>
  );
}

function Flash({ part, print, room }: { readonly part: PrintPart; readonly print: Print; readonly room: ScalePlace }) {
  const { kit, testedLamps, when } = part;
  const { rate, countedS, intervalS } = print.flash;
  const { recommendation } = print;
  const advisedS = recommendation?.kind === "exposureAndFlash" ? recommendation.flashS : 0;
  const most = Math.max(10, 2 * Math.ceil(advisedS), Math.ceil(countedS / 5) * 5);
  const leastPx = 28;
  const mostPx = room.widthPx - 28;
  const ticks = useMemo(
    () => flashTicks({ most, widthPx: mostPx - leastPx, letterPx: room.letterPx }),
    [most, mostPx, room.letterPx],
  );
  if (rate === null) {
    const isNeeded = recommendation?.kind === "makeAFlashStrip";
    return (
      <p className="Camera-Print-row">
        <span>
          <b>Flash</b>{" "}
          <span className="soft">{isNeeded ? "would help; make a flash strip first" : "none; lamp not tested"}</span>
        </span>
        <Word to={`/camera/flash/for/${kit.scene.id}`}>Flash strip</Word>
      </p>
    );
  }
  return (
    <>
      <Scale
        label="Flash"
        aside={flashAside(kit.flashLamp)}
        value={countedS}
        least={0}
        most={most}
        step={0.1}
        arrow={0.2}
        page={1}
        home={Math.round(advisedS * 10) / 10}
        onSlide={part.onFlash}
        onSettle={part.onSettle}
        ticks={ticks}
        leastPx={leastPx}
        mostPx={mostPx}
        thumb="plate"
        thumbWords={countedS === 0 ? "none" : showTime({ timeS: countedS })}
        valueWords={intervalS === null ? "no flash" : `${spokenTime({ timeS: countedS })}, ${rangeWords(intervalS)}`}
      />
      <FlashChoices
        lamps={testedLamps}
        lampId={kit.flashLamp?.id}
        when={countedS > 0 ? when : undefined}
        onLamp={part.onLamp}
        onWhen={part.onWhen}
      />
    </>
  );
}

const BackToLedger = memo(function BackToLedger(
  props: { readonly ledgerS: number } & Pick<PrintPart, "onTime" | "onSettle">,
) {
  const { ledgerS, onTime, onSettle } = props;
  return (
    <p className="Camera-Print-row small">
      <span className="soft">The ledger’s time is {showTime({ timeS: ledgerS })}.</span>
      <Word
        onPress={() => {
          onTime(ledgerS);
          onSettle("now");
        }}
      >
        Back to it
      </Word>
    </p>
  );
});

const FlashChoices = memo(function FlashChoices(
  props: {
    readonly lamps: PrintPart["testedLamps"];
    readonly lampId: string | undefined;
    /** Nothing where there is no flash. */
    readonly when: PrintPart["when"] | undefined;
  } & Pick<PrintPart, "onLamp" | "onWhen">,
) {
  const { lamps, lampId, when, onLamp, onWhen } = props;
  return (
    <>
      {lamps.length > 1 && lamps.length <= 7 && (
        <Choice
          label="Flash from"
          value={lampId}
          onChoose={onLamp}
          options={lamps.map(({ id, name }) => ({ value: id as string, name: name || "a lamp" }))}
        />
      )}
      {when !== undefined && <Choice label="When to flash" value={when} onChoose={onWhen} options={whenOptions} />}
    </>
  );
});

/** The curve as it was, where a new answer brings the same one. */
function useSteady(curve: Print["curve"]): Print["curve"] {
  const held = useRef(curve);
  const isSame =
    held.current.length === curve.length &&
    curve.every(({ stops, density, low, high }, place) => {
      const was = held.current[place];
      return was?.stops === stops && was.density === density && was.low === low && was.high === high;
    });
  if (!isSame) held.current = curve;
  return held.current;
}

function NoPrint({ print }: { readonly print: Exclude<PrintPart["print"], Print | undefined> }) {
  if (print.kind === "missing") return <p className="say">Nothing to expect yet: the ledger misses something.</p>;
  const { code, facts, key } = print.fault;
  const { message, hint } = messageOf({ code, facts, key, lengthUnit: "mm" });
  return (
    <p className="say">
      {message} {hint}
    </p>
  );
}

function perDensity(widthPx: number, kind: "positive" | "negative"): number {
  if (widthPx >= 470) return 124;
  return kind === "negative" && widthPx < 365 ? 72 : 97;
}

/** Box, recipe, and what the print rests on; the recipe's name leads to its steps. */
function Aside({ kit, print }: { readonly kit: Kit; readonly print: PrintPart["print"] }) {
  const { paperBox, recipe } = kit;
  return (
    <>
      {paperBox?.name ? `${paperBox.name}, ` : ""}
      {recipe !== undefined && recipe.name !== "" && (
        <>
          <Word inline to={`/shelf/recipe/${recipe.id}`}>
            {recipe.name}
          </Word>
          {", "}
        </>
      )}
      {print?.kind !== "print" || print.basis === "assumed" ? "assumed" : "as measured"}
    </>
  );
}

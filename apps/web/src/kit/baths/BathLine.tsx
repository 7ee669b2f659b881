import type { BathOnHand } from "@captray/notebook/answers";
import { Word } from "../Word.tsx";
import { BathDrawn } from "./BathDrawn.tsx";
import { bathName, mixedWords, sheetsWords, verdictWords, volumeWords } from "./bathWords.ts";
import { capital } from "./capital.ts";
import "./BathLine.css";

export interface BathLineProps {
  readonly onHand: BathOnHand;
  readonly nowMs: number;
  readonly sheetM2: number;
}

/** One bath of a list: what it is, the tray over its scale, and what to do with it. */
export function BathLine({ onHand, nowMs, sheetM2 }: BathLineProps) {
  const { bath, wear, endsWithSitting } = onHand;
  const volume = volumeWords(bath.volumeMl);
  return (
    <div className="Kit-BathLine" data-verdict={wear.verdict}>
      <div className="Kit-BathLine-head">
        <span>
          <Word to={`/trays/bath/${bath.id}`}>{bathName(bath)}</Word>
          {volume !== "" && `, ${volume}`}
        </span>
        <span className="soft">{sheetsWords(wear.sheets)}</span>
      </div>
      <BathDrawn onHand={onHand} nowMs={nowMs} sheetM2={sheetM2} />
      <p>
        <b>{mixedWords(onHand, nowMs)}</b> {capital(verdictWords(wear))}.
        {endsWithSitting && wear.verdict !== "over" && (
          <> Then discard it, today, from an open vessel; never stoppered. It is not kept for tomorrow.</>
        )}
      </p>
    </div>
  );
}

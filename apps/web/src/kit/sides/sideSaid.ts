import type { SideOf } from "@captray/notebook/answers";
import type { AnyRecord } from "@captray/notebook/records";

/** A side as it is drawn: its letter, what is in it, and what that means for the hands. */
export interface SideShown {
  readonly id: string;
  readonly name: string;
  readonly head: string;
  readonly line: string;
  /** Drawn hatched: a picture lies in it. */
  readonly exposed: boolean;
}

/** A side of a holder in the words that stand in its drawing. */
export function sideSaid({
  side,
  peek,
}: {
  readonly side: SideOf;
  readonly peek: (id: string) => AnyRecord | undefined;
}): SideShown {
  const { id, name, state, sheet, others } = side;
  const base = { id, name: name === "" ? "–" : name, exposed: state === "exposed" };
  if (sheet === undefined) return { ...base, head: "empty", line: "may be loaded" };
  const { code, dates, links } = sheet;
  const also = others.map((one) => `; ${one.code} is said to be here too`).join("");
  if (state === "exposed") {
    const owed = sheet.state === "flashOwed";
    return {
      ...base,
      head: `${code}, exposed`,
      line: (owed ? "flash owed; empty it before loading" : "empty it before loading") + also,
    };
  }
  const box = links.paperBoxId === undefined ? undefined : peek(links.paperBoxId);
  const from = box?.kind === "paperBox" && box.name !== "" ? `, ${box.name.replace(/^Box(?= )/, "box")}` : "";
  const flashed = dates.flashedAt === undefined ? "" : ", flashed";
  return {
    ...base,
    head: code + from,
    line: (state === "planned" ? `laid out${flashed}, not yet loaded` : `loaded${flashed}, not yet exposed`) + also,
  };
}

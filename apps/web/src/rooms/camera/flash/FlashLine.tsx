import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Word } from "../../../kit/Word.tsx";
import { secondsWords } from "../capPage/capWords.ts";
import { whenWords } from "./flashWords.ts";

/** Where a scene or a sheet speaks of its flash: what is planned or given, or what has to be done for it first. */
export function FlashLine({ id }: { readonly id: string }) {
  const record = useRecord(id);
  const tested = useShelf("flashLamp").some(({ rate }) => rate !== undefined);
  if (typeof record === "string" || (record.kind !== "sheet" && record.kind !== "scene")) return null;
  const wished = record.kind === "sheet" ? record.flashPlanned : record.flash;
  const isGiven = record.kind === "sheet" && record.flashedAt !== undefined;
  const to = `/camera/flash/for/${id}`;
  if (wished !== undefined && wished.timeS > 0) {
    return (
      <p className="Camera-FlashLine">
        Flash of {secondsWords(wished.timeS)}, {whenWords(wished.when)}.{" "}
        <Word inline to={to}>
          {isGiven ? "It was given" : "Give the flash"}
        </Word>
      </p>
    );
  }
  if (tested) {
    return (
      <p className="Camera-FlashLine">
        No flash is planned.{" "}
        <Word inline to={to}>
          Plan a flash
        </Word>
      </p>
    );
  }
  if (record.kind === "sheet") return null;
  return (
    <p className="Camera-FlashLine">
      Flash has no seconds until a lamp was tested.{" "}
      <Word inline to={to}>
        Make a flash strip first
      </Word>
    </p>
  );
}

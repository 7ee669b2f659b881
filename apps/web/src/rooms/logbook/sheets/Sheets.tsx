import { useEffect, useRef } from "react";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useLight } from "../../../look/light.ts";
import { useSheets } from "./useSheets.ts";
import "./Sheets.css";

/** All sheets, newest first, found at once by any word. `chosen` is the one whose page lies open beside the list. */
export function Sheets({ chosen }: { readonly chosen: string }) {
  const { view, words, setWords, more } = useSheets();
  const red = useLight() === "red";
  if (view.all === 0) {
    return (
      <div className="Logbook-Sheets">
        <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
          Every sheet will stand here with what it was given and why: its ledger as it was that day, each opening of the
          cap, what went wrong, and your notes. The first one begins with a reading.
        </NothingYet>
      </div>
    );
  }
  return (
    <div className="Logbook-Sheets">
      <div className="Logbook-Sheets-find">
        <label>
          <span className="unseen">Find sheets</span>
          <input
            type="search"
            value={words}
            onChange={(event) => setWords(event.target.value)}
            placeholder={red ? "figures of a code" : "a word, a code, knocked, kept"}
            autoComplete="off"
            autoCapitalize="none"
            spellCheck={false}
            enterKeyHint="search"
            {...(red ? { inputMode: "none", "data-field": "number" } : {})}
          />
        </label>
        <span className="soft" role="status">
          {words.trim() === "" ? sheetsWords(view.all) : `${view.found} of ${sheetsWords(view.all)}`}
        </span>
      </div>
      {view.found === 0 ? (
        <p className="say">
          No sheet holds all of these words. <Word onPress={() => setWords("")}>Show them all</Word>
        </p>
      ) : (
        <table className="Logbook-Sheets-list" aria-rowcount={view.found + 1}>
          <caption className="unseen">Sheets, newest first</caption>
          <thead>
            <tr>
              <th scope="col">sheet</th>
              <th scope="col">what it was for</th>
              <th scope="col">given</th>
            </tr>
          </thead>
          <tbody>
            {view.rows.map(({ id, code, what, more: detail, time, given }) => (
              <tr key={id} data-chosen={id === chosen || undefined}>
                <th scope="row">
                  <a href={`#/logbook/${id}`} aria-current={id === chosen ? "page" : undefined}>
                    {code}
                  </a>
                </th>
                <td>
                  <b>{what}</b>
                  <span className="small soft">{detail}</span>
                </td>
                <td>{given ? time : <span className="soft">{time}</span>}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {view.rows.length < view.found && (
        <More key={view.rows.length} onSeen={more} left={view.found - view.rows.length} />
      )}
    </div>
  );
}

/** The end of what is laid out: seen or pressed, it lays out more. */
function More({ onSeen, left }: { readonly onSeen: () => void; readonly left: number }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (place.current === null) return;
    const watch = new IntersectionObserver((seen) => seen.some(({ isIntersecting }) => isIntersecting) && onSeen(), {
      rootMargin: "800px",
    });
    watch.observe(place.current);
    return () => watch.disconnect();
  }, [onSeen]);
  return (
    <div ref={place}>
      <Word onPress={onSeen}>{left} more</Word>
    </div>
  );
}

function sheetsWords(count: number): string {
  return count === 1 ? "1 sheet" : `${count.toLocaleString("en-GB")} sheets`;
}

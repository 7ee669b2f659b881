import type { Hangs } from "@captray/notebook/records";

const placeWords: Readonly<Record<Hangs["on"], string>> = {
  line: "line, place",
  hook: "hook",
  screen: "screen",
  glass: "glass",
  elsewhere: "elsewhere",
};

/** Where something dries: “line, place 3”, “hook 2”, “on glass”. */
export function hangWords({ on, number, words }: Hangs): string {
  const numbered = number === undefined ? (on === "line" ? "line" : placeWords[on]) : `${placeWords[on]} ${number}`;
  const place = on === "elsewhere" && words !== undefined ? words : on === "glass" ? `on ${numbered}` : numbered;
  return on === "elsewhere" || words === undefined ? place : `${place}, ${words}`;
}

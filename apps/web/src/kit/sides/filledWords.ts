import type { Emptying, SideOf } from "@captray/notebook/answers";
import { beginning } from "../beginning.ts";

export interface FilledWords {
  readonly head: string;
  readonly say: string;
  readonly ways: readonly { readonly word: string; readonly how: Emptying; readonly note: string }[];
}

/** Why a side cannot be loaded or exposed, and what can be done: by what lies in it. */
export function filledWords({
  side,
  place,
  boxName,
}: {
  readonly side: SideOf;
  readonly place: string;
  readonly boxName: string;
}): FilledWords {
  const code = side.sheet?.code ?? "A sheet";
  const head = `${beginning(place)} is not empty`;
  if (side.state === "exposed") {
    return {
      head,
      say: `${code} lies in it, exposed. Exposed again it would be two pictures on one sheet, and a second sheet does not go in.${
        side.sheet?.state === "flashOwed" ? " Its flash is still owed, before the first bath." : ""
      }`,
      ways: [
        {
          word: `Empty it first: ${code} goes to the exposed box`,
          how: { to: "exposedBox" },
          note: `${code} taken out, into the exposed box`,
        },
        { word: `Empty it first: ${code} goes into the trays`, how: { to: "trays" }, note: `${code} in the trays` },
        { word: "It was emptied", how: { to: "exposedBox" }, note: `${code} had been taken out` },
      ],
    };
  }
  const back = { to: "paperBox" } as const;
  if (side.state === "planned") {
    return {
      head,
      say: `${code} is laid out for it and not yet loaded.`,
      ways: [{ word: `Take ${code} out of the plan`, how: back, note: `${code} out of the plan` }],
    };
  }
  const box = boxName === "" ? "its box" : boxName;
  return {
    head,
    say: `${code} lies in it, loaded and not yet exposed.`,
    ways: [
      { word: `Empty it first: ${code} goes back into ${box}`, how: back, note: `${code} back in ${box}` },
      { word: "It was emptied", how: back, note: `${code} had been put back` },
    ],
  };
}

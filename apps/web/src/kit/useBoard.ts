import { useSyncExternalStore } from "react";
import { useLight } from "../look/light.ts";
import type { BoardKind } from "./boardState.ts";

const onPhone = matchMedia("(max-width: 599px), (pointer: coarse) and (max-height: 599px)");

/** Whether fields are filled from our own board instead of the system's: on phones, and wherever the light is red. */
export function useBoardWanted(): boolean {
  const light = useLight();
  const phone = useSyncExternalStore(followPhone, () => onPhone.matches);
  return light === "red" || phone;
}

/** The field the board writes into, or nothing while no such field has the focus. */
export function useBoardField(): HTMLInputElement | undefined {
  return useSyncExternalStore(followFocus, fieldInHand);
}

/** Which field of how many the board stands at: “field 6 of 7”. Nothing while the board is shut. */
export function useBoardPlace(): { readonly field: number; readonly of: number } | undefined {
  const wanted = useBoardWanted();
  const field = useBoardField();
  if (!wanted || field === undefined) return undefined;
  const all = [...walkOf(field).querySelectorAll("[data-field]")];
  return { field: all.indexOf(field) + 1, of: all.length };
}

/** What the field in hand takes. */
export function boardKindOf(field: HTMLInputElement): BoardKind {
  return (field.dataset.field as BoardKind | undefined) ?? "number";
}

/** Goes to the next or the former field in the order of reading; past the last one the board shuts. */
export function walkFields({ from, by }: { readonly from: HTMLInputElement; readonly by: 1 | -1 }): void {
  const all = [...walkOf(from).querySelectorAll<HTMLInputElement>("input[data-field]")];
  const next = all[all.indexOf(from) + by];
  if (next === undefined) {
    if (by === 1) from.blur();
    return;
  }
  next.focus();
  next.select();
  next.scrollIntoView({ block: "nearest" });
}

/** The fields that are walked together: those of the nearest part marked so, else of the whole page. */
function walkOf(field: HTMLElement): ParentNode {
  return field.closest("[data-walk]") ?? document;
}

function followPhone(listener: () => void): () => void {
  onPhone.addEventListener("change", listener);
  return () => onPhone.removeEventListener("change", listener);
}

let inHand: HTMLInputElement | undefined;
let pressing = false;
const followers = new Set<() => void>();
const fieldInHand = (): HTMLInputElement | undefined => inHand;

/** The board leaves only after the press that takes the focus away: else the page would move away from under it. */
function look(): void {
  if (pressing) return;
  const { activeElement } = document;
  const isField = activeElement instanceof HTMLInputElement && activeElement.dataset.field !== undefined;
  const now = isField ? activeElement : undefined;
  if (now === inHand) return;
  inHand = now;
  for (const follower of followers) follower();
}
const lookLater = (): void => void setTimeout(look, 60);
const begin = (): void => {
  pressing = true;
};
const end = (): void => {
  pressing = false;
  lookLater();
};

function followFocus(listener: () => void): () => void {
  if (followers.size === 0) {
    document.addEventListener("focusin", look);
    document.addEventListener("focusout", lookLater);
    addEventListener("pointerdown", begin, true);
    addEventListener("pointerup", end, true);
    addEventListener("pointercancel", end, true);
    addEventListener("hashchange", lookLater); // a field that leaves with its page says nothing
  }
  followers.add(listener);
  return () => {
    followers.delete(listener);
    if (followers.size > 0) return;
    document.removeEventListener("focusin", look);
    document.removeEventListener("focusout", lookLater);
    removeEventListener("pointerdown", begin, true);
    removeEventListener("pointerup", end, true);
    removeEventListener("pointercancel", end, true);
    removeEventListener("hashchange", lookLater);
  };
}

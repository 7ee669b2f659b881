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
  const all = [...document.querySelectorAll("[data-field]")];
  return { field: all.indexOf(field) + 1, of: all.length };
}

/** What the field in hand takes. */
export function boardKindOf(field: HTMLInputElement): BoardKind {
  return (field.dataset.field as BoardKind | undefined) ?? "number";
}

/** Goes to the next or the former field in the order of reading; past the last one the board shuts. */
export function walkFields({ from, by }: { readonly from: HTMLInputElement; readonly by: 1 | -1 }): void {
  const all = [...document.querySelectorAll<HTMLInputElement>("input[data-field]")];
  const next = all[all.indexOf(from) + by];
  if (next === undefined) {
    if (by === 1) from.blur();
    return;
  }
  next.focus();
  next.select();
  next.scrollIntoView({ block: "nearest" });
}

function fieldInHand(): HTMLInputElement | undefined {
  const { activeElement } = document;
  return activeElement instanceof HTMLInputElement && activeElement.dataset.field !== undefined
    ? activeElement
    : undefined;
}

function followPhone(listener: () => void): () => void {
  onPhone.addEventListener("change", listener);
  return () => onPhone.removeEventListener("change", listener);
}

function followFocus(listener: () => void): () => void {
  document.addEventListener("focusin", listener);
  document.addEventListener("focusout", listener);
  return () => {
    document.removeEventListener("focusin", listener);
    document.removeEventListener("focusout", listener);
  };
}

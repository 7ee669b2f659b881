import type { Holder } from "@captray/notebook/records";

/** A holder by its name: "2" is holder 2; one that is called something keeps what it is called. */
export function holderWords({ name }: Pick<Holder, "name">): string {
  if (name === "") return "holder without a name";
  return /^[\p{N}\p{P}\p{S}]+\p{L}?$|^\p{L}$/u.test(name) ? `holder ${name}` : name;
}

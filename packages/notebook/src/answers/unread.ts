import { CAUTIONS, type ShownCaution } from "@captray/science/chemistry";

/** Cautions without those that were read in this sitting; one that has got worse is shown again, one that must stay is never gone. */
export function unread({
  cautions,
  seen,
}: {
  readonly cautions: readonly ShownCaution[];
  readonly seen: readonly string[];
}): readonly ShownCaution[] {
  const rankOf = (id: string) => CAUTIONS.find((one) => one.id === id)?.rank ?? 0;
  const read = CAUTIONS.filter(({ id }) => seen.includes(id));
  return cautions.filter(
    ({ id, family, dismissible }) =>
      !dismissible || !read.some((other) => other.family === family && other.rank >= rankOf(id)),
  );
}

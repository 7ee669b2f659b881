import { useSyncExternalStore } from "react";

/** Where the hash leads: "#/camera/cap/0abc" is ["camera", "cap", "0abc"]. Pages carry record ids, never codes. */
export function useRoute(): readonly string[] {
  const hash = useSyncExternalStore(follow, () => location.hash);
  return segmentsOf({ hash });
}

/** The parts of a hash path; one that cannot be read is the start. */
export function segmentsOf({ hash }: { readonly hash: string }): readonly string[] {
  try {
    return hash
      .replace(/^#?\/?/, "")
      .split("/")
      .filter(Boolean)
      .map(decodeURIComponent);
  } catch {
    return [];
  }
}

/** The id a pattern like "/camera/cap/:id" finds in a path, "" where it has none, or undefined where it does not fit. */
export function idIn({
  pattern,
  path,
}: {
  readonly pattern: string;
  readonly path: readonly string[];
}): string | undefined {
  const wanted = segmentsOf({ hash: pattern });
  if (wanted.length !== path.length) return undefined;
  let id = "";
  for (const [place, part] of wanted.entries()) {
    if (part === ":id") id = path[place] ?? "";
    else if (part !== path[place]) return undefined;
  }
  return id;
}

function follow(listener: () => void): () => void {
  addEventListener("hashchange", listener);
  return () => removeEventListener("hashchange", listener);
}

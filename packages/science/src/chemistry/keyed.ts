import { OutOfDomain } from "../errors/index.ts";

/** Asks, and tells a fault of the input key it came under: by name, else below `path`. Inner helper. */
export function keyed<Answer>(path: string, names: Readonly<Record<string, string>>, ask: () => Answer): Answer {
  try {
    return ask();
  } catch (fault) {
    if (!(fault instanceof OutOfDomain)) throw fault;
    throw new OutOfDomain(fault.code, fault.facts, `${path}/${names[fault.key] ?? fault.key}`);
  }
}

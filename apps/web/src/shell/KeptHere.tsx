import type { Moment } from "@captray/notebook/records";
import { useEffect, useState } from "react";
import { momentNow } from "../devices/momentNow.ts";
import { useHouse } from "../kit/notebook/useHouse.ts";
import { useUnkept } from "../kit/notebook/useUnkept.ts";

/** How things are kept: “kept on this machine, 14:06”, once the last change is durable. */
export function KeptHere({ version }: { readonly version: string }) {
  const house = useHouse();
  const unkept = useUnkept();
  const [first] = useState(version);
  const [keptAt, setKeptAt] = useState<string>();
  useEffect(() => {
    if (unkept === 0 && version !== first) setKeptAt(hourAndMinute(momentNow()));
  }, [unkept, version, first]);

  if (house.kind !== "open") return null;
  if (house.forgets) return <b>nothing can be kept here: this browser forgets it with the page</b>;
  if (version === "") return null;
  if (unkept > 0) return <>not kept yet</>;
  return <>kept on this machine{keptAt === undefined ? "" : `, ${keptAt}`}</>;
}

/** “14:06”. No formatter of the platform: to make one costs more than all the rest of a start. */
function hourAndMinute({ at, offsetMin }: Moment): string {
  return new Date(at + offsetMin * 60_000).toISOString().slice(11, 16);
}

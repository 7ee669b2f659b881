import { useEffect, useState } from "react";
import { momentNow } from "../devices/momentNow.ts";
import { useHouse } from "../kit/notebook/useHouse.ts";
import { useUnkept } from "../kit/notebook/useUnkept.ts";

const clock = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });

/** How things are kept: “kept on this machine, 14:06”, once the last change is durable. */
export function KeptHere({ version }: { readonly version: string }) {
  const house = useHouse();
  const unkept = useUnkept();
  const [first] = useState(version);
  const [keptAt, setKeptAt] = useState<string>();
  useEffect(() => {
    if (unkept === 0 && version !== first) setKeptAt(clock.format(new Date(momentNow().at)));
  }, [unkept, version, first]);

  if (house.kind !== "open") return null;
  if (house.forgets) return <b>nothing can be kept here: this browser forgets it with the page</b>;
  if (version === "") return null;
  if (unkept > 0) return <>not kept yet</>;
  return <>kept on this machine{keptAt === undefined ? "" : `, ${keptAt}`}</>;
}

import { Button } from "../kit/Button.tsx";
import { goTo } from "../kit/goTo.ts";
import { Word } from "../kit/Word.tsx";
import { useInstall } from "./install.ts";
import { useOffline } from "./offline.ts";
import { RoomDrawing } from "./RoomDrawing.tsx";
import { rooms } from "./routes.ts";
import "./FirstVisit.css";

/** An empty notebook: the way a sheet goes, and the first step. */
export function FirstVisit({ onOpenDemo }: { readonly onOpenDemo: () => void }) {
  const offline = useOffline();
  const install = useInstall();
  return (
    <div className="Shell-FirstVisit">
      <h1 tabIndex={-1}>An empty notebook. Here is the way a sheet goes through it.</h1>
      <ol>
        {rooms.map(({ name, word, says }) => (
          <li key={name}>
            <RoomDrawing of={name} />
            <div>
              <b>{word}</b>
              <span>{says}</span>
            </div>
          </li>
        ))}
      </ol>
      <div className="Shell-FirstVisit-start">
        <Button main wide aside="seven fields, a time" onPress={() => goTo({ path: "/camera/now" })}>
          I have a reading now
        </Button>
        <Button wide aside="1 minute" onPress={() => goTo({ path: "/shelf/lens/new" })}>
          Put a lens on the shelf
        </Button>
      </div>
      <div className="Shell-FirstVisit-more small">
        <p>
          <Word onPress={onOpenDemo}>Open the demo notebook</Word> <span className="soft">(invented).</span>
        </p>
        {install !== undefined && <Word onPress={install}>Put it on this machine</Word>}
        <p className="soft">
          Nothing leaves this machine.
          {(offline === "ready" || offline === "newerWaits") && " It works without a network."}
        </p>
      </div>
    </div>
  );
}

import { Button } from "../kit/Button.tsx";
import { takeNewer, useOffline } from "./offline.ts";
import "./Mishap.css";

const words = {
  newer: {
    head: "This notebook was written by a newer Cap & Tray",
    say: "It stays as it is. Load the page again, with a network, to get the newer app.",
  },
  unreadable: {
    head: "The notebook cannot be opened",
    say: "Nothing in it was changed. Close other tabs of Cap & Tray, then load the page again; the words below say where it stopped.",
  },
} as const;

/** In place of the rooms where the notebook itself cannot be opened. */
export function NotOpened({ why, message }: { readonly why: keyof typeof words; readonly message: string }) {
  const offline = useOffline();
  return (
    <main className="Shell-Mishap" data-whole>
      <h1>{words[why].head}</h1>
      <p className="say">{words[why].say}</p>
      <p className="small soft">{message}</p>
      <div className="Shell-Mishap-ways">
        <Button main onPress={offline === "newerWaits" ? takeNewer : () => location.reload()}>
          Load it again
        </Button>
      </div>
    </main>
  );
}

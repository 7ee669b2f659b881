import { type ReactNode, Suspense, useEffect, useRef, useState } from "react";
import { BeforeDaylight } from "../kit/BeforeDaylight.tsx";
import { footPlace } from "../kit/footPlace.ts";
import { NumberBoard } from "../kit/NumberBoard.tsx";
import { Word } from "../kit/Word.tsx";
import { type Light, turnLight, useLight } from "../look/light.ts";
import { BeforeTheDark } from "./LightQuestion.tsx";
import { Mishap } from "./Mishap.tsx";
import { takeNewer, useOffline } from "./offline.ts";
import { useRoute } from "./route.ts";
import { rooms, routeOf } from "./routes.ts";
import "./Shell.css";

export interface ShellProps {
  /** What "#/" shows. */
  readonly start: ReactNode;
  /** How things are kept: “kept on this machine, 14:06”. */
  readonly kept?: ReactNode;
  /** Under the head: that this is the demo. */
  readonly banner?: ReactNode;
  /** Over the rooms: the strip that takes the last change back. */
  readonly strip?: ReactNode;
}

/** What stands round every room: the head, the rooms, the light, and a place at the foot for the answer. */
export function Shell({ start, kept, banner, strip }: ShellProps) {
  const path = useRoute();
  const light = useLight();
  const [asking, setAsking] = useState<"dark" | "daylight">();
  const route = routeOf({ path });
  const at = path.join("/");
  const bare = route?.bare === true;
  useFreshPage(at);

  const Screen = route?.screen;
  const page =
    Screen !== undefined ? <Screen key={at} id={route?.id ?? ""} /> : path.length === 0 ? start : <Nowhere />;
  const turn = (to: Light) => {
    setAsking(undefined);
    turnLight({ to });
  };
  const ask = () => {
    setAsking(light === "day" ? "dark" : "daylight");
    turnLight({ to: "red" }); // at once: the list before the dark is read in red
  };

  return (
    <>
      {asking === "dark" && <BeforeTheDark onGoOn={() => turn("red")} onBack={() => turn("day")} />}
      {asking === "daylight" && <BeforeDaylight onGoOn={() => turn("day")} onBack={() => turn("red")} />}
      <div className="Shell" data-bare={bare || undefined} hidden={asking !== undefined}>
        {!bare && (
          <header>
            <a className="Shell-mark" href="#/">
              Cap &amp; Tray
            </a>
            <div className="Shell-right">
              <span className="Shell-kept small soft">{kept}</span>
              <Word onPress={ask}>{light === "day" ? "Red light" : "Daylight"}</Word>
            </div>
          </header>
        )}
        <main>
          {!bare && banner}
          <Mishap at={at}>
            <Suspense fallback={<Opening />}>{page}</Suspense>
          </Mishap>
        </main>
        <div className="Shell-foot" ref={keepInSight}>
          <div ref={footPlace.set} />
          {!bare && <Newer />}
          {!bare && strip}
          <NumberBoard />
        </div>
        {!bare && <Rooms room={path[0]} />}
      </div>
    </>
  );
}

function Rooms({ room }: { readonly room: string | undefined }) {
  if (rooms.length === 0) return null;
  return (
    <nav className="Shell-rooms" aria-label="Rooms">
      {rooms.map(({ name, word, to }) => (
        <a key={name} href={`#${to}`} aria-current={room === name ? "page" : undefined}>
          {word}
        </a>
      ))}
    </nav>
  );
}

function Newer() {
  if (useOffline() !== "newerWaits") return null;
  return (
    <p className="Shell-newer" data-ground="dark">
      <span role="status">A newer Cap &amp; Tray is here. It opens anew; what is kept stays.</span>
      <Word onPress={takeNewer}>Take it</Word>
    </p>
  );
}

function Opening() {
  return (
    <p className="Shell-opening soft" role="status">
      Opening
    </p>
  );
}

function Nowhere() {
  return (
    <div className="Shell-nowhere">
      <h1 tabIndex={-1}>There is no such page</h1>
      <p className="say">The address leads nowhere in this notebook.</p>
      <Word to="/">Go to the start</Word>
    </div>
  );
}

/** What is scrolled to comes to lie above the foot, however high the foot has grown. */
function keepInSight(foot: HTMLElement | null): (() => void) | undefined {
  if (foot === null) return undefined;
  const watch = new ResizeObserver(() => {
    const rooms = foot.nextElementSibling?.getBoundingClientRect();
    const below = rooms !== undefined && rooms.top > foot.getBoundingClientRect().top ? rooms.height : 0;
    document.documentElement.style.scrollPaddingBlockEnd = `${foot.offsetHeight + below + 16}px`;
    const { activeElement } = document;
    if (activeElement instanceof HTMLInputElement) activeElement.scrollIntoView({ block: "nearest" });
  });
  watch.observe(foot);
  return () => watch.disconnect();
}

/** A new page begins at its top. */
function useFreshPage(at: string): void {
  const former = useRef(at);
  useEffect(() => {
    if (former.current === at) return;
    former.current = at;
    scrollTo(0, 0);
  }, [at]);
}

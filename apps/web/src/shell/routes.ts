import { type ComponentType, createElement, use } from "react";
import { idIn, segmentsOf } from "./route.ts";

/** What a screen is given: the id its address carries, or "". */
export interface ScreenProps {
  readonly id: string;
}
export interface Route {
  readonly pattern: string;
  readonly screen: ComponentType<ScreenProps>;
  readonly fetch: () => Promise<unknown>;
  /** Fills the screen: no head, no rooms. */
  readonly bare?: true;
}

export interface Room {
  /** The first part of its addresses. */
  readonly name: string;
  readonly word: string;
  /** Where the word leads. */
  readonly to: string;
  /** What is done there, for a first visit. */
  readonly says: string;
}

/** The rooms that exist, in the order a sheet goes through them. */
export const rooms: readonly Room[] = [
  {
    name: "shelf",
    word: "Shelf",
    to: "/shelf",
    says: "Say what lens and which box of paper. A minute; refine it later.",
  },
  {
    name: "camera",
    word: "Camera",
    to: "/camera",
    says: "Read the light. The ledger gives seconds for the cap, and how sure they are.",
  },
  {
    name: "trays",
    word: "Trays",
    to: "/trays",
    says: "One big press a step, in red light, with wet gloves. What was really done is kept.",
  },
  { name: "logbook", word: "Logbook", to: "/logbook", says: "Every sheet, with what it was given and why." },
];

// One line a screen, the more particular address first.
const routes: readonly Route[] = [
  line("/shelf", () => import("../rooms/shelf/ShelfHome.tsx")),
  line("/shelf/lens/:id", () => import("../rooms/shelf/LensPage.tsx")),
  line("/shelf/box/:id", () => import("../rooms/shelf/BoxPage.tsx")),
  line("/shelf/meter/:id", () => import("../rooms/shelf/MeterPage.tsx")),
  line("/shelf/camera/:id", () => import("../rooms/shelf/CameraPage.tsx")),
  line("/shelf/lamp/:id", () => import("../rooms/shelf/LampPage.tsx")),
  line("/shelf/recipes", () => import("../rooms/shelf/recipes/RecipesPage.tsx")),
  line("/shelf/recipe/:id", () => import("../rooms/shelf/recipes/RecipePage.tsx")),
  line("/shelf/add", () => import("../rooms/shelf/AddPage.tsx")),
  line("/shelf/pupil/:id", () => import("../rooms/shelf/measure/MeasurePupil.tsx")),
  line("/shelf/focal/:id", () => import("../rooms/shelf/measure/MeasureFocal.tsx")),
  line("/shelf/offset/:id", () => import("../rooms/shelf/measure/MeasureMeter.tsx")),
  line("/shelf/stops/:id", () => import("../rooms/shelf/measure/CutStops.tsx")),
  line("/shelf/holder/:id", () => import("../rooms/shelf/holders/HolderPage.tsx")),
  line("/shelf/loading", () => import("../rooms/shelf/holders/LoadingPage.tsx")),
  line("/shelf/loading/dark", () => import("../rooms/shelf/holders/LoadingDark.tsx"), { bare: true }),
  line("/camera", () => import("../rooms/camera/CameraHome.tsx")),
  line("/camera/now", () => import("../rooms/camera/readingNow/ReadingNow.tsx")),
  line("/camera/now/:id", () => import("../rooms/camera/readingNow/ReadingNow.tsx")),
  line("/camera/practice", () => import("../rooms/camera/capPractice/PracticePage.tsx")),
  line("/camera/practice/:id", () => import("../rooms/camera/capPractice/PracticePage.tsx")),
  line("/camera/scenes", () => import("../rooms/camera/scenes/Scenes.tsx")),
  line("/camera/light/:id", () => import("../rooms/camera/scene/LightPage.tsx")),
  line("/camera/checklist/:id", () => import("../rooms/camera/checklist/ChecklistPage.tsx")),
  line("/camera/which/:id", () => import("../rooms/camera/whichSide/WhichSide.tsx")),
  line("/camera/cap/:id", () => import("../rooms/camera/capPage/CapPage.tsx"), { bare: true }),
  line("/camera/flash", () => import("../rooms/camera/flash/FlashHome.tsx")),
  line("/camera/flash/:id", () => import("../rooms/camera/flash/FlashLampPage.tsx")),
  line("/camera/flash/strip/:id", () => import("../rooms/camera/flash/FlashStripPage.tsx")),
  line("/camera/flash/run/:id", () => import("../rooms/camera/flash/FlashRunPage.tsx"), { bare: true }),
  line("/camera/flash/for/:id", () => import("../rooms/camera/flash/FlashForPage.tsx")),
  line("/camera/flash/give/:id", () => import("../rooms/camera/flash/FlashGivePage.tsx"), { bare: true }),
  line("/camera/step/:id", () => import("../rooms/camera/stepTest/StepTestPage.tsx")),
  line("/camera/card/:id", () => import("../rooms/camera/fieldCard/FieldCardPage.tsx")),
  line("/camera/:id", () => import("../rooms/camera/scene/ScenePage.tsx")),
  line("/trays/mixing", () => import("../rooms/trays/mixing/MixingPage.tsx")),
  line("/trays/mixing/:id", () => import("../rooms/trays/mixing/MixingPage.tsx")),
  line("/trays/baths", () => import("../rooms/trays/baths/BathsPage.tsx")),
  line("/trays/bath/:id", () => import("../rooms/trays/baths/BathPage.tsx")),
  line("/trays", () => import("../rooms/trays/TraysHome.tsx")),
  line("/trays/light", () => import("../rooms/trays/lightTest/LightHome.tsx")),
  line("/trays/light/give/:id", () => import("../rooms/trays/lightTest/LightGivePage.tsx"), { bare: true }),
  line("/trays/light/:id", () => import("../rooms/trays/lightTest/LightTestPage.tsx")),
  line("/trays/ready", () => import("../rooms/trays/ready/ReadyPage.tsx")),
  line("/trays/dark", () => import("../rooms/trays/ready/DarkPage.tsx"), { bare: true }),
  line("/trays/run/:id", () => import("../rooms/trays/run/RunPage.tsx"), { bare: true }),
  line("/trays/after/:id", () => import("../rooms/trays/after/AfterPage.tsx")),
  line("/trays/drying", () => import("../rooms/trays/drying/DryingPage.tsx")),
  line("/logbook", () => import("../rooms/logbook/Logbook.tsx")),
  line("/logbook/:id", () => import("../rooms/logbook/Logbook.tsx")),
];

/** The screen of a path, or nothing where there is none. */
export function routeOf({ path }: { readonly path: readonly string[] }): (Route & ScreenProps) | undefined {
  for (const route of routes) {
    const id = idIn({ pattern: route.pattern, path });
    if (id !== undefined) return { ...route, id };
  }
  return undefined;
}

/** Fetches the screen that is asked for; done at once where the address leads to none. */
export async function fetchAskedScreen(): Promise<void> {
  await routeOf({ path: segmentsOf({ hash: location.hash }) })
    ?.fetch()
    .catch(() => undefined); // a screen that is opened says so itself
}

/** Fetches every screen when nothing else is to do, one after the other, so that each opens at once, and without a network. */
export async function fetchOtherScreens(): Promise<void> {
  const quiet = () =>
    new Promise<void>((done) => {
      if ("requestIdleCallback" in window) requestIdleCallback(() => done());
      else setTimeout(done, 100);
    });
  await new Promise((shown) => setTimeout(shown, 1000));
  for (const { fetch } of routes) {
    await fetch().catch(() => undefined);
    await quiet();
  }
}

function line(
  pattern: string,
  load: () => Promise<{ default: ComponentType<ScreenProps> }>,
  more: { readonly bare?: true } = {},
): Route {
  let fetched: ComponentType<ScreenProps> | undefined;
  let fetching: Promise<ComponentType<ScreenProps>> | undefined;
  const fetch = () => {
    fetching ??= load().then(
      ({ default: screen }) => {
        fetched = screen;
        return screen;
      },
      (why) => {
        fetching = undefined;
        throw why;
      },
    );
    return fetching;
  };
  // Drawn at once when it is there: React's own `lazy` waits even then, and lets whatever stood meanwhile stand for 300 ms.
  const screen = (props: ScreenProps) => createElement(fetched ?? use(fetch()), props);
  return { pattern, fetch, screen, ...more };
}

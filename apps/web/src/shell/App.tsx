import { FirstVisit } from "./FirstVisit.tsx";
import { Shell } from "./Shell.tsx";

/** The whole app. */
export function App() {
  return <Shell start={<FirstVisit />} />;
}

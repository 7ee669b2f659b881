import "../look/look.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { openHouse } from "../kit/notebook/house.ts";
import { takeUpLight } from "../look/light.ts";
import { App } from "./App.tsx";
import { watchInstall } from "./install.ts";
import { keepOffline } from "./offline.ts";
import { fetchAskedScreen, fetchOtherScreens } from "./routes.ts";

/** So long the first drawing waits for the notebook and the screen, to be the only one; then it says that it opens them. */
const waitMs = 400;

takeUpLight();
watchInstall();
const place = document.getElementById("app");
if (place !== null) {
  const root = createRoot(place);
  const ready = Promise.all([fetchAskedScreen(), openHouse()]);
  void Promise.race([ready, new Promise((over) => setTimeout(over, waitMs))]).then(() => {
    root.render(
      <StrictMode>
        <App />
      </StrictMode>,
    );
  });
  void ready.then(fetchOtherScreens);
}
void keepOffline();

import "../look/look.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { takeUpLight } from "../look/light.ts";
import { App } from "./App.tsx";
import { watchInstall } from "./install.ts";
import { keepOffline } from "./offline.ts";
import { fetchScreens } from "./routes.ts";

takeUpLight();
watchInstall();
fetchScreens();
const place = document.getElementById("app");
if (place !== null) {
  createRoot(place).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
}
void keepOffline();

import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { serviceWorker } from "../../scripts/service-worker.ts";

const root = fileURLToPath(new URL(".", import.meta.url));

// base "./": the app runs from any folder of any host.
export default defineConfig({
  root,
  base: "./",
  plugins: [react(), serviceWorker({ source: `${root}src/sw.js` })],
  worker: { format: "es" },
  build: { outDir: "dist", target: "es2022", manifest: true, sourcemap: true, assetsInlineLimit: 0, emptyOutDir: true },
});

import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { serviceWorker } from "../../scripts/service-worker.ts";

const root = fileURLToPath(new URL(".", import.meta.url));

// base "./": the app runs from any folder of any host.
export default defineConfig({
  root,
  base: "./",
  plugins: [react(), preload(/archivo-narrow-.*\.woff2$/), serviceWorker({ source: `${root}src/sw.js` })],
  worker: { format: "es" },
  build: {
    outDir: "dist",
    target: "es2022",
    cssTarget: ["chrome123", "safari17.5", "firefox120"],
    manifest: true,
    sourcemap: true,
    assetsInlineLimit: 0,
    emptyOutDir: true,
    rolldownOptions: {
      output: {
        // Each file is asked of the worker by itself, so few of them open a page sooner than many small ones.
        codeSplitting: {
          groups: [
            { name: "first", tags: ["$initial"], priority: 2 },
            // What most screens show and say, as one file: without its own dependencies, which only some of them need.
            {
              name: "rooms",
              test: /node_modules|science.src.(errors|notation)|web.src.(kit|look|devices)/,
              minShareCount: 22,
              includeDependenciesRecursively: false,
              priority: 1,
            },
          ],
        },
      },
    },
  },
});

/** Asks for the face of all figures with the page itself; its name carries a digest, so the build writes the line. */
function preload(face: RegExp): Plugin {
  return {
    name: "captray-preload",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: (_html, { bundle }) =>
        Object.keys(bundle ?? {})
          .filter((file) => face.test(file))
          .map((file) => ({
            tag: "link",
            attrs: { rel: "preload", as: "font", type: "font/woff2", crossorigin: true, href: `./${file}` },
            injectTo: "head" as const,
          })),
    },
  };
}

import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

// One plain file for scripts/start.mjs, which runs on a Node that reads no TypeScript.
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  build: {
    ssr: "src/serving/index.ts",
    outDir: "dist",
    target: "node20",
    minify: false,
    rollupOptions: { output: { entryFileNames: "serving.js" } },
  },
});

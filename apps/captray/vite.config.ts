import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

// Native packages (the notebook's disk store) stay imports; everything else is bundled into one file.
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  ssr: { noExternal: true, external: ["libsql", "sharp"] },
  build: {
    ssr: "src/main.ts",
    outDir: "dist",
    target: "node20",
    minify: false,
    sourcemap: true,
    rollupOptions: { output: { entryFileNames: "captray.js" } },
  },
});

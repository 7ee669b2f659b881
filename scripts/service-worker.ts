// A Vite plugin: writes sw.js with the list of every built file, so that the app works offline after one visit.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

export function serviceWorker({ source }: { readonly source: string }): Plugin {
  let publicFolder = "";
  return {
    name: "captray-service-worker",
    apply: "build",
    configResolved(config) {
      publicFolder = config.publicDir;
    },
    generateBundle: {
      order: "post", // index.html and the workers' chunks are there by then
      handler(_options, bundle) {
        const digest = createHash("sha256");
        const files: string[] = [];
        const add = (file: string, bytes: string | Uint8Array) => {
          files.push(`./${file}`);
          digest.update(file).update(bytes);
        };
        for (const file of Object.keys(bundle).sort()) {
          const output = bundle[file];
          if (output === undefined || file.endsWith(".map") || file.startsWith(".vite/")) continue;
          add(file, output.type === "asset" ? output.source : output.code);
        }
        for (const file of readdirSync(publicFolder, { recursive: true, encoding: "utf8" }).sort()) {
          const place = join(publicFolder, file);
          if (statSync(place).isFile()) add(file.replaceAll("\\", "/"), readFileSync(place));
        }
        const text = readFileSync(source, "utf8");
        const name = `shell-${digest.update(text).digest("hex").slice(0, 12)}`;
        this.emitFile({
          type: "asset",
          fileName: "sw.js",
          source: `const FILES = ${JSON.stringify(files)};\nconst NAME = "${name}";\n${text}`,
        });
      },
    },
  };
}

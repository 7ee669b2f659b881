import { build } from "vite";

/** A script for a page of a benchmark, built as the app is. */
export async function pageScript({ root, entry }: { readonly root: string; readonly entry: string }): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: "warn",
    define: { "process.env.NODE_ENV": '"production"' },
    build: {
      write: false,
      target: "es2022",
      lib: { entry: `${root}benchmarks/${entry}.ts`, formats: ["es"], fileName: "page" },
    },
  });
  const [output] = Array.isArray(built) ? built : [built];
  const chunk = output && "output" in output ? output.output[0] : undefined;
  if (chunk?.type !== "chunk") throw new Error("The benchmark's page does not build.");
  return chunk.code;
}

import { join } from "node:path";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import extractTSConfig from "dependency-cruiser/config-utl/extract-ts-config";
import { borderRules } from "./borderRules.ts";
import { root } from "./repo.ts";

/** Looks at every import below `packages` and `apps` of a tree laid out like ours. */
export async function cruiseBorders(baseDir: string = root): Promise<ICruiseResult> {
  const report = await cruise(
    ["packages", "apps"],
    {
      baseDir,
      validate: true,
      ruleSet: { forbidden: borderRules },
      tsPreCompilationDeps: true,
      doNotFollow: { path: "node_modules" },
      exclude: { path: "^(packages|apps)/[^/]+/(dist|dist-types)/" },
    },
    { exportsFields: ["exports"], conditionNames: ["import", "types", "node", "default"] },
    { tsConfig: extractTSConfig(join(root, "tsconfig.base.json")) },
  );
  return report.output as ICruiseResult;
}

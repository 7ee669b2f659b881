import type { IConfiguration } from "dependency-cruiser";

type Rules = NonNullable<IConfiguration["forbidden"]>;

// Tests beside the sources may read fixtures and use node; what ships may not.
const shipped = { pathNot: "[.]test[.]tsx?$" };

/** What may import what: apps, notebook, drawings, science, downwards only; rooms never each other. */
export const borderRules: Rules = [
  {
    name: "science-is-pure",
    comment:
      "science imports nothing of ours and no library: hand the thing in, or move the code to the notebook or an app.",
    severity: "error",
    from: { path: "^packages/science/src/", ...shipped },
    to: { pathNot: "^packages/science/src/|(^|/)node_modules/fft[.]js/" },
  },
  {
    name: "fft-only-in-measure",
    comment: "fft.js belongs to science/measure alone.",
    severity: "error",
    from: { path: "^packages/science/src/(?!measure/)", ...shipped },
    to: { path: "(^|/)node_modules/fft[.]js/" },
  },
  {
    name: "drawings-import-science",
    comment: "drawings turn numbers into SVG: they import science and nothing else.",
    severity: "error",
    from: { path: "^packages/drawings/src/", ...shipped },
    to: { pathNot: "^packages/(drawings|science)/src/" },
  },
  {
    name: "scans-stand-alone",
    comment: "scans turn bytes into pixels and import nothing of ours: hand sources and decoders in.",
    severity: "error",
    from: { path: "^packages/scans/src/", ...shipped },
    to: { pathNot: "^packages/scans/src/|(^|/)node_modules/geotiff/" },
  },
  {
    name: "notebook-knows-science-and-drawings",
    comment:
      "the notebook imports science, drawings, zod/mini and its stores' drivers: anything else belongs to an app.",
    severity: "error",
    from: { path: "^packages/notebook/src/", ...shipped },
    to: {
      pathNot:
        "^packages/(notebook|drawings|science)/src/|(^|/)node_modules/(zod/(mini|v4)|idb|libsql|papaparse|fflate)/|^node:|^(fs|path|url|os|crypto)$",
    },
  },
  {
    name: "node-only-in-the-disk-store",
    comment: "the notebook runs in a browser: only storage/disk may use node.",
    severity: "error",
    from: { path: "^packages/notebook/src/(?!storage/disk/)", ...shipped },
    to: { dependencyTypes: ["core"] },
  },
  {
    name: "idb-only-in-the-browser-store",
    comment: "idb stands behind @captray/notebook/browser.",
    severity: "error",
    from: { path: "^packages/notebook/src/(?!storage/browser/)", ...shipped },
    to: { path: "(^|/)node_modules/idb/" },
  },
  {
    name: "libsql-only-in-the-disk-store",
    comment: "libsql stands behind @captray/notebook/disk.",
    severity: "error",
    from: { path: "^packages/notebook/src/(?!storage/disk/)", ...shipped },
    to: { path: "(^|/)node_modules/libsql/" },
  },
  {
    name: "packages-know-no-app",
    comment: "packages never import an app: move the code down, or hand it in.",
    severity: "error",
    from: { path: "^packages/" },
    to: { path: "^apps/" },
  },
  {
    name: "only-the-small-zod",
    comment: "packages and the web app import zod/mini: the whole of zod is too heavy for the first load.",
    severity: "error",
    from: { path: "^(packages|apps/web)/", ...shipped },
    to: { path: "node_modules/zod/", pathNot: "node_modules/zod/(mini/|v4/locales/|v4/mini/)" },
  },
  {
    name: "no-science-in-a-screen",
    comment:
      "a .tsx takes types from science, and functions of notation and errors only: ask notebook/answers or a state file.",
    severity: "error",
    from: { path: "^apps/web/src/.*[.]tsx$", ...shipped },
    to: { path: "^packages/science/src/(?!notation/|errors/)", dependencyTypesNot: ["type-only"] },
  },
  {
    name: "rooms-meet-in-the-notebook",
    comment: "a room never imports a room: what both need belongs to kit, or to the notebook.",
    severity: "error",
    from: { path: "^apps/web/src/rooms/([^/]+)/" },
    to: { path: "^apps/web/src/rooms/", pathNot: "^apps/web/src/rooms/$1/" },
  },
  {
    name: "kit-knows-no-room",
    comment: "kit, devices, look and workers serve the rooms and know none of them.",
    severity: "error",
    from: { path: "^apps/web/src/(kit|devices|look|workers)/" },
    to: { path: "^apps/web/src/(rooms|shell)/" },
  },
  {
    name: "apps-stand-alone",
    comment: "an app never imports another app.",
    severity: "error",
    from: { path: "^apps/([^/]+)/", pathNot: "^apps/captray/" },
    to: { path: "^apps/", pathNot: "^apps/$1/" },
  },
  {
    name: "captray-takes-serving-only",
    comment: "the terminal may take server/src/serving from another app, and nothing else.",
    severity: "error",
    from: { path: "^apps/captray/" },
    to: { path: "^apps/", pathNot: "^apps/(captray|server/src/serving)/" },
  },
  {
    name: "no-circle",
    comment: "two files that import each other are one file, or three.",
    severity: "error",
    from: {},
    to: { circular: true, dependencyTypesNot: ["type-only"] },
  },
  {
    name: "could-not-resolve",
    comment: "an import that leads nowhere would hide every other rule.",
    severity: "error",
    from: {},
    to: { couldNotResolve: true, pathNot: "^virtual:|[?](worker|url|raw)$" },
  },
];

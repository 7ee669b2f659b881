import { realpath, stat } from "node:fs/promises";
import { join, resolve, sep } from "node:path";
import { typeOf } from "./typeOf.ts";

export interface AnswerInput {
  /** The folder that is served; nothing outside it ever is. */
  readonly folder: string;
  /** Where the app stands on its host, with a slash at both ends: "/" or "/club/cap/". */
  readonly base: string;
  readonly method: string;
  /** The request's target as it came: path, perhaps a query. */
  readonly target: string;
}

/** What to send: the headers, and a file or a sentence. */
export interface Answer {
  readonly status: 200 | 308 | 400 | 403 | 404 | 405;
  readonly headers: Readonly<Record<string, string>>;
  readonly file?: string;
  readonly text?: string;
}

/**
 * What a request is answered with: a file of the folder, the way to it, or a refusal. Reads names, never contents.
 *
 * Names made by the build carry a digest and may be kept for good; everything else is asked for again each time, so that
 * no old page names files that are gone.
 */
export async function answerFor({ folder, base, method, target }: AnswerInput): Promise<Answer> {
  if (method !== "GET" && method !== "HEAD") return say(405, "Only reading is possible here.", { allow: "GET, HEAD" });
  const path = pathIn(target);
  if (path === undefined) return say(400, "This address cannot be read.");
  if (`${path}/` === base) return { status: 308, headers: { location: base } };
  if (!path.startsWith(base)) return say(404, `Nothing here. The notebook is at ${base}`);

  const root = resolve(folder);
  const wanted = resolve(join(root, path.slice(base.length) || "index.html"));
  if (!isInside(root, wanted)) return say(403, "This lies outside the app.");
  const found = await findFile(root, wanted);
  if (found === "outside") return say(403, "This lies outside the app.");
  if (found === undefined) return say(404, "No such file.");
  return {
    status: 200,
    headers: {
      "content-type": typeOf({ path: wanted }),
      "content-length": String(found.bytes),
      "cache-control": keepsForGood(wanted) ? "public, max-age=31536000, immutable" : "no-cache",
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
    },
    file: found.file,
  };
}

function pathIn(target: string): string | undefined {
  const raw = target.split(/[?#]/, 1)[0] ?? "";
  try {
    const path = decodeURIComponent(raw);
    // A backslash is a way up on some systems, a NUL ends a name on others.
    return path.startsWith("/") && !path.includes("\0") && !path.includes("\\") ? path : undefined;
  } catch {
    return undefined;
  }
}

function isInside(root: string, file: string): boolean {
  return file === root || file.startsWith(root.endsWith(sep) ? root : root + sep);
}

async function findFile(
  root: string,
  wanted: string,
): Promise<{ file: string; bytes: number } | "outside" | undefined> {
  try {
    const file = await realpath(wanted);
    if (!isInside(await realpath(root), file)) return "outside"; // a link may point anywhere
    const facts = await stat(file);
    return facts.isFile() ? { file, bytes: facts.size } : undefined;
  } catch {
    return undefined;
  }
}

function keepsForGood(file: string): boolean {
  return /[\\/]assets[\\/][^\\/]+-[\w-]{8}\.[a-z0-9]+$/i.test(file);
}

function say(status: Answer["status"], text: string, more: Readonly<Record<string, string>> = {}): Answer {
  return { status, headers: { "content-type": "text/plain; charset=utf-8", ...more }, text };
}

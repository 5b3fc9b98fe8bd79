import { readdirSync } from "node:fs";
import { relative, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { build, type Metafile, type Plugin } from "esbuild";

const root = resolve(import.meta.dirname, "..", "..");

export const pureRooms = [
  "quantity",
  "statistics",
  "readings",
  "reconcile",
  "amounts",
  "attenuation",
  "limits",
  "consistency",
  "publication",
  "exports",
  "wording",
] as const;

const filesOf = (room: string): string[] =>
  readdirSync(resolve(root, "lib", room), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `./lib/${room}/${name}`);

/** Every file of these rooms, whole, so that nothing is shaken out of the tally; `isApart` leaves files out. */
export const wholeRooms = (rooms: readonly string[], isApart: (file: string) => boolean = () => false): string =>
  rooms
    .flatMap(filesOf)
    .filter((file) => !isApart(file.slice(2)))
    .map((file, n) => `export * as m${n} from "${file}";`)
    .join("\n");

export type Bundle = {
  text: string;
  bytes: number;
  gzipped: number;
  inputs: string[];
  warnings: string[];
  meta: Metafile;
};

/** Leaves out every file of ours for which `isApart` (given its path from the root) says so, as if it were loaded apart. */
const filesApart = (isApart: (file: string) => boolean): Plugin => ({
  name: "files-apart",
  setup({ onResolve }) {
    onResolve({ filter: /^\.{1,2}\// }, ({ path, resolveDir }) =>
      !resolveDir.includes("node_modules") && isApart(relative(root, resolve(resolveDir, path)))
        ? { path, external: true }
        : null,
    );
  },
});

/**
 * Bundles TypeScript source for a browser, as a site's build would: an import of a Node built-in has nothing to resolve to and
 * fails here. `apart` names packages left out of the bundle, `filesWhere` our own files.
 */
export async function bundleForBrowser(
  contents: string,
  {
    apart = [],
    filesWhere,
    globalName,
  }: { apart?: string[]; filesWhere?: (file: string) => boolean; globalName?: string } = {},
): Promise<Bundle> {
  const { outputFiles, metafile, warnings } = await build({
    stdin: { contents, resolveDir: root, loader: "ts" },
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    platform: "browser",
    target: "es2023",
    format: globalName ? "iife" : "esm",
    ...(globalName ? { globalName } : {}),
    external: apart,
    plugins: filesWhere ? [filesApart(filesWhere)] : [],
    alias: { "@": root },
    define: { "process.env.NODE_ENV": '"production"' },
    logLevel: "silent",
  });
  const file = outputFiles[0]!;
  return {
    text: file.text,
    bytes: file.contents.length,
    gzipped: gzipSync(file.contents, { level: 9 }).length,
    inputs: Object.keys(metafile.inputs),
    warnings: warnings.map((warning) => warning.text),
    meta: metafile,
  };
}

import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";

// In threads of the one process that is ended: a worker of its own would go on with its endless loop after that.
const config = `import { defineConfig } from "vitest/config";
export default defineConfig({
  resolve: { alias: [{ find: /^@\\//, replacement: import.meta.dirname + "/" }] },
  test: { include: ["tests/**/*.test.ts"], testTimeout: 600_000, bail: 1, pool: "threads", isolate: false, fileParallelism: false },
});
`;

/** A copy of the working tree in a folder of its own, sharing the packages; the tree itself is never touched. */
export class Copy {
  constructor(root) {
    this.folder = mkdtempSync(join(tmpdir(), "assay-mutants-"));
    for (const part of ["lib", "tests", "commands", "sample-data", "package.json", "tsconfig.json"])
      cpSync(join(root, part), join(this.folder, part), { recursive: true });
    symlinkSync(join(root, "node_modules"), join(this.folder, "node_modules"));
    writeFileSync(join(this.folder, "vitest.mutate.config.ts"), config);
    mkdirSync(join(this.folder, ".cache"));
  }

  /** Whether these tests pass here ("passed", "failed"), or go on too long ("hung"). `report` names a file for the durations. */
  outcome(tests, { seconds, report }) {
    const reporter = report ? ["--reporter=json", `--outputFile=${report}`] : ["--reporter=dot"];
    const run = spawnSync(
      process.execPath,
      [
        join(this.folder, "node_modules/vitest/vitest.mjs"),
        "run",
        "--config",
        "vitest.mutate.config.ts",
        ...reporter,
        ...tests,
      ],
      { cwd: this.folder, stdio: "ignore", timeout: Math.ceil(seconds * 1000), killSignal: "SIGKILL" },
    );
    if (run.error?.code === "ETIMEDOUT") return "hung";
    return run.status === 0 ? "passed" : "failed";
  }

  write(file, text) {
    writeFileSync(join(this.folder, file), text);
  }

  remove() {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

const imported = /(?:from|import)\s+"((?:@\/|\.{1,2}\/)[^"]+\.(?:ts|tsx|json))"/g;

/** For every test file of these folders, the files of the repository it reaches through its imports, and by how many steps. */
export function reach(root, folders) {
  const known = new Map();
  const direct = (file) => {
    if (!known.has(file)) {
      const text = /\.tsx?$/.test(file) ? readFileSync(join(root, file), "utf8") : "";
      const to = [...text.matchAll(imported)].map(([, path]) =>
        path.startsWith("@/") ? path.slice(2) : relative(root, resolve(root, dirname(file), path)),
      );
      known.set(file, to);
    }
    return known.get(file);
  };
  const tests = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true })
      .filter((name) => name.endsWith(".test.ts"))
      .map((name) => join(folder, name)),
  );
  return new Map(
    tests.map((test) => {
      const steps = new Map([[test, 0]]);
      for (const [file, far] of steps) for (const next of direct(file)) if (!steps.has(next)) steps.set(next, far + 1);
      return [test, steps];
    }),
  );
}

// npm run check: lint, types, arrows and unit tests; quick enough to run before every commit.
import { prepare } from "./prepare.mjs";

await prepare();
const { finish, lint, types, vitest } = await import("./steps.mjs");
finish([
  lint(),
  types(),
  vitest("Unit tests", ["--exclude", "tests/properties/**", "--exclude", "tests/workflows/**"]),
]);

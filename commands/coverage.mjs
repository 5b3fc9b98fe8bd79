// npm run coverage -- [--trials N] … : simulates whole parts through reconcile and prints how honest its intervals are.
import { runTypeScript } from "./prepare.mjs";

await runTypeScript("coverage.ts");

// npm run fuzz [-- --files N --images N --seed S --only CASE]: mutated instrument files and pictures through the real import and photo paths.
import { runTypeScript } from "./prepare.mjs";

await runTypeScript("fuzz/main.ts");

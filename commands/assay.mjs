// npm run assay -- COMMAND …
import { runTypeScript } from "./prepare.mjs";

await runTypeScript("assay/main.ts");

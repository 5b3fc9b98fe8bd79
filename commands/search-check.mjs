// npm run search-check [-- --items N,N,…]: does search find what people type, and how fast, beside the bare index.
import { runTypeScript } from "./prepare.mjs";

await runTypeScript("search-check.ts");

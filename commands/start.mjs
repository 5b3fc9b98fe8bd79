// npm start: a registry of your own over DATA_DIR (./data): installs, builds, migrates, serves.
import { prepare } from "./prepare.mjs";

await prepare();
const { freePort, migrateDatabase, serve } = await import("./serve.mjs");
const port = await freePort("npm start");
const { build } = await import("./build.mjs");
build();
migrateDatabase();
serve(port);

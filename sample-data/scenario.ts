import { glassAndGlaze } from "./items-glass-and-glaze.ts";
import { metal } from "./items-metal.ts";
import { plasticAndCloth } from "./items-plastic-and-cloth.ts";
import { wood } from "./items-wood.ts";
import { files, instruments, people, sessions, unassigned } from "./people-and-instruments.ts";
import type { Scenario } from "./scenario-types.ts";
import { standards } from "./standards.ts";

/**
 * The demonstration: an invented neighbourhood lending shelf of kitchenware and toys that tests what it is given before
 * lending it out. Every name, mark, number and object is invented; time zone names are the tz database's.
 */
export const scenario: Scenario = {
  registry: {
    name: "The Thimblewick Lending Shelf",
    invented: true,
    licence: "CC-BY-4.0",
    contact: "corrections@example.org",
    about:
      "An invented neighbourhood shelf that lends kitchenware and toys, and tests what it is given before lending it out.",
  },
  people,
  instruments,
  files,
  sessions,
  standards,
  items: [...glassAndGlaze, ...metal, ...plasticAndCloth, ...wood],
  unassigned,
};

export type Licence = { name: string; title: string; path: string | null };

/** Licences that an owner can choose for the published data, by SPDX identifier (spdx.org/licenses; titles and addresses from memory). */
const known: Record<string, Licence> = {
  "CC-BY-4.0": {
    name: "CC-BY-4.0",
    title: "Creative Commons Attribution 4.0 International",
    path: "https://creativecommons.org/licenses/by/4.0/",
  },
  "CC-BY-SA-4.0": {
    name: "CC-BY-SA-4.0",
    title: "Creative Commons Attribution-ShareAlike 4.0 International",
    path: "https://creativecommons.org/licenses/by-sa/4.0/",
  },
  "CC0-1.0": {
    name: "CC0-1.0",
    title: "Creative Commons Zero 1.0 Universal",
    path: "https://creativecommons.org/publicdomain/zero/1.0/",
  },
  "ODC-By-1.0": {
    name: "ODC-By-1.0",
    title: "Open Data Commons Attribution License 1.0",
    path: "https://opendatacommons.org/licenses/by/1-0/",
  },
  "ODbL-1.0": {
    name: "ODbL-1.0",
    title: "Open Data Commons Open Database License 1.0",
    path: "https://opendatacommons.org/licenses/odbl/1-0/",
  },
};

/** Those an owner can choose from, the default first. */
export const licenceChoices: readonly Licence[] = Object.values(known);

/** The licence a registry names: by its identifier ("CC-BY-4.0", also "CC BY 4.0"), else its own words without an address. */
export const licenceOf = (named: string): Licence =>
  known[named] ?? known[named.replaceAll(" ", "-")] ?? { name: named, title: named, path: null };

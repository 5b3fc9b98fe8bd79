import type { Criteria, LimitRow } from "../types.ts";
import { limit, limits } from "./define.ts";
import { ceramic, cups, jewelleryUnsure, plainToys, softToyUnsure, teenUnsure, under3, upTo12 } from "./scopes.ts";

/** Canada, ISO, Australia, New Zealand, Great Britain. */
const CA = "Canada";

const glazed: Criteria = { foodContact: true, materials: ceramic };
const decorated = {
  materials: ["glass", "enamel", "paint"] as const,
  why: "glassware is covered if it is decorated with a coat that holds lead or cadmium",
};
const glaze = {
  jurisdiction: CA,
  title: "Glazed ceramics and decorated glassware for food",
  quantity: "leachate",
  failsAt: ">",
  citation: "SOR/98-176 (1998), then SOR/2016-175; based on ISO 6486-1",
  from: "1998-01-01",
  fromKnown: "year",
  nature: "binding",
  checked: "verified",
  checkedNote:
    "Values, classes, lip and rim and the exception were read in SOR/2016-175; the regulations of 1998 were not read.",
  target: "object",
} as const;
const out = "Out if a hole, a hook or a permanent warning marks it as not for food.";
const glazeClasses: { suffix: string; words: string; pb: number; cd: number; criteria: Criteria[] }[] = [
  {
    suffix: "FLAT",
    words: "flatware",
    pb: 3.0,
    cd: 0.5,
    criteria: [
      {
        ...glazed,
        categories: [],
        categoriesUnsure: { categories: ["plate-or-bowl"], why: "only flat pieces" },
        materialsUnsure: decorated,
      },
    ],
  },
  {
    suffix: "SMALL",
    words: "small hollowware",
    pb: 2.0,
    cd: 0.5,
    criteria: [
      {
        ...glazed,
        categories: [],
        categoriesUnsure: {
          categories: ["plate-or-bowl", "food-storage", "baking-dish"],
          why: "only small hollow pieces",
        },
        materialsUnsure: decorated,
      },
    ],
  },
  {
    suffix: "LARGE",
    words: "large hollowware",
    pb: 1.0,
    cd: 0.25,
    criteria: [
      {
        ...glazed,
        categories: [],
        categoriesUnsure: {
          categories: ["plate-or-bowl", "food-storage", "baking-dish", "pot-or-pan"],
          why: "only large hollow pieces",
        },
        materialsUnsure: decorated,
      },
    ],
  },
  {
    suffix: "CUP",
    words: "cups and mugs",
    pb: 0.5,
    cd: 0.5,
    criteria: [
      {
        ...glazed,
        categories: cups,
        categoriesUnsure: { categories: ["glassware"], why: "only cups and mugs" },
        materialsUnsure: decorated,
      },
    ],
  },
  {
    suffix: "PITCHER",
    words: "pitchers",
    pb: 0.5,
    cd: 0.25,
    criteria: [
      {
        ...glazed,
        categories: [],
        categoriesUnsure: { categories: ["food-storage", "glassware"], why: "only pitchers" },
        materialsUnsure: decorated,
      },
    ],
  },
  {
    suffix: "RIM",
    words: "the lip and rim of drinking vessels with an outside pattern within 20 mm of the rim",
    pb: 4,
    cd: 0.4,
    criteria: [
      {
        ...glazed,
        categories: ["mug-or-cup", "glassware"],
        materialsUnsure: decorated,
        onlyIf: "it has an outside pattern within 20 mm of the rim",
      },
    ],
  },
];

const jewel = {
  jurisdiction: CA,
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  nature: "binding",
  checked: "verified",
  target: "object",
} as const;

const main: [string, number][] = [
  ["Sb", 60],
  ["As", 25],
  ["Ba", 1000],
  ["Cd", 75],
  ["Cr", 60],
  ["Pb", 90],
  ["Hg", 60],
  ["Se", 500],
];
const fingerPaint: [string, number][] = [
  ["Sb", 10],
  ["As", 10],
  ["Ba", 350],
  ["Cd", 15],
  ["Cr", 25],
  ["Pb", 25],
  ["Hg", 10],
  ["Se", 50],
];
const clay: [string, number][] = [
  ["Sb", 60],
  ["As", 25],
  ["Ba", 250],
  ["Cd", 50],
  ["Cr", 25],
  ["Pb", 90],
  ["Hg", 25],
  ["Se", 500],
];
const iso = {
  jurisdiction: "International (ISO)",
  title: "Toy standard ISO 8124-3, migration of elements",
  quantity: "migration",
  failsAt: ">",
  citation: "ISO 8124-3:2020 Table 1 and Amd 1:2023",
  nature: "advisory",
  checked: "second-hand",
  target: "object",
  note: "Voluntary unless a country adopts it (Australia, New Zealand; China's GB 6675.4 is similar). Editions of 1997, 2010 (amended 2014, 2018), 2020 (amended 2023).",
} as const;
const toyCriteria: Criteria = {
  categories: plainToys,
  categoriesUnsure: softToyUnsure,
  ages: upTo12,
  agesUnsure: teenUnsure,
};
const auNz = {
  quantity: "migration",
  failsAt: ">",
  nature: "binding",
  target: "object",
} as const;

export const canadaAndOthers: LimitRow[] = [
  limit({
    jurisdiction: CA,
    id: "CA-CPCLR",
    family: "ca-consumer-products-pb",
    title: "Consumer Products Containing Lead Regulations",
    substances: ["Pb"],
    quantity: "bulk-mass-fraction",
    value: 90,
    failsAt: ">",
    scope:
      "In: each accessible part of products that touch the mouth in normal use, except kitchen utensils and glazed ware; children's clothing, toys, learning products and books (under 14); sleep, hygiene and carrying products (under 4). " +
      "Derogation where lead is essential, has no alternative, and no more than 90 mg/kg migrates.",
    citation: "SOR/2018-83",
    from: "2018-11-02",
    nature: "binding",
    checked: "verified",
    checkedNote: "Read in SOR/2018-83. Before it, SOR/2010-273 covered toys for children under 3 only.",
    target: "object",
    criteria: [
      {
        accessible: true,
        categories: plainToys,
        categoriesUnsure: softToyUnsure,
        ages: upTo12,
        agesUnsure: teenUnsure,
      },
      { accessible: true, categories: ["bib-or-baby-gear"], ages: under3 },
      {
        accessible: true,
        categories: ["bib-or-baby-gear"],
        ages: ["child-3-to-12"],
        onlyIf: "it is clothing, or is for a child under 4",
      },
    ],
  }),
  limit({
    ...jewel,
    id: "CA-JEWEL-PB",
    family: "ca-jewellery-pb",
    title: "Children's Jewellery Regulations, lead",
    substances: ["Pb"],
    value: 90,
    scope: "In: jewellery that appeals mainly to children under 15. Out: merit badges, medals and the like.",
    citation: "SOR/2018-82 s. 2 (repeals SOR/2016-168)",
    from: "2018-11-02",
    checkedNote: "Read in SOR/2018-82. Before it 600 in total and 90 that migrates (from memory).",
    criteria: [
      {
        categories: [],
        categoriesUnsure: jewelleryUnsure,
        ages: upTo12,
        agesUnsure: {
          ages: ["teen"],
          why: "jewellery for children under 15 is covered; the record's age group also holds older ones",
        },
      },
    ],
  }),
  limit({
    ...jewel,
    id: "CA-JEWEL-CD",
    family: "ca-jewellery-cd",
    title: "Children's Jewellery Regulations, cadmium",
    substances: ["Cd"],
    value: 130,
    scope:
      "In: children's jewellery that fits wholly inside the small-parts cylinder (31.7 mm bore, 25.4 to 57.1 mm deep).",
    citation: "SOR/2018-82 s. 3",
    from: "2018-11-02",
    checkedNote: "Read in SOR/2018-82.",
    criteria: [
      {
        categories: [],
        categoriesUnsure: jewelleryUnsure,
        ages: upTo12,
        onlyIf: "it fits wholly inside the small-parts cylinder",
      },
    ],
  }),
  ...glazeClasses.flatMap((row) =>
    limits(
      {
        ...glaze,
        scope: `In: ${row.words}, glazed ceramic or decorated glass, for food. ${out}`,
        criteria: row.criteria,
      },
      [
        {
          id: `CA-GLAZE-${row.suffix}-PB`,
          family: `ca-glazed-${row.suffix.toLowerCase()}-pb`,
          substances: ["Pb"],
          value: row.pb,
        },
        {
          id: `CA-GLAZE-${row.suffix}-CD`,
          family: `ca-glazed-${row.suffix.toLowerCase()}-cd`,
          substances: ["Cd"],
          value: row.cd,
        },
      ],
    ),
  ),
  limit({
    jurisdiction: CA,
    id: "CA-SURFCOAT",
    family: "ca-surface-coating-pb",
    title: "Surface Coating Materials Regulations",
    substances: ["Pb"],
    quantity: "coating-mass-fraction",
    value: 90,
    failsAt: ">",
    scope:
      "In: paints and like coatings as sold, total lead in the dried coat. Out with a warning label: anti-corrosion coats for farms and public structures, metal touch-up, outdoor graphic art, art and craft not used by children.",
    citation: "SOR/2016-193 s. 2–3",
    from: "2016-06-22",
    nature: "binding",
    checked: "verified",
    checkedNote:
      "Read in SOR/2016-193. That it was 600 before November 2010, and that painted goods fall under other rules such as those on toys, is from memory.",
    target: "paint-as-sold",
  }),
  ...limits(
    {
      ...iso,
      from: "1997-01-01",
      fromKnown: "year" as const,
      checkedNote: "Read in summaries of the standard, and as Australian law.",
      scope: "In: toys: all coatings; other toy materials for children up to 72 months.",
      criteria: [toyCriteria],
    },
    main.map(([element, value]) => ({
      id: `ISO-8124-3-${element.toUpperCase()}`,
      family: `iso-toy-${element.toLowerCase()}`,
      substances: [element],
      value,
    })),
  ),
  ...limits(
    {
      ...iso,
      from: "2018-01-01",
      fromKnown: "year" as const,
      checkedNote: "Read in summaries of the standard, and as Australian law; lowered to these figures in 2018.",
      scope: "In: finger paint.",
      criteria: [{ ...toyCriteria, onlyIf: "it is finger paint" }],
    },
    fingerPaint.map(([element, value]) => ({
      id: `ISO-8124-3-FINGER-${element.toUpperCase()}`,
      family: `iso-finger-paint-${element.toLowerCase()}`,
      substances: [element],
      value,
    })),
  ),
  ...limits(
    {
      ...iso,
      from: "2010-01-01",
      fromKnown: "year" as const,
      checkedNote: "Read in summaries of the standard; the edition it began with is from memory.",
      scope: "In: modelling clay.",
      criteria: [{ ...toyCriteria, onlyIf: "it is modelling clay" }],
    },
    clay.map(([element, value]) => ({
      id: `ISO-8124-3-CLAY-${element.toUpperCase()}`,
      family: `iso-clay-${element.toLowerCase()}`,
      substances: [element],
      value,
    })),
  ),
  ...limits(
    {
      ...auNz,
      jurisdiction: "Australia",
      title: "Mandatory toy standard, migration of elements",
      citation: "Consumer Protection Notice 1 of 2009; AS/NZS ISO 8124.3:2003",
      from: "2010-01-01",
      checked: "verified",
      checkedNote: "Figures and scope read on the regulator's pages; the first day was read second-hand.",
      scope: "In: new toys for play up to 6 years. Out: sports goods, bicycles, fashion jewellery.",
      criteria: [
        { ...toyCriteria, ages: under3 },
        { ...toyCriteria, ages: ["child-3-to-12"], onlyIf: "it is for a child up to 6" },
      ] as Criteria[],
    },
    main.map(([element, value]) => ({
      id: `AU-NZ-TOY-AU-${element.toUpperCase()}`,
      family: `au-toy-${element.toLowerCase()}`,
      substances: [element],
      value,
    })),
  ),
  limit({
    ...auNz,
    jurisdiction: "Australia",
    id: "AU-NZ-TOY-AU-FINGER-PB",
    family: "au-finger-paint-pb",
    title: "Mandatory standard for finger paint, migration of lead",
    substances: ["Pb"],
    value: 25,
    citation: "Consumer Protection Notice 1 of 2009; AS/NZS ISO 8124.3:2003",
    from: "2010-01-01",
    checked: "verified",
    checkedNote: "Figure read on the regulator's pages; the first day was read second-hand.",
    scope: "In: finger paints.",
    criteria: [{ ...toyCriteria, onlyIf: "it is finger paint" }],
  }),
  limit({
    ...auNz,
    jurisdiction: "New Zealand",
    id: "AU-NZ-TOY-NZ-PB",
    family: "nz-toy-pb",
    title: "Unsafe goods notice on lead in toys, migration",
    substances: ["Pb"],
    value: 90,
    citation: "New Zealand unsafe goods notice; AS/NZS ISO 8124.3:2003",
    from: "2009-03-26",
    checked: "verified",
    checkedNote: "Read on the regulator's page; no end date.",
    scope: "In: accessible parts of toys, lead only.",
    criteria: [{ ...toyCriteria, accessible: true }],
  }),
  ...limits(
    {
      jurisdiction: "Great Britain",
      title: "Toys (Safety) Regulations 2011, migration of aluminium",
      substances: ["Al"],
      quantity: "migration",
      failsAt: ">",
      citation: "SI 2011/1881 Sch. 2 Part 3 as amended",
      from: "2022-12-15",
      nature: "binding",
      checked: "second-hand",
      checkedNote: "Read in a note of 2022. The schedule's other figures were not read and are not in this table.",
      target: "object",
    },
    [
      {
        id: "GB-TOY-AL-DRY",
        family: "gb-toy-al-dry",
        value: 2250,
        scope: "In: toys; dry, brittle, powder-like or pliable material.",
        criteria: [{ ...toyCriteria, onlyIf: "the part is dry, brittle, powder-like or pliable" }],
      },
      {
        id: "GB-TOY-AL-LIQUID",
        family: "gb-toy-al-liquid",
        value: 560,
        scope: "In: toys; liquid or sticky material.",
        criteria: [{ ...toyCriteria, onlyIf: "the part is liquid or sticky" }],
      },
      {
        id: "GB-TOY-AL-SCRAPED",
        family: "gb-toy-al-scraped",
        value: 28130,
        scope: "In: toys; material that is scraped off.",
        criteria: [{ ...toyCriteria, accessible: true }],
      },
    ],
  ),
];

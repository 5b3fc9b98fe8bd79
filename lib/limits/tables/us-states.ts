import type { Criteria, LimitRow } from "../types.ts";
import { limit, limits, percent } from "./define.ts";
import { cookware, jewellery, packagingCriteria, plainToys, under3, upTo12 } from "./scopes.ts";

/** States of the United States, and the states' model law on packaging. */
const p65 = {
  jurisdiction: "California",
  quantity: "intake",
  failsAt: ">",
  nature: "binding",
  target: "exposure",
} as const;

const settlement = {
  jurisdiction: "California",
  failsAt: ">",
  nature: "settlement",
  checked: "second-hand",
  checkedNote: "Read in a summary of the judgments, not in them.",
} as const;
const parties = "A settlement that binds its parties; not public law. A duty to warn, not a ban.";

const illinois = {
  jurisdiction: "Illinois",
  title: "Lead Poisoning Prevention Act, warning label",
  substances: ["Pb"],
  value: 40,
  failsAt: ">",
  scope:
    "In: any component of children's jewellery (under 12), child-care articles (under 6) and toys containing paint (under 12). A warning label above 40 and below 600 ppm, or below a lower federal or state limit.",
  citation: "410 ILCS 45/6 (P.A. 95-1019; P.A. 97-0612)",
  from: "2010-01-01",
  nature: "binding",
  checked: "verified",
  checkedNote: "Read in the acts.",
  note: "The text was amended on 1 January 2012.",
  target: "object",
  criteria: [
    {
      ages: upTo12,
      categories: [],
      categoriesUnsure: {
        categories: jewellery,
        why: "children's jewellery under 12 is covered and a key ring is not; the record's class holds both",
      },
    },
    { ages: upTo12, categories: plainToys, onlyIf: "it is a toy that contains paint, for a child under 12" },
    { ages: under3, categories: ["bib-or-baby-gear"] },
    {
      ages: ["child-3-to-12"],
      categories: ["bib-or-baby-gear"],
      onlyIf: "it is a child-care article for a child under 6",
    },
  ] as Criteria[],
} as const;

const mnScope =
  "In, for adults too: jewellery, toys, cosmetics, games, play sets, outdoor games, school supplies, pots and pans, cups, bowls and food containers, craft and art supplies, fidget spinners, costumes, keys and key rings, clothing and footwear. " +
  "Out since the amendments of June 2025: pens and mechanical pencils, professional art materials, internal solder (until 1 July 2028, with reports), keys (until 1 July 2028, then 1.5 %), cadmium in the enamel of some cast-iron and steel pans.";
const mnCriteria: Criteria = {
  categories: ["mug-or-cup", "pot-or-pan", "food-storage", "toy", "puzzle-or-blocks", "glassware"],
  categoriesUnsure: {
    categories: [
      "plate-or-bowl",
      "baking-dish",
      "soft-toy-or-textile",
      "bib-or-baby-gear",
      "ornament",
      "cutlery-or-utensil",
    ],
    why: "the law lists bowls, pots and pans, toys and clothing; the record's class also holds things it does not list",
  },
  formUnsure: {
    form: "coating",
    why: "the limit is by total weight, and a coating alone does not say that",
  },
  materialsUnsure: { materials: ["solder"], why: "internal solder is out until 1 July 2028" },
};
const mnKeyRings: Criteria = {
  categories: jewellery,
  formUnsure: { form: "coating", why: "the limit is by total weight, and a coating alone does not say that" },
  unless: "A key itself is out until 1 July 2028; a key ring and its fob are not.",
};
const minnesota = {
  jurisdiction: "Minnesota",
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  scope: mnScope,
  citation: "Minn. Stat. 325E.3892",
  nature: "binding",
  checked: "verified",
  target: "object",
} as const;

const waScope =
  "In: aluminium or brass cookware, utensils and their components. Out: stainless steel and other metals; inaccessible parts; casual resale and resale by nonprofits.";
const waCriteria: Criteria = {
  categories: [...cookware, "cutlery-or-utensil"],
  materials: ["aluminium", "brass"],
  accessible: true,
  unless: "Casual resale and resale by nonprofits are out.",
};
const washington = {
  jurisdiction: "Washington",
  family: "wa-cookware-pb",
  substances: ["Pb"],
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  nature: "binding",
  target: "object",
} as const;

const packaging = {
  jurisdiction: "United States (19 states)",
  title: "Model Toxics in Packaging law",
  substances: ["Pb", "Cd", "Hg", "Cr(VI)"],
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  citation: "Model Toxics in Packaging Legislation (1989, revised 2021), toxicsinpackaging.org",
  from: "1992-01-01",
  fromKnown: "year",
  nature: "binding",
  checked: "verified",
  note: "Binding only as each state's own law, since about 1992.",
  target: "packaging",
  criteria: packagingCriteria,
} as const;

export const usStates: LimitRow[] = [
  limit({
    ...p65,
    id: "CA-P65-MADL",
    family: "ca-p65-pb-reproductive",
    title: "Proposition 65 level for a warning, lead, reproductive harm",
    substances: ["Pb"],
    value: 0.5,
    scope: "Exposure by daily intake, not content. A duty to warn, not a ban.",
    citation: "27 CCR 25805(b); H&S Code 25249.5–.10; upheld by Cal. Ct. App. A148711 (2018)",
    from: "1989-01-01",
    fromKnown: "year",
    checked: "second-hand",
    checkedNote: "Read in notes and in the court's opinion; the copy of the section read breaks off before lead.",
  }),
  limit({
    ...p65,
    id: "CA-P65-NSRL",
    family: "ca-p65-pb-cancer",
    title: "Proposition 65 level for a warning, lead, cancer",
    substances: ["Pb"],
    value: 15,
    scope: "Exposure by daily intake (by mouth), not content. A duty to warn, not a ban.",
    citation: "27 CCR 25705",
    from: "1900-01-01",
    fromKnown: "unknown",
    checked: "from memory",
    checkedNote: "From memory (high): the copies of 25705 that were read break off before lead.",
  }),
  limit({
    ...p65,
    id: "CA-P65-CD",
    family: "ca-p65-cd-reproductive",
    title: "Proposition 65 level for a warning, cadmium, reproductive harm",
    substances: ["Cd"],
    value: 4.1,
    scope: "Exposure by daily intake (by mouth), not content. A duty to warn, not a ban.",
    citation: "27 CCR 25805(b)",
    from: "1900-01-01",
    fromKnown: "unknown",
    checked: "verified",
    checkedNote: "Read in 27 CCR 25805; when it began was not read.",
    note: "In 25705, cadmium 0.05 and arsenic 0.06 µg/day are for breathing in only.",
  }),
  ...limits(
    {
      ...settlement,
      title: "Settlement benchmark: ceramic ware",
      substances: ["Pb"],
      quantity: "leachate",
      citation: "California consent judgments of the early 1990s",
      from: "1993-01-01",
      fromKnown: "year",
      target: "object",
    },
    [
      {
        id: "CA-P65-TABLE-FLAT",
        family: "ca-settlement-ceramic-flat",
        value: 0.226,
        scope: `In: ceramic flatware. ${parties}`,
        criteria: [
          {
            foodContact: true,
            materials: ["glaze", "ceramic-body"],
            categories: [],
            categoriesUnsure: { categories: ["plate-or-bowl"], why: "only flat pieces" },
          },
        ],
      },
      {
        id: "CA-P65-TABLE-HOLLOW",
        family: "ca-settlement-ceramic-hollow",
        value: 0.1,
        scope: `In: all ceramic hollowware. ${parties}`,
        criteria: [
          {
            foodContact: true,
            materials: ["glaze", "ceramic-body"],
            categories: ["mug-or-cup"],
            categoriesUnsure: {
              categories: ["plate-or-bowl", "baking-dish", "food-storage"],
              why: "only hollow pieces",
            },
          },
        ],
      },
    ],
  ),
  ...limits(
    {
      ...settlement,
      title: "Settlement benchmark: glass decorated outside",
      citation: "San Francisco Superior Court, CGC-05-… (the rest of the number was cut off in the copy read)",
      from: "2006-01-01",
      fromKnown: "year",
      target: "object",
      criteria: [
        {
          categories: ["glassware", "mug-or-cup"],
          materials: ["glass", "crystal", "paint", "enamel"],
          onlyIf: "it is glass with a decoration on the outside",
        },
      ] as Criteria[],
    },
    [
      {
        id: "CA-P65-GLASS-PB",
        family: "ca-settlement-glass-pb",
        substances: ["Pb"],
        quantity: "coating-mass-fraction",
        value: 600,
        scope: `In: exterior decoration of glass. ${parties}`,
      },
      {
        id: "CA-P65-GLASS-CD",
        family: "ca-settlement-glass-cd",
        substances: ["Cd"],
        quantity: "coating-mass-fraction",
        value: 4800,
        scope: `In: exterior decoration of glass. ${parties}`,
      },
      {
        id: "CA-P65-GLASS-WIPE-PB",
        family: "ca-settlement-glass-wipe-pb",
        substances: ["Pb"],
        quantity: "mass",
        value: 0.001,
        statistic: "mass on one wipe",
        scope: `In: exterior decoration of glass, by a wipe (1.0 µg). ${parties}`,
      },
      {
        id: "CA-P65-GLASS-WIPE-CD",
        family: "ca-settlement-glass-wipe-cd",
        substances: ["Cd"],
        quantity: "mass",
        value: 0.008,
        statistic: "mass on one wipe",
        scope: `In: exterior decoration of glass, by a wipe (8.0 µg). ${parties}`,
      },
      {
        id: "CA-P65-GLASS-LIP-PB",
        family: "ca-settlement-glass-lip-pb",
        substances: ["Pb"],
        quantity: "coating-mass-fraction",
        value: 200,
        scope: `In: decoration on the lip and rim of glass. ${parties}`,
      },
      {
        id: "CA-P65-GLASS-LIP-CD",
        family: "ca-settlement-glass-lip-cd",
        substances: ["Cd"],
        quantity: "coating-mass-fraction",
        value: 800,
        scope: `In: decoration on the lip and rim of glass. ${parties}`,
      },
    ],
  ),
  limit({
    ...illinois,
    id: "IL-LPPA-SUBSTRATE",
    family: "il-label-substrate-pb",
    quantity: "bulk-mass-fraction",
    criteria: illinois.criteria.map((c) => ({ ...c, layer: "not-paint" })),
  }),
  limit({
    ...illinois,
    id: "IL-LPPA-COATING",
    family: "il-label-coating-pb",
    quantity: "coating-mass-fraction",
    criteria: [
      ...illinois.criteria.map((c): Criteria => ({ ...c, layer: "paint" })),
      { ages: under3, categories: plainToys, layer: "paint" }, // paint in hand: the toy does contain paint
    ],
  }),
  limit({
    jurisdiction: "New York",
    id: "NY-ECL-37-0115",
    family: "ny-jewellery-label-pb",
    title: "Children's jewellery, warning label",
    substances: ["Pb"],
    quantity: "bulk-mass-fraction",
    value: 40,
    failsAt: ">",
    scope:
      "In: any component of children's jewellery (under 12) only. A warning label above 40 and below 100 ppm, or below a lower limit.",
    citation: "Env. Cons. Law section 37-0115(5); chapter 671 of 2019",
    from: "2021-01-01",
    nature: "binding",
    checked: "verified",
    checkedNote:
      "Read in stored texts of the statute (upper end 100); bulletins of 2019 and 2020 give 600 for the upper end.",
    target: "object",
    criteria: [
      {
        ages: upTo12,
        categories: [],
        categoriesUnsure: {
          categories: jewellery,
          why: "children's jewellery is covered and a key ring is not; the record's class holds both",
        },
      },
    ],
  }),
  limit({
    ...minnesota,
    id: "MN-PB",
    family: "mn-products-pb",
    title: "Lead in fifteen classes of consumer products",
    substances: ["Pb"],
    value: percent(0.009),
    from: "2023-07-01",
    checkedNote:
      "Read in the statute and in two versions of the state agency's page (a bulletin that gives 1 August 2023 is not followed); the amendments of 2025 were read in trade bulletins.",
    criteria: [mnCriteria, mnKeyRings],
  }),
  limit({
    ...minnesota,
    id: "MN-CD",
    family: "mn-products-cd",
    title: "Cadmium in fifteen classes of consumer products",
    substances: ["Cd"],
    value: percent(0.0075),
    from: "2023-07-01",
    checkedNote:
      "Read in the statute and on the state agency's page; the amendments of 2025 were read in trade bulletins.",
    criteria: [
      {
        ...mnCriteria,
        materialsUnsure: {
          materials: ["enamel"],
          why: "cadmium in the enamel of some cast-iron and steel pans is out since June 2025",
        },
      },
      mnKeyRings,
    ],
  }),
  limit({
    ...minnesota,
    id: "MN-PB-KEYS-2028",
    family: "mn-keys-pb",
    title: "Lead in keys",
    substances: ["Pb"],
    value: percent(1.5),
    scope: "In: keys. Out: key rings and fobs, which stay under the general limit.",
    citation: "Minn. Stat. 325E.3892 as amended by HF 4 (June 2025)",
    from: "2028-07-01",
    checked: "second-hand",
    checkedNote: "Read in trade bulletins on the amendments of June 2025.",
    criteria: [{ categories: jewellery, materials: ["brass", "zinc-alloy", "steel"], onlyIf: "the part is a key" }],
  }),
  limit({
    ...washington,
    id: "WA-COOK-5",
    title: "Lead in metal cookware, as enacted in 2024",
    value: 5,
    scope: "In: any metal cookware and its components.",
    citation: "RCW 70A.565.020 as enacted 2024 (HB 1551)",
    from: "2026-01-01",
    until: "2025-12-31",
    neverTookEffect: true,
    checked: "verified",
    checkedNote: "Read in RCW 70A.565.",
    note: "Never took effect: it was to begin on 1 January 2026 and was amended in 2025. It is in force on no day.",
    criteria: [waCriteria],
  }),
  limit({
    ...washington,
    id: "WA-COOK-90",
    title: "Lead in aluminium and brass cookware, 2026",
    value: 90,
    scope: waScope,
    citation: "RCW 70A.565.020 as amended 2025 (SB 5628)",
    from: "2026-01-01",
    until: "2027-12-31",
    checked: "verified",
    checkedNote:
      "Read in the session law; that it was signed on 13 May 2025 and took effect as an act on 27 July 2025 was read second-hand.",
    criteria: [waCriteria],
  }),
  limit({
    ...washington,
    id: "WA-COOK-10",
    title: "Lead in aluminium and brass cookware, 2028",
    value: 10,
    scope: waScope,
    citation: "RCW 70A.565.020 as amended 2025 (SB 5628)",
    from: "2028-01-01",
    checked: "verified",
    checkedNote: "Read in the session law.",
    note: "May be lowered after December 2030. Most field XRF readings of brass and aluminium cannot show 10 ppm (from memory): a non-detect then says only how far down the reading could see.",
    criteria: [waCriteria],
  }),
  ...limits(packaging, [
    {
      id: "TIP-100",
      family: "us-packaging-sum",
      sum: true,
      value: 100,
      scope:
        "In: packaging and its components, as the sum of lead, cadmium, mercury and hexavalent chromium. Out: the product inside.",
      checkedNote: "Read on the states' clearinghouse. The phase-in 600, 250, 100 at 2, 3 and 4 years is from memory.",
    },
    {
      id: "TIP-100-INTENTIONAL",
      family: "us-packaging-intentional",
      rule: "none of the four metals may be added on purpose, whatever the amount",
      scope: "In: packaging and its components. Out: the product inside.",
      checkedNote: "Read on the states' clearinghouse.",
    },
  ]),
];

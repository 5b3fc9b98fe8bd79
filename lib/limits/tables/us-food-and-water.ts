import type { Criteria, LimitRow } from "../types.ts";
import { limit, limits, percent } from "./define.ts";
import { ceramic, cups } from "./scopes.ts";

/**
 * United States: things that touch food, food itself, and water.
 * Shapes: flatware is no deeper inside than 25 mm, hollowware deeper; small holds less than 1.1 L, large 1.1 L or more.
 * The leach test is 4 % acetic acid for 24 hours at room temperature (ASTM C738).
 */
const US = "United States";
const shapes = "Flatware is at most 25 mm deep inside; hollowware is deeper; large holds 1.1 L or more.";

const leach = {
  jurisdiction: US,
  quantity: "leachate",
  failsAt: ">",
  nature: "guidance",
  target: "object",
} as const;

const foodCeramic: Criteria = { foodContact: true, materials: ceramic };
const flat: Criteria[] = [
  {
    ...foodCeramic,
    categoriesUnsure: { categories: ["plate-or-bowl"], why: "only pieces at most 25 mm deep inside" },
    categories: [],
  },
];
const smallHollow: Criteria[] = [
  {
    ...foodCeramic,
    categories: [],
    categoriesUnsure: {
      categories: ["plate-or-bowl", "food-storage", "baking-dish"],
      why: "only pieces deeper than 25 mm that hold less than 1.1 L",
    },
  },
];
const largeHollow: Criteria[] = [
  {
    ...foodCeramic,
    categories: [],
    categoriesUnsure: {
      categories: ["plate-or-bowl", "food-storage", "baking-dish", "pot-or-pan"],
      why: "only pieces deeper than 25 mm that hold 1.1 L or more",
    },
  },
];
const cup: Criteria[] = [{ ...foodCeramic, categories: cups }];
const pitcher: Criteria[] = [
  { ...foodCeramic, categories: [], categoriesUnsure: { categories: ["food-storage", "other"], why: "only pitchers" } },
];

const lead1991 = {
  ...leach,
  title: "Lead leaching from ceramic ware, action level",
  substances: ["Pb"],
  citation: "FDA CPG 7117.07 / 545.450",
  from: "1991-11-12",
  note: "Announced 12 November 1991; the guide is dated 1992 (from memory).",
} as const;
const any6 = "any one of 6 vessels";
const mean6 = "the average of 6 vessels";

const cadmium = {
  ...leach,
  title: "Cadmium leaching from ceramic ware, action level",
  substances: ["Cd"],
  citation: "FDA CPG 7117.06 / 545.400",
  from: "1900-01-01",
  fromKnown: "unknown",
  checked: "verified",
  checkedNote: "Value and statistic read in a copy of the guide; when it began was not read.",
} as const;

const lead1979 = {
  ...leach,
  title: "Lead leaching from ceramic ware, 1979 to 1991",
  substances: ["Pb"],
  citation: "FDA action levels of 1979; the flatware figure is quoted in FDA notice T91-70 (12 Nov 1991)",
  from: "1979-01-01",
  fromKnown: "year",
  until: "1991-11-11",
} as const;

const foodCode = {
  jurisdiction: "United States (model Food Code)",
  substances: ["Pb"],
  failsAt: ">",
  citation: "Food Code 4-101.13; WAC 246-215-04110; Wyo. 010-6 section 6-2",
  from: "2022-03-01",
  nature: "binding",
  checked: "verified",
  checkedNote: "Read in the Washington and Wyoming texts. The date is that of Washington's text; other states differ.",
  note: "A model that binds food businesses where a state has adopted it.",
  target: "food-business",
} as const;

const intake = {
  jurisdiction: US,
  substances: ["Pb"],
  quantity: "intake",
  failsAt: ">",
  nature: "advisory",
  target: "exposure",
} as const;
const irl = {
  ...intake,
  citation: "Regul Toxicol Pharmacol 2022; 133:105202",
  checked: "verified",
  checkedNote: "Read in the published abstracts; the dates are known to the year.",
} as const;
const tolerable = {
  ...intake,
  title: "Provisional tolerable daily intake of lead (historic)",
  citation: "FDA provisional tolerable total dietary intake; abstracts in Regul Toxicol Pharmacol",
  from: "1992-01-01",
  fromKnown: "year",
  until: "2018-12-31",
  untilKnown: "year",
  note: "A tenth of 60, 150, 250 and 750 µg/day. In use from about 1992 to 2018.",
} as const;
const tenth =
  "The 60, 150, 250 and 750 were read in an abstract; this tenth is from memory, though the arithmetic follows.";

const plumbing = {
  jurisdiction: US,
  substances: ["Pb"],
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  citation: "42 USC 300g-6; 40 CFR 143.12",
  nature: "binding",
  target: "plumbing",
} as const;

export const usFoodAndWater: LimitRow[] = [
  ...limits(lead1991, [
    {
      id: "FDA-PB-FLAT",
      family: "us-ceramic-pb-flat",
      value: 3.0,
      statistic: mean6,
      scope: `In: ceramic flatware for food. ${shapes}`,
      checked: "verified",
      checkedNote:
        "3 (before it 7), the test and the announcement were read in FDA's notice of 1991; the statistic is from memory (high).",
      criteria: flat,
    },
    {
      id: "FDA-PB-SMALL",
      family: "us-ceramic-pb-small",
      value: 2.0,
      statistic: any6,
      scope: `In: small ceramic hollowware for food other than cups and mugs. ${shapes}`,
      checked: "second-hand",
      checkedNote: "Value read in state texts that copy it; the statistic is from memory (high).",
      criteria: smallHollow,
    },
    {
      id: "FDA-PB-CUP",
      family: "us-ceramic-pb-cup",
      value: 0.5,
      statistic: any6,
      scope: "In: ceramic cups and mugs.",
      checked: "verified",
      checkedNote: "0.5 was read in FDA's notice of 1991; the statistic is from memory (high).",
      criteria: cup,
    },
    {
      id: "FDA-PB-LARGE",
      family: "us-ceramic-pb-large",
      value: 1.0,
      statistic: any6,
      scope: `In: large ceramic hollowware for food other than pitchers. ${shapes}`,
      checked: "second-hand",
      checkedNote: "Value read in state texts that copy it; the statistic is from memory (high).",
      criteria: largeHollow,
    },
    {
      id: "FDA-PB-PITCHER",
      family: "us-ceramic-pb-pitcher",
      value: 0.5,
      statistic: any6,
      scope: "In: ceramic pitchers. Out: creamers.",
      citation: "FDA CPG 7117.07 / 545.450; 54 FR 23485 (proposal of 1989)",
      checked: "second-hand",
      checkedNote:
        "Value read in state texts that copy it; the proposal of 1989 was read; the statistic is from memory (high).",
      criteria: pitcher,
    },
  ]),
  ...limits(cadmium, [
    {
      id: "FDA-CD-FLAT",
      family: "us-ceramic-cd-flat",
      value: 0.5,
      statistic: mean6,
      scope: `In: ceramic flatware for food. ${shapes}`,
      criteria: flat,
    },
    {
      id: "FDA-CD-SMALL",
      family: "us-ceramic-cd-small",
      value: 0.5,
      statistic: any6,
      scope: `In: small ceramic hollowware for food. ${shapes}`,
      criteria: [...smallHollow, ...cup],
    },
    {
      id: "FDA-CD-LARGE",
      family: "us-ceramic-cd-large",
      value: 0.25,
      statistic: any6,
      scope: `In: large ceramic hollowware for food. ${shapes}`,
      criteria: largeHollow,
    },
  ]),
  limit({
    ...leach,
    id: "FDA-PB-1971",
    family: "us-ceramic-pb-flat",
    title: "Lead leaching from ceramic ware, 1971 (historic)",
    substances: ["Pb"],
    value: 7,
    scope: "In: all ceramic ware for food.",
    citation: "FDA action level of 1971; a county code of 1972 used 7 ppm lead and 0.5 ppm cadmium",
    from: "1971-01-01",
    fromKnown: "year",
    until: "1978-12-31",
    untilKnown: "year",
    checked: "from memory",
    checkedNote:
      "The county text was read, and that federal action began in 1971 and tightened in 1979; the federal figure of 1971 is from memory.",
    criteria: [{ ...foodCeramic }],
  }),
  ...limits(lead1979, [
    {
      id: "FDA-PB-1971-1979-FLAT",
      family: "us-ceramic-pb-flat",
      value: 7.0,
      scope: `In: ceramic flatware for food. ${shapes}`,
      checked: "verified",
      checkedNote: "7 for flatware before 1991 was read in FDA's notice of 1991.",
      criteria: flat,
    },
    {
      id: "FDA-PB-1971-1979-SMALL",
      family: "us-ceramic-pb-small",
      value: 5.0,
      scope: `In: small ceramic hollowware for food. ${shapes}`,
      checked: "from memory",
      checkedNote: "The figure is from memory; that levels were tightened in 1979 was read.",
      criteria: [...smallHollow, ...cup],
    },
    {
      id: "FDA-PB-1971-1979-LARGE",
      family: "us-ceramic-pb-large",
      value: 2.5,
      scope: `In: large ceramic hollowware for food. ${shapes}`,
      checked: "from memory",
      checkedNote: "The figure is from memory; that levels were tightened in 1979 was read.",
      criteria: largeHollow,
    },
  ]),
  limit({
    jurisdiction: US,
    id: "FDA-IA-5210",
    family: "us-import-alert-crystal-pb",
    title: "Import alert 52-10: leaded crystal meant for infants or children",
    substances: ["Pb"],
    quantity: "bulk-mass-fraction",
    rule: "may be detained at the border without examination; there is no number",
    failsAt: ">",
    scope: "In: leaded-crystal baby bottles, christening cups and glassware meant for infants or children.",
    citation: "FDA Import Alert 52-10; 21 USC 342(a)(2)(C)",
    from: "2020-12-10",
    nature: "guidance",
    checked: "verified",
    checkedNote: "Read in the alert, whose text is dated 10 December 2020; it may be older.",
    target: "object",
    criteria: [
      {
        categories: ["mug-or-cup", "glassware", "bib-or-baby-gear"],
        ages: ["child-under-3", "child-3-to-12"],
        materials: ["crystal"],
      },
    ],
  }),
  limit({
    jurisdiction: US,
    id: "FDA-DECOR",
    family: "us-ornamental-ceramic-marking",
    title: "Marking of ornamental ceramic ware",
    substances: ["Pb"],
    quantity: "leachate",
    rule: 'a stick-on "not for food use" label and a permanent mark on the base, or a hole bored through',
    failsAt: ">",
    scope: "In: ornamental ceramic ware that looks usable for food.",
    citation: "21 CFR 109.16; 59 FR 1638 (12 Jan 1994; page from memory)",
    from: "1994-07-13",
    nature: "binding",
    checked: "verified",
    checkedNote: "Read in the Federal Register; its page is from memory.",
    target: "object",
    criteria: [
      {
        categories: ["ornament"],
        materials: ceramic,
        foodContact: false,
        onlyIf: "it looks usable for food and leaches above the action level",
      },
    ],
  }),
  ...limits({ ...foodCode, title: "Utensils of food businesses, leached lead", quantity: "leachate" }, [
    {
      id: "FOODCODE-4-101-CUP",
      family: "us-foodcode-pb-cup",
      value: 0.5,
      scope: "In: cups, mugs and pitchers used by food businesses, crystal included.",
    },
    {
      id: "FOODCODE-4-101-LARGE",
      family: "us-foodcode-pb-large",
      value: 1.0,
      scope: "In: large hollowware used by food businesses, crystal included.",
    },
    {
      id: "FOODCODE-4-101-SMALL",
      family: "us-foodcode-pb-small",
      value: 2.0,
      scope: "In: small hollowware used by food businesses, crystal included.",
    },
    {
      id: "FOODCODE-4-101-FLAT",
      family: "us-foodcode-pb-flat",
      value: 3.0,
      scope: "In: flat utensils used by food businesses, crystal included.",
    },
  ]),
  ...limits({ ...foodCode, title: "Utensils of food businesses, lead in metal", quantity: "bulk-mass-fraction" }, [
    {
      id: "FOODCODE-4-101-PEWTER",
      family: "us-foodcode-pb-pewter",
      value: percent(0.05),
      scope: "In: pewter alloys in utensils used by food businesses.",
    },
    {
      id: "FOODCODE-4-101-SOLDER",
      family: "us-foodcode-pb-solder",
      value: percent(0.2),
      scope: "In: solder and flux in utensils used by food businesses.",
    },
  ]),
  ...limits({ ...irl, title: "FDA interim reference level for lead in the diet, children" }, [
    {
      id: "FDA-IRL-CHILD-2018",
      family: "us-intake-child",
      value: 3,
      scope: "Children, all lead in the diet. A benchmark, not a limit on a product.",
      from: "2018-01-01",
      fromKnown: "year",
      until: "2021-12-31",
      untilKnown: "year",
    },
    {
      id: "FDA-IRL-CHILD",
      family: "us-intake-child",
      value: 2.2,
      scope: "Children, all lead in the diet. A benchmark, not a limit on a product.",
      from: "2022-01-01",
      fromKnown: "year",
    },
  ]),
  ...limits({ ...irl, title: "FDA interim reference level for lead in the diet, women" }, [
    {
      id: "FDA-IRL-WOMEN-2018",
      family: "us-intake-women",
      value: 12.5,
      scope: "Females of child-bearing age, all lead in the diet. A benchmark, not a limit on a product.",
      from: "2018-01-01",
      fromKnown: "year",
      until: "2021-12-31",
      untilKnown: "year",
    },
    {
      id: "FDA-IRL-WOMEN",
      family: "us-intake-women",
      value: 8.8,
      scope: "Females of child-bearing age, all lead in the diet. A benchmark, not a limit on a product.",
      from: "2022-01-01",
      fromKnown: "year",
    },
  ]),
  ...limits(tolerable, [
    {
      id: "FDA-PTTDI-CHILD-6",
      family: "us-intake-child",
      value: 6,
      scope: "Children up to 6 years. Historic.",
      checked: "from memory",
      checkedNote: tenth,
    },
    {
      id: "FDA-PTTDI-CHILD-7",
      family: "us-intake-older-child",
      value: 15,
      scope: "Children of 7 years and older. Historic.",
      checked: "from memory",
      checkedNote: tenth,
    },
    {
      id: "FDA-PTTDI-PREGNANT",
      family: "us-intake-women",
      value: 25,
      scope: "Pregnant women. Historic.",
      checked: "from memory",
      checkedNote: tenth,
    },
    {
      id: "FDA-PTTDI-ADULT",
      family: "us-intake-adult",
      value: 75,
      scope: "Adults. Historic.",
      checked: "verified",
      checkedNote: "75 was read in an abstract; the first and last years are approximate.",
    },
  ]),
  ...limits(
    {
      jurisdiction: US,
      title: "Lead in processed food for babies and young children",
      substances: ["Pb"],
      quantity: "food-mass-fraction",
      failsAt: ">",
      citation: "FDA guidance, docket FDA-2022-D-0278",
      from: "2025-01-06",
      nature: "guidance",
      checked: "second-hand",
      checkedNote: "Read in law-firm notes of January 2025, not in the guidance.",
      target: "food",
    },
    [
      {
        id: "FDA-BABYFOOD-GENERAL",
        family: "us-babyfood-general",
        value: 10,
        scope: "Processed food for children under 2. Context only, not for objects.",
      },
      {
        id: "FDA-BABYFOOD-ROOT",
        family: "us-babyfood-root",
        value: 20,
        scope: "Single-ingredient root vegetables for children under 2. Context only, not for objects.",
      },
      {
        id: "FDA-BABYFOOD-CEREAL",
        family: "us-babyfood-cereal",
        value: 20,
        scope: "Dry infant cereal. Context only, not for objects.",
      },
    ],
  ),
  limit({
    jurisdiction: US,
    id: "FDA-BOTTLED",
    family: "us-bottled-water",
    title: "Lead in bottled water",
    substances: ["Pb"],
    quantity: "water-concentration",
    value: 0.005,
    failsAt: ">",
    scope: "In: bottled water.",
    citation: "21 CFR 165.110(b) (first 103.35); 59 FR 26933 (25 May 1994; page from memory)",
    from: "1994-11-21",
    nature: "binding",
    checked: "verified",
    checkedNote: "Read in the Federal Register; its page is from memory.",
    target: "water",
  }),
  ...limits(
    {
      jurisdiction: US,
      title: "Lead in public water systems, action level",
      substances: ["Pb"],
      quantity: "water-concentration",
      failsAt: ">",
      statistic: "the 90th percentile of taps sampled",
      scope: "In: public water systems. A trigger for action, not a limit at a tap.",
      nature: "binding",
      target: "water",
      family: "us-water-action",
    },
    [
      {
        id: "EPA-LCR-AL",
        value: 0.015,
        citation: "40 CFR 141.80 and following",
        from: "1991-01-01",
        fromKnown: "year",
        until: "2027-10-31",
        checked: "second-hand",
        checkedNote: "0.015 was read second-hand; the first day is known to the year.",
        note: "The rule of 2024 lowers it to 0.010, with compliance from 1 November 2027.",
      },
      {
        id: "EPA-LCR-AL-LCRI",
        value: 0.01,
        citation: "89 FR 86418–86667 (30 Oct 2024); 40 CFR 141.80 and following",
        from: "2024-12-30",
        complianceFrom: "2027-11-01",
        checked: "verified",
        checkedNote:
          "0.010, the effective date, and 1 November 2027 for 141.2, 141.31 and the notice rules were read in the rule; the same day for subpart I (141.80(a)) is from memory.",
        note: "Under review in the D.C. Circuit since 13 December 2024; no outcome was found.",
      },
    ],
  ),
  ...limits(plumbing, [
    {
      id: "SDWA-LEADFREE-BEFORE-2014",
      family: "us-plumbing-wetted",
      title: "Plumbing for drinking water, before 2014",
      value: percent(8),
      scope: "In: pipes, fittings and fixtures for drinking water.",
      from: "1900-01-01",
      fromKnown: "unknown",
      until: "2014-01-03",
      checked: "second-hand",
      checkedNote: "8 % and its end in January 2014 were read second-hand; when it began was not read.",
    },
    {
      id: "SDWA-LEADFREE-WETTED",
      family: "us-plumbing-wetted",
      title: "Plumbing for drinking water",
      value: percent(0.25),
      statistic: "weighted average over the wetted surface",
      scope: "In: pipes, fittings and fixtures for drinking water.",
      from: "2014-01-04",
      checked: "verified",
      checkedNote: "Read in 40 CFR 143.12; the day in January 2014 second-hand.",
    },
    {
      id: "SDWA-LEADFREE-SOLDER",
      family: "us-plumbing-solder",
      title: "Solder and flux for drinking water",
      value: percent(0.2),
      scope: "In: solder and flux for drinking-water plumbing.",
      from: "2014-01-04",
      checked: "verified",
      checkedNote: "Read in 40 CFR 143.12; the day in January 2014 second-hand.",
    },
    {
      id: "SDWA-LEADFREE-COOLER",
      family: "us-plumbing-cooler",
      title: "Drinking-water coolers",
      value: percent(8),
      scope: "In: any wetted part of a drinking-water cooler.",
      from: "2014-01-04",
      checked: "verified",
      checkedNote: "Read in 40 CFR 143.12; the day in January 2014 second-hand.",
    },
  ]),
];

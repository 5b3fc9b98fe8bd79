import type { LimitRow } from "../types.ts";
import { limit, limits, percent } from "./define.ts";

/** United States: settled dust, paint in housing, soil. None is laid upon a portable object. */
const US = "United States";

const dust = { jurisdiction: US, substances: ["Pb"], quantity: "dust-loading", failsAt: ">=", target: "dust" } as const;

const hazard2001 = {
  ...dust,
  title: "Dust-lead hazard standard of 2001 (TSCA section 403)",
  from: "2001-03-06",
  until: "2020-01-05",
  nature: "binding",
  checked: "verified",
  checkedNote: "The value, that the number itself fails, and the first day (6 March 2001) were read in public texts.",
  citation: "40 CFR 745.65(b); 66 FR 1206 (5 Jan 2001)",
} as const;

const hazard2019 = {
  ...dust,
  title: "Dust-lead hazard standard as reviewed in 2019",
  from: "2020-01-06",
  until: "2025-01-12",
  nature: "binding",
  checked: "verified",
  checkedNote:
    "Value, first day and pages read in the rule of 2019; that the number itself fails was read in 40 CFR 745.65(b).",
  citation: "84 FR 32632–32648 (9 Jul 2019); 40 CFR 745.65(b)",
} as const;

const reportable2024 = {
  ...dust,
  title: "Dust-lead reportable level of 2024",
  rule: 'any value reported without "<" by a laboratory recognised under the national lead laboratory programme (NLLAP)',
  anyReportedValue: true,
  from: "2025-01-13",
  nature: "binding",
  checked: "verified",
  checkedNote:
    "Read in the rule. 40 CFR 745.61(d), as it stood on 20 June 2026, still carries it; no later text was found, so later changes are not ruled out.",
  citation: "89 FR 89416–89461 (12 Nov 2024); 40 CFR 745.65",
  note: "A laboratory's reportable level is the lowest value it reports without a < sign.",
} as const;

const clearance2001 = {
  ...dust,
  title: "Clearance level after abatement, 2001 (TSCA section 402)",
  from: "2001-03-06",
  until: "2021-03-07",
  nature: "binding",
  checked: "verified",
  checkedNote: "The figures were read in public texts of the rule.",
  citation: "40 CFR 745.227(e)(8)(viii)",
} as const;

const clearance2021 = {
  ...dust,
  title: "Clearance level after abatement, 2021",
  from: "2021-03-08",
  until: "2026-01-11",
  nature: "binding",
  checked: "verified",
  checkedNote:
    "Figures and first day read in the rule of 2021. The last day is the day before compliance with the action levels; that day was read second-hand.",
  citation: "86 FR 983–994 (7 Jan 2021)",
  note: "From 13 January 2025 the action levels of 2024 were in effect beside it; compliance with them was asked for from 12 January 2026.",
} as const;

const action2024 = {
  ...dust,
  title: "Dust-lead action level of 2024 (was: clearance level)",
  from: "2025-01-13",
  complianceFrom: "2026-01-12",
  nature: "binding",
  checked: "verified",
  checkedNote:
    "Values and effective date read in the rule; the compliance date was read second-hand. 40 CFR 745.61(d), as it stood on 20 June 2026, still carries it; no later text was found.",
  citation: "89 FR 89416–89461 (12 Nov 2024); 40 CFR 745.227(e)(8)(viii)",
  note: "Until 11 January 2026: rule in effect, compliance date not yet reached.",
} as const;

const hud2017 = {
  ...dust,
  title: "HUD policy guidance 2017-01",
  from: "2017-04-01",
  nature: "binding",
  checked: "second-hand",
  checkedNote: "Read in a report that quotes the guidance, not in the guidance itself.",
  citation: "HUD OLHCHH PG 2017-01 (31 Jan 2017)",
  note: "A condition of HUD lead grants. A stricter state level prevails. Superseded in practice by the EPA rule of 2024 where that is stricter.",
} as const;

const part35 = {
  ...dust,
  title: "HUD lead hazard rule for assisted housing, fall-back figures",
  from: "2000-01-01",
  fromKnown: "year",
  nature: "binding",
  checked: "verified",
  checkedNote: "Figures read in a stored text of the section; whether it was amended later was not checked.",
  citation: "24 CFR 35.1320(b)(2)",
  note: "Published 1999, in effect 2000 (to the year). Stands in where EPA standards are not in effect.",
} as const;

const housing = "pre-1978 target housing and child-occupied facilities, wipe samples";

const paint = {
  jurisdiction: US,
  substances: ["Pb"],
  nature: "binding",
  target: "housing-paint",
  scope:
    "In: paint and coatings on target housing and child-occupied facilities. Out: portable household goods. Either the areal or the mass test is enough.",
} as const;

const areal = { ...paint, title: "Lead-based paint, areal definition", quantity: "coating-areal", value: 1.0 } as const;
const byMass = {
  ...paint,
  quantity: "coating-mass-fraction",
  value: percent(0.5),
  note: "At exactly 0.5 % the two EPA sections disagree, so both are kept.",
} as const;
const cfrNote = "Value and which side fails read in the section; the year of the start is from memory.";
const statuteNote = "Wording of the statute read as quoted in a secondary text; the year of the start is from memory.";

const soil = {
  jurisdiction: US,
  substances: ["Pb"],
  quantity: "soil-mass-fraction",
  target: "soil",
} as const;

export const usHousing: LimitRow[] = [
  limit({
    ...hazard2001,
    id: "EPA-DLHS-FLOOR-2001",
    family: "us-dust-floor",
    value: 40,
    scope: `In: floors, carpeted or not, in ${housing}, weighted mean. No duty to test.`,
  }),
  limit({
    ...hazard2001,
    id: "EPA-DLHS-SILL-2001",
    family: "us-dust-sill",
    value: 250,
    scope: `In: interior window sills in ${housing}. No duty to test.`,
  }),
  ...limits(clearance2001, [
    {
      id: "EPA-CLR-2001-FLOOR",
      family: "us-clearance-floor",
      value: 40,
      scope: "In: floors after abatement; cleared only below the number.",
    },
    {
      id: "EPA-CLR-2001-SILL",
      family: "us-clearance-sill",
      value: 250,
      scope: "In: interior window sills after abatement; cleared only below the number.",
    },
    {
      id: "EPA-CLR-2001-TROUGH",
      family: "us-clearance-trough",
      value: 400,
      scope: "In: window troughs after abatement; cleared only below the number.",
      note: "The rule of 2021 left the number as it was, until the action levels of 2024.",
    },
  ]),
  limit({
    ...hazard2019,
    id: "EPA-DLHS-FLOOR-2019",
    family: "us-dust-floor",
    value: 10,
    scope: `In: floors in ${housing}.`,
  }),
  limit({
    ...hazard2019,
    id: "EPA-DLHS-SILL-2019",
    family: "us-dust-sill",
    value: 100,
    scope: `In: interior window sills in ${housing}. There is no value for troughs.`,
  }),
  ...limits(clearance2021, [
    {
      id: "EPA-DLCL-2021-FLOOR",
      family: "us-clearance-floor",
      value: 10,
      scope: "In: floors after abatement; cleared only below the number.",
    },
    {
      id: "EPA-DLCL-2021-SILL",
      family: "us-clearance-sill",
      value: 100,
      scope: "In: interior window sills after abatement; cleared only below the number.",
    },
    {
      id: "EPA-DLCL-2021-TROUGH",
      family: "us-clearance-trough",
      value: 400,
      scope: "In: window troughs after abatement (number unchanged); cleared only below the number.",
    },
  ]),
  ...limits(reportable2024, [
    {
      id: "EPA-DLRL-2024-FLOOR",
      family: "us-dust-floor",
      scope: `In: floors in ${housing}; the definition of a hazard for risk assessment and disclosure.`,
    },
    {
      id: "EPA-DLRL-2024-SILL",
      family: "us-dust-sill",
      scope: `In: interior window sills in ${housing}; the definition of a hazard for risk assessment and disclosure.`,
    },
  ]),
  ...limits(action2024, [
    {
      id: "EPA-DLAL-2024-FLOOR",
      family: "us-clearance-floor",
      value: 5,
      scope: "In: floors; abatement is recommended at the number or above, and work is cleared only below it.",
    },
    {
      id: "EPA-DLAL-2024-SILL",
      family: "us-clearance-sill",
      value: 40,
      scope:
        "In: interior window sills; abatement is recommended at the number or above, and work is cleared only below it.",
    },
    {
      id: "EPA-DLAL-2024-TROUGH",
      family: "us-clearance-trough",
      value: 100,
      scope: "In: window troughs; work is cleared only below the number.",
    },
  ]),
  ...limits(hud2017, [
    {
      id: "HUD-DUST-2017-HAZARD-FLOOR",
      family: "us-hud-hazard-floor",
      value: 10,
      scope: "In: floors in HUD lead grant work only; hazard.",
      checkedNote:
        "Read in a report that quotes the guidance. Which side fails at the number itself was not printed; taken as in the EPA standard.",
    },
    {
      id: "HUD-DUST-2017-HAZARD-SILL",
      family: "us-hud-hazard-sill",
      value: 100,
      scope: "In: interior window sills in HUD lead grant work only; hazard.",
      checkedNote:
        "Read in a report that quotes the guidance. Which side fails at the number itself was not printed; taken as in the EPA standard.",
    },
    {
      id: "HUD-DUST-2017-CLEARANCE-FLOOR",
      family: "us-hud-clearance-floor",
      value: 10,
      scope: "In: interior floors in HUD lead grant work only; cleared only below the number.",
    },
    {
      id: "HUD-DUST-2017-CLEARANCE-PORCH",
      family: "us-hud-clearance-porch",
      value: 40,
      scope: "In: porch floors in HUD lead grant work only; cleared only below the number.",
    },
    {
      id: "HUD-DUST-2017-CLEARANCE-SILL",
      family: "us-hud-clearance-sill",
      value: 100,
      scope: "In: window sills in HUD lead grant work only; cleared only below the number.",
    },
    {
      id: "HUD-DUST-2017-CLEARANCE-TROUGH",
      family: "us-hud-clearance-trough",
      value: 100,
      scope: "In: window troughs in HUD lead grant work only; cleared only below the number.",
    },
  ]),
  ...limits(part35, [
    {
      id: "HUD-SCREEN-24CFR35-SCREEN-FLOOR",
      family: "us-hud35-screen-floor",
      value: 25,
      scope: "In: floors of assisted housing, lead-hazard screen.",
    },
    {
      id: "HUD-SCREEN-24CFR35-SCREEN-SILL",
      family: "us-hud35-screen-sill",
      value: 125,
      scope: "In: interior window sills of assisted housing, lead-hazard screen.",
    },
    {
      id: "HUD-SCREEN-24CFR35-RISK-FLOOR",
      family: "us-hud35-risk-floor",
      value: 40,
      scope: "In: floors of assisted housing, risk assessment.",
    },
    {
      id: "HUD-SCREEN-24CFR35-RISK-SILL",
      family: "us-hud35-risk-sill",
      value: 250,
      scope: "In: interior window sills of assisted housing, risk assessment.",
    },
    {
      id: "HUD-SCREEN-24CFR35-CLEARANCE-FLOOR",
      family: "us-hud35-clearance-floor",
      value: 40,
      scope: "In: floors of assisted housing, clearance.",
    },
    {
      id: "HUD-SCREEN-24CFR35-CLEARANCE-SILL",
      family: "us-hud35-clearance-sill",
      value: 250,
      scope: "In: interior window sills of assisted housing, clearance.",
    },
    {
      id: "HUD-SCREEN-24CFR35-CLEARANCE-TROUGH",
      family: "us-hud35-clearance-trough",
      value: 400,
      scope: "In: window troughs of assisted housing, clearance.",
    },
  ]),
  limit({
    ...areal,
    id: "LBP-AREAL-CFR",
    family: "us-lead-based-paint-areal",
    failsAt: ">=",
    citation: "40 CFR 745.103 and 745.223; 24 CFR 35.110 (from memory)",
    from: "1996-01-01",
    fromKnown: "year",
    checked: "verified",
    checkedNote: `${cfrNote} That EPA declined to change it in 2019 was read in the rule of 2019.`,
  }),
  limit({
    ...areal,
    id: "LBP-AREAL-STATUTE",
    title: "Lead-based paint, areal definition of the statute",
    family: "us-lead-based-paint-areal-statute",
    failsAt: ">",
    citation: "Title X section 1004(14); 15 USC 2681(9)",
    from: "1992-01-01",
    fromKnown: "year",
    checked: "second-hand",
    checkedNote: statuteNote,
  }),
  limit({
    ...byMass,
    id: "LBP-MASS-745-103",
    title: "Lead-based paint, mass definition for disclosure",
    family: "us-lead-based-paint-mass-103",
    failsAt: ">=",
    citation: "40 CFR 745.103",
    from: "1996-01-01",
    fromKnown: "year",
    checked: "verified",
    checkedNote: cfrNote,
  }),
  limit({
    ...byMass,
    id: "LBP-MASS-745-223",
    title: "Lead-based paint, mass definition for abatement",
    family: "us-lead-based-paint-mass-223",
    failsAt: ">",
    citation: "40 CFR 745.223",
    from: "1996-01-01",
    fromKnown: "year",
    checked: "verified",
    checkedNote: cfrNote,
  }),
  limit({
    ...byMass,
    id: "LBP-MASS-STATUTE",
    title: "Lead-based paint, mass definition of the statute",
    family: "us-lead-based-paint-mass-statute",
    failsAt: ">",
    citation: "Title X section 1004(14); 15 USC 2681(9)",
    from: "1992-01-01",
    fromKnown: "year",
    checked: "second-hand",
    checkedNote: statuteNote,
  }),
  ...limits(
    {
      ...soil,
      title: "Soil-lead hazard standard (TSCA section 403)",
      failsAt: ">=",
      citation: "40 CFR 745.65(c)",
      from: "2001-03-06",
      nature: "binding",
      checked: "verified",
      checkedNote: "Value, which side fails and first day read in public texts.",
    },
    [
      { id: "EPA-SOIL-PLAY-2001", family: "us-soil-play", value: 400, scope: "In: bare soil in a play area." },
      {
        id: "EPA-SOIL-YARD-2001",
        family: "us-soil-yard",
        value: 1200,
        scope: "In: bare soil in the rest of the yard, as the yard's average.",
      },
    ],
  ),
  limit({
    ...soil,
    id: "EPA-RSL-1994",
    family: "us-soil-screening",
    title: "Residential soil screening level of 1994 (clean-up sites)",
    value: 400,
    failsAt: ">",
    scope: "In: residential soil at Superfund and RCRA clean-up sites.",
    citation: "OSWER 9355.4-12 (number from memory)",
    from: "1994-01-01",
    fromKnown: "year",
    until: "2024-01-16",
    nature: "guidance",
    checked: "second-hand",
    checkedNote: "400 and its thirty years were read in notes of January 2024; the directive's number is from memory.",
  }),
  ...limits(
    {
      ...soil,
      title: "Updated residential soil lead guidance, January 2024",
      failsAt: ">",
      citation: "EPA OLEM, 17 Jan 2024",
      from: "2024-01-17",
      until: "2025-10-15",
      nature: "guidance",
      checked: "second-hand",
      checkedNote: "Read in law-firm notes of January 2024, not in the guidance itself.",
    },
    [
      {
        id: "EPA-RSL-2024",
        family: "us-soil-screening",
        value: 200,
        scope: "In: residential soil at Superfund and RCRA clean-up sites.",
      },
      {
        id: "EPA-RSL-2024-OTHER-SOURCE",
        family: "us-soil-screening-other-source",
        value: 100,
        scope: "In: the same sites where another source of lead is present.",
      },
    ],
  ),
  ...limits(
    {
      ...soil,
      title: "Residential lead directive, October 2025",
      failsAt: ">",
      citation: "EPA OLEM directive, 16 Oct 2025",
      from: "2025-10-16",
      nature: "guidance",
      checked: "second-hand",
      checkedNote: "Read in notes on the directive (announced 20 October 2025), not in the directive itself.",
      note: "Supersedes January 2024 and drops its 100 tier. Clean-up goals start from a target child blood lead of 5 µg/dL.",
    },
    [
      {
        id: "EPA-RSL-2025",
        family: "us-soil-screening",
        value: 200,
        scope: "In: residential soil at CERCLA and RCRA sites only; screening level.",
      },
      {
        id: "EPA-RSL-2025-REMOVAL",
        family: "us-soil-removal",
        value: 600,
        scope: "In: residential soil at CERCLA and RCRA sites only; removal management level.",
      },
    ],
  ),
];

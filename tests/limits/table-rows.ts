/**
 * The table of limits typed a second time, by hand and apart from the data files, so that a slip in either shows.
 * One block for each row of the table: "# id | source", then one line for each limit made of it:
 * suffix | value in the canonical unit ("-" where the rule is not a number) | fails at | first day | last day | checked.
 * The sources are those the table names; days known only to the year or month stand at its first day (last at its last).
 */
const text = `
# EPA-DLHS-FLOOR-2001 | 40 CFR 745.65(b); 66 FR 1206
| 40 | >= | 2001-03-06 | 2020-01-05 | verified
# EPA-DLHS-SILL-2001 | 40 CFR 745.65(b); 66 FR 1206
| 250 | >= | 2001-03-06 | 2020-01-05 | verified
# EPA-CLR-2001 | 40 CFR 745.227(e)(8)(viii)
-FLOOR | 40 | >= | 2001-03-06 | 2021-03-07 | verified
-SILL | 250 | >= | 2001-03-06 | 2021-03-07 | verified
-TROUGH | 400 | >= | 2001-03-06 | 2021-03-07 | verified
# EPA-DLHS-FLOOR-2019 | 84 FR 32632
| 10 | >= | 2020-01-06 | 2025-01-12 | verified
# EPA-DLHS-SILL-2019 | 84 FR 32632
| 100 | >= | 2020-01-06 | 2025-01-12 | verified
# EPA-DLCL-2021 | 86 FR 983
-FLOOR | 10 | >= | 2021-03-08 | 2026-01-11 | verified
-SILL | 100 | >= | 2021-03-08 | 2026-01-11 | verified
-TROUGH | 400 | >= | 2021-03-08 | 2026-01-11 | verified
# EPA-DLRL-2024 | 89 FR 89416
-FLOOR | - | >= | 2025-01-13 | - | verified
-SILL | - | >= | 2025-01-13 | - | verified
# EPA-DLAL-2024 | 89 FR 89416; 40 CFR 745.227(e)(8)(viii)
-FLOOR | 5 | >= | 2025-01-13 | - | verified
-SILL | 40 | >= | 2025-01-13 | - | verified
-TROUGH | 100 | >= | 2025-01-13 | - | verified
# HUD-DUST-2017 | HUD OLHCHH PG 2017-01
-HAZARD-FLOOR | 10 | >= | 2017-04-01 | - | second-hand
-HAZARD-SILL | 100 | >= | 2017-04-01 | - | second-hand
-CLEARANCE-FLOOR | 10 | >= | 2017-04-01 | - | second-hand
-CLEARANCE-PORCH | 40 | >= | 2017-04-01 | - | second-hand
-CLEARANCE-SILL | 100 | >= | 2017-04-01 | - | second-hand
-CLEARANCE-TROUGH | 100 | >= | 2017-04-01 | - | second-hand
# HUD-SCREEN-24CFR35 | 24 CFR 35.1320(b)(2)
-SCREEN-FLOOR | 25 | >= | 2000-01-01 | - | verified
-SCREEN-SILL | 125 | >= | 2000-01-01 | - | verified
-RISK-FLOOR | 40 | >= | 2000-01-01 | - | verified
-RISK-SILL | 250 | >= | 2000-01-01 | - | verified
-CLEARANCE-FLOOR | 40 | >= | 2000-01-01 | - | verified
-CLEARANCE-SILL | 250 | >= | 2000-01-01 | - | verified
-CLEARANCE-TROUGH | 400 | >= | 2000-01-01 | - | verified
# LBP-AREAL | 40 CFR 745.103, .223; 15 USC 2681(9)
-CFR | 1 | >= | 1996-01-01 | - | verified
-STATUTE | 1 | > | 1992-01-01 | - | second-hand
# LBP-MASS | 40 CFR 745.103, .223; 15 USC 2681(9)
-745-103 | 5000 | >= | 1996-01-01 | - | verified
-745-223 | 5000 | > | 1996-01-01 | - | verified
-STATUTE | 5000 | > | 1992-01-01 | - | second-hand
# EPA-SOIL-PLAY-2001 | 40 CFR 745.65(c)
| 400 | >= | 2001-03-06 | - | verified
# EPA-SOIL-YARD-2001 | 40 CFR 745.65(c)
| 1200 | >= | 2001-03-06 | - | verified
# EPA-RSL-1994 | OSWER 9355.4-12
| 400 | > | 1994-01-01 | 2024-01-16 | second-hand
# EPA-RSL-2024 | EPA OLEM 17 Jan 2024
| 200 | > | 2024-01-17 | 2025-10-15 | second-hand
-OTHER-SOURCE | 100 | > | 2024-01-17 | 2025-10-15 | second-hand
# EPA-RSL-2025 | EPA OLEM directive 16 Oct 2025
| 200 | > | 2025-10-16 | - | second-hand
-REMOVAL | 600 | > | 2025-10-16 | - | second-hand
# FHSA-PAINT-1973 | 16 CFR 1500.17(a)(6)(i)(B)
| 5000 | > | 1973-01-01 | 1973-12-31 | verified
# FHSA-PAINT-1974 | 16 CFR 1500.17(a)(6)(i)(A), (iii)
| 600 | > | 1974-01-01 | 1978-02-27 | verified
# CPSC-PAINT-1978 | 16 CFR 1303; 42 FR 44193
| 600 | > | 1978-02-28 | 2009-08-13 | verified
# CPSC-PAINT-2009 | 16 CFR 1303.1(a); 73 FR 77492
| 90 | > | 2009-08-14 | - | verified
# CPSC-PAINT-SMALL | 15 USC 1278a(f)
| 0.002 | > | 2009-01-01 | - | second-hand
# CPSIA-600 | 15 USC 1278a
| 600 | > | 2009-02-10 | 2009-08-13 | verified
# CPSIA-300 | 15 USC 1278a
| 300 | > | 2009-08-14 | 2011-08-13 | verified
# CPSIA-100 | 15 USC 1278a; Pub. L. 112-28
| 100 | > | 2011-08-14 | - | verified
# CPSIA-EXEMPT | 16 CFR 1500.87, .88, .91; 15 USC 1278a(b)
-STEEL | 3500 | >= | 2009-01-01 | - | verified
-ALUMINIUM | 4000 | >= | 2009-01-01 | - | verified
-COPPER | 40000 | >= | 2009-01-01 | - | verified
-GLASS | - | >= | 2009-01-01 | - | verified
-BICYCLE | 300 | > | 2011-01-01 | - | verified
-RIDE-ON | 300 | > | 2011-01-01 | - | verified
-OFF-HIGHWAY | - | > | 2011-01-01 | - | verified
-USED | - | > | 2011-01-01 | - | verified
-INACCESSIBLE | - | > | 2009-08-07 | - | verified
-TESTING | - | > | 2009-01-01 | - | verified
-CRYSTAL | - | > | 2009-07-17 | - | second-hand
# ASTM-F963-SOL | ASTM F963-23 section 4.3.5; 16 CFR 1250
-SB-COATING | 60 | > | 2009-02-10 | - | second-hand
-AS-COATING | 25 | > | 2009-02-10 | - | second-hand
-BA-COATING | 1000 | > | 2009-02-10 | - | second-hand
-CD-COATING | 75 | > | 2009-02-10 | - | second-hand
-CR-COATING | 60 | > | 2009-02-10 | - | second-hand
-PB-COATING | 90 | > | 2009-02-10 | - | second-hand
-HG-COATING | 60 | > | 2009-02-10 | - | second-hand
-SE-COATING | 500 | > | 2009-02-10 | - | second-hand
-SB-SUBSTRATE | 60 | > | 2012-06-12 | - | second-hand
-AS-SUBSTRATE | 25 | > | 2012-06-12 | - | second-hand
-BA-SUBSTRATE | 1000 | > | 2012-06-12 | - | second-hand
-CD-SUBSTRATE | 75 | > | 2012-06-12 | - | second-hand
-CR-SUBSTRATE | 60 | > | 2012-06-12 | - | second-hand
-PB-SUBSTRATE | 90 | > | 2012-06-12 | - | second-hand
-HG-SUBSTRATE | 60 | > | 2012-06-12 | - | second-hand
-SE-SUBSTRATE | 500 | > | 2012-06-12 | - | second-hand
-BA-CLAY | 250 | > | 2012-06-12 | - | from memory
-CD-CLAY | 50 | > | 2012-06-12 | - | from memory
-CR-CLAY | 25 | > | 2012-06-12 | - | from memory
-HG-CLAY | 25 | > | 2012-06-12 | - | from memory
# CPSC-CANDLE | 68 FR 19142
| 600 | > | 2003-10-15 | - | verified
# FDA-PB-FLAT | FDA CPG 545.450; notice T91-70
| 3 | > | 1991-11-12 | - | verified
# FDA-PB-SMALL | FDA CPG 545.450
| 2 | > | 1991-11-12 | - | second-hand
# FDA-PB-CUP | FDA CPG 545.450; notice T91-70
| 0.5 | > | 1991-11-12 | - | verified
# FDA-PB-LARGE | FDA CPG 545.450
| 1 | > | 1991-11-12 | - | second-hand
# FDA-PB-PITCHER | FDA CPG 545.450; 54 FR 23485
| 0.5 | > | 1991-11-12 | - | second-hand
# FDA-CD-FLAT | FDA CPG 545.400
| 0.5 | > | 1900-01-01 | - | verified
# FDA-CD-SMALL | FDA CPG 545.400
| 0.5 | > | 1900-01-01 | - | verified
# FDA-CD-LARGE | FDA CPG 545.400
| 0.25 | > | 1900-01-01 | - | verified
# FDA-PB-1971 | county code of 1972; FDA notice T91-70
| 7 | > | 1971-01-01 | 1978-12-31 | from memory
-1979-FLAT | 7 | > | 1979-01-01 | 1991-11-11 | verified
-1979-SMALL | 5 | > | 1979-01-01 | 1991-11-11 | from memory
-1979-LARGE | 2.5 | > | 1979-01-01 | 1991-11-11 | from memory
# FDA-IA-5210 | FDA Import Alert 52-10
| - | > | 2020-12-10 | - | verified
# FDA-DECOR | 21 CFR 109.16; 59 FR 1638
| - | > | 1994-07-13 | - | verified
# FOODCODE-4-101 | WAC 246-215-04110
-CUP | 0.5 | > | 2022-03-01 | - | verified
-LARGE | 1 | > | 2022-03-01 | - | verified
-SMALL | 2 | > | 2022-03-01 | - | verified
-FLAT | 3 | > | 2022-03-01 | - | verified
-PEWTER | 500 | > | 2022-03-01 | - | verified
-SOLDER | 2000 | > | 2022-03-01 | - | verified
# FDA-IRL-CHILD | Regul Toxicol Pharmacol 2022; 133:105202
-2018 | 3 | > | 2018-01-01 | 2021-12-31 | verified
| 2.2 | > | 2022-01-01 | - | verified
# FDA-IRL-WOMEN | Regul Toxicol Pharmacol 2022; 133:105202
-2018 | 12.5 | > | 2018-01-01 | 2021-12-31 | verified
| 8.8 | > | 2022-01-01 | - | verified
# FDA-PTTDI | abstracts in Regul Toxicol Pharmacol
-CHILD-6 | 6 | > | 1992-01-01 | 2018-12-31 | from memory
-CHILD-7 | 15 | > | 1992-01-01 | 2018-12-31 | from memory
-PREGNANT | 25 | > | 1992-01-01 | 2018-12-31 | from memory
-ADULT | 75 | > | 1992-01-01 | 2018-12-31 | verified
# FDA-BABYFOOD | docket FDA-2022-D-0278
-GENERAL | 10 | > | 2025-01-06 | - | second-hand
-ROOT | 20 | > | 2025-01-06 | - | second-hand
-CEREAL | 20 | > | 2025-01-06 | - | second-hand
# FDA-BOTTLED | 21 CFR 165.110(b); 59 FR 26933
| 0.005 | > | 1994-11-21 | - | verified
# EPA-LCR-AL | 40 CFR 141.80; 89 FR 86418
| 0.015 | > | 1991-01-01 | 2027-10-31 | second-hand
-LCRI | 0.01 | > | 2024-12-30 | - | verified
# SDWA-LEADFREE | 42 USC 300g-6; 40 CFR 143.12
-BEFORE-2014 | 80000 | > | 1900-01-01 | 2014-01-03 | second-hand
-WETTED | 2500 | > | 2014-01-04 | - | verified
-SOLDER | 2000 | > | 2014-01-04 | - | verified
-COOLER | 80000 | > | 2014-01-04 | - | verified
# CA-P65-MADL | 27 CCR 25805(b)
| 0.5 | > | 1989-01-01 | - | second-hand
# CA-P65-NSRL | 27 CCR 25705
| 15 | > | 1900-01-01 | - | from memory
# CA-P65-CD | 27 CCR 25805(b)
| 4.1 | > | 1900-01-01 | - | verified
# CA-P65-TABLE | consent judgments of the early 1990s
-FLAT | 0.226 | > | 1993-01-01 | - | second-hand
-HOLLOW | 0.1 | > | 1993-01-01 | - | second-hand
# CA-P65-GLASS | San Francisco Superior Court, CGC-05
-PB | 600 | > | 2006-01-01 | - | second-hand
-CD | 4800 | > | 2006-01-01 | - | second-hand
-WIPE-PB | 0.001 | > | 2006-01-01 | - | second-hand
-WIPE-CD | 0.008 | > | 2006-01-01 | - | second-hand
-LIP-PB | 200 | > | 2006-01-01 | - | second-hand
-LIP-CD | 800 | > | 2006-01-01 | - | second-hand
# IL-LPPA | 410 ILCS 45/6
-SUBSTRATE | 40 | > | 2010-01-01 | - | verified
-COATING | 40 | > | 2010-01-01 | - | verified
# NY-ECL-37-0115 | Env. Cons. Law 37-0115(5)
| 40 | > | 2021-01-01 | - | verified
# MN-PB | Minn. Stat. 325E.3892
| 90 | > | 2023-07-01 | - | verified
-KEYS-2028 | 15000 | > | 2028-07-01 | - | second-hand
# MN-CD | Minn. Stat. 325E.3892
| 75 | > | 2023-07-01 | - | verified
# WA-COOK-5 | RCW 70A.565.020 as enacted 2024
| 5 | > | 2026-01-01 | 2025-12-31 | verified
# WA-COOK-90 | RCW 70A.565.020 as amended 2025
| 90 | > | 2026-01-01 | 2027-12-31 | verified
# WA-COOK-10 | RCW 70A.565.020 as amended 2025
| 10 | > | 2028-01-01 | - | verified
# TIP-100 | Model Toxics in Packaging Legislation
| 100 | > | 1992-01-01 | - | verified
-INTENTIONAL | - | > | 1992-01-01 | - | verified
# EU-63-JEWEL | Reg. (EU) 836/2012
| 500 | >= | 2013-10-09 | - | second-hand
# EU-63-MOUTH | Reg. (EU) 2015/628
| 500 | >= | 2016-06-01 | - | second-hand
# EU-63-MIGR | Reg. (EU) 2015/628
| 0.05 | > | 2016-06-01 | - | second-hand
# EU-63-PVC | Reg. (EU) 2023/923
| 1000 | >= | 2024-11-29 | - | verified
# EU-23-PLASTIC | Reg. (EU) 494/2011
| 100 | >= | 2011-12-10 | - | verified
-JEWELLERY | 100 | >= | 2011-12-10 | - | verified
-BRAZING | 100 | >= | 2011-12-10 | - | verified
# EU-23-PAINT | Reg. (EU) 2016/217
| 100 | >= | 2016-03-01 | - | verified
-ZINC | 1000 | >= | 2011-12-10 | - | verified
-ARTICLE | 1000 | >= | 2011-12-10 | - | verified
# EU-27-NI | REACH Annex XVII entry 27; EN 1811
| 0.5 | > | 2000-01-01 | - | verified
-POST | 0.2 | >= | 2000-01-01 | - | verified
# EU-ROHS | 2011/65/EU Annex II
-PB | 1000 | > | 2006-07-01 | - | second-hand
-HG | 1000 | > | 2006-07-01 | - | second-hand
-CRVI | 1000 | > | 2006-07-01 | - | second-hand
-PBB | 1000 | > | 2006-07-01 | - | second-hand
-PBDE | 1000 | > | 2006-07-01 | - | second-hand
-CD | 100 | > | 2006-07-01 | - | second-hand
-PHTHALATES | 1000 | > | 2019-07-22 | - | second-hand
# EU-TOY-PB-OLD | 2009/48/EC Annex II part III 13
-DRY | 13.5 | > | 2013-07-20 | 2018-10-27 | verified
-LIQUID | 3.4 | > | 2013-07-20 | 2018-10-27 | verified
-SCRAPED | 160 | > | 2013-07-20 | 2018-10-27 | verified
# EU-TOY-PB | Dir. (EU) 2017/738
-DRY | 2 | > | 2018-10-28 | - | verified
-LIQUID | 0.5 | > | 2018-10-28 | - | verified
-SCRAPED | 23 | > | 2018-10-28 | - | verified
# EU-TOY-CRVI | Dir. (EU) 2018/725
-OLD-SCRAPED | 0.2 | > | 2013-07-20 | 2019-11-17 | verified
-DRY | 0.02 | > | 2019-11-18 | - | verified
-LIQUID | 0.005 | > | 2019-11-18 | - | verified
-SCRAPED | 0.053 | > | 2019-11-18 | - | verified
# EU-TOY-OTHER | 2009/48/EC Annex II part III 13, as amended
-CD-DRY | 1.3 | > | 2013-07-20 | - | from memory
-CD-LIQUID | 0.3 | > | 2013-07-20 | - | from memory
-CD-SCRAPED | 17 | > | 2013-07-20 | - | second-hand
-AS-DRY | 3.8 | > | 2013-07-20 | - | second-hand
-AS-LIQUID | 0.9 | > | 2013-07-20 | - | second-hand
-AS-SCRAPED | 47 | > | 2013-07-20 | - | second-hand
-HG-DRY | 7.5 | > | 2013-07-20 | - | verified
-HG-LIQUID | 1.9 | > | 2013-07-20 | - | second-hand
-HG-SCRAPED | 94 | > | 2013-07-20 | - | second-hand
-SB-DRY | 45 | > | 2013-07-20 | - | second-hand
-SB-LIQUID | 11.3 | > | 2013-07-20 | - | second-hand
-SB-SCRAPED | 560 | > | 2013-07-20 | - | second-hand
-SE-DRY | 37.5 | > | 2013-07-20 | - | from memory
-SE-LIQUID | 9.4 | > | 2013-07-20 | - | from memory
-SE-SCRAPED | 460 | > | 2013-07-20 | - | from memory
-NI-DRY | 75 | > | 2013-07-20 | - | from memory
-NI-LIQUID | 18.8 | > | 2013-07-20 | - | from memory
-NI-SCRAPED | 930 | > | 2013-07-20 | - | from memory
-BA-DRY | 1500 | > | 2013-07-20 | - | second-hand
-BA-LIQUID | 375 | > | 2013-07-20 | - | second-hand
-BA-SCRAPED | 18750 | > | 2013-07-20 | - | second-hand
# EU-TOY-2030 | Reg. (EU) 2025/2509
-PB-DRY | 2 | > | 2030-08-01 | - | second-hand
# EU-PACK-94 | Directive 94/62/EC Art. 11
-600 | 600 | > | 1998-06-30 | 1999-06-29 | second-hand
-250 | 250 | > | 1999-06-30 | 2001-06-29 | second-hand
| 100 | > | 2001-06-30 | 2026-08-11 | second-hand
# EU-PACK-PPWR | Reg. (EU) 2025/40 Art. 5(4)
| 100 | > | 2026-08-12 | - | second-hand
# EU-CER-1 | Directive 84/500/EEC Art. 2(4)
-PB | 0.8 | > | 1988-01-01 | - | verified
-CD | 0.07 | > | 1988-01-01 | - | verified
# EU-CER-2 | Directive 84/500/EEC Art. 2(4)
-PB | 4 | > | 1988-01-01 | - | verified
-CD | 0.3 | > | 1988-01-01 | - | verified
# EU-CER-3 | Directive 84/500/EEC Art. 2(4)
-PB | 1.5 | > | 1988-01-01 | - | verified
-CD | 0.1 | > | 1988-01-01 | - | verified
# EU-DWD | Directive (EU) 2020/2184 Annex I
-10 | 0.01 | > | 2023-01-01 | 2036-01-11 | verified
-5 | 0.005 | > | 2036-01-12 | - | verified
# CA-CPCLR | SOR/2018-83
| 90 | > | 2018-11-02 | - | verified
# CA-JEWEL-PB | SOR/2018-82 s. 2
| 90 | > | 2018-11-02 | - | verified
# CA-JEWEL-CD | SOR/2018-82 s. 3
| 130 | > | 2018-11-02 | - | verified
# CA-GLAZE | SOR/2016-175
-FLAT-PB | 3 | > | 1998-01-01 | - | verified
-FLAT-CD | 0.5 | > | 1998-01-01 | - | verified
-SMALL-PB | 2 | > | 1998-01-01 | - | verified
-SMALL-CD | 0.5 | > | 1998-01-01 | - | verified
-LARGE-PB | 1 | > | 1998-01-01 | - | verified
-LARGE-CD | 0.25 | > | 1998-01-01 | - | verified
-CUP-PB | 0.5 | > | 1998-01-01 | - | verified
-CUP-CD | 0.5 | > | 1998-01-01 | - | verified
-PITCHER-PB | 0.5 | > | 1998-01-01 | - | verified
-PITCHER-CD | 0.25 | > | 1998-01-01 | - | verified
-RIM-PB | 4 | > | 1998-01-01 | - | verified
-RIM-CD | 0.4 | > | 1998-01-01 | - | verified
# CA-SURFCOAT | SOR/2016-193 s. 2-3
| 90 | > | 2016-06-22 | - | verified
# ISO-8124-3 | ISO 8124-3:2020 Table 1
-SB | 60 | > | 1997-01-01 | - | second-hand
-AS | 25 | > | 1997-01-01 | - | second-hand
-BA | 1000 | > | 1997-01-01 | - | second-hand
-CD | 75 | > | 1997-01-01 | - | second-hand
-CR | 60 | > | 1997-01-01 | - | second-hand
-PB | 90 | > | 1997-01-01 | - | second-hand
-HG | 60 | > | 1997-01-01 | - | second-hand
-SE | 500 | > | 1997-01-01 | - | second-hand
-FINGER-SB | 10 | > | 2018-01-01 | - | second-hand
-FINGER-AS | 10 | > | 2018-01-01 | - | second-hand
-FINGER-BA | 350 | > | 2018-01-01 | - | second-hand
-FINGER-CD | 15 | > | 2018-01-01 | - | second-hand
-FINGER-CR | 25 | > | 2018-01-01 | - | second-hand
-FINGER-PB | 25 | > | 2018-01-01 | - | second-hand
-FINGER-HG | 10 | > | 2018-01-01 | - | second-hand
-FINGER-SE | 50 | > | 2018-01-01 | - | second-hand
-CLAY-SB | 60 | > | 2010-01-01 | - | second-hand
-CLAY-AS | 25 | > | 2010-01-01 | - | second-hand
-CLAY-BA | 250 | > | 2010-01-01 | - | second-hand
-CLAY-CD | 50 | > | 2010-01-01 | - | second-hand
-CLAY-CR | 25 | > | 2010-01-01 | - | second-hand
-CLAY-PB | 90 | > | 2010-01-01 | - | second-hand
-CLAY-HG | 25 | > | 2010-01-01 | - | second-hand
-CLAY-SE | 500 | > | 2010-01-01 | - | second-hand
# AU-NZ-TOY | AU Consumer Protection Notice 1 of 2009; NZ unsafe goods notice
-AU-SB | 60 | > | 2010-01-01 | - | verified
-AU-AS | 25 | > | 2010-01-01 | - | verified
-AU-BA | 1000 | > | 2010-01-01 | - | verified
-AU-CD | 75 | > | 2010-01-01 | - | verified
-AU-CR | 60 | > | 2010-01-01 | - | verified
-AU-PB | 90 | > | 2010-01-01 | - | verified
-AU-HG | 60 | > | 2010-01-01 | - | verified
-AU-SE | 500 | > | 2010-01-01 | - | verified
-AU-FINGER-PB | 25 | > | 2010-01-01 | - | verified
-NZ-PB | 90 | > | 2009-03-26 | - | verified
# GB-TOY-AL | SI 2011/1881 Sch. 2 Part 3
-DRY | 2250 | > | 2022-12-15 | - | second-hand
-LIQUID | 560 | > | 2022-12-15 | - | second-hand
-SCRAPED | 28130 | > | 2022-12-15 | - | second-hand
`;

export type TableRow = {
  id: string;
  source: string;
  value: number | null;
  failsAt: string;
  from: string;
  until: string | null;
  checked: string;
};

export const tableRows: TableRow[] = [];
let head = { id: "", source: "" };
for (const line of text.trim().split("\n")) {
  const cells = line.split("|").map((cell) => cell.trim());
  if (line.startsWith("#")) {
    head = { id: (cells[0] ?? "").slice(2), source: cells[1] ?? "" };
    continue;
  }
  const [suffix = "", value = "", failsAt = "", from = "", until = "", checked = ""] = cells;
  tableRows.push({
    id: head.id + suffix,
    source: head.source,
    value: value === "-" ? null : Number(value),
    failsAt,
    from,
    until: until === "-" ? null : until,
    checked,
  });
}

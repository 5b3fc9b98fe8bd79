// Made by commands/attenuation/make-tables.py with xraylib 4.0.0 (CS_Total, LineEnergy, EdgeEnergy). Do not edit: run the script.

/** The lines an analyser reads, each with its energy and that of the edge which must be passed to excite it. */
export const lines = {
  "Ti Kα": { element: "Ti", keV: 4.5109, edgeKeV: 4.9664 },
  "Cr Kα": { element: "Cr", keV: 5.4147, edgeKeV: 5.9892 },
  "Fe Kα": { element: "Fe", keV: 6.4039, edgeKeV: 7.112 },
  "Ni Kα": { element: "Ni", keV: 7.4781, edgeKeV: 8.3328 },
  "Cu Kα": { element: "Cu", keV: 8.0478, edgeKeV: 8.9789 },
  "Zn Kα": { element: "Zn", keV: 8.6389, edgeKeV: 9.6586 },
  "As Kα": { element: "As", keV: 10.5436, edgeKeV: 11.8667 },
  "As Kβ": { element: "As", keV: 11.7262, edgeKeV: 11.8667 },
  "Se Kα": { element: "Se", keV: 11.222, edgeKeV: 12.6578 },
  "Br Kα": { element: "Br", keV: 11.9238, edgeKeV: 13.4737 },
  "Cd Kα": { element: "Cd", keV: 23.1737, edgeKeV: 26.7112 },
  "Sn Kα": { element: "Sn", keV: 25.2713, edgeKeV: 29.2001 },
  "Sb Kα": { element: "Sb", keV: 26.359, edgeKeV: 30.4912 },
  "Ba Kα": { element: "Ba", keV: 32.1936, edgeKeV: 37.4406 },
  "Ba Lα": { element: "Ba", keV: 4.4663, edgeKeV: 5.247 },
  "Hg Lα": { element: "Hg", keV: 9.989, edgeKeV: 12.2839 },
  "Pb Lα": { element: "Pb", keV: 10.5512, edgeKeV: 13.0352 },
  "Pb Lβ": { element: "Pb", keV: 12.6144, edgeKeV: 15.2 },
  "Bi Lα": { element: "Bi", keV: 10.839, edgeKeV: 13.4186 },
} as const;

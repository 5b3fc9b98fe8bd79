/** Spellings of "not detected" and of "nothing here", folded: lower case, accents and spaces, dots and hyphens taken out. Data only. */
export const nonDetectWords: ReadonlySet<string> = new Set(
  (
    "nd n/d notdetected nondetect nondetected nonedetected undetected bdl belowdetection belowdetectionlimit belowlod belowdl belowlimitofdetection " +
    "lod <lod dl <dl mdl <mdl ld <ld lld <lld nwg <nwg <nd < nn nichtnachweisbar nichtnachgewiesen unternwg unternachweisgrenze " +
    "<nachweisgrenze nondetecte nondecele <limitedetection nodetectado nosedetecta noidentificado <detectionlimit <limitofdetection <detectionlimitlod"
  ).split(" "),
);

/** "Not measured" in words: as good as a blank. */
export const notMeasuredWords: ReadonlySet<string> = new Set(
  "notmeasured notanalysed notanalyzed nottested nichtgemessen nichtanalysiert nonmesure nonanalyse nomedido noanalizado null".split(
    " ",
  ),
);

/** Marks that different people use for different things: asked about, never guessed. */
export const dashMarks: ReadonlySet<string> = new Set(["-", "--", "---", "–", "—", "−", "."]);
export const notAvailableMarks: ReadonlySet<string> = new Set(["na", "n/a", "#n/a", "nan", "k.a.", "ka"]);

/** Folds a cell for look-up: "N. D." → "nd", "< LOD" → "<lod", "Nicht nachgewiesen" → "nichtnachgewiesen". */
export const foldMark = (cell: string): string =>
  cell
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[≤‹]/g, "<")
    .replace(/[\s._-]+/g, "");

/** The commonest spellings as they stand, so that most non-detects need no folding. */
export const plainNonDetects: ReadonlySet<string> = new Set([
  "<LOD",
  "< LOD",
  "LOD",
  "ND",
  "nd",
  "n.d.",
  "N.D.",
  "<DL",
  "<MDL",
  "BDL",
]);

/** The words headers are made of, in English, German, French and Spanish; lower case with accents folded. Data only. */

export const roles = [
  "number",
  "date",
  "time",
  "dateTime",
  "zone",
  "seconds",
  "mode",
  "sample",
  "spot",
  "note",
  "serial",
  "operator",
] as const;
export type Role = (typeof roles)[number];

const phrases = (text: string): readonly string[] => text.split("|").map((phrase) => phrase.trim());

/** Whole headers (unit and brackets taken off) that say what a column is. */
export const roleHeaders: Readonly<Record<Role | "element" | "unit" | "flag", readonly string[]>> = {
  number: phrases(
    "number|no|nr|#|n°|nº|num|reading|reading no|reading nr|reading number|reading #|reading id|readingno|readingid|shot|shot no|shot number|shot id|test no|test number|measurement|measurement no|measurement number|messung|messung nr|messungsnummer|messnummer|mess nr|messnr|lfd nr|laufende nummer|numero|mesure|mesure no|no mesure|numero de mesure|n° mesure|lectura|lectura no|numero de lectura|medicion|n° medicion|index",
  ),
  date: phrases("date|day|datum|tag|messdatum|fecha|dia|jour|date de mesure|reading date|test date|measured on"),
  time: phrases("time|time of day|clock|uhrzeit|zeit|heure|hora|reading time|messzeitpunkt uhrzeit"),
  dateTime: phrases(
    "date time|datetime|date and time|date/time|timestamp|time stamp|taken at|measured at|zeitpunkt|zeitstempel|datum uhrzeit|datum zeit|datum und uhrzeit|datum/uhrzeit|datum/zeit|horodatage|date heure|date et heure|date/heure|fecha hora|fecha y hora|fecha/hora",
  ),
  zone: phrases("time zone|timezone|zone|tz|utc offset|offset|zeitzone|fuseau|fuseau horaire|zona horaria"),
  seconds: phrases(
    "seconds|sec|secs|duration|live time|livetime|real time|count time|counting time|measuring time|measurement time|exposure|elapsed|elapsed time|total time|messdauer|messzeit|dauer|zahlzeit|sekunden|duree|duree de mesure|secondes|temps de comptage|temps de mesure|duracion|segundos|tiempo de conteo|tiempo de medicion|tiempo de medida",
  ),
  mode: phrases(
    "mode|calibration|calibration mode|cal|method|programme|program|application|method name|program name|mode name|modus|messmodus|kalibrierung|methode|messprogramm|mode de calibration|etalonnage|modo|calibracion|metodo",
  ),
  sample: phrases(
    "sample|sample id|sample name|sample no|sampleid|samplename|specimen|item|item id|item name|object|object id|article|piece|part|component|product|name|probe|probenname|proben id|probe nr|probennummer|objekt|gegenstand|teil|bauteil|stuck|echantillon|nom echantillon|objet|pieces|composant|muestra|id muestra|objeto|pieza|parte|componente|label",
  ),
  spot: phrases(
    "spot|spot id|spot no|position|pos|point|place|location|area|site|stelle|messstelle|messpunkt|punkt|ort|endroit|emplacement|point de mesure|punto|punto de medida|lugar|ubicacion|posicion",
  ),
  note: phrases(
    "note|notes|remark|remarks|comment|comments|description|bemerkung|bemerkungen|notiz|kommentar|anmerkung|beschreibung|remarque|remarques|commentaire|commentaires|nota|notas|comentario|comentarios|observaciones|observacion",
  ),
  serial: phrases(
    "serial|serial no|serial number|serial #|instrument serial|instrument|instrument id|instrument sn|sn|s/n|device|device id|analyser|analyzer|seriennummer|serien nr|gerat|geratenummer|gerate nr|numero de serie|no de serie|n° de serie|appareil|instrumento|equipo|aparato",
  ),
  operator: phrases(
    "operator|user|tester|measured by|analyst|inspector|bediener|prufer|messende person|operateur|utilisateur|operador|usuario",
  ),
  element: phrases(
    "element|analyte|parameter|metal|substance|symbol|element name|component element|analyt|stoff|metall|substanz|elemento|analito|metaux|sustancia|parametro|parametre",
  ),
  unit: phrases("unit|units|uom|einheit|einheiten|unite|unites|unidad|unidades"),
  flag: phrases(
    "<|qualifier|qual|flag|detected|detection|detect|nachgewiesen|kennzeichen|detecte|detectado|calificador|qualificateur",
  ),
};

/** Words that may stand beside an element in a header without changing what the column is. */
export const fillerWords: ReadonlySet<string> = new Set(
  "conc concn concentration konzentration concentracion content contents contenu contenido gehalt gehalte teneur value values val wert werte valeur valor result results ergebnis resultat resultado messwert level levels total gesamt element mass massen masse fraction massenanteil anteil reading amount of in the de du en des la le".split(
    " ",
  ),
);

/** Words that make a column an error; those of the second list are one standard deviation by definition (GUM 2.3.1). */
export const errorWords: ReadonlySet<string> = new Set(
  "± error errors err uncertainty uncertainties uncert unc fehler messfehler unsicherheit messunsicherheit erreur incertitude incertidumbre pm plusminus".split(
    " ",
  ),
);
export const standardDeviationWords: ReadonlySet<string> = new Set(
  "σ sigma sd stdev stddev stdabw standardabweichung".split(" "),
);
export const relativeWords: ReadonlySet<string> = new Set("rsd rel relative relativ relativer cv rsa".split(" "));

export const limitWords: ReadonlySet<string> = new Set("lod dl mdl ld lld nwg nachweisgrenze mdc lodet".split(" "));
export const halfLimitWords: ReadonlySet<string> = new Set("limit limite limits detection deteccion detect".split(" "));

/** First cells of rows that sum up readings. The weak ones count only at the end of the file: they are common sample names. */
export const summaryWords: ReadonlySet<string> = new Set(
  phrases(
    "mean|average|avg|median|std|stdev|stddev|std dev|std. dev|standard deviation|sd|rsd|%rsd|rsd%|rsd (%)|cv|min|minimum|max|maximum|mittelwert|mittel|durchschnitt|standardabweichung|stdabw|moyenne|ecart type|ecart-type|mediane|media|promedio|desviacion estandar|mediana|minimo|maximo",
  ),
);
export const weakSummaryWords: ReadonlySet<string> = new Set(
  "n count total sum anzahl summe nombre somme total recuento suma".split(" "),
);

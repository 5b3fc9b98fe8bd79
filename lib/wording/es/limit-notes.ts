/** Spanish of rules without a number, of what is held against a limit, and of notes, by the English of the table. A test holds it whole. */
export const limitNotes: Record<string, string> = {
  // Rules without a number.
  'any value reported without "<" by a laboratory recognised under the national lead laboratory programme (NLLAP)':
    "todo valor que informe sin «<» un laboratorio reconocido por el programa nacional de laboratorios de plomo (NLLAP)",
  "lead is allowed where it is needed for the electronic function":
    "se permite el plomo donde hace falta para la función electrónica",
  "the limits on lead in children's products do not apply":
    "no se aplican los límites de plomo en productos infantiles",
  "partial relief from the limits on lead in children's products":
    "alivio parcial de los límites de plomo en productos infantiles",
  "the limits do not apply to a part sealed by a covering that survives use and abuse; paint, coating and electroplate are not such a covering":
    "los límites no se aplican a una parte sellada por una cubierta que resiste el uso y el maltrato; la pintura, el recubrimiento y el baño electrolítico no son una cubierta así",
  "exempt from testing, not from the limit": "exentos del ensayo, no del límite",
  "no exemption: the limit on children's products applies to them":
    "sin exención: se les aplica el límite de los productos infantiles",
  "may be detained at the border without examination; there is no number":
    "se pueden retener en la frontera sin examinarlos; no hay número",
  'a stick-on "not for food use" label and a permanent mark on the base, or a hole bored through':
    "una etiqueta pegada que diga que no es para alimentos y una marca permanente en la base, o un agujero que la atraviese",
  "none of the four metals may be added on purpose, whatever the amount":
    "ninguno de los cuatro metales se puede añadir a propósito, sea cual sea la cantidad",

  // What is held against the number.
  "soluble in dilute acid, after the test method's correction":
    "lo soluble en ácido diluido, tras la corrección del método de ensayo",
  "the average of 6 vessels": "el promedio de 6 recipientes",
  "any one of 6 vessels": "cualquiera de 6 recipientes",
  "the 90th percentile of taps sampled": "el percentil 90 de las llaves de agua muestreadas",
  "weighted average over the wetted surface": "el promedio ponderado sobre la superficie mojada",
  "mass on one wipe": "la masa en una toallita",

  // Notes.
  "The rule of 2021 left the number as it was, until the action levels of 2024.":
    "La norma de 2021 dejó el número como estaba, hasta los niveles de acción de 2024.",
  "From 13 January 2025 the action levels of 2024 were in effect beside it; compliance with them was asked for from 12 January 2026.":
    "Desde el 13 de enero de 2025 regían a su lado los niveles de acción de 2024; su cumplimiento se exigió desde el 12 de enero de 2026.",
  "A laboratory's reportable level is the lowest value it reports without a < sign.":
    "El nivel notificable de un laboratorio es el valor más bajo que informa sin el signo <.",
  "Until 11 January 2026: rule in effect, compliance date not yet reached.":
    "Hasta el 11 de enero de 2026: la norma regía, pero aún no había llegado la fecha de cumplimiento.",
  "A condition of HUD lead grants. A stricter state level prevails. Superseded in practice by the EPA rule of 2024 where that is stricter.":
    "Una condición de las subvenciones del HUD para el plomo. Un nivel estatal más estricto va primero. En la práctica, la norma de la EPA de 2024 la sustituye donde es más estricta.",
  "Published 1999, in effect 2000 (to the year). Stands in where EPA standards are not in effect.":
    "Publicada en 1999, rige desde 2000 (se sabe el año). Vale donde no rigen las normas de la EPA.",
  "At exactly 0.5 % the two EPA sections disagree, so both are kept.":
    "En el 0,5 % exacto las dos secciones de la EPA no coinciden; por eso se muestran las dos.",
  "Supersedes January 2024 and drops its 100 tier. Clean-up goals start from a target child blood lead of 5 µg/dL.":
    "Sustituye a la de enero de 2024 y quita su nivel de 100. Las metas de saneamiento parten de un plomo en sangre infantil de 5 µg/dL.",
  "The limit of 100 that followed binds only goods made after 14 August 2011, so this one remains the number for older goods.":
    "El límite de 100 que siguió solo obliga para artículos hechos después del 14 de agosto de 2011, así que este sigue siendo el número para los más antiguos.",
  "Editions: F963-07 binding from 10 Feb 2009, F963-11 from 12 Jun 2012, F963-16 from 30 Apr 2017, F963-17 from 28 Feb 2018, F963-23 from 20 Apr 2024.":
    "Ediciones: F963-07 obligatoria desde el 10 de febrero de 2009, F963-11 desde el 12 de junio de 2012, F963-16 desde el 30 de abril de 2017, F963-17 desde el 28 de febrero de 2018, F963-23 desde el 20 de abril de 2024.",
  "Announced 12 November 1991; the guide is dated 1992 (from memory).":
    "Anunciado el 12 de noviembre de 1991; la guía lleva fecha de 1992 (de memoria).",
  "A model that binds food businesses where a state has adopted it.":
    "Un modelo que obliga a las empresas alimentarias donde un estado lo ha adoptado.",
  "A tenth of 60, 150, 250 and 750 µg/day. In use from about 1992 to 2018.":
    "La décima parte de 60, 150, 250 y 750 µg/día. En uso desde 1992 hasta 2018, aproximadamente.",
  "The rule of 2024 lowers it to 0.010, with compliance from 1 November 2027.":
    "La norma de 2024 lo baja a 0,010, exigido desde el 1 de noviembre de 2027.",
  "Under review in the D.C. Circuit since 13 December 2024; no outcome was found.":
    "En revisión ante el tribunal de apelaciones del circuito de D. C. desde el 13 de diciembre de 2024; no se halló ningún desenlace.",
  "In 25705, cadmium 0.05 and arsenic 0.06 µg/day are for breathing in only.":
    "En 25705, el cadmio 0,05 y el arsénico 0,06 µg/día son solo para lo que se respira.",
  "The text was amended on 1 January 2012.": "El texto se modificó el 1 de enero de 2012.",
  "Never took effect: it was to begin on 1 January 2026 and was amended in 2025. It is in force on no day.":
    "Nunca llegó a regir: iba a empezar el 1 de enero de 2026 y se modificó en 2025. No está vigente ningún día.",
  "May be lowered after December 2030. Most field XRF readings of brass and aluminium cannot show 10 ppm (from memory): a non-detect then says only how far down the reading could see.":
    "Se puede bajar después de diciembre de 2030. La mayoría de las lecturas de rayos X en latón y aluminio no pueden mostrar 10 ppm (de memoria): un no detectado dice entonces solo hasta dónde podía ver la lectura.",
  "Binding only as each state's own law, since about 1992.":
    "Obligatoria solo como ley propia de cada estado, desde 1992 aproximadamente.",
  "XRF cannot test this. Coated articles must hold it for two years.":
    "Los rayos X no pueden ensayar esto. Los artículos recubiertos deben mantenerlo dos años.",
  "Exemptions re-set by three delegated directives of 21 November 2025 (national law by 30 June 2026, applied from 1 July 2026): steel 0.35 % and galvanised steel 0.2 % to 30 June 2027; recycled aluminium 0.3 %, dates between December 2026 and June 2027; aluminium for machining ends; copper alloy 4 % to 30 June 2027; high-melting solder and glass or ceramic entries to 31 December 2027 (read second-hand).":
    "Exenciones fijadas de nuevo por tres directivas delegadas del 21 de noviembre de 2025 (ley nacional antes del 30 de junio de 2026, aplicadas desde el 1 de julio de 2026): acero 0,35 % y acero galvanizado 0,2 % hasta el 30 de junio de 2027; aluminio reciclado 0,3 %, fechas entre diciembre de 2026 y junio de 2027; la del aluminio para mecanizar termina; aleación de cobre 4 % hasta el 30 de junio de 2027; soldadura de alto punto de fusión y vidrio o cerámica hasta el 31 de diciembre de 2027 (leído de segunda mano).",
  "2017/738 is lead, 2018/725 is hexavalent chromium: easily confused. Regulation (EU) 2025/2509 replaces the directive from 1 August 2030.":
    "2017/738 es plomo, 2018/725 es cromo hexavalente: se confunden con facilidad. El Reglamento (UE) 2025/2509 sustituye a la directiva desde el 1 de agosto de 2030.",
  "2018/725 is hexavalent chromium, 2017/738 is lead: easily confused.":
    "2018/725 es cromo hexavalente, 2017/738 es plomo: se confunden con facilidad.",
  "In force from 1 January 2026, applies from 1 August 2030 (three bulletins wrongly print 2026). Replaces 2009/48/EC; older stock may be sold on.":
    "Vigente desde el 1 de enero de 2026, se aplica desde el 1 de agosto de 2030 (tres boletines dicen 2026 por error). Sustituye a 2009/48/CE; lo que ya estaba en venta se puede seguir vendiendo.",
  "An act of 2020, in national law by 2023 (to the year).":
    "Un acto de 2020, en las leyes nacionales antes de 2023 (se sabe el año).",
  "To be met by 12 January 2036.": "Se debe cumplir antes del 12 de enero de 2036.",
  "Voluntary unless a country adopts it (Australia, New Zealand; China's GB 6675.4 is similar). Editions of 1997, 2010 (amended 2014, 2018), 2020 (amended 2023).":
    "Voluntaria si ningún país la adopta (la adoptaron Australia y Nueva Zelanda; la GB 6675.4 de China es parecida). Ediciones de 1997, 2010 (modificada en 2014 y 2018) y 2020 (modificada en 2023).",
};

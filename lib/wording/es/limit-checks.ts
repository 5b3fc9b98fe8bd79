const codeStillCarries =
  "el 40 CFR 745.61(d), tal como estaba el 20 de junio de 2026, todavía lo contiene; no se halló ningún texto posterior";
const fromMemoryHigh = "el estadístico es de memoria (bastante seguro)";

/** Spanish of how far each limit was checked, by the English of the table. A test holds this list whole. */
export const limitChecks: Record<string, string> = {
  // Housing.
  "The value, that the number itself fails, and the first day (6 March 2001) were read in public texts.":
    "El valor, que el número mismo no cumple y el primer día (6 de marzo de 2001) se leyeron en textos públicos.",
  "The figures were read in public texts of the rule.": "Las cifras se leyeron en textos públicos de la norma.",
  "Value, first day and pages read in the rule of 2019; that the number itself fails was read in 40 CFR 745.65(b).":
    "El valor, el primer día y las páginas se leyeron en la norma de 2019; que el número mismo no cumple se leyó en 40 CFR 745.65(b).",
  "Figures and first day read in the rule of 2021. The last day is the day before compliance with the action levels; that day was read second-hand.":
    "Las cifras y el primer día se leyeron en la norma de 2021. El último día es la víspera del cumplimiento de los niveles de acción; ese día se leyó de segunda mano.",
  "Read in the rule. 40 CFR 745.61(d), as it stood on 20 June 2026, still carries it; no later text was found, so later changes are not ruled out.": `Leído en la norma; ${codeStillCarries}, así que no se descartan cambios posteriores.`,
  "Values and effective date read in the rule; the compliance date was read second-hand. 40 CFR 745.61(d), as it stood on 20 June 2026, still carries it; no later text was found.": `Los valores y la fecha de entrada en vigor se leyeron en la norma; la fecha de cumplimiento, de segunda mano; ${codeStillCarries}.`,
  "Read in a report that quotes the guidance. Which side fails at the number itself was not printed; taken as in the EPA standard.":
    "Leído en un informe que cita la orientación. No decía si el número mismo cumple; se tomó como en la norma de la EPA.",
  "Read in a report that quotes the guidance, not in the guidance itself.":
    "Leído en un informe que cita la orientación, no en la orientación misma.",
  "Figures read in a stored text of the section; whether it was amended later was not checked.":
    "Las cifras se leyeron en un texto guardado de la sección; no se comprobó si se modificó después.",
  "Value and which side fails read in the section; the year of the start is from memory. That EPA declined to change it in 2019 was read in the rule of 2019.":
    "El valor y qué lado no cumple se leyeron en la sección; el año del comienzo es de memoria. Que la EPA no quiso cambiarlo en 2019 se leyó en la norma de 2019.",
  "Wording of the statute read as quoted in a secondary text; the year of the start is from memory.":
    "El texto de la ley se leyó tal como lo cita un texto secundario; el año del comienzo es de memoria.",
  "Value and which side fails read in the section; the year of the start is from memory.":
    "El valor y qué lado no cumple se leyeron en la sección; el año del comienzo es de memoria.",
  "Value, which side fails and first day read in public texts.":
    "El valor, qué lado no cumple y el primer día se leyeron en textos públicos.",
  "400 and its thirty years were read in notes of January 2024; the directive's number is from memory.":
    "El 400 y sus treinta años se leyeron en notas de enero de 2024; el número de la directiva es de memoria.",
  "Read in law-firm notes of January 2024, not in the guidance itself.":
    "Leído en notas de abogados de enero de 2024, no en la orientación misma.",
  "Read in notes on the directive (announced 20 October 2025), not in the directive itself.":
    "Leído en notas sobre la directiva (anunciada el 20 de octubre de 2025), no en la directiva misma.",

  // Goods and toys in the United States.
  "Read in 16 CFR 1500.17(a)(6). It binds goods shipped after 31 December 1972.":
    "Leído en 16 CFR 1500.17(a)(6). Obliga para artículos enviados después del 31 de diciembre de 1972.",
  "Read in 16 CFR 1500.17(a)(6). It binds goods shipped after 31 December 1973 and ends for goods made after 27 February 1978.":
    "Leído en 16 CFR 1500.17(a)(6). Obliga para artículos enviados después del 31 de diciembre de 1973 y termina para los hechos después del 27 de febrero de 1978.",
  "0.06 %, the date, the core scope and that vehicles and boats are out were read in the rule; finer exemptions second-hand; the page of 42 FR is from memory.":
    "El 0,06 %, la fecha, lo principal de lo que abarca y que los vehículos y barcos quedan fuera se leyeron en la norma; las exenciones menores, de segunda mano; la página de 42 FR es de memoria.",
  "Read in the rule and in the Code of Federal Regulations; finer exemptions second-hand.":
    "Leído en la norma y en el Código de Reglamentos Federales; las exenciones menores, de segunda mano.",
  "Read in a health district's rules, not in the statute.":
    "Leído en las normas de un distrito de salud, no en la ley.",
  "Read in 15 USC 1278a and in the Federal Register of 2009.":
    "Leído en 15 USC 1278a y en el Registro Federal de 2009.",
  "Value, date and that it binds only goods made after the effective date were read in the statute and in Pub. L. 112-28; 76 FR 44463 is from memory.":
    "El valor, la fecha y que solo obliga para artículos hechos después de la entrada en vigor se leyeron en la ley y en Pub. L. 112-28; 76 FR 44463 es de memoria.",
  "Figures read in 16 CFR 1500.88; the first day was not read (the year is from memory). The text asks for less than the number.":
    "Las cifras se leyeron en 16 CFR 1500.88; el primer día no se leyó (el año es de memoria). El texto pide menos que el número.",
  "Read in 15 USC 1278a and the agency's guidance; the first day was not read (year of Pub. L. 112-28).":
    "Leído en 15 USC 1278a y en la orientación del organismo; el primer día no se leyó (año de Pub. L. 112-28).",
  "The definition was read in 15 USC 1278a; what is carved out of it is from memory.":
    "La definición se leyó en 15 USC 1278a; lo que queda fuera de ella es de memoria.",
  "Read in the Federal Register and the Code of Federal Regulations.":
    "Leído en el Registro Federal y en el Código de Reglamentos Federales.",
  "Read in the Code of Federal Regulations; the first day was not read.":
    "Leído en el Código de Reglamentos Federales; el primer día no se leyó.",
  "Read in the ballot paper and in press reports of the vote; beads tested then held 900 to 23 000 ppm.":
    "Leído en el documento de la votación y en noticias sobre ella; las cuentas ensayadas entonces contenían de 900 a 23 000 ppm.",
  "Values and the first two dates read second-hand; the dates of 2017, 2018 and 2024 were read in the Federal Register.":
    "Los valores y las dos primeras fechas se leyeron de segunda mano; las fechas de 2017, 2018 y 2024, en el Registro Federal.",
  "The standard's own row for clay is from memory; the same figures were read second-hand for ISO 8124-3.":
    "La fila de la norma para la pasta de modelar es de memoria; las mismas cifras se leyeron de segunda mano para ISO 8124-3.",
  "Read in the Federal Register.": "Leído en el Registro Federal.",

  // Food and water in the United States.
  "3 (before it 7), the test and the announcement were read in FDA's notice of 1991; the statistic is from memory (high).": `El 3 (antes 7), el ensayo y el anuncio se leyeron en el aviso de la FDA de 1991; ${fromMemoryHigh}.`,
  "Value read in state texts that copy it; the statistic is from memory (high).": `El valor se leyó en textos estatales que lo copian; ${fromMemoryHigh}.`,
  "0.5 was read in FDA's notice of 1991; the statistic is from memory (high).": `El 0,5 se leyó en el aviso de la FDA de 1991; ${fromMemoryHigh}.`,
  "Value read in state texts that copy it; the proposal of 1989 was read; the statistic is from memory (high).": `El valor se leyó en textos estatales que lo copian; se leyó la propuesta de 1989; ${fromMemoryHigh}.`,
  "Value and statistic read in a copy of the guide; when it began was not read.":
    "El valor y el estadístico se leyeron en una copia de la guía; no se leyó cuándo empezó.",
  "The county text was read, and that federal action began in 1971 and tightened in 1979; the federal figure of 1971 is from memory.":
    "Se leyó el texto del condado, y que la acción federal empezó en 1971 y se hizo más estricta en 1979; la cifra federal de 1971 es de memoria.",
  "7 for flatware before 1991 was read in FDA's notice of 1991.":
    "El 7 para piezas planas antes de 1991 se leyó en el aviso de la FDA de 1991.",
  "The figure is from memory; that levels were tightened in 1979 was read.":
    "La cifra es de memoria; que los niveles se hicieron más estrictos en 1979 sí se leyó.",
  "Read in the alert, whose text is dated 10 December 2020; it may be older.":
    "Leído en la alerta, cuyo texto lleva fecha del 10 de diciembre de 2020; puede ser más antigua.",
  "Read in the Federal Register; its page is from memory.": "Leído en el Registro Federal; la página es de memoria.",
  "Read in the Washington and Wyoming texts. The date is that of Washington's text; other states differ.":
    "Leído en los textos de Washington y Wyoming. La fecha es la del texto de Washington; en otros estados es otra.",
  "Read in the published abstracts; the dates are known to the year.":
    "Leído en los resúmenes publicados; de las fechas se sabe el año.",
  "The 60, 150, 250 and 750 were read in an abstract; this tenth is from memory, though the arithmetic follows.":
    "Los 60, 150, 250 y 750 se leyeron en un resumen; esta décima parte es de memoria, aunque la cuenta sale.",
  "75 was read in an abstract; the first and last years are approximate.":
    "El 75 se leyó en un resumen; el primer y el último año son aproximados.",
  "Read in law-firm notes of January 2025, not in the guidance.":
    "Leído en notas de abogados de enero de 2025, no en la orientación.",
  "0.015 was read second-hand; the first day is known to the year.":
    "El 0,015 se leyó de segunda mano; del primer día se sabe el año.",
  "0.010, the effective date, and 1 November 2027 for 141.2, 141.31 and the notice rules were read in the rule; the same day for subpart I (141.80(a)) is from memory.":
    "El 0,010, la fecha de entrada en vigor y el 1 de noviembre de 2027 para 141.2, 141.31 y las reglas de aviso se leyeron en la norma; el mismo día para la subparte I (141.80(a)) es de memoria.",
  "8 % and its end in January 2014 were read second-hand; when it began was not read.":
    "El 8 % y su fin en enero de 2014 se leyeron de segunda mano; no se leyó cuándo empezó.",
  "Read in 40 CFR 143.12; the day in January 2014 second-hand.":
    "Leído en 40 CFR 143.12; el día de enero de 2014, de segunda mano.",

  // States.
  "Read in notes and in the court's opinion; the copy of the section read breaks off before lead.":
    "Leído en notas y en la sentencia del tribunal; la copia de la sección que se leyó se interrumpe antes del plomo.",
  "From memory (high): the copies of 25705 that were read break off before lead.":
    "De memoria (bastante seguro): las copias de 25705 que se leyeron se interrumpen antes del plomo.",
  "Read in 27 CCR 25805; when it began was not read.": "Leído en 27 CCR 25805; no se leyó cuándo empezó.",
  "Read in a summary of the judgments, not in them.": "Leído en un resumen de las sentencias, no en ellas.",
  "Read in the acts.": "Leído en las leyes.",
  "Read in stored texts of the statute (upper end 100); bulletins of 2019 and 2020 give 600 for the upper end.":
    "Leído en textos guardados de la ley (extremo superior 100); boletines de 2019 y 2020 dan 600 como extremo superior.",
  "Read in the statute and in two versions of the state agency's page (a bulletin that gives 1 August 2023 is not followed); the amendments of 2025 were read in trade bulletins.":
    "Leído en la ley y en dos versiones de la página del organismo estatal (no se sigue un boletín que da el 1 de agosto de 2023); las enmiendas de 2025 se leyeron en boletines del sector.",
  "Read in the statute and on the state agency's page; the amendments of 2025 were read in trade bulletins.":
    "Leído en la ley y en la página del organismo estatal; las enmiendas de 2025 se leyeron en boletines del sector.",
  "Read in trade bulletins on the amendments of June 2025.":
    "Leído en boletines del sector sobre las enmiendas de junio de 2025.",
  "Read in RCW 70A.565.": "Leído en RCW 70A.565.",
  "Read in the session law; that it was signed on 13 May 2025 and took effect as an act on 27 July 2025 was read second-hand.":
    "Leído en la ley tal como se promulgó; que se firmó el 13 de mayo de 2025 y rige como ley desde el 27 de julio de 2025 se leyó de segunda mano.",
  "Read in the session law.": "Leído en la ley tal como se promulgó.",
  "Read on the states' clearinghouse. The phase-in 600, 250, 100 at 2, 3 and 4 years is from memory.":
    "Leído en la oficina común de los estados. Los pasos 600, 250 y 100 a los 2, 3 y 4 años son de memoria.",
  "Read on the states' clearinghouse.": "Leído en la oficina común de los estados.",

  // European Union.
  "0.05 %, which side fails, the exemptions and both dates were read in summaries, not in the regulation.":
    "El 0,05 %, qué lado no cumple, las exenciones y las dos fechas se leyeron en resúmenes, no en el reglamento.",
  "The 5 cm rule, keys, locks, instruments, pen tips and other EU acts were read second-hand; the 0.5 % for brass is from memory.":
    "La regla de los 5 cm, las llaves, cerraduras, instrumentos, puntas de bolígrafo y las otras normas de la UE se leyeron de segunda mano; el 0,5 % para el latón es de memoria.",
  "Read second-hand.": "Leído de segunda mano.",
  "Read in the regulation.": "Leído en el reglamento.",
  "Read in Reg. (EU) 494/2011 and in the agency's answers.":
    "Leído en el Reglamento (UE) 494/2011 y en las respuestas del organismo.",
  "Read in Reg. (EU) 2016/217, in force in March 2016 (to the month).":
    "Leído en el Reglamento (UE) 2016/217, vigente en marzo de 2016 (se sabe el mes).",
  "Read in Reg. (EU) 2016/217.": "Leído en el Reglamento (UE) 2016/217.",
  "Read in the agency's drafts and a public text; in effect since 2000, under REACH since 2009.":
    "Leído en los borradores del organismo y en un texto público; rige desde 2000, bajo REACH desde 2009.",
  "Values and the start in 2006 were read second-hand; the recast's date (3 January 2013) is from memory (high).":
    "Los valores y el comienzo en 2006 se leyeron de segunda mano; la fecha de la refundición (3 de enero de 2013) es de memoria (bastante seguro).",
  "The value was read second-hand; the date and the four names are from memory (high).":
    "El valor se leyó de segunda mano; la fecha y los cuatro nombres son de memoria (bastante seguro).",
  "Read in Dir. (EU) 2017/738. Before it, 88/378/EEC had 90 mg/kg (from memory).":
    "Leído en la Directiva (UE) 2017/738. Antes, 88/378/CEE tenía 90 mg/kg (de memoria).",
  "Read in Dir. (EU) 2017/738.": "Leído en la Directiva (UE) 2017/738.",
  "The earlier figure was read in Dir. (EU) 2018/725.": "La cifra anterior se leyó en la Directiva (UE) 2018/725.",
  "Read in Dir. (EU) 2018/725.": "Leído en la Directiva (UE) 2018/725.",
  "The figure is from memory (medium); nobody has checked it against the directive yet.":
    "La cifra es de memoria (seguridad media); nadie la ha comprobado todavía con la directiva.",
  "The figure was read in a secondary text.": "La cifra se leyó en un texto secundario.",
  "The figure was read in an official list.": "La cifra se leyó en una lista oficial.",
  "The act and its day in the Official Journal were read; its other dates and lead 2 (dry) second-hand. Its full tables were not read, and notes on them disagree.":
    "Se leyeron el acto y su día en el Diario Oficial; las demás fechas y el plomo 2 (seco), de segunda mano. Las tablas completas no se leyeron, y las notas sobre ellas no coinciden.",
  "The number and the step dates were read second-hand (250 and 100 also in a national agency's report).":
    "El número y las fechas de los pasos se leyeron de segunda mano (250 y 100 también en el informe de un organismo nacional).",
  "Read in trade notes; in force as an act since 11 February 2025.":
    "Leído en notas del sector; vigente como acto desde el 11 de febrero de 2025.",
  "Values read in the directive; the first year (1984 as an act, 1988 in national law) is known to the year.":
    "Los valores se leyeron en la directiva; del comienzo se sabe el año (1984 como acto, 1988 en las leyes nacionales).",
  "Read in the agency's list and the directive.": "Leído en la lista del organismo y en la directiva.",

  // Canada, ISO, Australia, New Zealand, Great Britain.
  "Read in SOR/2018-83. Before it, SOR/2010-273 covered toys for children under 3 only.":
    "Leído en SOR/2018-83. Antes, SOR/2010-273 abarcaba solo juguetes para niños de menos de 3 años.",
  "Read in SOR/2018-82. Before it 600 in total and 90 that migrates (from memory).":
    "Leído en SOR/2018-82. Antes, 600 en total y 90 que migran (de memoria).",
  "Read in SOR/2018-82.": "Leído en SOR/2018-82.",
  "Values, classes, lip and rim and the exception were read in SOR/2016-175; the regulations of 1998 were not read.":
    "Los valores, las clases, el labio y el borde y la excepción se leyeron en SOR/2016-175; el reglamento de 1998 no se leyó.",
  "Read in SOR/2016-193. That it was 600 before November 2010, and that painted goods fall under other rules such as those on toys, is from memory.":
    "Leído en SOR/2016-193. Que era 600 antes de noviembre de 2010, y que los artículos pintados caen bajo otras normas, como las de juguetes, es de memoria.",
  "Read in summaries of the standard, and as Australian law.":
    "Leído en resúmenes de la norma, y como ley australiana.",
  "Read in summaries of the standard, and as Australian law; lowered to these figures in 2018.":
    "Leído en resúmenes de la norma, y como ley australiana; bajó a estas cifras en 2018.",
  "Read in summaries of the standard; the edition it began with is from memory.":
    "Leído en resúmenes de la norma; la edición con que empezó es de memoria.",
  "Figures and scope read on the regulator's pages; the first day was read second-hand.":
    "Las cifras y lo que abarca se leyeron en las páginas del regulador; el primer día, de segunda mano.",
  "Figure read on the regulator's pages; the first day was read second-hand.":
    "La cifra se leyó en las páginas del regulador; el primer día, de segunda mano.",
  "Read on the regulator's page; no end date.": "Leído en la página del regulador; sin fecha de fin.",
  "Read in a note of 2022. The schedule's other figures were not read and are not in this table.":
    "Leído en una nota de 2022. Las demás cifras del anexo no se leyeron y no están en esta tabla.",
};

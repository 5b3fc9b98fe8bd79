/** Spanish of what limits cover, sentence by sentence, by the English of the table. A test holds this list whole. */
export const limitScopes: Record<string, string> = {
  // Dust, paint and soil in housing.
  "In: floors, carpeted or not, in pre-1978 target housing and child-occupied facilities, wipe samples, weighted mean.":
    "Incluye: pisos, con alfombra o sin ella, en viviendas anteriores a 1978 a las que se aplica la norma y en instalaciones ocupadas por niños; muestras de toallita, media ponderada.",
  "In: interior window sills in pre-1978 target housing and child-occupied facilities, wipe samples.":
    "Incluye: alféizares interiores de ventana en viviendas anteriores a 1978 a las que se aplica la norma y en instalaciones ocupadas por niños; muestras de toallita.",
  "No duty to test.": "No obliga a hacer ensayos.",
  "In: floors after abatement; cleared only below the number.":
    "Incluye: pisos después de la eliminación; conformes solo por debajo del número.",
  "In: interior window sills after abatement; cleared only below the number.":
    "Incluye: alféizares interiores de ventana después de la eliminación; conformes solo por debajo del número.",
  "In: window troughs after abatement; cleared only below the number.":
    "Incluye: canales de ventana después de la eliminación; conformes solo por debajo del número.",
  "In: window troughs after abatement (number unchanged); cleared only below the number.":
    "Incluye: canales de ventana después de la eliminación (el número no cambió); conformes solo por debajo del número.",
  "In: floors in pre-1978 target housing and child-occupied facilities, wipe samples.":
    "Incluye: pisos en viviendas anteriores a 1978 a las que se aplica la norma y en instalaciones ocupadas por niños; muestras de toallita.",
  "There is no value for troughs.": "No hay valor para los canales.",
  "In: floors in pre-1978 target housing and child-occupied facilities, wipe samples; the definition of a hazard for risk assessment and disclosure.":
    "Incluye: pisos en viviendas anteriores a 1978 a las que se aplica la norma y en instalaciones ocupadas por niños; muestras de toallita; la definición de peligro para la evaluación de riesgos y la declaración.",
  "In: interior window sills in pre-1978 target housing and child-occupied facilities, wipe samples; the definition of a hazard for risk assessment and disclosure.":
    "Incluye: alféizares interiores de ventana en viviendas anteriores a 1978 a las que se aplica la norma y en instalaciones ocupadas por niños; muestras de toallita; la definición de peligro para la evaluación de riesgos y la declaración.",
  "In: floors; abatement is recommended at the number or above, and work is cleared only below it.":
    "Incluye: pisos; en el número o por encima se recomienda la eliminación, y el trabajo se da por conforme solo por debajo.",
  "In: interior window sills; abatement is recommended at the number or above, and work is cleared only below it.":
    "Incluye: alféizares interiores de ventana; en el número o por encima se recomienda la eliminación, y el trabajo se da por conforme solo por debajo.",
  "In: window troughs; work is cleared only below the number.":
    "Incluye: canales de ventana; el trabajo se da por conforme solo por debajo del número.",
  "In: floors in HUD lead grant work only; hazard.":
    "Incluye: pisos, solo en trabajos con subvención del HUD para el plomo; peligro.",
  "In: interior window sills in HUD lead grant work only; hazard.":
    "Incluye: alféizares interiores de ventana, solo en trabajos con subvención del HUD para el plomo; peligro.",
  "In: interior floors in HUD lead grant work only; cleared only below the number.":
    "Incluye: pisos interiores, solo en trabajos con subvención del HUD para el plomo; conformes solo por debajo del número.",
  "In: porch floors in HUD lead grant work only; cleared only below the number.":
    "Incluye: pisos de porche, solo en trabajos con subvención del HUD para el plomo; conformes solo por debajo del número.",
  "In: window sills in HUD lead grant work only; cleared only below the number.":
    "Incluye: alféizares de ventana, solo en trabajos con subvención del HUD para el plomo; conformes solo por debajo del número.",
  "In: window troughs in HUD lead grant work only; cleared only below the number.":
    "Incluye: canales de ventana, solo en trabajos con subvención del HUD para el plomo; conformes solo por debajo del número.",
  "In: floors of assisted housing, lead-hazard screen.":
    "Incluye: pisos de viviendas con ayuda pública, cribado del peligro del plomo.",
  "In: interior window sills of assisted housing, lead-hazard screen.":
    "Incluye: alféizares interiores de ventana de viviendas con ayuda pública, cribado del peligro del plomo.",
  "In: floors of assisted housing, risk assessment.":
    "Incluye: pisos de viviendas con ayuda pública, evaluación de riesgos.",
  "In: interior window sills of assisted housing, risk assessment.":
    "Incluye: alféizares interiores de ventana de viviendas con ayuda pública, evaluación de riesgos.",
  "In: floors of assisted housing, clearance.": "Incluye: pisos de viviendas con ayuda pública, conformidad.",
  "In: interior window sills of assisted housing, clearance.":
    "Incluye: alféizares interiores de ventana de viviendas con ayuda pública, conformidad.",
  "In: window troughs of assisted housing, clearance.":
    "Incluye: canales de ventana de viviendas con ayuda pública, conformidad.",
  "In: paint and coatings on target housing and child-occupied facilities.":
    "Incluye: pinturas y recubrimientos en viviendas a las que se aplica la norma y en instalaciones ocupadas por niños.",
  "Out: portable household goods.": "Excluye: objetos sueltos de la casa.",
  "Either the areal or the mass test is enough.": "Basta con el ensayo por superficie o con el ensayo por masa.",
  "In: bare soil in a play area.": "Incluye: tierra descubierta en una zona de juego.",
  "In: bare soil in the rest of the yard, as the yard's average.":
    "Incluye: tierra descubierta en el resto del patio, como promedio del patio.",
  "In: residential soil at Superfund and RCRA clean-up sites.":
    "Incluye: suelo residencial en lugares de saneamiento Superfund y RCRA.",
  "In: the same sites where another source of lead is present.":
    "Incluye: los mismos lugares cuando hay otra fuente de plomo.",
  "In: residential soil at CERCLA and RCRA sites only; screening level.":
    "Incluye: suelo residencial, solo en lugares CERCLA y RCRA; nivel de cribado.",
  "In: residential soil at CERCLA and RCRA sites only; removal management level.":
    "Incluye: suelo residencial, solo en lugares CERCLA y RCRA; nivel para decidir la retirada.",

  // Paint, children's goods and toys in the United States.
  "In: household paint; toys and children's articles bearing paint; solids or dried film.":
    "Incluye: pintura doméstica; juguetes y artículos infantiles pintados; sólidos o película seca.",
  "Out: artists' paints.": "Excluye: pinturas para artistas.",
  "In: paint for consumers; toys and other articles for children that bear such paint; furniture for consumers that bears it.":
    "Incluye: pintura para consumidores; juguetes y otros artículos infantiles que la llevan; muebles para consumidores que la llevan.",
  "Out: printing inks, glazes, electroplate and pigment within a plastic (they count as the body itself); appliances; fixtures such as cabinets, windows and doors; boat and car paint; labelled industrial, artist and touch-up uses.":
    "Excluye: tintas de imprenta, esmaltes cerámicos, baños electrolíticos y pigmento dentro de un plástico (cuentan como el cuerpo mismo); electrodomésticos; elementos fijos como armarios, ventanas y puertas; pintura de barcos y automóviles; usos industriales, artísticos y de retoque que lo digan en la etiqueta.",
  "In: painted areas of children's goods with no more than 10 mg of paint or 1 cm²; they may be screened by XRF, and then may hold no more than 2 µg of lead in those 10 mg or that 1 cm².":
    "Incluye: zonas pintadas de artículos infantiles con no más de 10 mg de pintura o 1 cm²; se pueden cribar con rayos X, y entonces no pueden contener más de 2 µg de plomo en esos 10 mg o en ese 1 cm².",
  "In: accessible parts of products designed or intended mainly for children of 12 or younger.":
    "Incluye: partes accesibles de productos diseñados o destinados sobre todo a niños de 12 años o menos.",
  "Out: inaccessible parts (paint, coating and electroplate are not a barrier); listed electronic components; some metal parts of bicycles, trailers and ride-on vehicles.":
    "Excluye: partes no accesibles (pintura, recubrimiento y baño electrolítico no son una barrera); componentes electrónicos de una lista; algunas partes metálicas de bicicletas, remolques y vehículos para montar.",
  "Lead crystal, glass beads and rhinestones are not exempt.":
    "El cristal de plomo, las cuentas de vidrio y las piedras de imitación no están exentos.",
  "In: steel in listed electronic components of children's products, where the lead is needed for the electronic function.":
    "Incluye: acero en componentes electrónicos de una lista, en productos infantiles, donde el plomo hace falta para la función electrónica.",
  "In: aluminium in listed electronic components of children's products, where the lead is needed for the electronic function.":
    "Incluye: aluminio en componentes electrónicos de una lista, en productos infantiles, donde el plomo hace falta para la función electrónica.",
  "In: copper alloy in listed electronic components of children's products, where the lead is needed for the electronic function.":
    "Incluye: aleación de cobre en componentes electrónicos de una lista, en productos infantiles, donde el plomo hace falta para la función electrónica.",
  "In: tube and lamp glass, optical glass, leaded-bronze bearings and some connectors in children's electronics.":
    "Incluye: vidrio de tubos y lámparas, vidrio óptico, cojinetes de bronce con plomo y algunos conectores en aparatos electrónicos infantiles.",
  "In: metal parts of bicycles, jogger strollers and trailers for children.":
    "Incluye: partes metálicas de bicicletas, cochecitos para correr y remolques infantiles.",
  "In: certain aluminium parts of ride-on tractors.": "Incluye: ciertas partes de aluminio de tractores para montar.",
  "In: off-highway vehicles.": "Incluye: vehículos para fuera de la carretera.",
  "In: used children's products that the seller had for use, got from such a person, or was given for charity.":
    "Incluye: productos infantiles usados que el vendedor tenía para usar, que recibió de alguien así o que le dieron con fines benéficos.",
  "Out (from memory): metal jewellery and known violations.":
    "Excluye (de memoria): joyas de metal e incumplimientos conocidos.",
  "In: parts of children's products that a child cannot reach.":
    "Incluye: partes de productos infantiles a las que un niño no puede llegar.",
  "In: untreated listed materials in children's products.":
    "Incluye: materiales sin tratar de una lista, en productos infantiles.",
  "In: lead crystal, glass beads and rhinestones on children's products.":
    "Incluye: cristal de plomo, cuentas de vidrio y piedras de imitación en productos infantiles.",
  "In: coatings on toys for children under 14.": "Incluye: recubrimientos de juguetes para niños de menos de 14 años.",
  "In: accessible bodies (substrates) of toys for children under 14, since the edition of 2011.":
    "Incluye: cuerpos accesibles (sustratos) de juguetes para niños de menos de 14 años, desde la edición de 2011.",
  "In: modelling clay sold as a toy.": "Incluye: pasta de modelar vendida como juguete.",
  "In: the metal of a metal-cored wick, in candles and as wicks.":
    "Incluye: el metal de una mecha con alma metálica, en velas y como mecha suelta.",

  // Things that touch food, food, water.
  "In: ceramic flatware for food.": "Incluye: piezas planas de cerámica para alimentos.",
  "Flatware is at most 25 mm deep inside; hollowware is deeper; large holds 1.1 L or more.":
    "Una pieza plana tiene por dentro como máximo 25 mm de hondo; una honda tiene más; una grande contiene 1,1 L o más.",
  "In: small ceramic hollowware for food other than cups and mugs.":
    "Incluye: piezas hondas pequeñas de cerámica para alimentos que no sean tazas.",
  "In: ceramic cups and mugs.": "Incluye: tazas de cerámica.",
  "In: large ceramic hollowware for food other than pitchers.":
    "Incluye: piezas hondas grandes de cerámica para alimentos que no sean jarras.",
  "In: ceramic pitchers.": "Incluye: jarras de cerámica.",
  "Out: creamers.": "Excluye: jarritas para crema.",
  "In: small ceramic hollowware for food.": "Incluye: piezas hondas pequeñas de cerámica para alimentos.",
  "In: large ceramic hollowware for food.": "Incluye: piezas hondas grandes de cerámica para alimentos.",
  "In: all ceramic ware for food.": "Incluye: toda la cerámica para alimentos.",
  "In: leaded-crystal baby bottles, christening cups and glassware meant for infants or children.":
    "Incluye: biberones, copas de bautizo y cristalería de cristal con plomo destinados a bebés o niños.",
  "In: ornamental ceramic ware that looks usable for food.":
    "Incluye: cerámica ornamental que parece servir para alimentos.",
  "In: cups, mugs and pitchers used by food businesses, crystal included.":
    "Incluye: tazas y jarras usadas por empresas alimentarias, también las de cristal.",
  "In: large hollowware used by food businesses, crystal included.":
    "Incluye: piezas hondas grandes usadas por empresas alimentarias, también las de cristal.",
  "In: small hollowware used by food businesses, crystal included.":
    "Incluye: piezas hondas pequeñas usadas por empresas alimentarias, también las de cristal.",
  "In: flat utensils used by food businesses, crystal included.":
    "Incluye: utensilios planos usados por empresas alimentarias, también los de cristal.",
  "In: pewter alloys in utensils used by food businesses.":
    "Incluye: aleaciones de peltre en utensilios usados por empresas alimentarias.",
  "In: solder and flux in utensils used by food businesses.":
    "Incluye: soldadura y fundente en utensilios usados por empresas alimentarias.",
  "Children, all lead in the diet.": "Niños, todo el plomo de la dieta.",
  "Females of child-bearing age, all lead in the diet.": "Mujeres en edad fértil, todo el plomo de la dieta.",
  "A benchmark, not a limit on a product.": "Un valor de referencia, no un límite para un producto.",
  "Children up to 6 years.": "Niños de hasta 6 años.",
  "Children of 7 years and older.": "Niños de 7 años y más.",
  "Pregnant women.": "Mujeres embarazadas.",
  "Adults.": "Adultos.",
  "Historic.": "Histórico.",
  "Processed food for children under 2.": "Alimentos elaborados para niños de menos de 2 años.",
  "Single-ingredient root vegetables for children under 2.":
    "Hortalizas de raíz de un solo ingrediente para niños de menos de 2 años.",
  "Dry infant cereal.": "Cereal infantil seco.",
  "Context only, not for objects.": "Solo como contexto, no para objetos.",
  "In: bottled water.": "Incluye: agua embotellada.",
  "In: public water systems.": "Incluye: redes públicas de agua.",
  "A trigger for action, not a limit at a tap.": "Un nivel ante el que actuar, no un límite en una llave de agua.",
  "In: pipes, fittings and fixtures for drinking water.":
    "Incluye: tuberías, conexiones y accesorios para agua potable.",
  "In: solder and flux for drinking-water plumbing.":
    "Incluye: soldadura y fundente para instalaciones de agua potable.",
  "In: any wetted part of a drinking-water cooler.":
    "Incluye: toda parte mojada de una fuente refrigerada de agua potable.",
  "In: drinking water.": "Incluye: agua potable.",

  // States.
  "Exposure by daily intake, not content.": "Exposición por ingesta diaria, no contenido.",
  "Exposure by daily intake (by mouth), not content.": "Exposición por ingesta diaria (por la boca), no contenido.",
  "A duty to warn, not a ban.": "Un deber de advertir, no una prohibición.",
  "In: ceramic flatware.": "Incluye: piezas planas de cerámica.",
  "In: all ceramic hollowware.": "Incluye: todas las piezas hondas de cerámica.",
  "In: exterior decoration of glass.": "Incluye: decoración exterior del vidrio.",
  "In: exterior decoration of glass, by a wipe (1.0 µg).":
    "Incluye: decoración exterior del vidrio, con una toallita (1,0 µg).",
  "In: exterior decoration of glass, by a wipe (8.0 µg).":
    "Incluye: decoración exterior del vidrio, con una toallita (8,0 µg).",
  "In: decoration on the lip and rim of glass.": "Incluye: decoración en el labio y el borde del vidrio.",
  "A settlement that binds its parties; not public law.": "Un acuerdo que obliga a sus partes; no es derecho público.",
  "In: any component of children's jewellery (under 12), child-care articles (under 6) and toys containing paint (under 12).":
    "Incluye: todo componente de joyas infantiles (menos de 12 años), artículos para el cuidado de niños (menos de 6) y juguetes que llevan pintura (menos de 12).",
  "A warning label above 40 and below 600 ppm, or below a lower federal or state limit.":
    "Una etiqueta de advertencia por encima de 40 y por debajo de 600 ppm, o por debajo de un límite federal o estatal más bajo.",
  "In: any component of children's jewellery (under 12) only.":
    "Incluye: solo componentes de joyas infantiles (menos de 12 años).",
  "A warning label above 40 and below 100 ppm, or below a lower limit.":
    "Una etiqueta de advertencia por encima de 40 y por debajo de 100 ppm, o por debajo de un límite más bajo.",
  "In, for adults too: jewellery, toys, cosmetics, games, play sets, outdoor games, school supplies, pots and pans, cups, bowls and food containers, craft and art supplies, fidget spinners, costumes, keys and key rings, clothing and footwear.":
    "Incluye, también para adultos: joyas, juguetes, cosméticos, juegos, conjuntos de juego, juegos al aire libre, útiles escolares, ollas y sartenes, tazas, cuencos y recipientes para alimentos, materiales de manualidades y de arte, trompos de mano (spinners), disfraces, llaves y llaveros, ropa y calzado.",
  "Out since the amendments of June 2025: pens and mechanical pencils, professional art materials, internal solder (until 1 July 2028, with reports), keys (until 1 July 2028, then 1.5 %), cadmium in the enamel of some cast-iron and steel pans.":
    "Excluye desde las enmiendas de junio de 2025: bolígrafos y lápices mecánicos, materiales de arte profesionales, soldadura interior (hasta el 1 de julio de 2028, con informes), llaves (hasta el 1 de julio de 2028, después 1,5 %), cadmio en el esmalte de algunas ollas y sartenes de hierro colado y de acero.",
  "In: keys.": "Incluye: llaves.",
  "Out: key rings and fobs, which stay under the general limit.":
    "Excluye: llaveros y colgantes, que siguen bajo el límite general.",
  "In: any metal cookware and its components.": "Incluye: todo utensilio de cocina de metal y sus componentes.",
  "In: aluminium or brass cookware, utensils and their components.":
    "Incluye: ollas, sartenes y utensilios de aluminio o de latón, y sus componentes.",
  "Out: stainless steel and other metals; inaccessible parts; casual resale and resale by nonprofits.":
    "Excluye: acero inoxidable y otros metales; partes no accesibles; reventa ocasional y reventa por entidades sin fines de lucro.",
  "In: packaging and its components, as the sum of lead, cadmium, mercury and hexavalent chromium.":
    "Incluye: envases y sus componentes, como suma de plomo, cadmio, mercurio y cromo hexavalente.",
  "In: packaging and its components.": "Incluye: envases y sus componentes.",
  "Out: the product inside.": "Excluye: el producto que va dentro.",

  // European Union.
  "In: each individual part of jewellery, imitation jewellery, hair accessories, watches, cuff-links and piercing pieces.":
    "Incluye: cada parte individual de joyas, bisutería, accesorios para el pelo, relojes, gemelos y piezas para perforaciones.",
  "Out: crystal glass (categories 1 to 4), internal watch parts, natural stones not treated with lead, vitreous enamels fused at 500 °C or more; goods put on the market before 9 October 2013; antiques from before 10 December 1961.":
    "Excluye: vidrio de cristal (categorías 1 a 4), partes internas de relojes, piedras naturales no tratadas con plomo, esmaltes vítreos fundidos a 500 °C o más; artículos puestos en el mercado antes del 9 de octubre de 2013; antigüedades de antes del 10 de diciembre de 1961.",
  "In: accessible parts of articles for the general public that a child can put in the mouth (under 5 cm in one dimension, or a detachable or protruding part of that size; children of 6 to 36 months in view).":
    "Incluye: partes accesibles de artículos para el público en general que un niño puede llevarse a la boca (menos de 5 cm en una dimensión, o una parte de ese tamaño que se desprende o sobresale; pensando en niños de 6 a 36 meses).",
  "Out: keys, locks, musical instruments, brass with no more than 0.5 % lead, pen tips, articles under other EU acts (toys, electrical, food contact, packaging).":
    "Excluye: llaves, cerraduras, instrumentos musicales, latón con no más de 0,5 % de plomo, puntas de bolígrafo, artículos bajo otras normas de la UE (juguetes, aparatos eléctricos, contacto con alimentos, envases).",
  "An article above 0.05 % may stay if it releases no more than this (also 0.05 µg/g/h), and its coat holds that for two years.":
    "Un artículo por encima del 0,05 % puede quedarse si no libera más que esto (también 0,05 µg/g/h) y su recubrimiento lo mantiene dos años.",
  "In: articles of PVC, by mass of the PVC.": "Incluye: artículos de PVC, por masa del PVC.",
  "Out: recovered flexible PVC until 28 May 2025; recovered rigid building PVC under 1.5 % until 28 May 2033; toys, electrical equipment, food contact and packaging.":
    "Excluye: PVC flexible recuperado hasta el 28 de mayo de 2025; PVC rígido de construcción recuperado con menos de 1,5 % hasta el 28 de mayo de 2033; juguetes, aparatos eléctricos, contacto con alimentos y envases.",
  "In: the plastics listed in the entry.": "Incluye: los plásticos que la entrada enumera.",
  "In: each metal part of jewellery, with its coat layers counted in.":
    "Incluye: cada parte metálica de una joya, contando sus capas de recubrimiento.",
  "In: brazing fillers.": "Incluye: aportes de soldadura fuerte.",
  "In: paints as sold (codes 3208, 3209).": "Incluye: pinturas tal como se venden (códigos 3208, 3209).",
  "In: paints as sold with more than 10 % zinc.": "Incluye: pinturas tal como se venden con más de 10 % de zinc.",
  "In: painted articles, by mass of the paint on them.":
    "Incluye: artículos pintados, por masa de la pintura que llevan.",
  "In: articles in prolonged contact with the skin: jewellery, watch parts, zips, rivets.":
    "Incluye: artículos en contacto prolongado con la piel: joyas, partes de reloj, cierres, remaches.",
  "In: post assemblies put into pierced parts of the body; must be below the number.":
    "Incluye: piezas que se ponen en partes perforadas del cuerpo; deben quedar por debajo del número.",
  "In: any homogeneous material in electrical and electronic equipment.":
    "Incluye: todo material homogéneo en aparatos eléctricos y electrónicos.",
  "Many exemptions, among them copper alloy up to 4 % lead, steel up to 0.35 %, aluminium up to 0.4 %.":
    "Muchas exenciones, entre ellas aleación de cobre hasta 4 % de plomo, acero hasta 0,35 %, aluminio hasta 0,4 %.",
  "In: any homogeneous material in electrical and electronic equipment; each of the four by itself.":
    "Incluye: todo material homogéneo en aparatos eléctricos y electrónicos; cada uno de los cuatro por separado.",
  "In: toys for children under 14; dry, brittle, powder-like or pliable material.":
    "Incluye: juguetes para niños de menos de 14 años; material seco, quebradizo, en polvo o maleable.",
  "In: toys for children under 14; liquid or sticky material.":
    "Incluye: juguetes para niños de menos de 14 años; material líquido o pegajoso.",
  "In: toys for children under 14; material that is scraped off.":
    "Incluye: juguetes para niños de menos de 14 años; material que se desprende al raspar.",
  "In: packaging, as the sum of lead, cadmium, mercury and hexavalent chromium.":
    "Incluye: envases, como suma de plomo, cadmio, mercurio y cromo hexavalente.",
  "Glass and crates have derogations (glass: Decision 2001/171/EC); lead crystal is exempt.":
    "El vidrio y las cajas de transporte tienen excepciones (vidrio: Decisión 2001/171/CE); el cristal de plomo está exento.",
  "In: all packaging, as the sum of lead, cadmium, mercury and hexavalent chromium.":
    "Incluye: todos los envases, como suma de plomo, cadmio, mercurio y cromo hexavalente.",
  "In: ceramic ware that cannot be filled, or is at most 25 mm deep.":
    "Incluye: cerámica que no se puede llenar o que tiene como máximo 25 mm de hondo.",
  "In: other ceramic ware that can be filled.": "Incluye: otra cerámica que se puede llenar.",
  "In: ceramic cooking ware; packaging and storage vessels of more than 3 L.":
    "Incluye: cerámica para cocinar; envases y recipientes para guardar de más de 3 L.",

  // Canada, ISO, Australia, New Zealand, Great Britain.
  "In: each accessible part of products that touch the mouth in normal use, except kitchen utensils and glazed ware; children's clothing, toys, learning products and books (under 14); sleep, hygiene and carrying products (under 4).":
    "Incluye: cada parte accesible de productos que tocan la boca en el uso normal, salvo utensilios de cocina y piezas esmaltadas; ropa, juguetes, productos para aprender y libros infantiles (menos de 14 años); productos para dormir, asear y llevar a niños (menos de 4).",
  "Derogation where lead is essential, has no alternative, and no more than 90 mg/kg migrates.":
    "Excepción donde el plomo es esencial, no hay alternativa y no migran más de 90 mg/kg.",
  "In: jewellery that appeals mainly to children under 15.":
    "Incluye: joyas que atraen sobre todo a niños de menos de 15 años.",
  "Out: merit badges, medals and the like.": "Excluye: insignias de mérito, medallas y cosas así.",
  "In: children's jewellery that fits wholly inside the small-parts cylinder (31.7 mm bore, 25.4 to 57.1 mm deep).":
    "Incluye: joyas infantiles que caben enteras en el cilindro de partes pequeñas (31,7 mm de diámetro interior, de 25,4 a 57,1 mm de hondo).",
  "In: flatware, glazed ceramic or decorated glass, for food.":
    "Incluye: piezas planas de cerámica esmaltada o de vidrio decorado, para alimentos.",
  "In: small hollowware, glazed ceramic or decorated glass, for food.":
    "Incluye: piezas hondas pequeñas de cerámica esmaltada o de vidrio decorado, para alimentos.",
  "In: large hollowware, glazed ceramic or decorated glass, for food.":
    "Incluye: piezas hondas grandes de cerámica esmaltada o de vidrio decorado, para alimentos.",
  "In: cups and mugs, glazed ceramic or decorated glass, for food.":
    "Incluye: tazas de cerámica esmaltada o de vidrio decorado, para alimentos.",
  "In: pitchers, glazed ceramic or decorated glass, for food.":
    "Incluye: jarras de cerámica esmaltada o de vidrio decorado, para alimentos.",
  "In: the lip and rim of drinking vessels with an outside pattern within 20 mm of the rim, glazed ceramic or decorated glass, for food.":
    "Incluye: el labio y el borde de recipientes para beber con un dibujo exterior a menos de 20 mm del borde, de cerámica esmaltada o de vidrio decorado, para alimentos.",
  "Out if a hole, a hook or a permanent warning marks it as not for food.":
    "Excluye las piezas con un agujero, un gancho o una advertencia permanente que dice que no son para alimentos.",
  "In: paints and like coatings as sold, total lead in the dried coat.":
    "Incluye: pinturas y recubrimientos parecidos tal como se venden, plomo total en la capa seca.",
  "Out with a warning label: anti-corrosion coats for farms and public structures, metal touch-up, outdoor graphic art, art and craft not used by children.":
    "Excluye, con etiqueta de advertencia: recubrimientos contra la corrosión para granjas y obras públicas, retoques de metal, arte gráfico al aire libre, arte y manualidades que no usan los niños.",
  "In: toys: all coatings; other toy materials for children up to 72 months.":
    "Incluye: juguetes: todos los recubrimientos; otros materiales de juguetes para niños de hasta 72 meses.",
  "In: finger paint.": "Incluye: pintura de dedos.",
  "In: finger paints.": "Incluye: pinturas de dedos.",
  "In: modelling clay.": "Incluye: pasta de modelar.",
  "In: new toys for play up to 6 years.": "Incluye: juguetes nuevos para jugar hasta los 6 años.",
  "Out: sports goods, bicycles, fashion jewellery.": "Excluye: artículos deportivos, bicicletas, bisutería.",
  "In: accessible parts of toys, lead only.": "Incluye: partes accesibles de juguetes, solo plomo.",
  "In: toys; dry, brittle, powder-like or pliable material.":
    "Incluye: juguetes; material seco, quebradizo, en polvo o maleable.",
  "In: toys; liquid or sticky material.": "Incluye: juguetes; material líquido o pegajoso.",
  "In: toys; material that is scraped off.": "Incluye: juguetes; material que se desprende al raspar.",
};

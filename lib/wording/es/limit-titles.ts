/** Spanish names of the places whose rules are listed, by the name in the table. A test holds this list whole. */
export const placeNames: Record<string, string> = {
  "United States": "Estados Unidos",
  "United States (model Food Code)": "Estados Unidos (código alimentario modelo)",
  California: "California",
  Illinois: "Illinois",
  "New York": "Nueva York",
  Minnesota: "Minnesota",
  Washington: "Washington",
  "United States (19 states)": "Estados Unidos (19 estados)",
  "European Union": "Unión Europea",
  Canada: "Canadá",
  "International (ISO)": "Internacional (ISO)",
  Australia: "Australia",
  "New Zealand": "Nueva Zelanda",
  "Great Britain": "Gran Bretaña",
};

/** Spanish titles of limits, by the title in the table. They name a rule for a reader; the rule's own text is its citation. */
export const limitTitles: Record<string, string> = {
  "Dust-lead hazard standard of 2001 (TSCA section 403)":
    "Norma de 2001 sobre el peligro del plomo en polvo (TSCA, sección 403)",
  "Clearance level after abatement, 2001 (TSCA section 402)":
    "Nivel de conformidad tras la eliminación, 2001 (TSCA, sección 402)",
  "Dust-lead hazard standard as reviewed in 2019":
    "Norma sobre el peligro del plomo en polvo, según la revisión de 2019",
  "Clearance level after abatement, 2021": "Nivel de conformidad tras la eliminación, 2021",
  "Dust-lead reportable level of 2024": "Nivel notificable de plomo en polvo de 2024",
  "Dust-lead action level of 2024 (was: clearance level)":
    "Nivel de acción para plomo en polvo de 2024 (antes: nivel de conformidad)",
  "HUD policy guidance 2017-01": "Orientación 2017-01 del HUD",
  "HUD lead hazard rule for assisted housing, fall-back figures":
    "Regla del HUD sobre el plomo en viviendas con ayuda pública, cifras supletorias",
  "Lead-based paint, areal definition": "Pintura con plomo, definición por superficie",
  "Lead-based paint, mass definition": "Pintura con plomo, definición por masa",
  "Soil-lead hazard standard (TSCA section 403)": "Norma sobre el peligro del plomo en suelos (TSCA, sección 403)",
  "Residential soil screening level of 1994 (clean-up sites)":
    "Nivel de cribado de suelos residenciales de 1994 (lugares de saneamiento)",
  "Updated residential soil lead guidance, January 2024":
    "Orientación revisada sobre plomo en suelos residenciales, enero de 2024",
  "Residential lead directive, October 2025": "Directiva sobre plomo residencial, octubre de 2025",
  "Banned paints of 1973": "Pinturas prohibidas de 1973",
  "Banned paints of 1974": "Pinturas prohibidas de 1974",
  "Lead in paint and painted goods, 1978": "Plomo en pinturas y artículos pintados, 1978",
  "Lead in paint and painted goods, 2009": "Plomo en pinturas y artículos pintados, 2009",
  "Very small painted areas of children's goods": "Zonas pintadas muy pequeñas de artículos infantiles",
  "Total lead in children's products, 600": "Plomo total en productos infantiles, 600",
  "Total lead in children's products, 300": "Plomo total en productos infantiles, 300",
  "Total lead in children's products, 100": "Plomo total en productos infantiles, 100",
  "Electronic components of children's products": "Componentes electrónicos de productos infantiles",
  "Exempt or partly exempt parts of children's products":
    "Partes exentas, del todo o en parte, de productos infantiles",
  "Inaccessible parts of children's products": "Partes no accesibles de productos infantiles",
  "Materials that need no test": "Materiales que no necesitan ensayo",
  "Lead crystal, glass beads and rhinestones": "Cristal de plomo, cuentas de vidrio y piedras de imitación",
  "Toy standard ASTM F963, soluble elements": "Norma de juguetes ASTM F963, elementos solubles",
  "Metal-cored candle wicks": "Mechas de vela con alma metálica",
  "Lead leaching from ceramic ware, action level": "Plomo lixiviado de cerámica, nivel de acción",
  "Cadmium leaching from ceramic ware, action level": "Cadmio lixiviado de cerámica, nivel de acción",
  "Lead leaching from ceramic ware, 1971 (historic)": "Plomo lixiviado de cerámica, 1971 (histórico)",
  "Lead leaching from ceramic ware, 1979 to 1991": "Plomo lixiviado de cerámica, de 1979 a 1991",
  "Import alert 52-10: leaded crystal meant for infants or children":
    "Alerta de importación 52-10: cristal con plomo para bebés o niños",
  "Marking of ornamental ceramic ware": "Marcado de la cerámica ornamental",
  "Utensils of food businesses, leached lead": "Utensilios de empresas alimentarias, plomo lixiviado",
  "Utensils of food businesses, lead in metal": "Utensilios de empresas alimentarias, plomo en el metal",
  "FDA interim reference level for lead in the diet, children":
    "Nivel de referencia provisional de la FDA para plomo en la dieta, niños",
  "FDA interim reference level for lead in the diet, women":
    "Nivel de referencia provisional de la FDA para plomo en la dieta, mujeres",
  "Provisional tolerable daily intake of lead (historic)": "Ingesta diaria tolerable provisional de plomo (histórica)",
  "Lead in processed food for babies and young children": "Plomo en alimentos elaborados para bebés y niños pequeños",
  "Lead in bottled water": "Plomo en agua embotellada",
  "Lead in public water systems, action level": "Plomo en redes públicas de agua, nivel de acción",
  "Plumbing for drinking water, before 2014": "Fontanería para agua potable, antes de 2014",
  "Plumbing for drinking water": "Fontanería para agua potable",
  "Solder and flux for drinking water": "Soldadura y fundente para agua potable",
  "Drinking-water coolers": "Fuentes refrigeradas de agua potable",
  "Proposition 65 level for a warning, lead, reproductive harm":
    "Proposición 65, nivel de advertencia, plomo, daño reproductivo",
  "Proposition 65 level for a warning, lead, cancer": "Proposición 65, nivel de advertencia, plomo, cáncer",
  "Proposition 65 level for a warning, cadmium, reproductive harm":
    "Proposición 65, nivel de advertencia, cadmio, daño reproductivo",
  "Settlement benchmark: ceramic ware": "Valor de un acuerdo judicial: cerámica",
  "Settlement benchmark: glass decorated outside": "Valor de un acuerdo judicial: vidrio decorado por fuera",
  "Lead Poisoning Prevention Act, warning label":
    "Ley de prevención del envenenamiento por plomo, etiqueta de advertencia",
  "Children's jewellery, warning label": "Joyas infantiles, etiqueta de advertencia",
  "Lead in fifteen classes of consumer products": "Plomo en quince clases de productos de consumo",
  "Cadmium in fifteen classes of consumer products": "Cadmio en quince clases de productos de consumo",
  "Lead in keys": "Plomo en llaves",
  "Lead in metal cookware, as enacted in 2024": "Plomo en utensilios de cocina de metal, según la ley de 2024",
  "Lead in aluminium and brass cookware, 2026": "Plomo en utensilios de cocina de aluminio y latón, 2026",
  "Lead in aluminium and brass cookware, 2028": "Plomo en utensilios de cocina de aluminio y latón, 2028",
  "Model Toxics in Packaging law": "Ley modelo sobre sustancias tóxicas en envases",
  "Lead in jewellery (REACH entry 63)": "Plomo en joyas (REACH, entrada 63)",
  "Lead in articles a child can mouth (REACH entry 63)":
    "Plomo en artículos que un niño puede llevarse a la boca (REACH, entrada 63)",
  "Lead release that lets an article above 0.05 % stay (REACH entry 63)":
    "Liberación de plomo que permite un artículo por encima del 0,05 % (REACH, entrada 63)",
  "Lead in PVC (REACH entry 63)": "Plomo en PVC (REACH, entrada 63)",
  "Cadmium in plastics (REACH entry 23)": "Cadmio en plásticos (REACH, entrada 23)",
  "Cadmium in metal parts of jewellery (REACH entry 23)": "Cadmio en partes metálicas de joyas (REACH, entrada 23)",
  "Cadmium in brazing fillers (REACH entry 23)": "Cadmio en aportes de soldadura fuerte (REACH, entrada 23)",
  "Cadmium in paints (REACH entry 23)": "Cadmio en pinturas (REACH, entrada 23)",
  "Cadmium in paints rich in zinc (REACH entry 23)": "Cadmio en pinturas ricas en zinc (REACH, entrada 23)",
  "Cadmium in the paint of painted articles (REACH entry 23)":
    "Cadmio en la pintura de artículos pintados (REACH, entrada 23)",
  "Nickel release on the skin (REACH entry 27)": "Liberación de níquel en la piel (REACH, entrada 27)",
  "Restricted substances in electrical equipment (RoHS)": "Sustancias restringidas en aparatos eléctricos (RoHS)",
  "Four phthalates in electrical equipment (RoHS), each": "Cuatro ftalatos en aparatos eléctricos (RoHS), cada uno",
  "Toy directive, migration of elements": "Directiva de juguetes, migración de elementos",
  "Toy regulation of 2025, migration of lead": "Reglamento de juguetes de 2025, migración de plomo",
  "Heavy metals in packaging (directive of 1994)": "Metales pesados en envases (directiva de 1994)",
  "Heavy metals in packaging (regulation of 2025)": "Metales pesados en envases (reglamento de 2025)",
  "Ceramic ware in contact with food": "Cerámica en contacto con alimentos",
  "Lead in drinking water": "Plomo en agua potable",
  "Consumer Products Containing Lead Regulations": "Reglamento sobre productos de consumo que contienen plomo",
  "Children's Jewellery Regulations, lead": "Reglamento sobre joyas infantiles, plomo",
  "Children's Jewellery Regulations, cadmium": "Reglamento sobre joyas infantiles, cadmio",
  "Glazed ceramics and decorated glassware for food": "Cerámica esmaltada y vidrio decorado para alimentos",
  "Surface Coating Materials Regulations": "Reglamento sobre materiales de recubrimiento",
  "Toy standard ISO 8124-3, migration of elements": "Norma de juguetes ISO 8124-3, migración de elementos",
  "Mandatory toy standard, migration of elements": "Norma obligatoria de juguetes, migración de elementos",
  "Mandatory standard for finger paint, migration of lead": "Norma obligatoria de pintura de dedos, migración de plomo",
  "Unsafe goods notice on lead in toys, migration": "Aviso de bienes no seguros: plomo en juguetes, migración",
  "Toys (Safety) Regulations 2011, migration of aluminium":
    "Reglamento de seguridad de los juguetes de 2011, migración de aluminio",
};

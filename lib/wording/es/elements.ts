/** Spanish names of the elements an X-ray analyser can report, by symbol (from memory of the usual names in chemistry). */
export const elementPairs =
  "Li litio,Be berilio,B boro,C carbono,N nitrógeno,O oxígeno,F flúor,Na sodio,Mg magnesio,Al aluminio," +
  "Si silicio,P fósforo,S azufre,Cl cloro,Ar argón,K potasio,Ca calcio,Sc escandio,Ti titanio,V vanadio," +
  "Cr cromo,Mn manganeso,Fe hierro,Co cobalto,Ni níquel,Cu cobre,Zn zinc,Ga galio,Ge germanio,As arsénico," +
  "Se selenio,Br bromo,Kr kriptón,Rb rubidio,Sr estroncio,Y itrio,Zr circonio,Nb niobio,Mo molibdeno," +
  "Tc tecnecio,Ru rutenio,Rh rodio,Pd paladio,Ag plata,Cd cadmio,In indio,Sn estaño,Sb antimonio," +
  "Te telurio,I yodo,Xe xenón,Cs cesio,Ba bario,La lantano,Ce cerio,Pr praseodimio,Nd neodimio," +
  "Pm prometio,Sm samario,Eu europio,Gd gadolinio,Tb terbio,Dy disprosio,Ho holmio,Er erbio,Tm tulio," +
  "Yb iterbio,Lu lutecio,Hf hafnio,Ta tantalio,W wolframio,Re renio,Os osmio,Ir iridio,Pt platino,Au oro," +
  "Hg mercurio,Tl talio,Pb plomo,Bi bismuto,Po polonio,Ra radio,Th torio,U uranio";

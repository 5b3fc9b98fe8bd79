#!/usr/bin/env python3
"""Makes the X-ray tables of lib/attenuation and the values its tests are held to, with xraylib (open source, BSD).

    apt-get install python3-xraylib          (Debian; the version used stands in the files made)
    npx tsx commands/attenuation/print-materials.ts | python3 commands/attenuation/make-tables.py
    npx biome check --write lib/attenuation tests/attenuation

Writes lib/attenuation/tables/mass-attenuation.ts, lib/attenuation/tables/lines.ts and
tests/attenuation/xraylib-values.json. Mass attenuation is xraylib's CS_Total: photoabsorption with coherent and
incoherent scattering, cm2/g. Between 4 and 60 keV each element is cut at its absorption edges, and each stretch into as
few pieces as let a cubic through four points of ln(mu/rho) over ln E stay within 3e-7 of xraylib.
"""
import json
import math
import random
import sys
from pathlib import Path

import xraylib

LOW, HIGH = 4.0, 60.0  # keV
TOLERANCE = 3e-7  # relative, of the cubic against xraylib
AT = (0.0, 0.25, 0.75, 1.0)  # where in a piece the four points lie, in ln E
ELEMENTS = (
    "H B C N O F Na Mg Al Si P S Cl K Ca Ti V Cr Mn Fe Co Ni Cu Zn As Se Br Zr Mo Ag Cd Sn Sb Ba Hg Pb Bi".split()
)
LINES = [
    ("Ti Kα", "Ti", "KA1", "K"),
    ("Cr Kα", "Cr", "KA1", "K"),
    ("Fe Kα", "Fe", "KA1", "K"),
    ("Ni Kα", "Ni", "KA1", "K"),
    ("Cu Kα", "Cu", "KA1", "K"),
    ("Zn Kα", "Zn", "KA1", "K"),
    ("As Kα", "As", "KA1", "K"),
    ("As Kβ", "As", "KB1", "K"),
    ("Se Kα", "Se", "KA1", "K"),
    ("Br Kα", "Br", "KA1", "K"),
    ("Cd Kα", "Cd", "KA1", "K"),
    ("Sn Kα", "Sn", "KA1", "K"),
    ("Sb Kα", "Sb", "KA1", "K"),
    ("Ba Kα", "Ba", "KA1", "K"),
    ("Ba Lα", "Ba", "LA1", "L3"),
    ("Hg Lα", "Hg", "LA1", "L3"),
    ("Pb Lα", "Pb", "LA1", "L3"),
    ("Pb Lβ", "Pb", "LB1", "L2"),
    ("Bi Lα", "Bi", "LA1", "L3"),
]
ROOT = Path(__file__).resolve().parents[2]
MADE_WITH = f"xraylib {xraylib.__version__} (CS_Total, LineEnergy, EdgeEnergy)"


def number(symbol):
    return xraylib.SymbolToAtomicNumber(symbol)


def mu(z, kev):
    return xraylib.CS_Total(z, kev)


def edges(z):
    """Energies just below and just above each jump of xraylib's own table (within 1 eV of EdgeEnergy)."""
    steps = 40000
    grid = [LOW * (HIGH / LOW) ** (i / steps) for i in range(steps + 1)]
    found = []
    for a, b in zip(grid, grid[1:]):
        if mu(z, b) <= mu(z, a) * 1.002:
            continue
        for _ in range(60):
            middle = math.sqrt(a * b)
            if mu(z, middle) > mu(z, a) * 1.0005:
                b = middle
            else:
                a = middle
        found.append((a, b))
    return found


def lagrange(t, values):
    total = 0.0
    for j, value in enumerate(values):
        weight = 1.0
        for k, node in enumerate(AT):
            if k != j:
                weight *= (t - node) / (AT[j] - node)
        total += weight * value
    return total


def nodes(z, a, b):
    """mu/rho at the four points of a piece; rounding must not carry an end across its edge."""
    return [mu(z, min(max(a * (b / a) ** t, a), b)) for t in AT]


def fits(z, a, b, samples=48):
    logs = [math.log(value) for value in nodes(z, a, b)]
    for i in range(samples):
        t = (i + 0.5) / samples
        if abs(lagrange(t, logs) - math.log(mu(z, a * (b / a) ** t))) > TOLERANCE:
            return False
    return True


def pieces(z, a, b):
    """The longest pieces that fit, from a to b; inner ends are rounded so that the printed energy is the one used."""
    out = []
    while not fits(z, a, b):
        low, high = a, b
        for _ in range(40):
            middle = math.sqrt(low * high)
            low, high = (middle, high) if fits(z, a, middle) else (low, middle)
        end = math.floor(low * 1e6) / 1e6
        if end <= a:
            raise SystemExit(f"no piece of Z = {z} fits at {a} keV")
        out.append((a, nodes(z, a, end)))
        a = end
    out.append((a, nodes(z, a, b)))
    return out


def table():
    lines = []
    for symbol in ELEMENTS:
        z = number(symbol)
        start, stretches = LOW, []
        for below, above in edges(z):
            stretches.append((start, below))
            start = above
        stretches.append((start, HIGH))
        lines.append(f"  {symbol}: [")
        for a, b in stretches:
            for kev, values in pieces(z, a, b):
                lines.append("    [" + ", ".join(f"{x:.9g}" for x in (kev, *values)) + "],")
        lines.append("  ],")
    return lines


def write_tables():
    head = "// Made by commands/attenuation/make-tables.py with " + MADE_WITH + ". Do not edit: run the script.\n"
    (ROOT / "lib/attenuation/tables/mass-attenuation.ts").write_text(
        head
        + "// xraylib's own tables go back to EPDL97 (Cullen, Hubbell and Kissel 1997), as its documentation says.\n\n"
        + "/** Energies the table covers, keV. */\n"
        + f"export const tableRange = {{ low: {LOW:g}, high: {HIGH:g} }} as const;\n\n"
        + "/** Where in a piece its four points lie, as shares of its length in ln E. */\n"
        + f"export const pointsAt = [{', '.join(f'{t:g}' for t in AT)}] as const;\n\n"
        + "/** First energy of the piece in keV, then µ/ρ in cm²/g (with coherent scattering) at its four points. */\n"
        + "export type Piece = readonly [keV: number, first: number, second: number, third: number, last: number];\n\n"
        + "/** By symbol, lowest energy first. A piece ends where the next begins (the last with the range); none crosses an edge. */\n"
        + "export const massAttenuationTable: Readonly<Record<string, readonly Piece[]>> = {\n"
        + "\n".join(table())
        + "\n};\n"
    )
    rows = []
    for name, symbol, line, shell in LINES:
        z = number(symbol)
        kev = xraylib.LineEnergy(z, getattr(xraylib, f"{line}_LINE"))
        edge = xraylib.EdgeEnergy(z, getattr(xraylib, f"{shell}_SHELL"))
        rows.append(f'  "{name}": {{ element: "{symbol}", keV: {kev:.9g}, edgeKeV: {edge:.9g} }},')
    (ROOT / "lib/attenuation/tables/lines.ts").write_text(
        head
        + "\n/** The lines an analyser reads, each with its energy and that of the edge which must be passed to excite it. */\n"
        + "export const lines = {\n"
        + "\n".join(rows)
        + "\n} as const;\n"
    )


def write_values():
    """xraylib's answers at energies and mixtures drawn apart from the table, for the tests."""
    draw = random.Random(20261124)
    single = []
    for symbol in ELEMENTS:
        z = number(symbol)
        walls = [kev for pair in edges(z) for kev in pair]
        for _ in range(12):
            kev = math.exp(draw.uniform(math.log(LOW), math.log(HIGH)))
            if all(abs(kev / wall - 1) > 1e-6 for wall in walls):
                single.append([symbol, kev, mu(z, kev)])
        for below, above in edges(z):  # as near to an edge as 0.1 eV
            single.append([symbol, below - 1e-4, mu(z, below - 1e-4)])
            single.append([symbol, above + 1e-4, mu(z, above + 1e-4)])
    mixtures = []
    for name in ("Polyethylene", "Polyvinyl Chloride", "Glass, Pyrex", "Glass, Lead", "Glass, Plate"):
        compound = xraylib.GetCompoundDataNISTByName(name)
        fractions = {
            xraylib.AtomicNumberToSymbol(z): w for z, w in zip(compound["Elements"], compound["massFractions"])
        }
        values = [[kev, xraylib.CS_Total_CP(name, kev)] for kev in (10.0, 15.0, 20.0)]
        mixtures.append({"name": name, "density": compound["density"], "fractions": fractions, "values": values})
    materials = []
    for material, fractions in json.load(sys.stdin).items():
        at_lines = {}
        for name, symbol, line, _ in LINES:
            kev = xraylib.LineEnergy(number(symbol), getattr(xraylib, f"{line}_LINE"))
            at_lines[name] = sum(w * mu(number(s), kev) for s, w in fractions.items())
        materials.append({"material": material, "fractions": fractions, "lines": at_lines})
    made = {"madeWith": MADE_WITH, "elements": single, "mixtures": mixtures, "materials": materials}
    (ROOT / "tests/attenuation/xraylib-values.json").write_text(json.dumps(made, indent=1, ensure_ascii=False) + "\n")


write_tables()
write_values()

#!/usr/bin/python3
"""Reads every DXF file of a folder with ezdxf: no error, nothing to repair, and in expected.tsv the figures that hold.

Usage: plots.py FOLDER. Needs Debian's python3-ezdxf. Ends with a sentence on the first fault.
"""
import collections
import math
import os
import re
import sys

import ezdxf
from ezdxf import recover

FACE_BELOW = "bench face "
# names of layers that hold what is cut or bored
DEPTH = re.compile(r"(?:^| )([0-9.]+) deep")
DIAMETER = re.compile(r"^(?:bore|counterbore|countersink|edge bore) ([0-9.]+)")


def fault(words):
    sys.exit(words)


def area(points):
    """Of corners (x, y, bulge), by the shoelace formula and circular segments."""
    total = 0
    for (x0, y0, bulge), (x1, y1, _) in zip(points, points[1:] + points[:1]):
        total += (x0 * y1 - x1 * y0) / 2
        if bulge:
            angle = 4 * math.atan(bulge)
            radius = math.hypot(x1 - x0, y1 - y0) / 2 / math.sin(abs(angle) / 2)
            total += radius * radius / 2 * (angle - math.sin(angle))
    return total


def radii(points):
    for (x0, y0, bulge), (x1, y1, _) in zip(points, points[1:] + points[:1]):
        if bulge:
            yield math.hypot(x1 - x0, y1 - y0) / 2 / math.sin(2 * math.atan(abs(bulge)))


def depth_of(name):
    deep = DEPTH.search(name)
    if name.startswith("bore") and name.endswith("through"):
        return "through"
    if name.startswith("countersink"):
        return "countersink"
    return "%.2f" % float(deep.group(1)) if deep else "-"


def figures(doc):
    """What a file holds, by the keys of expected.tsv."""
    found = collections.Counter()
    for entity in doc.modelspace():
        layer = entity.dxf.layer
        face = "bench" if layer.startswith(FACE_BELOW) else "show"
        name = layer[len(FACE_BELOW):] if face == "bench" else layer
        name = name[len("after trim "):] if name.startswith("after trim ") else name
        kind = name.split(" ")[0]
        depth = "-" if kind in ("outline", "cutout") else depth_of(name)
        if entity.dxftype() == "LWPOLYLINE" and entity.closed and kind in ("outline", "cutout", "pocket", "channel"):
            points = list(entity.get_points("xyb"))
            found["area", face, kind, depth] += area(points)
            for radius in radii(points):
                found["arcs", face, kind, depth] += 1
                found["radii", face, kind, depth] += radius
        elif entity.dxftype() == "CIRCLE":
            said = DIAMETER.match(name)
            if said and abs(float(said.group(1)) - 2 * entity.dxf.radius) > 0.0051:
                fault("a circle of radius %s lies on layer '%s'" % (entity.dxf.radius, layer))
            if said:
                found["round", face, "%.2f" % float(said.group(1)), depth] += 1
        elif entity.dxftype() == "POINT":
            found["spot", "show", "-", "-"] += 1
        elif entity.dxftype() == "LWPOLYLINE" and name.startswith("edge bore"):
            said = DIAMETER.match(name)
            found["tick", "show", "%.2f" % float(said.group(1)), depth] += 1
    return found


def main(folder):
    expected = collections.defaultdict(dict)
    with open(os.path.join(folder, "expected.tsv"), encoding="utf-8") as table:
        for line in table:
            file, *key, value = line.rstrip("\n").split("\t")
            expected[file][tuple(key)] = float(value)
    files = figures_checked = 0
    for place, _, names in sorted(os.walk(folder)):
        for name in sorted(names):
            if not name.endswith(".dxf"):
                continue
            path = os.path.join(place, name)
            audit = ezdxf.readfile(path).audit()
            doc, recovered = recover.readfile(path)
            for auditor in (audit, recovered):
                for entry in list(auditor.errors) + list(auditor.fixes):
                    fault("%s: %s" % (path, entry.message))
            if doc.dxfversion != "AC1015" or doc.header["$INSUNITS"] != 4:
                fault(path + " is not R2000 in millimetres")
            found = figures(doc)
            for key, value in expected[os.path.relpath(path, folder)].items():
                if abs(found[key] - value) > 1e-3 + 1e-6 * value:
                    fault("%s: %s is %s, but should be %s" % (path, " ".join(key), found[key], value))
                figures_checked += 1
            files += 1
    if not files or not figures_checked:
        fault("no file to judge in " + folder)
    missing = [name for name in expected if not os.path.exists(os.path.join(folder, name))]
    if missing:
        fault("no file " + missing[0])
    print("%d DXF files hold the %d figures expected" % (files, figures_checked))


main(sys.argv[1])

"""Reads DXF files with ezdxf and prints what it sees as JSON: one object for each file named on the command line.

ezdxf (Manfred Moitzi, MIT licence) shares nothing with the reader under test. Blocks are taken apart by
ezdxf.disassemble, curves flattened by each entity's own `flattening`, to a fiftieth of a micrometre.
"""

import json
import sys

import ezdxf
from ezdxf import units
from ezdxf.disassemble import recursive_decompose

CHORD_MM = 2e-5


def flat_points(entity, distance):
    """The points of an entity in the drawing's coordinates, or None where it is no line."""
    kind = entity.dxftype()
    if kind == "LINE":
        return [entity.dxf.start, entity.dxf.end]
    if kind in ("ARC", "CIRCLE"):
        return list(entity.flattening(min(distance, entity.dxf.radius / 4)))
    if kind == "ELLIPSE":
        return list(entity.flattening(distance, 32))
    if kind == "SPLINE" and len(entity.control_points) > 0:
        return list(entity.construction_tool().flattening(distance, 32))
    return None


def parts_of(entity):
    """A polyline as its lines and arcs, anything else as itself."""
    if entity.dxftype() in ("LWPOLYLINE", "POLYLINE"):
        yield from entity.virtual_entities()
    else:
        yield entity


def lines_of(modelspace, distance):
    for entity in recursive_decompose(modelspace):
        for part in parts_of(entity):
            points = flat_points(part, distance)
            if points:
                yield [[point[0], point[1]] for point in points]


def polylines_of(modelspace):
    for entity in modelspace.query("LWPOLYLINE"):
        points = [[x, y, bulge] for x, y, bulge in entity.get_points("xyb")]
        yield {"layer": entity.dxf.layer, "closed": bool(entity.closed), "points": points}


def millimetres(code):
    """Millimetres in the unit with a code of $INSUNITS; None where ezdxf does not know it, 1 where there is none."""
    if not code:
        return 1.0
    try:
        return units.conversion_factor(code, units.MM)
    except (TypeError, ValueError):
        return None


def read(path):
    drawing = ezdxf.readfile(path)
    auditor = drawing.audit()
    mm = millimetres(drawing.units)
    modelspace = drawing.modelspace()
    return {
        "errors": [str(error.message) for error in auditor.errors],
        "fixes": [str(fix.message) for fix in auditor.fixes],
        "units": drawing.units,
        "mm": mm,
        "lines": list(lines_of(modelspace, CHORD_MM / (mm or 1.0))),
        "polylines": list(polylines_of(modelspace)),
    }


print(json.dumps([read(path) for path in sys.argv[1:]]))

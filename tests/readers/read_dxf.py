#!/usr/bin/env python3
"""Reads a DXF file with ezdxf (strict load and audit) and by its bare groups; prints what it found as JSON.

usage: read_dxf.py FILE...     One JSON object per file, in a list.

"faults" must be empty. Lengths, boxes and areas are worked out here from the entities' numbers, arcs as arcs.
Written for ezdxf 0.18 and later.
"""
import collections
import json
import logging
import math
import re
import sys

import ezdxf

TURN = 2 * math.pi


class Faults(logging.Handler):
    """Everything that is wrong; a warning the loader logs counts too."""

    def __init__(self):
        super().__init__(logging.WARNING)
        self.list = []

    def emit(self, record):
        self.list.append("log: " + record.getMessage())

    def __call__(self, text):
        self.list.append(text)


# ---- bare groups -----------------------------------------------------------

def groups(data, fault):
    if data[:3] == b"\xef\xbb\xbf":
        fault("byte order mark")
    if data.count(b"\n") != data.count(b"\r\n") or data.count(b"\r") != data.count(b"\r\n"):
        fault("line ends are not all CR LF")
    version = re.search(rb"AC10\d\d", data[:200])
    modern = version is not None and version.group() >= b"AC1021"
    if not modern and any(b > 126 for b in data):
        fault("bytes beyond ASCII in a file of a code-page version")
    lines = data.decode("utf-8").split("\r\n")
    if lines.pop() != "":
        fault("last line has no end")
    if len(lines) % 2:
        fault("a group has no value")
    found = []
    for i in range(0, len(lines) - 1, 2):
        if not re.fullmatch(r" {0,2}\d{1,4}", lines[i]):
            fault("line %d: '%s' is no group code" % (i + 1, lines[i]))
            return found
        code, value = int(lines[i]), lines[i + 1]
        if 10 <= code <= 59 or 110 <= code <= 149 or 210 <= code <= 239:
            if not re.fullmatch(r"-?\d+\.\d{1,10}", value) or re.fullmatch(r"-0\.0+", value):
                fault("line %d: '%s' is no plain real" % (i + 2, value))
        if re.search(r"[\x00-\x1f]", value):
            fault("line %d: control character" % (i + 2))
        found.append((code, value))
    return found


def check_groups(found, fault):
    """Sections in order, handles unique and below the seed, owners and names known."""
    sections = [found[i + 1][1] for i, g in enumerate(found) if g == (0, "SECTION")]
    if sections != ["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"]:
        fault("sections: %s" % sections)
    if not found or found[-1] != (0, "EOF"):
        fault("no EOF at the end")
    records, current = [], None
    for code, value in found:
        if code == 0:
            current = [(code, value)]
            records.append(current)
        else:
            current.append((code, value))
    names = collections.defaultdict(set)
    handles, owners, pointers = {}, [], []
    seed = None
    for n, (code, value) in enumerate(found):
        if (code, value) == (9, "$HANDSEED"):
            seed = int(found[n + 1][1], 16)
    for record in records:
        kind = record[0][1]
        if kind in ("SECTION", "ENDSEC", "ENDTAB", "EOF"):
            continue
        own = [v for c, v in record if c == (105 if kind == "DIMSTYLE" else 5)]
        owner = [v for c, v in record if c == 330]
        if not own or not owner:
            fault("%s without handle or owner" % kind)
            continue
        if own[0] in handles:
            fault("handle %s is used twice" % own[0])
        handles[own[0]] = kind
        owners.append((kind, own[0], owner[0]))
        pointers += [(kind, v) for c, v in record if c in (340, 350, 390) and v != "0"]
        name = [v for c, v in record if c == 2]
        if name and kind in ("LAYER", "LTYPE", "STYLE", "DIMSTYLE", "BLOCK_RECORD", "BLOCK"):
            if name[0].upper() in names[kind]:
                fault("%s '%s' is defined twice" % (kind, name[0]))
            names[kind].add(name[0].upper())
    for kind, own, owner in owners:
        if owner != "0" and owner not in handles:
            fault("%s #%s has an unknown owner #%s" % (kind, own, owner))
        if owner == "0" and kind not in ("TABLE", "DICTIONARY"):
            fault("%s #%s has no owner" % (kind, own))
    for kind, to in pointers:
        if to not in handles:
            fault("%s points to #%s, which is not there" % (kind, to))
    if seed is None or any(int(h, 16) >= seed for h in handles):
        fault("$HANDSEED is missing or too low")
    if names["BLOCK"] != names["BLOCK_RECORD"]:
        fault("blocks and block records differ")
    tables = [r[1][1] for r in records if r[0][1] == "TABLE"]
    if tables != ["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"]:
        fault("tables: %s" % tables)
    known = {8: "LAYER", 6: "LTYPE", 7: "STYLE"}
    for record in records:
        if not any(g == (100, "AcDbEntity") for g in record):
            continue
        for code, value in record:
            if code in known and value.upper() not in names[known[code]]:
                fault("%s uses %s '%s', which is not defined" % (record[0][1], known[code], value))
        if record[0][1] == "DIMENSION":
            style = [v for c, v in record if c == 3][0]
            block = [v for c, v in record if c == 2][0]
            if style.upper() not in names["DIMSTYLE"] or block.upper() not in names["BLOCK"]:
                fault("dimension with unknown style or block: %s, %s" % (style, block))


# ---- geometry --------------------------------------------------------------

class Piece:
    """A straight or circular piece from p to q."""

    def __init__(self, p, q, sweep=0.0, centre=None, radius=0.0):
        self.p, self.q, self.sweep, self.centre, self.radius = p, q, sweep, centre, radius

    @staticmethod
    def bulged(p, q, bulge):
        if abs(bulge) < 1e-12:
            return Piece(p, q)
        chord = math.dist(p, q)
        radius = chord * (1 + bulge * bulge) / (4 * abs(bulge))
        off = (1 - bulge * bulge) / (4 * bulge)
        centre = ((p[0] + q[0]) / 2 - (q[1] - p[1]) * off, (p[1] + q[1]) / 2 + (q[0] - p[0]) * off)
        return Piece(p, q, 4 * math.atan(bulge), centre, radius)

    @staticmethod
    def arc(centre, radius, start, sweep):
        ends = [(centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a)) for a in (start, start + sweep)]
        return Piece(ends[0], ends[1], sweep, centre, radius)

    @property
    def length(self):
        return abs(self.sweep) * self.radius if self.sweep else math.dist(self.p, self.q)

    @property
    def area(self):
        """Share of the area enclosed: triangle with the origin, and the segment beyond the chord."""
        return (self.p[0] * self.q[1] - self.q[0] * self.p[1]) / 2 + self.radius ** 2 * (self.sweep - math.sin(self.sweep)) / 2

    def points(self):
        found = [self.p, self.q]
        if self.sweep:
            start = math.atan2(self.p[1] - self.centre[1], self.p[0] - self.centre[0])
            for k, (x, y) in enumerate(((1, 0), (0, 1), (-1, 0), (0, -1))):
                turned = (k * math.pi / 2 - start) % TURN if self.sweep > 0 else (start - k * math.pi / 2) % TURN
                if turned <= abs(self.sweep):
                    found.append((self.centre[0] + self.radius * x, self.centre[1] + self.radius * y))
        return found


def pieces_of(entity):
    d, kind = entity.dxf, entity.dxftype()
    if kind == "LINE":
        return [Piece(tuple(d.start)[:2], tuple(d.end)[:2])]
    if kind == "CIRCLE":
        return [Piece.arc(tuple(d.center)[:2], d.radius, 0, TURN)]
    if kind == "ARC":
        sweep = math.radians((d.end_angle - d.start_angle) % 360)
        return [Piece.arc(tuple(d.center)[:2], d.radius, math.radians(d.start_angle), sweep)]
    if kind == "LWPOLYLINE":
        at = entity.get_points("xyb")
        return [Piece.bulged(a[:2], at[(i + 1) % len(at)][:2], a[2]) for i, a in enumerate(at)]
    return []


def box_of(points):
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return [min(xs), min(ys), max(xs), max(ys)] if points else None


def loops_on(space, layer, fault):
    found = []
    for entity in space:
        if entity.dxf.layer != layer:
            continue
        kind = entity.dxftype()
        if kind not in ("LWPOLYLINE", "CIRCLE") or (kind == "LWPOLYLINE" and not entity.closed):
            fault("%s holds a %s that is no closed loop" % (layer, kind))
            continue
        parts = pieces_of(entity)
        if kind == "LWPOLYLINE":
            at = entity.get_points("xyb")
            if math.dist(at[0][:2], at[-1][:2]) < 1e-9:
                fault("%s repeats its first vertex" % layer)
            if any(abs(a[2]) > 1 + 1e-9 for a in at):
                fault("%s has a bulge above 1" % layer)
            if any(p.sweep == 0 for p in parts) and parts[-1].sweep:
                fault("%s closes on an arc although it has straight pieces" % layer)
        if any(p.length < 1e-6 for p in parts):
            fault("%s has a piece of no length" % layer)
        found.append({"type": kind, "area": abs(sum(p.area for p in parts)), "length": sum(p.length for p in parts)})
    return found


def hatch_gap(hatch):
    """The largest distance between an edge's end and the next one's start."""
    worst = 0.0
    for path in hatch.paths:
        ends = []
        for edge in path.edges:
            if type(edge).__name__ == "LineEdge":
                ends.append((tuple(edge.start)[:2], tuple(edge.end)[:2]))
            else:
                angles = [math.radians(a) for a in (edge.start_angle, edge.end_angle)]
                at = [(edge.center[0] + edge.radius * math.cos(a), edge.center[1] + edge.radius * math.sin(a)) for a in angles]
                ends.append(tuple(at if edge.ccw else at[::-1]))
        for i, end in enumerate(ends):
            worst = max(worst, math.dist(end[1], ends[(i + 1) % len(ends)][0]))
    return worst


# ---- dimensions ------------------------------------------------------------

def measure(dimension):
    """By its own points, not by group 42: a length, or an angle in radians."""
    d = dimension.dxf
    kind = d.dimtype & 7
    if kind == 0:
        a = math.radians(d.get("angle", 0))
        return abs((d.defpoint3[0] - d.defpoint2[0]) * math.cos(a) + (d.defpoint3[1] - d.defpoint2[1]) * math.sin(a))
    if kind in (3, 4):
        return math.dist(tuple(d.defpoint)[:2], tuple(d.defpoint4)[:2])
    if kind == 5:
        v = d.defpoint4
        a, b, m = (math.atan2(p[1] - v[1], p[0] - v[0]) for p in (d.defpoint2, d.defpoint3, d.defpoint))
        return (b - a) % TURN if (m - a) % TURN <= (b - a) % TURN else TURN - (b - a) % TURN
    if kind == 6:
        axis = 0 if d.dimtype & 64 else 1
        return abs(d.defpoint2[axis] - d.defpoint[axis])
    return None


def dimensions_of(doc, fault):
    found, used = [], set()
    for entity in doc.modelspace().query("DIMENSION"):
        d = entity.dxf
        block = doc.blocks.get(d.geometry)
        ink = [e for e in block if e.dxftype() != "POINT"] if block is not None else []
        if not ink:
            fault("dimension block %s is empty or missing" % d.geometry)
        if d.geometry in used:
            fault("dimension block %s is used twice" % d.geometry)
        used.add(d.geometry)
        measured = measure(entity)
        if measured is None or abs(measured - d.actual_measurement) > 1e-6:
            fault("dimension %s: group 42 is %s, its points give %s" % (d.geometry, d.actual_measurement, measured))
        style = doc.dimstyles.get(d.dimstyle)
        found.append({
            "kind": d.dimtype & 7,
            "measured": measured,
            "factor": style.dxf.dimlfac,
            "decimals": style.dxf.dimdec,
            "text": d.text,
            "drawn": [e.dxf.text for e in ink if e.dxftype() == "TEXT"],
        })
    return found


# ---- report ----------------------------------------------------------------

def report(path):
    fault = Faults()
    log = logging.getLogger("ezdxf")
    log.addHandler(fault)
    with open(path, "rb") as stream:
        check_groups(groups(stream.read(), fault), fault)
    doc = ezdxf.readfile(path, errors="strict")
    space = doc.modelspace()
    counts, lengths, points = collections.defaultdict(collections.Counter), collections.Counter(), collections.defaultdict(list)
    for entity in space:
        layer = entity.dxf.layer
        counts[layer][entity.dxftype()] += 1
        for piece in pieces_of(entity):
            lengths[layer] += piece.length
            points[layer] += piece.points()
        if entity.dxftype() == "POINT":
            points[layer].append(tuple(entity.dxf.location)[:2])
        if entity.dxftype() == "HATCH" and hatch_gap(entity) > 1e-6:
            fault("a hatch's path is open by %g" % hatch_gap(entity))
    everything = box_of([p for at in points.values() for p in at])
    low, high = doc.header["$EXTMIN"], doc.header["$EXTMAX"]
    if everything and (everything[0] < low[0] - 1e-6 or everything[1] < low[1] - 1e-6 or everything[2] > high[0] + 1e-6 or everything[3] > high[1] + 1e-6):
        fault("the header's extents do not hold the drawing")
    result = {
        "version": doc.dxfversion,
        "units": doc.header["$INSUNITS"],
        "measurement": doc.header["$MEASUREMENT"],
        "linetypeScale": doc.header["$LTSCALE"],
        "counts": {layer: dict(c) for layer, c in sorted(counts.items())},
        "lengths": dict(sorted(lengths.items())),
        "boxes": {layer: box_of(at) for layer, at in sorted(points.items())},
        "outlines": {layer: loops_on(space, layer, fault) for layer in sorted(counts) if layer.startswith("OUTLINE_")},
        "holeCentres": [list(e.dxf.location)[:2] for e in space.query("POINT") if e.dxf.layer == "HOLE_CENTRES"],
        "texts": [e.dxf.text for e in space.query("TEXT")],
        "dimensions": dimensions_of(doc, fault),
    }
    auditor = doc.audit()
    for entry in list(auditor.errors) + list(auditor.fixes):
        fault("audit: %s" % entry.message)
    log.removeHandler(fault)
    result["faults"] = fault.list
    return result


if __name__ == "__main__":
    logging.getLogger("ezdxf").propagate = False
    json.dump([report(path) for path in sys.argv[1:]], sys.stdout, allow_nan=False)

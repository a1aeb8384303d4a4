# Reads an SVG with Python's XML parser (expat) and a DXF with ezdxf, and prints what is in them as
# JSON: closed outlines, lines and circles by layer, in millimeters. "errors" of a DXF: all that
# ezdxf's auditor finds or would have to put right, however the file is read.
import json
import sys
import xml.etree.ElementTree as xml

SVG = "{http://www.w3.org/2000/svg}"


def numbers(pair):
    return [float(n) for n in pair.split(",")]


def svg(path):
    root = xml.parse(path).getroot()
    found = {"width": root.get("width"), "height": root.get("height"),
             "viewbox": [float(n) for n in root.get("viewBox").split()],
             "outlines": {}, "lines": {}, "circles": {},
             "texts": [t.text for t in root.iter(SVG + "text")]}
    for element in root.iter(SVG + "circle"):
        found["circles"].setdefault(element.get("class"), []).append(
            [float(element.get(name)) for name in ("cx", "cy", "r")])
    for element in root.iter(SVG + "path"):
        words = element.get("d").replace("M", "").replace("L", "").split()
        closed = words[-1] == "Z"
        points = [numbers(w) for w in words if w != "Z"]
        found["outlines" if closed else "lines"].setdefault(element.get("class"), []).append(points)
    return found


def dxf(path):
    import ezdxf
    from ezdxf import recover
    strict = ezdxf.readfile(path)
    document, auditor = recover.readfile(path)
    audits = [strict.audit(), auditor]
    found = {"version": strict.dxfversion, "units": document.header.get("$INSUNITS", 0),
             "extents": [list(strict.header[name])[:2] for name in ("$EXTMIN", "$EXTMAX")],
             "layers": sorted(layer.dxf.name for layer in document.layers if layer.dxf.name != "Defpoints"),
             "errors": [e.message for audit in audits for e in audit.errors + audit.fixes],
             "outlines": {}, "lines": {}, "circles": {}}
    for e in strict.modelspace():
        layer = e.dxf.layer.lower()
        if e.dxftype() == "LINE":
            points = [[e.dxf.start.x, e.dxf.start.y], [e.dxf.end.x, e.dxf.end.y]]
            found["lines"].setdefault(layer, []).append(points)
        elif e.dxftype() == "POLYLINE":
            points = [[v.dxf.location.x, v.dxf.location.y] for v in e.vertices]
            found["outlines" if e.is_closed else "lines"].setdefault(layer, []).append(points)
        elif e.dxftype() == "CIRCLE":
            found["circles"].setdefault(layer, []).append(
                [e.dxf.center.x, e.dxf.center.y, e.dxf.radius])
        elif e.dxftype() != "TEXT":
            found["errors"].append("unexpected " + e.dxftype())
    # Letters written by their numbers are letters again only in what recover reads.
    found["texts"] = [e.plain_text() for e in document.modelspace().query("TEXT")]
    return found


print(json.dumps({"svg": svg, "dxf": dxf}[sys.argv[1]](sys.argv[2])))

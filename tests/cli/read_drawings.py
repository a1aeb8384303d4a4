# Reads an SVG with Python's XML parser (expat) and a DXF with ezdxf, and prints what is in them as
# JSON: closed outlines and lines by layer, in millimetres, y down the page.
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
             "outlines": {}, "lines": {}, "texts": [t.text for t in root.iter(SVG + "text")]}
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
    found = {"version": strict.dxfversion, "units": document.header.get("$INSUNITS", 0),
             "layers": sorted(layer.dxf.name for layer in document.layers),
             "errors": [e.message for e in auditor.errors], "outlines": {}, "lines": {}, "texts": []}
    low = 0
    for e in strict.modelspace():
        layer = e.dxf.layer.lower()
        if e.dxftype() == "LINE":
            points = [[e.dxf.start.x, e.dxf.start.y], [e.dxf.end.x, e.dxf.end.y]]
            found["lines"].setdefault(layer, []).append(points)
        elif e.dxftype() == "POLYLINE":
            points = [[v.dxf.location.x, v.dxf.location.y] for v in e.vertices]
            found["outlines" if e.is_closed else "lines"].setdefault(layer, []).append(points)
        elif e.dxftype() == "TEXT":
            found["texts"].append(e.dxf.text)
        else:
            found["errors"].append("unexpected " + e.dxftype())
    return found


print(json.dumps({"svg": svg, "dxf": dxf}[sys.argv[1]](sys.argv[2])))

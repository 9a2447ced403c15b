#!/usr/bin/python3
"""Reads a DXF file with ezdxf, which shares no code with us, audits it and prints what the operator of a machine
needs right. Usage: audit.py FILE"""
import sys, collections, ezdxf
doc = ezdxf.readfile(sys.argv[1])
found = doc.audit()
space = doc.modelspace()
print("errors", len(found.errors), "fixes", len(found.fixes), "insunits", doc.header["$INSUNITS"])
keys = collections.Counter()
for e in space:
    if e.dxftype() == "LINE":
        a, b = e.dxf.start, e.dxf.end
        keys[tuple(sorted([(round(a.x, 3), round(a.y, 3)), (round(b.x, 3), round(b.y, 3))]))] += 1
    if e.dxftype() == "LWPOLYLINE":
        points = [(round(p[0], 3), round(p[1], 3)) for p in e.get_points()]
        keys[tuple(points)] += 1
        for p, q in zip(points, points[1:] + points[:1]):
            keys[tuple(sorted([p, q]))] += 1
print("duplicates", sum(n - 1 for n in keys.values()))
shapes = [e for e in space if e.dxf.layer == "OUTLINE-THROUGH"]
print("outlines", len(shapes), "closed", sum(e.dxftype() == "LWPOLYLINE" and e.closed for e in shapes))
print("circles", len(space.query("CIRCLE")), "types", *sorted({e.dxftype() for e in space}))
for e in space.query("LINE[layer=='CHECK']"):
    print("bar", round((e.dxf.end - e.dxf.start).magnitude, 4))
area = 0
for e in shapes:
    p = e.get_points()
    area += abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(p, p[1:] + p[:1]))) / 2
print("area", round(area, 1))

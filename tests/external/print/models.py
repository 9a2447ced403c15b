"""Reads what a printer gets: binary STL, and 3MF (3MF Consortium, Core Specification 1) as a package of XML. Shares no code with the
program; nothing more lenient than the formats are."""
import struct
import zipfile
from collections import Counter
from xml.etree import ElementTree

CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"
TYPES = "{http://schemas.openxmlformats.org/package/2006/content-types}"
LINKS = "{http://schemas.openxmlformats.org/package/2006/relationships}"
MODEL = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"


class Fault(Exception):
    pass


class Solid:
    """Points and triangles that count them from 0."""

    def __init__(self, points, triangles, name=""):
        self.points, self.triangles, self.name = points, triangles, name

    def volume(self):
        """About the first point, so that little cancels."""
        ox, oy, oz = self.points[0]
        six = 0
        for corners in self.triangles:
            (ax, ay, az), (bx, by, bz), (cx, cy, cz) = (self.points[i] for i in corners)
            ax, ay, az, bx, by, bz, cx, cy, cz = ax - ox, ay - oy, az - oz, bx - ox, by - oy, bz - oz, cx - ox, cy - oy, cz - oz
            six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)
        return six / 6

    def box(self):
        return tuple(map(min, zip(*self.points))), tuple(map(max, zip(*self.points)))

    def faults(self):
        """Closed: each side of a triangle once in each direction; outward; every point is used."""
        sides = Counter((c[i], c[(i + 1) % 3]) for c in self.triangles for i in range(3))
        if any(a == b for a, b in sides):
            yield f"{self.name}: a triangle with a corner twice"
        if any(sides[b, a] != count for (a, b), count in list(sides.items())):
            yield f"{self.name}: not closed"
        if {i for c in self.triangles for i in c} != set(range(len(self.points))):
            yield f"{self.name}: points of no triangle"
        if not self.volume() > 0:
            yield f"{self.name}: inside out"


def read_stl(raw, name=""):
    """Corners that are the same numbers are one point."""
    if raw[:5] == b"solid":
        raise Fault(f"{name}: begins as a text does")
    (count,) = struct.unpack_from("<I", raw, 80)
    if len(raw) != 84 + 50 * count or not count:
        raise Fault(f"{name}: {len(raw)} bytes for {count} triangles")
    points, triangles = {}, []
    for at in range(84, len(raw), 50):
        numbers = struct.unpack_from("<12fH", raw, at)
        corners = [tuple(numbers[i:i + 3]) for i in (3, 6, 9)]
        check_normal(numbers[:3], corners, name)
        triangles.append(tuple(points.setdefault(corner, len(points)) for corner in corners))
    return Solid(list(points), triangles, name)


def check_normal(normal, corners, name):
    a, b, c = corners
    u, v = [q - p for p, q in zip(a, b)], [q - p for p, q in zip(a, c)]
    across = (u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0])
    size = sum(x * x for x in across) ** 0.5
    if size > 1e-3 and sum(x * n for x, n in zip(across, normal)) < 0.99 * size:
        raise Fault(f"{name}: a normal that is not its triangle's")


class Package:
    """Objects by id, and what is built: (object, name, matrix of four rows)."""

    def __init__(self, path):
        with zipfile.ZipFile(path) as package:
            if package.testzip():
                raise Fault(f"{path}: {package.testzip()} is damaged")
            types = ElementTree.fromstring(package.read("[Content_Types].xml"))
            links = ElementTree.fromstring(package.read("_rels/.rels"))
            (target,) = [link.get("Target") for link in links.iter(LINKS + "Relationship") if link.get("Type") == MODEL]
            known = {each.get("Extension") for each in types.iter(TYPES + "Default")}
            if not {"rels", target.rsplit(".", 1)[1]} <= known:
                raise Fault(f"{path}: of a kind of its own")
            model = ElementTree.fromstring(package.read(target.lstrip("/")))
        if model.tag != CORE + "model" or model.get("unit") != "millimeter":
            raise Fault(f"{path}: {model.tag} in {model.get('unit')}")
        self.objects = {each.get("id"): self.solid(each) for each in model.find(CORE + "resources").findall(CORE + "object")}
        self.items = []
        for item in model.find(CORE + "build").findall(CORE + "item"):
            numbers = [float(n) for n in item.get("transform", "1 0 0 0 1 0 0 0 1 0 0 0").split()]
            rows = [numbers[i:i + 3] for i in (0, 3, 6, 9)]
            self.items.append((self.objects[item.get("objectid")], item.get("partnumber"), rows))

    @staticmethod
    def solid(each):
        if each.get("type", "model") != "model":
            raise Fault(f"object {each.get('id')} is of type {each.get('type')}")
        mesh = each.find(CORE + "mesh")
        points = [tuple(float(v.get(axis)) for axis in "xyz") for v in mesh.find(CORE + "vertices")]
        triangles = [tuple(int(t.get(corner)) for corner in ("v1", "v2", "v3")) for t in mesh.find(CORE + "triangles")]
        if any(not 0 <= i < len(points) for t in triangles for i in t):
            raise Fault(f"object {each.get('id')}: a corner that is no point")
        return Solid(points, triangles, each.get("name"))

    def placed(self):
        """Each built thing where it lies."""
        for solid, name, rows in self.items:
            points = [tuple(sum(k * row[i] for k, row in zip((*p, 1), rows)) for i in range(3)) for p in solid.points]
            yield Solid(points, solid.triangles, name)

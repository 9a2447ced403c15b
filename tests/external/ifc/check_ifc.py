#!/usr/bin/python3
"""Checks IFC files by themselves: the standard's table of entities (ifc_schema.py), and the rules of the whole.

Use: check_ifc.py FILE ...

Prints every fault as FILE: RULE: TEXT and exits with 1 where there is one.
"""
import pathlib
import sys
from collections import Counter

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "step"))

import ifc_schema as schema  # noqa: E402
from building import ELEMENTS, SPACES, Building, cross, dot, minus  # noqa: E402
from part21 import UNSET, Fault, File, references  # noqa: E402

FLAT = 1e-5  # mm: as the file says of its points
PARTS = ("IFCMEMBER", "IFCBEAM", "IFCMECHANICALFASTENER")
# Not referred to by anything: what has an identifier, what paints, what says of a material.
BY_ITSELF = ("IFCSTYLEDITEM", "IFCMATERIALPROPERTIES")


def header_faults(file):
    if tuple(file.header) != ("FILE_DESCRIPTION", "FILE_NAME", "FILE_SCHEMA"):
        yield Fault("header", f"holds {', '.join(file.header)}")
        return
    if file.header["FILE_SCHEMA"] != [["IFC4"]]:
        yield Fault("header", "the schema is not IFC4")
    if not any(text.startswith("ViewDefinition [") for text in file.header["FILE_DESCRIPTION"][0]):
        yield Fault("header", "no view definition")
    if not file.header["FILE_NAME"][5].startswith("roundlay "):
        yield Fault("header", "the originating system is not ours")


def resource_faults(file):
    used = {int(ref) for parts in file.data.values() for values in parts.values() for ref in references(values)}
    for id_, parts in file.data.items():
        (keyword,) = parts
        rooted = schema.ENTITIES[schema.BY_KEYWORD[keyword]].startswith("guid")
        if not rooted and keyword not in BY_ITSELF and id_ not in used:
            yield Fault("orphan", f"#{id_} {keyword} is of nothing")


def unit_faults(house):
    (_, project), = house.all("IFCPROJECT")
    units = {}
    for unit in house.values(project[8])[0]:
        values = house.values(unit)
        units[values[1]] = tuple(None if v is UNSET else v for v in values[2:])
    wanted = {"LENGTHUNIT": ("MILLI", "METRE"), "AREAUNIT": (None, "SQUARE_METRE"), "VOLUMEUNIT": (None, "CUBIC_METRE"),
              "MASSUNIT": ("KILO", "GRAM"), "PLANEANGLEUNIT": (None, "RADIAN")}
    for name, unit in wanted.items():
        if units.get(name) != unit:
            yield Fault("unit", f"{name} is {units.get(name)}")


def tree_faults(house):
    """Project, site, building, storeys; every element in one of them, once, by one way."""
    for above, below in zip(("IFCPROJECT",) + SPACES, SPACES):
        for id_, _ in house.all(below):
            holders = house.holder.get(id_, [])
            if len(holders) != 1 or house.type_of(holders[0]) != above:
                yield Fault("tree", f"#{id_} {below} is no part of one {above}")
    for type_ in ("IFCPROJECT", "IFCSITE", "IFCBUILDING"):
        if len(house.all(type_)) != 1:
            yield Fault("tree", f"{len(house.all(type_))} {type_}")
    for id_, _ in house.all(*ELEMENTS):
        ways = (len(house.holder.get(id_, [])), len(house.contained[id_]), len(house.opened[id_]))
        type_ = house.type_of(id_)
        wanted = (1, 0, 0) if type_ in PARTS else (0, 0, 1) if type_ == "IFCOPENINGELEMENT" else (0, 1, 0)
        if ways != wanted:
            yield Fault("tree", f"#{id_} {type_} is part of {ways[0]}, in {ways[1]} storeys, opens {ways[2]}")


def place_faults(house):
    for id_, values in house.all(*ELEMENTS, *SPACES):
        holder = (house.holder.get(id_, []) + house.contained[id_] + house.opened[id_] + [None])[0]
        within = UNSET if house.type_of(id_) == "IFCSITE" else holder and house.values(holder)[5]
        if values[5] is UNSET or house.values(values[5])[0] != within:
            yield Fault("placement", f"#{id_} is not placed in what holds it")
    for id_, values in house.all("IFCBUILDINGSTOREY"):
        if abs(house.place(values[5]).origin[2] - values[9]) > FLAT:
            yield Fault("placement", f"storey #{id_} lies elsewhere than at its elevation")


def kind_faults(house):
    for id_, values in house.all(*ELEMENTS):
        if values[-1] == "USERDEFINED" and values[4] is UNSET:
            yield Fault("kind", f"#{id_} is of a kind of its own that is not named")
        if values[2] is UNSET:
            yield Fault("name", f"#{id_} has no name")
    for id_, values in house.all("IFCMEMBER", "IFCBEAM"):
        if values[2] != values[7]:
            yield Fault("name", f"#{id_} is called {values[2]!r} and tagged {values[7]!r}")
    for id_, values in house.all("IFCRELCONNECTSWITHREALIZINGELEMENTS"):
        if values[5] == values[6] or any(house.type_of(v) not in PARTS[:2] for v in values[5:7]):
            yield Fault("joint", f"#{id_} does not join two logs")
    joined = Counter(int(peg) for _, values in house.all("IFCRELCONNECTSWITHREALIZINGELEMENTS") for peg in values[7])
    for id_, _ in house.all("IFCMECHANICALFASTENER"):
        if joined[id_] != 1:
            yield Fault("joint", f"peg #{id_} joins {joined[id_]} times")
    made_of = Counter(int(part) for _, values in house.all("IFCRELASSOCIATESMATERIAL") for part in values[4])
    for id_, _ in house.all("IFCMEMBER", "IFCBEAM"):
        if made_of[id_] != 1:
            yield Fault("material", f"#{id_} is made of {made_of[id_]} materials")


def set_faults(house):
    for id_, values in house.all("IFCPROPERTYSET", "IFCELEMENTQUANTITY"):
        name, inner = values[2], [house.values(each)[0] for each in values[-1]]
        if len(set(inner)) != len(inner):
            yield Fault("set", f"#{id_} {name} says something twice")
        if name.startswith("Roundlay_"):
            continue
        if name not in schema.SETS or not set(inner) <= set(schema.SETS[name].split()):
            yield Fault("set", f"#{id_} {name} holds {', '.join(inner)}")
    for keyword, names in schema.QUANTITIES.items():
        for id_, values in house.all(keyword):
            if values[0] not in names.split() or not values[3] > 0:
                yield Fault("quantity", f"#{id_} {keyword} {values[0]} is {values[3]}")
    for id_, values in house.all("IFCPROPERTYENUMERATEDVALUE"):
        words = [word.value for word in house.file.get(values[3], "IFCPROPERTYENUMERATION")[1]]
        if words != schema.STATUS or not {word.value for word in values[2]} <= set(words):
            yield Fault("enumeration", f"#{id_} says {[word.value for word in values[2]]}")
    for thing in (id_ for id_, _ in house.all(*ELEMENTS)):
        names = [house.values(set_)[2] for set_ in house.sets[thing]]
        if len(set(names)) != len(names):
            yield Fault("set", f"#{thing} has a set twice: {', '.join(names)}")
    defined = Counter(int(values[5]) for _, values in house.all("IFCRELDEFINESBYPROPERTIES"))
    for id_, values in house.all("IFCPROPERTYSET", "IFCELEMENTQUANTITY"):
        if defined[id_] != 1:
            yield Fault("set", f"#{id_} {values[2]} is said of {defined[id_]} things")


def shape_faults(house):
    kinds = {"IFCFACETEDBREP": "Brep", "IFCTRIANGULATEDFACESET": "Tessellation", "IFCEXTRUDEDAREASOLID": "SweptSolid", "IFCMAPPEDITEM": "MappedRepresentation",
             "IFCBOUNDINGBOX": "BoundingBox"}
    for id_, (context, name, kind, items) in house.all("IFCSHAPEREPRESENTATION"):
        wanted = "Box" if kind == "BoundingBox" else "Body"
        if house.type_of(context) != "IFCGEOMETRICREPRESENTATIONSUBCONTEXT" or {name, house.values(context)[0]} != {wanted}:
            yield Fault("context", f"#{id_} is no {wanted.lower()} in the context of those")
        if any(kinds[house.type_of(item)] != kind for item in items):
            yield Fault("shape", f"#{id_} is told as {kind}")
    for id_, values in house.all(*ELEMENTS):
        has_parts = house.type_of(id_) in ("IFCWALL", "IFCELEMENTASSEMBLY")
        if (values[6] is UNSET) != has_parts:
            yield Fault("shape", f"#{id_} {house.type_of(id_)} has {'a body beside its parts' if has_parts else 'no body'}")
        elif house.type_of(id_) == "IFCOPENINGELEMENT" and [house.type_of(i) for i in house.items(id_)] != ["IFCBOUNDINGBOX"]:
            yield Fault("shape", f"opening #{id_} has a body: it would be cut out once more")
        elif not has_parts and len(house.items(id_)) != 1:
            yield Fault("shape", f"#{id_} has {len(house.items(id_))} solids")
    painted = Counter(int(values[0]) for _, values in house.all("IFCSTYLEDITEM"))
    for id_, values in house.all("IFCTRIANGULATEDFACESET"):
        count = len(house.file.get(values[0], "IFCCARTESIANPOINTLIST3D")[0])
        if values[2] != "T" or {i for corners in values[3] for i in corners} != set(range(1, count + 1)):
            yield Fault("triangles", f"#{id_} is open, or has points that no triangle uses, or uses none of its own")
            return
        if any(len(corners) != 3 for corners in values[3]):
            yield Fault("triangles", f"#{id_} has corners that are no triangle")
            return
    for id_, _ in house.all("IFCFACETEDBREP", "IFCTRIANGULATEDFACESET"):
        if painted[id_] != 1:
            yield Fault("colour", f"solid #{id_} has {painted[id_]} colours")
        yield from solid_faults(house, id_)


def solid_faults(house, id_):
    """Closed, of one lump, outward, with plane faces whose holes run the other way."""
    ways, above = Counter(), {}

    def top(point):
        while above.setdefault(point, point) != point:
            point = above[point]
        return point

    for loops in house.faces(id_):
        if [outer for _, outer in loops] != [True] + [False] * (len(loops) - 1):
            yield Fault("face", f"solid #{id_}: a face does not have one outer border")
            return
        for points, _ in loops:
            if len(points) < 3 or len(set(points)) != len(points):
                yield Fault("loop", f"solid #{id_}: a loop of {len(points)} points, some twice")
                return
            for a, b in zip(points, points[1:] + points[:1]):
                ways[int(a), int(b)] += 1
                above[top(int(a))] = top(int(b))
        if len(loops) > 1:
            for points, _ in loops[1:]:
                above[top(int(points[0]))] = top(int(loops[0][0][0]))
        yield from flat_faults(house, id_, loops)
    if any(count != 1 or ways[b, a] != 1 for (a, b), count in list(ways.items())):
        yield Fault("closed", f"solid #{id_} is not closed")
    if len({top(point) for point in above}) != 1:
        yield Fault("lumps", f"solid #{id_} is of several lumps")
    if house.volume(id_) <= 0:
        yield Fault("inside-out", f"solid #{id_} has the volume {house.volume(id_)}")


def flat_faults(house, id_, loops):
    areas = [house.area(points) for points, _ in loops]
    size = dot(areas[0], areas[0]) ** 0.5
    if size <= 0:
        yield Fault("face", f"solid #{id_}: a face without area")
        return
    normal = tuple(x / size for x in areas[0])
    at = house.point(loops[0][0][0])
    for points, _ in loops:
        if any(abs(dot(normal, minus(house.point(p), at))) > FLAT for p in points):
            yield Fault("flat", f"solid #{id_}: a face that is not plane")
    if any(dot(area, normal) >= 0 for area in areas[1:]):
        yield Fault("face", f"solid #{id_}: a hole that runs as its face does")
    if any(dot(cross(area, normal), cross(area, normal)) > 1e-6 * dot(area, area) for area in areas):
        yield Fault("flat", f"solid #{id_}: a hole that is askew")


def faults(raw):
    """All faults of a file's bytes."""
    try:
        return faults_of(File(raw))
    except Fault as fault:
        return [fault]


def faults_of(file):
    missing = [Fault("reference", f"#{id_} refers to #{ref}, which is not there") for id_, parts in file.data.items()
               for values in parts.values() for ref in references(values) if ref not in file.data]
    found = missing + list(header_faults(file)) + (list(schema.faults(file)) if not missing else [])
    if found:
        return found
    house = Building(file)
    try:
        for rule in (unit_faults, tree_faults, place_faults, kind_faults, set_faults, shape_faults):
            found += list(rule(house))
    except (Fault, ValueError) as fault:
        found.append(fault if isinstance(fault, Fault) else Fault("tree", str(fault)))
    return found + list(resource_faults(file))


def main(names):
    wrong = 0
    for name in names:
        found = faults(pathlib.Path(name).read_bytes())
        wrong += len(found)
        for fault in found[:40]:
            print(f"{name}: {fault}")
    return 1 if wrong or not names else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

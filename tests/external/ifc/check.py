#!/usr/bin/python3
"""Has the program write houses as IFC and holds each against the standard (check_ifc.py) and against what else the program says
of the same house: its lists, and the solids and placements of its STEP file. Shares no code with the program.

Use: check.py PROGRAM FOLDER WORK

What each element of a house is and how large its body is, by this check, is left in WORK/NAME.json for web-ifc.
"""
import csv
import json
import os
import pathlib
import subprocess
import sys

from check_ifc import faults_of  # noqa: I001 (puts the folder of the STEP checker into the path)
from building import Building, Frame, cross, dot, minus
from part21 import File
from products import Products

EXACT = 1e-9  # bodies whose round faces are pegs' bores alone
LISTED = 6e-7  # m3: the lists' last figure
ROUND = 0.008  # of a round log's volume: what its flats leave out, at most
SAME_PLACE = 1e-6  # mm
WEIGHED = 1e-9
PROJECT = '\n[project]\nnumber = "T-14"\nowner = "L\'Étable & Fils"\ncreator = "Ö \\\\ Ü"\nrevision = "b"\n'
FLOOR = ('\n[[floor]]\nname = "G"\nfrom = "A"\nto = "C"\nlevel = "4 ft 1 in"\nwidth = "4 in"\nheight = "6 in"\nspacing = "3 ft"\n'
         '\n[[floor.opening]]\nname = "hatch"\nfrom_left = "3 ft"\nfrom_wall = "3 ft"\nwidth = "4 ft"\nlength = "4 ft"\n')


def houses(folder):
    """(name, text of the document, options)"""
    for path in sorted((folder / "models-demo").glob("*.roundlay")):
        yield path.stem, path.read_text(), []
    old = (folder / "models-demo/old-house.roundlay").read_text()
    for state in ("as found", "as it shall stand"):
        yield f"old-house {state}", old, ["--state", state, "--language", "fr"]
    one = (folder / "models-demo/one-room.roundlay").read_text()
    yield "one-room owned", one.replace('name = "', 'name = "Bei \\"Ö\\" 丸太 \\\\ ', 1) + PROJECT, []
    yield "one-room square pegs", one + "\n", ["--square"]
    yield "one-room floored", one + FLOOR, []
    askew = one.replace('"north"', '"75 deg north of east"').replace('"south"', '"75 deg south of west"')
    yield "askew and tapered", askew + '\n[logs]\ntip_height = "7 in"\nbutt_width = "8 in"\ntip_width = "7 in"\n', []
    yield "waned", one + '\n[logs]\ndiameter = "10 in"\n', []


def prepared(text, options):
    if "--square" not in options:
        return text, options
    if "[pegs]" in text:
        return text.replace("[pegs]", '[pegs]\nsquare = "22 mm"', 1), []
    return text + '\n[pegs]\nsquare = "22 mm"\n', []


class Written:
    """One house as the program writes it."""

    def __init__(self, program, name, text, options, work):
        self.name, self.folder = name, work / name
        document = work / f"{name}.roundlay"
        text, options = prepared(text, options)
        document.write_text(text)
        for what, to in (("ifc", work / f"{name} again"), ("ifc,step,list", self.folder)):
            run = [program, "export", document, "--only", what, "--to", to, "--force", *options]
            subprocess.run(run, check=True, stderr=subprocess.DEVNULL, env=os.environ | {"SOURCE_DATE_EPOCH": "1780000000"})
        raw, again = ((to / "shell.ifc").read_bytes() for to in (self.folder, work / f"{name} again"))
        self.is_same_twice = raw == again
        self.house = Building(File(raw))
        self.pieces = self.table("pieces.csv")

    def table(self, name):
        path = self.folder / name
        if not path.exists():
            return []
        with open(path, newline="", encoding="utf-8") as file:
            return list(csv.DictReader(file))


class Step:
    """Volume by tag of the first alike, and place by tag, from the STEP file of the shell."""

    def __init__(self, file):
        self.file, products = file, Products(file)
        self.volume, self.is_exact, self.place = {}, {}, {}
        for leaf in products.leaves:
            name = products.name(leaf)
            self.volume[name] = products.stated(leaf)["volume"]
            (solid,) = products.solids(leaf)
            self.is_exact[name] = self.has_upright_rounds(solid)
        placed = {a[1]: a[0] for _, a in file.of("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION")}
        frames = {}
        for use, values in products.uses:
            relation = placed[products.shape_of[use]]
            transformation = file.get(relation, "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION")[0]
            frames[use] = self.frame(file.get(transformation, "ITEM_DEFINED_TRANSFORMATION")[3])
        walls = {values[4]: frames[use] for use, values in products.uses if values[4] in products.assemblies}
        for use, values in products.uses:
            if values[3] in walls:
                self.place[values[1]] = walls[values[3]].of(frames[use])

    def frame(self, id_):
        _, origin, axis, across = self.file.get(id_, "AXIS2_PLACEMENT_3D")
        z, x = (tuple(self.file.get(way, "DIRECTION")[1]) for way in (axis, across))
        return Frame(tuple(self.file.get(origin, "CARTESIAN_POINT")[1]), x, cross(z, x), z)

    def has_upright_rounds(self, solid):
        """Are all its round faces bores? (Else it is of a round log, or lies over one.)"""
        shell = self.file.get(solid, "MANIFOLD_SOLID_BREP")[1]
        for face in self.file.get(shell, "CLOSED_SHELL")[1]:
            surface = self.file.get(face, "ADVANCED_FACE")[2]
            if "PLANE" in self.file.data[surface]:
                continue
            if "CYLINDRICAL_SURFACE" not in self.file.data[surface]:
                return False
            frame = self.frame(self.file.get(surface, "CYLINDRICAL_SURFACE")[1])
            if abs(abs(frame.z[2]) - 1) > 1e-12:
                return False
        return True


def off(a, b):
    return abs(a / b - 1)


def piece_faults(written, step):
    house = written.house
    told = {a[2]: (id_, a) for id_, a in house.all("IFCMEMBER", "IFCBEAM")}
    if set(told) != {row["tag"] for row in written.pieces} or len(told) != len(written.pieces):
        yield f"pieces {sorted(set(told) ^ {row['tag'] for row in written.pieces})} are in one alone"
        return
    for row in written.pieces:
        id_, values = told[row["tag"]]
        (solid,), sets = house.items(id_), house.sets_of(id_)
        own = sets["Roundlay_Piece"]
        (quantities,) = [sets[name] for name in sets if name.startswith("Qto_")]
        (common,) = [sets[name] for name in sets if name.startswith("Pset_")]
        volume, stated = house.volume(solid) / 1e9, step.volume[row["piece"]] / 1e9
        exact = step.is_exact[row["piece"]]
        if off(volume, stated) > (EXACT if exact else ROUND):
            yield f"{row['tag']}: body of {volume} m3, solid of {stated}"
        if off(quantities["NetVolume"], stated) > (EXACT if exact else 3e-4):
            yield f"{row['tag']}: told to be of {quantities['NetVolume']} m3, solid of {stated}"
        if abs(quantities["NetVolume"] - float(row["finished_volume_m3"])) > LISTED:
            yield f"{row['tag']}: told to be of {quantities['NetVolume']} m3, listed as {row['finished_volume_m3']}"
        yield from row_faults(row, values, own, quantities, common)
        yield from place_faults(row["tag"], house.place(values[5]), step.place[row["tag"]])
        if not exact and not 0 < own["BodyWithin"] < 5:
            yield f"{row['tag']}: round, and within {own['BodyWithin']} mm"


def outward(further, told):
    """The building tells whole figures as the sheets do, the list hundredths: never the narrower range, and by a step at
    most, which is a kilogram, five from fifty on, and less than a tenth beyond."""
    return 0 <= further < (1 if told < 50 else max(5, 0.1 * told))


def row_faults(row, values, own, quantities, common):
    said = {"Tag": "tag", "Wall": "wall", "Floor": "wall", "Round": "round", "Place": "place", "RaiseNumber": "raise",
            "Kind": "kind", "Species": "species", "Finish": "finish", "LeftEnd": "left_end", "RightEnd": "right_end",
            "Fabric": "fabric", "State": "state", "Mark": "mark", "Note": "note", "AsFound": "as_found", "PegsAsFound": "pegs_found",
            "ButtEnd": "butt_end"}
    for name, column in said.items():
        if name in own and str(own[name]) != row[column]:
            yield f"{row['tag']}: {name} {own[name]!r}, listed as {row[column]!r}"
    for name, column in (("AsFound", "as_found"), ("Note", "note"), ("Mark", "mark"), ("RaiseNumber", "raise")):
        if row[column] and name not in own:
            yield f"{row['tag']}: {column} is not told"
    for name, column in (("StockLength", "length_mm"), ("StockWidth", "width_mm"), ("StockHeight", "height_mm")):
        if abs(own[name] - float(row[column])) > 6e-4:
            yield f"{row['tag']}: {name} {own[name]}, listed as {row[column]}"
    if abs(quantities["Length"] - float(row["length_mm"])) > 6e-4:
        yield f"{row['tag']}: length {quantities['Length']}"
    if row["estimated_weight_each_high_kg"]:
        if not outward(quantities["NetWeight"] - float(row["estimated_weight_each_high_kg"]), quantities["NetWeight"]) or own["WeightTo"] != quantities["NetWeight"]:
            yield f"{row['tag']}: weighs {quantities['NetWeight']}, listed as {row['estimated_weight_each_high_kg']}"
        if not outward(float(row["estimated_weight_each_low_kg"]) - own["WeightFrom"], own["WeightFrom"]):
            yield f"{row['tag']}: weighs from {own['WeightFrom']}"
    if common["Reference"] != row["piece"] or values[3] != row["kind"]:
        yield f"{row['tag']}: like {common['Reference']}, a {values[3]}"


def place_faults(tag, place, other):
    if any(abs(d) > SAME_PLACE for d in minus(place.origin, other.origin)):
        yield f"{tag}: stands at {place.origin}, in the STEP file at {other.origin}"
    for axis in "xyz":
        if any(abs(d) > WEIGHED for d in minus(getattr(place, axis), getattr(other, axis))):
            yield f"{tag}: is turned otherwise than in the STEP file"


def peg_faults(written):
    """As many of each name as are listed, and each reaches down from its upper log into its lower one."""
    house = written.house
    pegs = {a[2]: (id_, a) for id_, a in house.all("IFCMECHANICALFASTENER")}
    listed = [name for row in written.table("pegs.csv") for name in row["pegs"].split()]
    if sorted(pegs) != sorted(listed):
        yield f"pegs {sorted(set(pegs) ^ set(listed))[:5]} are in one alone"
    sizes = {name: row for row in written.table("pegs.csv") for name in row["pegs"].split()}
    boxes = {}
    for _, relation in house.all("IFCRELCONNECTSWITHREALIZINGELEMENTS"):
        (peg,), logs = relation[7], relation[5:7]
        name, place = house.values(peg)[2], house.place(house.values(peg)[5])
        bore = float(sizes[name]["bores_to_mm"]) if name in sizes else 0
        if not float(sizes[name]["bores_from_mm"]) - 1e-3 <= house.values(peg)[9] <= bore + 1e-3:
            yield f"peg {name} is {house.values(peg)[9]} long, its bore {bore}"
        if abs(house.values(peg)[8] - float(sizes[name]["diameter_mm"])) > 1e-3:
            yield f"peg {name} is {house.values(peg)[8]} thick"
        ends = [place.placed(p)[2] for p in house.corners(house.items(peg)[0])]
        middle = place.placed((0, 0, -house.values(peg)[9] / 2))
        for log, z in zip(logs, (max(ends), min(ends))):
            box = boxes.setdefault(log, world_box(house, log))
            inside = all(low - 1 <= v <= high + 1 for v, low, high in zip((middle[0], middle[1], z), *box))
            if not inside:
                yield f"peg {name} misses {house.values(log)[2]}"


def world_box(house, thing):
    place = house.place(house.values(thing)[5])
    corners = [place.placed(p) for p in house.corners(house.items(thing)[0])]
    if house.type_of(thing) == "IFCMECHANICALFASTENER" and not is_square(house, thing):  # upright: as wide to all sides
        radius, (x, y) = house.values(thing)[8] / 2, place.origin[:2]
        return (x - radius, y - radius, min(c[2] for c in corners)), (x + radius, y + radius, max(c[2] for c in corners))
    return tuple(min(c) for c in zip(*corners)), tuple(max(c) for c in zip(*corners))


def opening_faults(written):
    """As listed; and each is empty: no log of its wall reaches into it."""
    house = written.house
    rows = written.table("openings.csv")
    told = house.all("IFCOPENINGELEMENT")
    if sorted(a[2] for _, a in told) != sorted(row["opening"] for row in rows):
        yield f"openings {[a[2] for _, a in told]}, listed {[row['opening'] for row in rows]}"
    for id_, values in told:
        (wall,) = house.opened[id_]
        sizes = house.sets_of(id_)["Qto_OpeningElementBaseQuantities"]
        low, high = own_box(house, id_, wall)
        spread = minus(high, low)
        if any(abs(a - sizes[name]) > 1e-6 for a, name in zip(spread, ("Width", "Depth", "Height"))):
            yield f"opening {values[2]} is of {spread}, told to be of {sizes}"
        if off(sizes["Volume"], house.volume(house.items(id_)[0]) / 1e9) > WEIGHED:
            yield f"opening {values[2]} is of {sizes['Volume']} m3"
        middle = tuple((a + b) / 2 for a, b in zip(low, high))
        for part in house.parts[wall]:
            if house.type_of(part) != "IFCMEMBER":
                continue
            at, to = own_box(house, part, wall)
            if all(a < m < b for a, m, b in zip(at, middle, to)):
                yield f"{house.values(part)[2]} stands in opening {values[2]}"


def own_box(house, thing, within):
    frame = house.place(house.values(within)[5])
    place = house.place(house.values(thing)[5])
    corners = []
    for solid in house.items(thing):
        for p in house.corners(solid):
            away = minus(place.placed(p), frame.origin)
            corners.append(tuple(dot(away, axis) for axis in (frame.x, frame.y, frame.z)))
    return tuple(min(c) for c in zip(*corners)), tuple(max(c) for c in zip(*corners))


def whole_faults(written):
    house = written.house
    walls = [a for _, a in house.all("IFCWALL")]
    letters = {row["wall"] for row in written.pieces}
    if {a[7] for a in walls} | {a[7] for _, a in house.all("IFCELEMENTASSEMBLY")} != letters:
        yield f"walls and floors {[a[7] for a in walls]}, listed {letters}"
    for id_, values in house.all("IFCWALL", "IFCELEMENTASSEMBLY"):
        parts = {house.values(part)[7] for part in house.parts[id_] if house.type_of(part) in ("IFCMEMBER", "IFCBEAM")}
        if parts != {row["tag"] for row in written.pieces if row["wall"] == values[7]}:
            yield f"{values[2]} is made of other pieces than are listed"
    for id_, values in house.all("IFCWALL"):
        volume = sum(house.sets_of(part)["Qto_MemberBaseQuantities"]["NetVolume"] for part in house.parts[id_]
                     if house.type_of(part) == "IFCMEMBER")
        if off(volume, house.sets_of(id_)["Qto_WallBaseQuantities"]["NetVolume"]) > WEIGHED:
            yield f"{values[2]} is of another volume than its logs"
    caution = [house.sets_of(id_)["Roundlay_House"].get("Caution", "") for id_, _ in house.all("IFCBUILDING")]
    if len(caution[0]) < 100:
        yield "weights without their caution"


def is_square(house, peg):
    return house.type_of(house.values(house.items(peg)[0])[0]) == "IFCRECTANGLEPROFILEDEF"


def left_for_others(written, work):
    """What web-ifc should find: type, name and volume in mm3 by instance."""
    house = written.house
    kinds = ("IFCMEMBER", "IFCBEAM", "IFCMECHANICALFASTENER")
    found = {id_: {"type": house.type_of(id_), "name": a[2], "volume": house.volume(house.items(id_)[0]),
                   "box": world_box(house, id_), "square": house.type_of(id_) == kinds[2] and is_square(house, id_)} for id_, a in house.all(*kinds)}
    counts = {type_: len(house.all(type_)) for type_ in ("IFCWALL", "IFCELEMENTASSEMBLY", "IFCBUILDINGSTOREY", "IFCPROJECT",
                                                     "IFCOPENINGELEMENT")}
    (work / f"{written.name}.json").write_text(json.dumps({"elements": found, "counts": counts}))


def main(program, folder, work):
    work.mkdir(parents=True, exist_ok=True)
    wrong, count, pieces = [], 0, 0
    for name, text, options in houses(folder):
        written = Written(program, name, text, options, work)
        if not written.is_same_twice:
            wrong.append(f"{name}: other bytes the second time")
        found = [str(fault) for fault in faults_of(written.house.file)]
        if not found:
            step = Step(File((written.folder / "shell.step").read_bytes()))
            for rule in (lambda w: piece_faults(w, step), peg_faults, opening_faults, whole_faults):
                found += rule(written)
            left_for_others(written, work)
        wrong += [f"{name}: {each}" for each in found]
        count, pieces = count + 1, pieces + len(written.pieces)
    print(f"{count} houses, {pieces} pieces, {len(wrong)} wrong")
    for each in wrong[:40]:
        print(each)
    return 1 if wrong or count < 12 or pieces < 700 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])))

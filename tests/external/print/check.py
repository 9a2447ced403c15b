#!/usr/bin/python3
"""Has the program write models for a printer and pieces as triangles, and holds them against its STEP files.

Use: check.py PROGRAM FOLDER WORK

At full size each piece is closed and of the STEP solid's volume, with the prisms that stand for its bores reckoned out; a print
without clearance and pegs is the same at its scale; STL and 3MF of a plate are the same; parts lie apart and on the bed. The
solids are left in WORK/*.json for manifold-3d. Then breaks what was read, to prove that it would be noticed.
"""
import csv
import json
import math
import pathlib
import struct
import subprocess
import sys

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "step"))

from models import Fault, Package, Solid, read_stl  # noqa: E402
from part21 import File  # noqa: E402

EXACT = 1e-6
ROUND = 0.008  # what the flats of round logs leave out
SIDES = 24
ENDS = ("CIRCLE", "ELLIPSE")


def prism(radius, height):
    """What a prism with its corners on the circle leaves of a bore."""
    return radius * radius * height * (math.pi - SIDES / 2 * math.sin(2 * math.pi / SIDES))


class StepPiece:
    """Volume as stated, and its bores: (radius, height of the axis)."""

    def __init__(self, raw):
        self.file = file = File(raw)
        self.volume = next(a[1].value for _, a in file.of("MEASURE_REPRESENTATION_ITEM") if a[0] == "volume measure")
        self.is_round, self.bores = False, []
        for _, (_, bounds, surface, _) in file.of("ADVANCED_FACE"):
            if "PLANE" in file.data[surface]:
                continue
            if "CYLINDRICAL_SURFACE" not in file.data[surface]:
                self.is_round = True
                continue
            _, place, radius = file.get(surface, "CYLINDRICAL_SURFACE")
            axis = file.get(file.get(place, "AXIS2_PLACEMENT_3D")[2], "DIRECTION")[1]
            heights = self.rims(bounds)
            if abs(abs(axis[2]) - 1) > 1e-12 or len(heights) != 2:
                self.is_round = True
            else:
                self.bores.append((radius, abs(heights[0] - heights[1])))

    def rims(self, bounds):
        """Heights of the middles of the whole circles and ellipses round a bore's wall."""
        file, found = self.file, set()
        for bound in bounds:
            for use in file.get(file.get(bound, "FACE_BOUND", "FACE_OUTER_BOUND")[1], "EDGE_LOOP")[1]:
                curve = file.data[file.get(file.get(use, "ORIENTED_EDGE")[3], "EDGE_CURVE")[3]]
                for name in ENDS:
                    if name in curve:
                        middle = file.get(curve[name][1], "AXIS2_PLACEMENT_3D")[1]
                        found.add(round(file.get(middle, "CARTESIAN_POINT")[1][2], 6))
        return sorted(found)

    def as_prisms(self):
        return self.volume + sum(prism(*bore) for bore in self.bores)

    def unbored(self):
        return self.volume + sum(math.pi * radius * radius * height for radius, height in self.bores)


def export(program, document, to, *options):
    subprocess.run([program, "export", document, "--to", to, "--force", *options], check=True, stderr=subprocess.DEVNULL)


def off(found, wanted):
    return abs(found / wanted - 1)


def piece_faults(folder, left):
    """Pieces at full size."""
    names = sorted(path.stem for path in (folder / "pieces").glob("*.step"))
    if names != sorted(path.stem for path in (folder / "stl").glob("*.stl")):
        yield "not the same pieces as STEP and STL"
        return
    for name in names:
        solid = read_stl((folder / f"stl/{name}.stl").read_bytes(), name)
        step = StepPiece((folder / f"pieces/{name}.step").read_bytes())
        yield from solid.faults()
        if off(solid.volume(), step.as_prisms()) > (ROUND if step.is_round else EXACT):
            yield f"{name}: triangles of {solid.volume()} mm3, solid of {step.as_prisms()}"
        left[name] = solid


def plate_faults(folder, bed, left):
    """Every plate of a print: STL and 3MF the same, parts apart, on the bed."""
    places = list(csv.DictReader(open(folder / "print/places.csv", newline="")))
    for number, path in enumerate(sorted((folder / "print").glob("*.3mf"), key=lambda p: int(p.stem.split("-")[1])), 1):
        package, stl = Package(path), read_stl(path.with_suffix(".stl").read_bytes(), path.stem)
        for solid in package.objects.values():
            yield from solid.faults()
        parts = list(package.placed())
        yield from stl.faults()
        if off(sum(part.volume() for part in parts), stl.volume()) > EXACT:
            yield f"{path.name}: {sum(part.volume() for part in parts)} mm3, {stl.volume()} as STL"
        if sum(len(part.triangles) for part in parts) != len(stl.triangles):
            yield f"{path.name}: other triangles than as STL"
        if [part.name for part in parts] != [row["tag"] for row in places if int(row["plate"]) == number]:
            yield f"{path.name}: other parts than in places.csv"
        boxes = [part.box() for part in parts]
        for part, (low, high) in zip(parts, boxes):
            if min(low) < -1e-4 or high[0] > bed + 1e-4 or high[1] > bed + 1e-4 or low[2] > 1e-4:
                yield f"{path.name}: {part.name} lies off the bed, {low} to {high}"
        for i, (low, high) in enumerate(boxes):
            for other, (to, up) in zip(parts[:i], boxes[:i]):
                if all(low[k] < up[k] - 1e-4 and to[k] < high[k] - 1e-4 for k in (0, 1)):
                    yield f"{path.name}: {parts[i].name} lies on {other.name}"
        left[path.stem] = stl
        left.update({f"{path.stem} {solid.name}": solid for solid in package.objects.values()})


def plain_faults(folder, scale):
    """Without clearance, pegs and a nozzle that matters a print is the wood without bores at its scale."""
    names = set()
    for path in (folder / "print").glob("*.3mf"):
        for solid in Package(path).objects.values():
            step = StepPiece((folder / f"pieces/{solid.name}.step").read_bytes())
            wanted = step.unbored() / scale ** 3
            names.add(solid.name)
            if off(solid.volume(), wanted) > (ROUND if step.is_round else EXACT):
                yield f"{solid.name}: printed with {solid.volume()} mm3 instead of {wanted}"
    if len(names) != len(list((folder / "pieces").glob("*.step"))):
        yield f"{len(names)} parts are printed"


def houses(folder):
    """Document, options of a print with clearance, scale of a plain one."""
    demo = folder / "models-demo"
    yield demo / "one-room.roundlay", ("--scale", "1:25", "--nozzle", "0.2"), 25
    yield demo / "ell-house.roundlay", ("--scale", "1:50", "--nozzle", "0.1", "--clearance", "0.1", "--pegs", "none"), 60
    yield demo / "round-cabin.roundlay", ("--scale", "1:40", "--nozzle", "0.1", "--clearance", "0.1"), 40
    yield demo / "old-house.roundlay", ("--scale", "1:50", "--nozzle", "0.1", "--clearance", "0.1", "--pegs", "holes"), 50


def breaks(solid, path):
    """Whatever must be noticed, and is not."""
    less = Solid(solid.points, solid.triangles[1:], "less")
    turned = Solid(solid.points, [solid.triangles[0][::-1], *solid.triangles[1:]], "turned")
    inside = Solid(solid.points, [t[::-1] for t in solid.triangles], "inside out")
    more = Solid([*solid.points, (0, 0, 0)], solid.triangles, "a point more")
    for broken in (less, turned, inside, more):
        if not list(broken.faults()):
            yield f"{broken.name} was not noticed"
    (x, y, z), *others = solid.points
    if off(Solid([(x + 0.5, y + 0.5, z + 0.5), *others], solid.triangles).volume(), solid.volume()) < 2 * EXACT:
        yield "a point that is moved was not noticed"
    raw = path.read_bytes()
    against = raw[:84] + struct.pack("<3f", *(-n for n in struct.unpack_from("<3f", raw, 84))) + raw[96:]
    for broken, what in ((raw[:-1], "shorter"), (b"solid" + raw[5:], "as text"), (against, "a normal turned round")):
        try:
            read_stl(broken)
            yield f"{what} was not noticed"
        except Fault:
            pass


def main(program, folder, work):
    wrong, solids = [], 0
    work.mkdir(parents=True, exist_ok=True)
    for document, options, scale in houses(folder):
        to, plain, left, found = work / document.stem, work / f"{document.stem} plain", {}, []
        export(program, document, to, "--only", "print,stl,step", *options)
        plainly = ("--scale", f"1:{scale}", "--clearance", "0", "--nozzle", "0.05", "--pegs", "none", "--print-tags", "no")
        export(program, document, plain, "--only", "print,step", *plainly)
        try:
            found += [*piece_faults(to, left), *plate_faults(to, 220, left), *plain_faults(plain, scale)]
        except Fault as fault:
            found.append(str(fault))
        if document.stem == "one-room":
            found += breaks(left["A-01-1"], to / "stl/A-01-1.stl")
        wrong += [f"{document.stem}: {each}" for each in found]
        solids += len(left)
        (work / f"{document.stem}.json").write_text(json.dumps(
            {name: {"points": s.points, "triangles": s.triangles, "volume": s.volume()} for name, s in left.items()}))
    print(f"{solids} solids, {len(wrong)} wrong")
    for each in wrong[:40]:
        print(each)
    return 1 if wrong or solids < 400 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])))

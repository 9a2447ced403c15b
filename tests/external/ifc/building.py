"""A house as an IFC file tells it: what stands in what, where, how large, and what is said of it."""
from collections import defaultdict
from math import pi

from part21 import UNSET, Fault
from vectors import cross, dot, minus, plus, times, unit

ELEMENTS = ("IFCWALL", "IFCMEMBER", "IFCBEAM", "IFCELEMENTASSEMBLY", "IFCMECHANICALFASTENER", "IFCOPENINGELEMENT")
SPACES = ("IFCSITE", "IFCBUILDING", "IFCBUILDINGSTOREY")


class Frame:
    """Origin and three directions."""

    def __init__(self, origin=(0, 0, 0), x=(1, 0, 0), y=(0, 1, 0), z=(0, 0, 1)):
        self.origin, self.x, self.y, self.z = origin, x, y, z

    def turned(self, v):
        return tuple(sum(k * axis[i] for k, axis in zip(v, (self.x, self.y, self.z))) for i in range(3))

    def placed(self, point):
        return plus(self.origin, self.turned(point))

    def of(self, inner):
        return Frame(self.placed(inner.origin), self.turned(inner.x), self.turned(inner.y), self.turned(inner.z))


class Corner(int):
    """Of a triangle, counted from 1 in its list of points."""

    def __new__(cls, points, number):
        corner = super().__new__(cls, number)
        corner.points = points
        return corner


class Building:
    def __init__(self, file):
        self.file = file
        self.parts, self.holder = defaultdict(list), {}  # by aggregation
        self.contained = defaultdict(list)  # element -> storeys
        self.opened = defaultdict(list)  # opening -> what it is in
        self.sets = defaultdict(list)  # thing -> sets
        for _, a in file.of("IFCRELAGGREGATES"):
            for part in a[5]:
                self.parts[a[4]].append(part)
                self.holder.setdefault(part, []).append(a[4])
        for _, a in file.of("IFCRELCONTAINEDINSPATIALSTRUCTURE"):
            for part in a[4]:
                self.contained[part].append(a[5])
        for _, a in file.of("IFCRELVOIDSELEMENT"):
            self.opened[a[5]].append(a[4])
        for _, a in file.of("IFCRELDEFINESBYPROPERTIES"):
            for thing in a[4]:
                self.sets[thing].append(a[5])

    def all(self, *types):
        return [(id_, a) for id_, a in self.file.of(*types)]

    def type_of(self, id_):
        (keyword,) = self.file.data[id_]
        return keyword

    def values(self, id_):
        (values,) = self.file.data[id_].values()
        return values

    def sets_of(self, thing):
        """{set: {name: value}}; of a quantity its number."""
        found = {}
        for set_ in self.sets[thing]:
            values = self.values(set_)
            found[values[2]] = {self.values(each)[0]: self.value_of(each) for each in values[-1]}
        return found

    def value_of(self, property_):
        values = self.values(property_)
        type_ = self.type_of(property_)
        if type_ == "IFCPROPERTYSINGLEVALUE":
            return values[2].value
        if type_ == "IFCPROPERTYENUMERATEDVALUE":
            return values[2][0].value
        return values[3]

    # where

    def point(self, id_):
        if isinstance(id_, Corner):
            return tuple(self.file.get(id_.points, "IFCCARTESIANPOINTLIST3D")[0][id_ - 1])
        return tuple(self.file.get(id_, "IFCCARTESIANPOINT")[0])

    def direction(self, id_, otherwise):
        return otherwise if id_ is UNSET else unit(tuple(self.file.get(id_, "IFCDIRECTION")[0]))

    def placement3(self, id_):
        origin, axis, across = self.file.get(id_, "IFCAXIS2PLACEMENT3D")
        z, x = self.direction(axis, (0, 0, 1)), self.direction(across, (1, 0, 0))
        x = unit(minus(x, times(dot(x, z), z)))
        return Frame(self.point(origin), x, cross(z, x), z)

    def place(self, id_):
        """Of a local placement, in the world."""
        within, here = self.file.get(id_, "IFCLOCALPLACEMENT")
        frame = self.placement3(here)
        return frame if within is UNSET else self.place(within).of(frame)

    # how large

    def items(self, thing):
        """The solids of an element's body; mapped ones as they are (the mapping moves nothing, as is checked)."""
        shape = self.values(thing)[6]
        if shape is UNSET:
            return []
        found = []
        for representation in self.file.get(shape, "IFCPRODUCTDEFINITIONSHAPE")[2]:
            for item in self.file.get(representation, "IFCSHAPEREPRESENTATION")[3]:
                if self.type_of(item) == "IFCMAPPEDITEM":
                    source, target = self.file.get(item, "IFCMAPPEDITEM")
                    self.check_unmoved(source, target)
                    map_ = self.file.get(source, "IFCREPRESENTATIONMAP")[1]
                    found += self.file.get(map_, "IFCSHAPEREPRESENTATION")[3]
                else:
                    found.append(item)
        return found

    def check_unmoved(self, source, target):
        origin = self.placement3(self.file.get(source, "IFCREPRESENTATIONMAP")[0])
        x, y, to, scale, z = self.file.get(target, "IFCCARTESIANTRANSFORMATIONOPERATOR3D")
        if origin.origin != (0, 0, 0) or origin.z != (0, 0, 1) or origin.x != (1, 0, 0):
            raise Fault("mapped", f"#{source} does not start at its origin")
        if [x, y, scale, z] != [UNSET] * 4 or self.point(to) != (0, 0, 0):
            raise Fault("mapped", f"#{target} moves what is mapped")

    def loops(self, face):
        """[(points' ids as the face runs round them, is it the outer one)]"""
        found = []
        for bound in self.file.get(face, "IFCFACE")[0]:
            loop, forward = self.file.get(bound, "IFCFACEOUTERBOUND", "IFCFACEBOUND")
            points = self.file.get(loop, "IFCPOLYLOOP")[0]
            found.append((points if forward == "T" else points[::-1], self.type_of(bound) == "IFCFACEOUTERBOUND"))
        return found

    def faces(self, brep):
        if self.type_of(brep) == "IFCTRIANGULATEDFACESET":
            points, _, _, corners, _ = self.file.get(brep, "IFCTRIANGULATEDFACESET")
            return [[([Corner(points, i) for i in triangle], True)] for triangle in corners]
        shell = self.file.get(brep, "IFCFACETEDBREP")[0]
        return [self.loops(face) for face in self.file.get(shell, "IFCCLOSEDSHELL")[0]]

    def area(self, points):
        """Vector area of a polygon, by its corners."""
        at = [self.point(p) for p in points]
        total = (0, 0, 0)
        for a, b in zip(at[1:], at[2:]):
            total = plus(total, cross(minus(a, at[0]), minus(b, at[0])))
        return times(0.5, total)

    def volume(self, solid):
        """By the divergence theorem from the faces, or of what is pushed along."""
        if self.type_of(solid) == "IFCEXTRUDEDAREASOLID":
            profile, _, way, depth = self.file.get(solid, "IFCEXTRUDEDAREASOLID")
            return self.profile_area(profile) * depth * self.direction(way, None)[2]
        if self.type_of(solid) == "IFCBOUNDINGBOX":
            _, x, y, z = self.file.get(solid, "IFCBOUNDINGBOX")
            return x * y * z
        faces = self.faces(solid)
        origin = self.point(faces[0][0][0][0])
        total = 0
        for loops in faces:
            area = (0, 0, 0)
            for points, _ in loops:
                area = plus(area, self.area(points))
            total += dot(area, minus(self.point(loops[0][0][0]), origin))
        return total / 3

    def profile_area(self, profile):
        values = self.values(profile)
        return pi * values[3] ** 2 if self.type_of(profile) == "IFCCIRCLEPROFILEDEF" else values[3] * values[4]

    def corners(self, solid):
        """Of a solid, in its element's frame; of one that is pushed along those of its box."""
        if self.type_of(solid) == "IFCBOUNDINGBOX":
            corner, *sizes = self.file.get(solid, "IFCBOUNDINGBOX")
            return [self.point(corner), plus(self.point(corner), sizes)]
        if self.type_of(solid) != "IFCEXTRUDEDAREASOLID":
            return [self.point(p) for loops in self.faces(solid) for points, _ in loops for p in points]
        profile, place, way, depth = self.file.get(solid, "IFCEXTRUDEDAREASOLID")
        values, frame = self.values(profile), self.placement3(place)
        half = (values[3], values[3]) if len(values) == 4 else (values[3] / 2, values[4] / 2)
        middle = (0, 0) if values[2] is UNSET else self.point(self.values(values[2])[0])
        up = times(depth, self.direction(way, None))
        flat = [(middle[0] + i * half[0], middle[1] + j * half[1], 0) for i in (-1, 1) for j in (-1, 1)]
        return [frame.placed(p) for p in flat] + [frame.placed(plus(p, up)) for p in flat]

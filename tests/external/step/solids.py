"""Shells of MANIFOLD_SOLID_BREPs: topology after ISO 10303-42 (clause 5, closed_shell and the Euler formulae), and
geometry as far as planes, lines, circles and whole cylinders go."""
from collections import Counter, defaultdict
from math import pi, sqrt

from part21 import Fault
from vectors import cross, dot, length, minus, times


RIMS = ("CIRCLE", "ELLIPSE")


class Use:
    """One edge as a loop of a face runs along it."""

    def __init__(self, edge, forward, start, end):
        self.edge, self.forward, self.start, self.end = edge, forward, start, end


class Solid:
    """A MANIFOLD_SOLID_BREP with its faces' loops turned to run around the face's outward normal."""

    def __init__(self, file, id_):
        self.file, self.id = file, id_
        self.name, shell = file.get(id_, "MANIFOLD_SOLID_BREP")
        self.shell = shell
        self.faces = []
        self.bounds = 0
        for face in file.get(shell, "CLOSED_SHELL")[1]:
            _, bounds, surface, same = file.get(face, "ADVANCED_FACE")
            loops = []
            for bound in bounds:
                _, loop, orientation = file.get(bound, "FACE_BOUND", "FACE_OUTER_BOUND")
                loops.append(self.loop(loop, orientation == "T"))
            self.bounds += len(loops)
            self.faces.append((face, loops, surface, same == "T"))

    def loop(self, id_, forward):
        uses = []
        for oriented in self.file.get(id_, "EDGE_LOOP")[1]:
            _, _, _, edge, sense = self.file.get(oriented, "ORIENTED_EDGE")
            _, start, end, _, _ = self.file.get(edge, "EDGE_CURVE")
            along = (sense == "T") == forward
            uses.append(Use(edge, along, start, end) if along else Use(edge, along, end, start))
        return uses if forward else uses[::-1]

    def uses(self):
        for _, loops, _, _ in self.faces:
            for loop in loops:
                yield from loop

    def point(self, vertex):
        return self.file.get(self.file.get(vertex, "VERTEX_POINT")[1], "CARTESIAN_POINT")[1]

    def placement(self, id_):
        _, origin, axis, x = self.file.get(id_, "AXIS2_PLACEMENT_3D")
        origin = self.file.get(origin, "CARTESIAN_POINT")[1]
        axis, x = (self.file.get(d, "DIRECTION")[1] for d in (axis, x))
        return origin, times(1 / length(axis), axis), x

    def curve(self, edge):
        id_ = self.file.get(edge, "EDGE_CURVE")[3]
        (kind, attributes), = self.file.data[id_].items()
        return kind, attributes

    def topology(self):
        """Faults of how edges, loops and faces hang together."""
        counts = Counter((use.edge, use.forward) for use in self.uses())
        for edge in {edge for edge, _ in counts}:
            if counts[edge, True] != 1 or counts[edge, False] != 1:
                yield Fault("edge-use", f"#{edge} is used {counts[edge, True]} times forward and "
                                        f"{counts[edge, False]} times backward in shell #{self.shell}")
        for face, loops, _, _ in self.faces:
            for loop in loops:
                if any(a.end != b.start for a, b in zip(loop, loop[1:] + loop[:1])):
                    yield Fault("loop", f"a loop of #{face} does not close")
        if self.pieces() != 1:
            yield Fault("lump", f"shell #{self.shell} is {self.pieces()} pieces")
        if self.genus() != int(self.genus()) or self.genus() < 0:
            yield Fault("euler", f"shell #{self.shell} has genus {self.genus()}")

    def pieces(self):
        """How many parts the faces make, joined along edges."""
        faces_of = defaultdict(list)
        for number, (_, loops, _, _) in enumerate(self.faces):
            for loop in loops:
                for use in loop:
                    faces_of[use.edge].append(number)
        group = list(range(len(self.faces)))

        def root(n):
            while group[n] != n:
                n = group[n]
            return n

        for numbers in faces_of.values():
            for n in numbers[1:]:
                group[root(n)] = root(numbers[0])
        return len({root(n) for n in range(len(self.faces))})

    def genus(self):
        """From V - E + 2F - L = 2(S - G) for one shell (ISO 10303-42, closed_shell, with L bounds of faces)."""
        vertices = {use.start for use in self.uses()}
        edges = {use.edge for use in self.uses()}
        return 1 - (len(vertices) - len(edges) + 2 * len(self.faces) - self.bounds) / 2

    def geometry(self, accuracy):
        """Vertices lie on their curves and faces, directions are unit and not parallel."""
        for edge in {use.edge for use in self.uses()}:
            kind, attributes = self.curve(edge)
            _, start, end, _, _ = self.file.get(edge, "EDGE_CURVE")
            for vertex in (start, end):
                if self.off_curve(kind, attributes, self.point(vertex)) > accuracy:
                    yield Fault("curve", f"#{vertex} is off the curve of #{edge}")
            if kind == "LINE":
                direction = self.direction(attributes)
                if start == end or dot(minus(self.point(end), self.point(start)), direction) <= accuracy:
                    yield Fault("curve", f"#{edge} runs against its line or has no length")
        for face, loops, surface, _ in self.faces:
            for loop in loops:
                for use in loop:
                    if self.off_surface(surface, self.point(use.start)) > accuracy:
                        yield Fault("surface", f"#{use.start} is off the surface of #{face}")

    def direction(self, line):
        vector = self.file.get(line[2], "VECTOR")
        direction = self.file.get(vector[1], "DIRECTION")[1]
        return times(1 / length(direction), direction)

    def off_curve(self, kind, attributes, point):
        if kind == "LINE":
            from_start = minus(point, self.file.get(attributes[1], "CARTESIAN_POINT")[1])
            return length(cross(self.direction(attributes), from_start))
        if kind in RIMS:
            origin, axis, major = self.placement(attributes[1])
            arm = minus(point, origin)
            a, b = attributes[2], attributes[-1]
            x, y = dot(arm, major) / length(major), dot(arm, cross(axis, major)) / length(major)
            return max(abs(dot(arm, axis)), abs(sqrt((x / a) ** 2 + (y / b) ** 2) - 1) * a)
        return 0.0  # other curves are the library's; their vertices are checked against the faces

    def off_surface(self, surface, point):
        (kind, attributes), = self.file.data[surface].items()
        origin, axis, _ = self.placement(attributes[1])
        arm = minus(point, origin)
        if kind == "PLANE":
            return abs(dot(arm, axis))
        return abs(length(cross(axis, arm)) - attributes[2])

    def measures(self):
        """(volume, area) by the divergence theorem over the faces, or None where a face is more than a polygon with
        whole rims in it or a whole cylinder's wall. A face whose loops run the wrong way round is a Fault."""
        volume = area = 0.0
        for face, loops, surface, same in self.faces:
            (kind, attributes), = self.file.data[surface].items()
            origin, axis, _ = self.placement(attributes[1])
            sign = 1 if same else -1
            if kind == "PLANE":
                normal = times(sign, axis)
                part = self.plane_area(loops, normal)
                flux = part and dot(origin, normal) * part
            else:
                rims = self.wall_rims(loops, axis)
                if rims is None:
                    return None
                part, flux = self.wall_flux(rims, origin, axis, sign, attributes[2])
            if part is None:
                return None
            if part <= 0:
                raise Fault("sense", f"the loops of #{face} run against its normal")
            volume += flux / 3
            area += part
        return volume, area

    def plane_area(self, loops, normal):
        twice = 0.0
        for loop in loops:
            kinds = {self.curve(use.edge)[0] for use in loop}
            if kinds == {"LINE"}:
                points = [self.point(use.start) for use in loop]
                for a, b in zip(points[1:], points[2:]):
                    twice += dot(cross(minus(a, points[0]), minus(b, points[0])), normal)
            elif len(loop) == 1 and kinds <= set(RIMS):
                attributes = self.curve(loop[0].edge)[1]
                twice += (2 if self.turn(loop[0], normal) > 0 else -2) * pi * attributes[2] * attributes[-1]
            else:
                return None
        return twice / 2

    def turn(self, use, axis):
        """1 where a rim runs counter-clockwise seen against the axis, else -1."""
        along = dot(self.placement(self.curve(use.edge)[1][1])[1], axis)
        return 1 if (along > 0) == use.forward else -1

    def wall_rims(self, loops, axis):
        """The two whole rims of a cylinder's wall, the lower one first, or None."""
        rims = [use for loop in loops for use in loop if self.curve(use.edge)[0] in RIMS]
        if len(rims) != 2 or any(use.start != use.end for use in rims):
            return None
        return sorted(rims, key=lambda use: dot(self.placement(self.curve(use.edge)[1][1])[0], axis))

    def wall_flux(self, rims, origin, axis, sign, radius):
        """(area, integral of x.n) of a cylinder between two planes; the area is negative where its loops run the
        wrong way round. Over the wall n sums to pi r r times what the planes' rises differ by."""
        low, high = (self.placement(self.curve(use.edge)[1][1]) for use in rims)
        right = self.turn(rims[0], axis) == sign and self.turn(rims[1], axis) == -sign
        area = 2 * pi * radius * dot(minus(high[0], low[0]), axis)
        sum_of_normals = times(pi * radius**2, minus(self.rise(high[1], axis), self.rise(low[1], axis)))
        return (1 if right else -1) * area, sign * (radius * area + dot(origin, sum_of_normals))

    def rise(self, normal, axis):
        """Of a plane with this normal for each unit away from the axis."""
        along = dot(normal, axis)
        return times(-1 / along, minus(normal, times(along, axis)))

#!/usr/bin/python3
"""Draws a house from its IFC text alone, to be looked at: painted from far to near, each face by its colour and its turn to the
light; pegs and the boxes of openings as lines over it.

Use: picture.py FILE [TYPE ...] > PICTURE.svg   (types to leave out, such as IFCMEMBER)
"""
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "step"))

from building import Building, dot, times, unit  # noqa: E402
from part21 import File  # noqa: E402

TOWARD = unit((0.55, -0.8, 0.45))  # who looks
RIGHT = unit((0.8, 0.55, 0))
UP = unit((TOWARD[1] * RIGHT[2] - TOWARD[2] * RIGHT[1], TOWARD[2] * RIGHT[0] - TOWARD[0] * RIGHT[2],
           TOWARD[0] * RIGHT[1] - TOWARD[1] * RIGHT[0]))
LIGHT = unit((0.2, -0.6, 0.8))


def flat(point):
    return dot(point, RIGHT), dot(point, UP)


def colours(house):
    found = {}
    for _, (item, styles, _) in house.all("IFCSTYLEDITEM"):
        shading = house.values(house.values(styles[0])[2][0])
        found[int(item)] = tuple(house.values(shading[0])[1:])
    return found


def polygons(house, without):
    """(depth, corners, colour) of all faces that look this way, holes left out."""
    painted = colours(house)
    for id_, values in house.all("IFCMEMBER", "IFCBEAM"):
        if house.type_of(id_) in without:
            continue
        place = house.place(values[5])
        for solid in house.items(id_):
            for loops in house.faces(solid):
                corners = [place.placed(house.point(p)) for p in loops[0][0]]
                area = place.turned(house.area(loops[0][0]))
                if dot(area, TOWARD) <= 0 or dot(area, area) == 0:
                    continue
                light = 0.45 + 0.55 * max(0, dot(unit(area), LIGHT))
                middle = times(1 / len(corners), tuple(sum(c) for c in zip(*corners)))
                yield dot(middle, TOWARD), [flat(c) for c in corners], times(light, painted[int(solid)])


def lines(house):
    """(corners, colour) of pegs and of openings' boxes."""
    for _, values in house.all("IFCMECHANICALFASTENER"):
        place = house.place(values[5])
        yield [flat(place.origin), flat(place.placed((0, 0, -values[9])))], "firebrick"
    for id_, values in house.all("IFCOPENINGELEMENT"):
        place, (low, high) = house.place(values[5]), house.corners(house.items(id_)[0])
        for y in (low[1], high[1]):
            ring = [(low[0], y, low[2]), (high[0], y, low[2]), (high[0], y, high[2]), (low[0], y, high[2]), (low[0], y, low[2])]
            yield [flat(place.placed(p)) for p in ring], "royalblue"


def path(corners):
    return " ".join(f"{x:.1f},{-y:.1f}" for x, y in corners)


def main(name, without):
    house = Building(File(pathlib.Path(name).read_bytes()))
    faces = sorted(polygons(house, without), key=lambda face: face[0])
    x, y = zip(*(corner for face in faces for corner in face[1]))
    frame = f"{min(x) - 100:.0f} {-max(y) - 100:.0f} {max(x) - min(x) + 200:.0f} {max(y) - min(y) + 200:.0f}"
    print(f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{frame}" width="1300" style="background:white">')
    for _, corners, colour in faces:
        fill = "#" + "".join(f"{round(255 * c):02x}" for c in colour)
        print(f'<polygon points="{path(corners)}" fill="{fill}" stroke="#333" stroke-width="2"/>')
    for corners, colour in lines(house):
        print(f'<polyline points="{path(corners)}" fill="none" stroke="{colour}" stroke-width="6"/>')
    print("</svg>")


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2:])

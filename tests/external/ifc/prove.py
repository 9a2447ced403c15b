#!/usr/bin/python3
"""Proves that the checker can fail: breaks a sound file in one way after another and asks for the right fault.

Use: prove.py FILE, a house with openings, floors, pegs, pieces that are alike and bores.
"""
import pathlib
import re
import sys

from check_ifc import faults


def instance(text, type_, number=0):
    """(id, whole statement) of the numbered instance of one entity."""
    match = list(re.finditer(rf"#(\d+)={type_}\([^;]*\);\n", text))[number]
    return int(match.group(1)), match.group()


def changed(text, type_, pattern, by, number=0):
    """One instance rewritten by a regular expression, which must match."""
    _, statement = instance(text, type_, number)
    new, count = re.subn(pattern, by, statement, count=1, flags=re.DOTALL)
    assert count == 1 and new != statement, (type_, pattern)
    return text.replace(statement, new, 1)


def without(text, type_, number=0):
    return text.replace(instance(text, type_, number)[1], "", 1)


def again(text, type_):
    """The first of them once more, under another number and identifier."""
    statement = re.sub(r"\('[^']{21}[^']'", "('" + 22 * "1" + "'", instance(text, type_)[1], count=1)
    more = "#9999999" + statement[statement.index("="):]
    head, tail = text.rsplit("ENDSEC;", 1)
    return head + more + "ENDSEC;" + tail


def same_guid(text):
    first = re.search(r"'([^']*)'", instance(text, "IFCMEMBER")[1]).group(1)
    return changed(text, "IFCMEMBER", r"'[^']*'", f"'{first}'", 1)


def in_storey_too(text):
    member = instance(text, "IFCMEMBER")[0]
    return changed(text, "IFCRELCONTAINEDINSPATIALSTRUCTURE", r"\(\(|,\(", f",(#{member},")


def face_gone(text):
    return changed(text, "IFCCLOSEDSHELL", r"\(\(#\d+,", "((")


def face_turned(text):
    return changed(text, "IFCFACEOUTERBOUND", r"\.T\.", ".F.")


def inside_out(text):
    return re.sub(r"(=IFCFACE(?:OUTER)?BOUND\([^;]*)\.T\.", r"\1.F.", text)


def bent(text):
    """A corner of the first body moved by a hundredth of a millimetre, off its plane faces."""
    return changed(text, "IFCCARTESIANPOINT", r"\(\(([-0-9.E]+),", lambda m: f"(({float(m[1]) + 0.01!r},",
                   first_corner(text))


def first_corner(text):
    loop = instance(text, "IFCPOLYLOOP")[1]
    corner = int(re.search(r"\(\(#(\d+)", loop).group(1))
    ids = [int(m) for m in re.findall(r"#(\d+)=IFCCARTESIANPOINT", text)]
    return ids.index(corner)


def two_lumps(text):
    first, second = (instance(text, "IFCCLOSEDSHELL", n)[1] for n in (0, 1))
    faces = re.search(r"\(\((.*)\)\)", second, re.DOTALL).group(1)
    return text.replace(first, first.replace("));", "," + faces + "));"), 1)


def hole_as_border(text):
    return changed(text, "IFCFACEBOUND", r"IFCFACEBOUND", "IFCFACEOUTERBOUND")


def placed_in_building(text):
    """The first log placed in what its wall is placed in."""
    place = int(re.search(r",#(\d+),#\d+,'[^']*',\.USERDEFINED", instance(text, "IFCMEMBER")[1]).group(1))
    statement = re.search(rf"#{place}=IFCLOCALPLACEMENT\(#(\d+),(#\d+)\);\n", text)
    above = re.search(rf"#{statement.group(1)}=IFCLOCALPLACEMENT\((#\d+),", text).group(1)
    return text.replace(statement.group(), f"#{place}=IFCLOCALPLACEMENT({above},{statement.group(2)});\n", 1)


def one_hole_less(text):
    """A face that forgets the bore that opens in it."""
    face = re.search(r"#\d+=IFCFACE\(\(#\d+,#\d+[^;]*\);\n", text).group()
    return text.replace(face, re.sub(r"\(\((#\d+),.*\)\)", r"((\1))", face, flags=re.DOTALL), 1)


BREAKS = [
    ("ascii", lambda t: t.replace("'IFC4'", "'IFC4\u00e9'", 1)),
    ("header", lambda t: t.replace("('IFC4')", "('IFC2X3')", 1)),
    ("header", lambda t: t.replace("ViewDefinition", "View", 1)),
    ("duplicate", lambda t: t.replace("#2=", "#1=", 1)),
    ("reference", lambda t: without(t, "IFCPOLYLOOP")),
    ("entity", lambda t: t.replace("IFCMEMBER(", "IFCMEMBERSTANDARDCASE(", 1)),
    ("attributes", lambda t: changed(t, "IFCMEMBER", r",\.USERDEFINED\.", "")),
    ("attribute", lambda t: changed(t, "IFCMEMBER", r"\.USERDEFINED\.", ".LOG.")),
    ("attribute", lambda t: changed(t, "IFCBEAM", r"\.(JOIST|BEAM)\.", ".TRIMMER.")),
    ("attribute", lambda t: changed(t, "IFCMEMBER", r"'[^']", "'4")),
    ("attribute", lambda t: changed(t, "IFCMEMBER", r"'[^']*'", "'short'")),
    ("attribute", lambda t: changed(t, "IFCPOLYLOOP", r"#(\d+),#\d+", r"#\1,#\1")),
    ("attribute", lambda t: changed(t, "IFCMECHANICALFASTENER", r",(\d+)\.\d*,", r",\1,")),
    ("attribute", lambda t: changed(t, "IFCMECHANICALFASTENER", r",(\d+)\.", r",-\1.")),
    ("attribute", lambda t: changed(t, "IFCFACETEDBREP", r"\(#\d+", f"(#{instance(t, 'IFCFACE')[0]}")),
    ("attribute", lambda t: changed(t, "IFCPROPERTYSINGLEVALUE", r"'[^']*',\$,IFC\w+", "'Tag',$,IFCSHOESIZE")),
    ("attribute", lambda t: t.replace("IFCLABEL('", "IFCLABEL('" + 256 * "x", 1)),
    ("guid", same_guid),
    ("unit", lambda t: t.replace(".MILLI.", ".CENTI.", 1)),
    ("unit", lambda t: t.replace(".SQUARE_METRE.", ".METRE.", 1)),
    ("tree", lambda t: without(t, "IFCRELAGGREGATES")),
    ("tree", lambda t: again(t, "IFCRELCONTAINEDINSPATIALSTRUCTURE")),
    ("tree", in_storey_too),
    ("tree", lambda t: without(t, "IFCRELVOIDSELEMENT")),
    ("tree", lambda t: again(t, "IFCPROJECT")),
    ("placement", placed_in_building),
    ("placement", lambda t: changed(t, "IFCBUILDINGSTOREY", r",([0-9]+)\.", r",9\1.", 1)),
    ("kind", lambda t: changed(t, "IFCMEMBER", r"'WALL_LOG'", "$")),
    ("name", lambda t: changed(t, "IFCMEMBER", r"'([^']*)',\.USERDEFINED", r"'\1x',.USERDEFINED")),
    ("joint", lambda t: without(t, "IFCRELCONNECTSWITHREALIZINGELEMENTS")),
    ("joint", lambda t: changed(t, "IFCRELCONNECTSWITHREALIZINGELEMENTS", r"#(\d+),#\d+,\(", r"#\1,#\1,(")),
    ("material", lambda t: without(t, "IFCRELASSOCIATESMATERIAL")),
    ("set", lambda t: without(t, "IFCRELDEFINESBYPROPERTIES")),
    ("set", lambda t: changed(t, "IFCPROPERTYSET", r"Roundlay_", "Pset_")),
    ("set", lambda t: t.replace("'Qto_WallBaseQuantities'", "'Qto_WallQuantities'", 1)),
    ("set", lambda t: t.replace("'NetWeight'", "'Weight'", 1)),
    ("quantity", lambda t: changed(t, "IFCQUANTITYVOLUME", r",([0-9.E-]+),\$\)", ",0.,$)")),
    ("quantity", lambda t: t.replace("IFCQUANTITYVOLUME", "IFCQUANTITYAREA", 1)),
    ("context", lambda t: changed(t, "IFCSHAPEREPRESENTATION", r"'Body'", "'Axis'")),
    ("shape", lambda t: changed(t, "IFCSHAPEREPRESENTATION", r"'(Brep|MappedRepresentation)'", "'AdvancedBrep'")),
    ("shape", lambda t: changed(t, "IFCWALL", r"(#\d+),\$,", lambda m: f"{m[1]},#{instance(t, 'IFCPRODUCTDEFINITIONSHAPE')[0]},")),
    ("shape", lambda t: changed(t, "IFCMEMBER", r",#\d+,'", ",$,'")),
    ("shape", lambda t: changed(t, "IFCOPENINGELEMENT", r",(#\d+),#\d+,\$,\.OPENING", lambda m: f",{m[1]},#{instance(t, 'IFCPRODUCTDEFINITIONSHAPE')[0]},$,.OPENING")),
    ("mapped", lambda t: changed(t, "IFCCARTESIANTRANSFORMATIONOPERATOR3D", r",#\d+", f",#{instance(t, 'IFCCARTESIANPOINT', 900)[0]}")),
    ("colour", lambda t: without(t, "IFCSTYLEDITEM")),
    ("closed", face_gone),
    ("closed", face_turned),
    ("closed", one_hole_less),
    ("inside-out", inside_out),
    ("flat", bent),
    ("lumps", two_lumps),
    ("face", hole_as_border),
    ("orphan", lambda t: again(t, "IFCCARTESIANPOINT")),
]


def main(name):
    text = pathlib.Path(name).read_text()
    if faults(text.encode()):
        print(f"{name} is not sound: {faults(text.encode())[0]}")
        return 1
    missed = 0
    for number, (rule, break_) in enumerate(BREAKS, 1):
        broken = break_(text)
        rules = {fault.rule for fault in faults(broken.encode())}
        if broken == text or rule not in rules:
            missed += 1
            print(f"break {number}: {rule} was not found, but {', '.join(sorted(rules)) or 'nothing'}")
    print(f"{len(BREAKS)} breaks, {missed} of them missed")
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))

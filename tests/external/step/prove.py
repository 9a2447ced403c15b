#!/usr/bin/env python3
"""Proves that the checker can fail: breaks a sound file in one way after another and asks for the right fault.

Use: prove.py FILE, an assembly of more than one product with bores.
"""
import re
import sys

from check_step import faults


def instance(text, type_, number=0):
    """(id, whole statement) of the numbered instance of one entity."""
    match = list(re.finditer(rf"#(\d+)={type_}\([^;]*\);\n", text))[number]
    return int(match.group(1)), match.group()


def changed(text, type_, pattern, by, number=0):
    """One instance rewritten by a regular expression, which must match."""
    _, statement = instance(text, type_, number)
    new, count = re.subn(pattern, by, statement, count=1, flags=re.DOTALL)
    assert count == 1, (type_, pattern)
    return text.replace(statement, new, 1)


def added(text, *statements):
    """Statements put at the end of the data, numbered from a million."""
    lines = "".join(f"#{1000000 + i}={s};\n" for i, s in enumerate(statements))
    head, tail = text.rsplit("ENDSEC;", 1)
    return head + lines + "ENDSEC;" + tail


def one_vertex_less(text):
    first, second = (instance(text, "VERTEX_POINT", n)[0] for n in (0, 2))
    return re.sub(rf"(=EDGE_CURVE\([^;]*)#{second}\b", rf"\1#{first}", text)


def two_lumps(text):
    shells = [instance(text, "CLOSED_SHELL", n)[1] for n in (0, 1)]
    lists = [re.search(r"\((#[^)]*)\)", s).group(1) for s in shells]
    return text.replace(shells[0], shells[0].replace(lists[0], lists[0] + "," + lists[1]))


def inside_out(text):
    text = re.sub(r"(=FACE_(OUTER_)?BOUND\([^;]*)\.T\.", r"\1.F.", text)
    swap = {"T": "F", "F": "T"}
    return re.sub(r"(=ADVANCED_FACE\([^;]*)\.([TF])\.", lambda m: f"{m[1]}.{swap[m[2]]}.", text)


def second_product(text):
    context = instance(text, "PRODUCT_CONTEXT")[0]
    view = instance(text, "PRODUCT_DEFINITION_CONTEXT")[0]
    return added(text, f"PRODUCT('X','X','',(#{context}))", "PRODUCT_DEFINITION_FORMATION('','',#1000000)",
                 f"PRODUCT_DEFINITION('design','',#1000001,#{view})")


def one_context(text):
    """The first placement's two representations put into the same context."""
    relation = re.search(r"REPRESENTATION_RELATIONSHIP\('','',#(\d+),#(\d+)\)", text)
    child, parent = (re.search(rf"#{n}=[A-Z_]*SHAPE_REPRESENTATION\([^;]*,(#\d+)\);", text)
                     for n in relation.groups())
    return text.replace(child.group(), child.group().replace(child.group(1) + ");", parent.group(1) + ");"))


def misplaced(text):
    """The first placement aims at the part's own origin instead of a place in the wall."""
    return changed(text, "ITEM_DEFINED_TRANSFORMATION", r"(#\d+),#\d+\);", r"\1,\1);")


BREAKS = [
    ("ascii", lambda t: t.replace("'Wall A'", "'W\u00e4nd A'", 1)),
    ("ascii", lambda t: t.replace("\n", "\r\n", 1)),
    ("syntax", lambda t: t.replace(";\nDATA", "\nDATA", 1)),
    ("syntax", lambda t: t[: len(t) // 2]),
    ("syntax", lambda t: t + "#1=X();\n"),
    ("syntax", lambda t: re.sub(r"=\(LENGTH_UNIT\(\)(NAMED_UNIT\(\*\))", r"=(\1LENGTH_UNIT()", t, count=1)),
    ("string", lambda t: t.replace("'Wall A'", "'Wall \\X2\\00E\\X0\\'", 1)),
    ("string", lambda t: t.replace("'Wall A'", "'Wall \\A'", 1)),
    ("header", lambda t: t.replace("'roundlay ", "'Unknown ")),
    ("header", lambda t: re.sub(r"FILE_SCHEMA\(.*\);\n", "", t)),
    ("duplicate", lambda t: added(t, "DIRECTION('',(1.,0.,0.))").replace("#1000000=", "#1=")),
    ("dangling", lambda t: changed(t, "VERTEX_POINT", r"#\d+\);", "#999999);")),
    ("entity", lambda t: added(t, "SPHERE('',1.)")),
    ("attributes", lambda t: changed(t, "VERTEX_POINT", r"'',", "")),
    ("attributes", lambda t: changed(t, "CIRCLE", r"(\d+)\.\);", r"\1);")),
    ("attributes", lambda t: changed(t, "EDGE_LOOP", r"\(#[^)]*\)", "()")),
    ("attributes", lambda t: changed(t, "PLANE", r",#\d+", ",#1")),
    ("forbidden", lambda t: t.replace("=CLOSED_SHELL(", "=OPEN_SHELL(", 1)),
    ("edge-use", lambda t: changed(t, "ORIENTED_EDGE", r"\.[TF]\.", lambda m: ".F." if m[0] == ".T." else ".T.")),
    ("edge-use", lambda t: changed(t, "CLOSED_SHELL", r"\(#\d+,", "(")),
    ("loop", lambda t: changed(t, "EDGE_LOOP", r"\((#\d+),(#\d+),(#\d+)", r"(\1,\3,\2")),
    ("lump", two_lumps),
    ("euler", one_vertex_less),
    ("curve", lambda t: changed(t, "CIRCLE", r",[\d.]+\);", ",17.);")),
    ("curve", lambda t: changed(t, "ELLIPSE", r"(#\d+),[\d.]+,", r"\1,20.,") if "=ELLIPSE(" in t else
     changed(t, "CIRCLE", r",[\d.]+\);", ",15.);")),
    ("curve", lambda t: changed(t, "LINE", r"#\d+\);", f"#{instance(t, 'VECTOR', 1)[0]});")),
    ("surface", lambda t: changed(t, "CYLINDRICAL_SURFACE", r",[\d.]+\);", ",17.);")),
    ("sense", lambda t: changed(t, "ADVANCED_FACE", r"\.T\.", ".F.")),
    ("sense", lambda t: re.sub(r"(=ADVANCED_FACE\([^;]*)\.F\.", r"\1.T.", t, count=1)),
    ("inside-out", inside_out),
    ("validation", lambda t: re.sub(r"VOLUME_MEASURE\((\d)", r"VOLUME_MEASURE(\g<1>1", t, count=1)),
    ("validation", lambda t: changed(t, "PROPERTY_DEFINITION", r"'volume'", "'weight'", number=-1)
     if "'volume'" in instance(t, "PROPERTY_DEFINITION", -1)[1]
     else t.replace("'geometric validation property','volume'", "'geometric validation property','weight'", 1)),
    ("stray", lambda t: added(t, f"MANIFOLD_SOLID_BREP('X',#{instance(t, 'CLOSED_SHELL')[0]})")),
    ("one-solid", lambda t: changed(t, "ADVANCED_BREP_SHAPE_REPRESENTATION", r"\((#\d+),#\d+\)", r"(\1)")),
    ("product-id", lambda t: re.sub(r"(=PRODUCT\()'[^']*'", r"\1'same'", t)),
    ("name", lambda t: changed(t, "PRODUCT", r"('[^']*'),'[^']*'", r"\1,''")),
    ("name", lambda t: changed(t, "NEXT_ASSEMBLY_USAGE_OCCURRENCE", r"('[^']*'),'[^']*'", r"\1,''")),
    ("name", lambda t: changed(t, "NEXT_ASSEMBLY_USAGE_OCCURRENCE", r"('[^']*'),'[^']*'", r"\1,'=>[0:1:1:3]'")),
    ("name", lambda t: changed(t, "MANIFOLD_SOLID_BREP", r"'[^']*'", "''")),
    ("tree", second_product),
    ("placement", one_context),
    ("placement", misplaced),
    ("unit", lambda t: t.replace(".MILLI.", "$", 1)),
    ("header", lambda t: t.replace("AUTOMOTIVE_DESIGN {", "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF {")),
    ("children", lambda t: re.sub(r"COUNT_MEASURE\((\d)", r"COUNT_MEASURE(\g<1>7", t, count=1)),
    ("layer", lambda t: re.sub(r"(=PRESENTATION_LAYER_ASSIGNMENT\('[^']*','',)\([^)]*\)",
                               rf"\1(#{instance(t, 'MANIFOLD_SOLID_BREP')[0]})", t)),
    ("layer", lambda t: re.sub(r"(=PRESENTATION_LAYER_ASSIGNMENT\()'[^']*'", r"\1'same'", t)),
    ("colour", lambda t: changed(t, "COLOUR_RGB", r"'',[\d.]+", "'',1.5")),
    ("colour", lambda t: t.replace("=STYLED_ITEM('colour',", "=STYLED_ITEM('x',", 1).replace(
        instance(t, "STYLED_ITEM")[1].split(",")[-1], instance(t, "STYLED_ITEM", 1)[1].split(",")[-1], 1)),
    ("property", lambda t: changed(t, "PROPERTY_DEFINITION", r"'species'", "'kind'")),
    ("property", lambda t: added(t, re.search(r"GENERAL_PROPERTY_ASSOCIATION\([^;]*\)", t).group())),
    ("property", lambda t: added(t, f"PROPERTY_DEFINITION('x','',#{instance(t, 'PRODUCT_DEFINITION')[0]})")),
]


def main(path):
    with open(path, "rb") as file:
        text = file.read().decode("ascii")
    failures = [f"the sound file: {fault}" for fault in faults(text.encode("ascii"))]
    for number, (rule, break_) in enumerate(BREAKS, 1):
        broken = break_(text)
        if broken == text:
            failures.append(f"break {number} ({rule}) changes nothing")
            continue
        found = {fault.rule for fault in faults(broken.encode("utf-8"))}
        if rule not in found:
            failures.append(f"break {number} should be a fault of {rule}, found {sorted(found) or 'none'}")
    for failure in failures:
        print(failure)
    print(f"{len(BREAKS)} ways to break a file, {len(failures)} not found as they should")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))

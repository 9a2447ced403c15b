#!/usr/bin/env python3
"""Checks STEP files without any CAD kernel.

Use: check_step.py [--json] FILE ...

Prints every fault as FILE: RULE: TEXT and exits with 1 where there is one. --json prints instead what each sound
file holds: products, uses, volumes, names.
"""
import json
import sys

import schema
from part21 import Fault, File
from products import Products
from solids import Solid

# With the object identifiers of AP214 as it stood since 2001 and of AP242 edition 2 (as exchanged files have them).
SCHEMAS = {
    "AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }": "automotive_design",
    "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 3 1 4 }":
        "ap242_managed_model_based_3d_engineering",
}
HEADER = ("FILE_DESCRIPTION", "FILE_NAME", "FILE_SCHEMA")
FORBIDDEN = ("OPEN_SHELL", "SHELL_BASED_SURFACE_MODEL", "GEOMETRIC_CURVE_SET", "GEOMETRIC_SET", "FACETED_BREP")
# Two closed forms agree to this, relative: some hundred terms of 16 digits, or of the library's 12.
AGREES = 1e-9


def header_faults(file):
    if tuple(file.header) != HEADER:
        yield Fault("header", f"holds {', '.join(file.header)}")
        return
    name, stamp, authors, organisations, preprocessor, system, _ = file.header["FILE_NAME"]
    if not name or not stamp or not authors or not organisations:
        yield Fault("header", "FILE_NAME lacks a name, time, author or organisation")
    if not preprocessor or not system.startswith("roundlay "):
        yield Fault("header", f"the originating system is {system!r}")
    schema_name = file.header["FILE_SCHEMA"][0][0]
    if schema_name not in SCHEMAS:
        yield Fault("header", f"the schema is {schema_name!r}")
        return
    protocols = [a[1] for _, a in file.of("APPLICATION_PROTOCOL_DEFINITION")]
    if protocols != [SCHEMAS[schema_name]]:
        yield Fault("header", f"the schema is {schema_name!r}, and the protocol {protocols}")


def accuracy_of(file):
    return max((a[0].value for _, a in file.of("UNCERTAINTY_MEASURE_WITH_UNIT")), default=1e-5)


def shape_faults(file, products):
    used = {"CLOSED_SHELL": 0, "MANIFOLD_SOLID_BREP": 0}
    for leaf in products.leaves:
        for id_ in products.solids(leaf):
            solid = Solid(file, id_)
            found = list(solid.topology()) or list(solid.geometry(accuracy_of(file)))
            yield from found
            if not found:
                yield from measure_faults(solid, products.stated(leaf))
            used["MANIFOLD_SOLID_BREP"] += 1
            used["CLOSED_SHELL"] += 1
    for type_, count in used.items():
        total = sum(1 for _ in file.of(type_))
        if total != count:
            yield Fault("stray", f"{total} {type_}, {count} of them in products")


def measure_faults(solid, stated):
    try:
        measures = solid.measures()
    except Fault as fault:
        yield fault
        return
    if measures is None:
        return  # the library's faces: read back by the library instead
    if measures[0] <= 0:
        yield Fault("inside-out", f"solid {solid.name!r} has the volume {measures[0]}")
    for what, value in zip(("volume", "surface area"), measures):
        if what not in stated:
            yield Fault("validation", f"solid {solid.name!r} states no {what}")
        elif abs(stated[what] / value - 1) > AGREES:
            yield Fault("validation", f"solid {solid.name!r}: stated {what} {stated[what]}, found {value}")


def faults(raw):
    """All faults of a file's bytes."""
    try:
        file = File(raw)
    except Fault as fault:
        return [fault]
    found = list(header_faults(file))
    for type_ in FORBIDDEN:
        found += [Fault("forbidden", f"#{id_} is a {type_}") for id_, _ in file.of(type_)]
    found += schema.check(file)
    if found:
        return found
    products = Products(file)
    return list(products.check()) + list(shape_faults(file, products))


def contents(raw):
    """What a sound file holds."""
    file = File(raw)
    products = Products(file)
    leaves = []
    for leaf in products.leaves:
        solid = Solid(file, products.solids(leaf)[0])
        measures = solid.measures()
        leaves.append({"id": file.get(products.product_of[leaf], "PRODUCT")[0], "name": products.name(leaf),
                       "description": products.description(leaf), "genus": solid.genus(),
                       "faces": len(solid.faces), "volume": measures and measures[0],
                       "stated": products.stated(leaf), "attributes": products.attributes(leaf)})
    uses = [{"name": a[1], "in": products.name(a[3]), "of": products.name(a[4]),
             "attributes": products.attributes(use)} for use, a in products.uses]
    return {"root": products.name(products.roots[0]), "products": leaves, "uses": uses,
            "header": [str(v) if not isinstance(v, list) else [str(w) for w in v]
                       for v in file.header["FILE_NAME"]]}


def main(arguments):
    as_json = arguments[:1] == ["--json"]
    good = True
    for path in arguments[1:] if as_json else arguments:
        with open(path, "rb") as file:
            raw = file.read()
        found = faults(raw)
        for fault in found:
            print(f"{path}: {fault}", file=sys.stderr if as_json else sys.stdout)
        good = good and not found
        if as_json and not found:
            print(json.dumps(contents(raw), sort_keys=True))
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

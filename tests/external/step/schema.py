"""Entities of AUTOMOTIVE_DESIGN (ISO 10303-214:2010, third edition), which ISO 10303-242 has with the same
attributes, as far as files of this program may use them:
attributes in the order of the long form, inherited ones first, with their kinds. Anything else in a file is a
fault, so that a new entity is looked up in the standard before it is used.

Kinds: s text, s? optional text, r real, i integer, b boolean, l logical, e enumeration, * derived, r3 list of three
reals, [i] [r] lists, t:NAME typed measure, #A|B reference to one of these entities, [#A|B] list of such, #? any
reference, ? behind a reference: optional.
"""
from part21 import DERIVED, UNSET, Enumeration, Fault, Ref, Text, Typed, references

PLACE = "#AXIS2_PLACEMENT_3D"
CURVE = "#LINE|CIRCLE|ELLIPSE|B_SPLINE_CURVE_WITH_KNOTS"
SURFACE = "#PLANE|CYLINDRICAL_SURFACE"
SHAPE = "#SHAPE_REPRESENTATION|ADVANCED_BREP_SHAPE_REPRESENTATION"
UNIT = "#LENGTH_UNIT|PLANE_ANGLE_UNIT|SOLID_ANGLE_UNIT|DERIVED_UNIT"
CONTEXT = "#GEOMETRIC_REPRESENTATION_CONTEXT"

ENTITIES = {
    # application, product and assembly (parts 41, 44)
    "APPLICATION_CONTEXT": "s",
    "APPLICATION_PROTOCOL_DEFINITION": "s s i #APPLICATION_CONTEXT",
    "PRODUCT_CONTEXT": "s #APPLICATION_CONTEXT s",
    "PRODUCT_DEFINITION_CONTEXT": "s #APPLICATION_CONTEXT s",
    "PRODUCT": "s s s? [#PRODUCT_CONTEXT]",
    "PRODUCT_RELATED_PRODUCT_CATEGORY": "s s? [#PRODUCT]",
    "PRODUCT_DEFINITION_FORMATION": "s s? #PRODUCT",
    "PRODUCT_DEFINITION": "s s? #PRODUCT_DEFINITION_FORMATION #PRODUCT_DEFINITION_CONTEXT",
    "NEXT_ASSEMBLY_USAGE_OCCURRENCE": "s s s? #PRODUCT_DEFINITION #PRODUCT_DEFINITION s?",
    # properties (41, 43)
    "PRODUCT_DEFINITION_SHAPE": "s s? #PRODUCT_DEFINITION|NEXT_ASSEMBLY_USAGE_OCCURRENCE",
    "SHAPE_DEFINITION_REPRESENTATION": "#PRODUCT_DEFINITION_SHAPE " + SHAPE,
    "PROPERTY_DEFINITION": "s s? #PRODUCT_DEFINITION|NEXT_ASSEMBLY_USAGE_OCCURRENCE|PRODUCT_DEFINITION_SHAPE|DOCUMENT_FILE",
    # shapes in other files (41)
    "DOCUMENT": "s s s? #DOCUMENT_TYPE",
    "DOCUMENT_TYPE": "s",
    "DOCUMENT_FILE": "s s s? #DOCUMENT_TYPE s s?",
    "DOCUMENT_PRODUCT_EQUIVALENCE": "s s? #DOCUMENT #PRODUCT_DEFINITION_FORMATION",
    "PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS":
        "s s? #PRODUCT_DEFINITION_FORMATION #PRODUCT_DEFINITION_CONTEXT [#DOCUMENT_FILE]",
    "IDENTIFICATION_ROLE": "s s?",
    "EXTERNAL_SOURCE": "n:IDENTIFIER",
    "APPLIED_EXTERNAL_IDENTIFICATION_ASSIGNMENT": "s #IDENTIFICATION_ROLE #EXTERNAL_SOURCE [#DOCUMENT_FILE]",
    "APPLIED_DOCUMENT_REFERENCE": "#DOCUMENT s [#PRODUCT_DEFINITION]",
    "OBJECT_ROLE": "s s?",
    "ROLE_ASSOCIATION": "#OBJECT_ROLE #APPLIED_DOCUMENT_REFERENCE",
    "VALUE_REPRESENTATION_ITEM": "s t:COUNT_MEASURE",
    "PROPERTY_DEFINITION_REPRESENTATION": "#PROPERTY_DEFINITION #REPRESENTATION",
    "GENERAL_PROPERTY": "s s s?",
    "GENERAL_PROPERTY_ASSOCIATION": "s s? #GENERAL_PROPERTY #PROPERTY_DEFINITION",
    "REPRESENTATION": "s [#DESCRIPTIVE_REPRESENTATION_ITEM|MEASURE_REPRESENTATION_ITEM|VALUE_REPRESENTATION_ITEM|CARTESIAN_POINT] " + CONTEXT + "|REPRESENTATION_CONTEXT",
    "SHAPE_REPRESENTATION": "s [" + PLACE + "] " + CONTEXT,
    "ADVANCED_BREP_SHAPE_REPRESENTATION": "s [#AXIS2_PLACEMENT_3D|MANIFOLD_SOLID_BREP] " + CONTEXT,
    "DESCRIPTIVE_REPRESENTATION_ITEM": "s s",
    "MEASURE_REPRESENTATION_ITEM": "s t:AREA_MEASURE|VOLUME_MEASURE " + UNIT,
    "ITEM_DEFINED_TRANSFORMATION": "s s? " + PLACE + " " + PLACE,
    "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION":
        "#REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION #PRODUCT_DEFINITION_SHAPE",
    "REPRESENTATION_RELATIONSHIP": "s s? " + SHAPE + " " + SHAPE,
    "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION": "#ITEM_DEFINED_TRANSFORMATION",
    "SHAPE_REPRESENTATION_RELATIONSHIP": "",
    # units and contexts (41, 43)
    "LENGTH_UNIT": "",
    "PLANE_ANGLE_UNIT": "",
    "SOLID_ANGLE_UNIT": "",
    "NAMED_UNIT": "*|#DIMENSIONAL_EXPONENTS",
    "CONVERSION_BASED_UNIT": "s #LENGTH_MEASURE_WITH_UNIT",
    "LENGTH_MEASURE_WITH_UNIT": "t:LENGTH_MEASURE #LENGTH_UNIT",
    "DIMENSIONAL_EXPONENTS": "r r r r r r r",
    "SI_UNIT": "e? e",
    "DERIVED_UNIT": "[#DERIVED_UNIT_ELEMENT]",
    "DERIVED_UNIT_ELEMENT": "#LENGTH_UNIT r",
    "UNCERTAINTY_MEASURE_WITH_UNIT": "t:LENGTH_MEASURE #LENGTH_UNIT s s?",
    "GEOMETRIC_REPRESENTATION_CONTEXT": "i",
    "GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT": "[#UNCERTAINTY_MEASURE_WITH_UNIT]",
    "GLOBAL_UNIT_ASSIGNED_CONTEXT": "[" + UNIT + "]",
    "REPRESENTATION_CONTEXT": "s s",
    # geometry and topology (42)
    "CARTESIAN_POINT": "s r3",
    "DIRECTION": "s r3",
    "VECTOR": "s #DIRECTION r",
    "AXIS2_PLACEMENT_3D": "s #CARTESIAN_POINT #DIRECTION? #DIRECTION?",
    "LINE": "s #CARTESIAN_POINT #VECTOR",
    "CIRCLE": "s " + PLACE + " r",
    "ELLIPSE": "s " + PLACE + " r r",
    "B_SPLINE_CURVE_WITH_KNOTS": "s i [#CARTESIAN_POINT] e l l [i] [r] e",
    "PLANE": "s " + PLACE,
    "CYLINDRICAL_SURFACE": "s " + PLACE + " r",
    "VERTEX_POINT": "s #CARTESIAN_POINT",
    "EDGE_CURVE": "s #VERTEX_POINT #VERTEX_POINT " + CURVE + " b",
    "ORIENTED_EDGE": "s * * #EDGE_CURVE b",
    "EDGE_LOOP": "s [#ORIENTED_EDGE]",
    "FACE_BOUND": "s #EDGE_LOOP b",
    "FACE_OUTER_BOUND": "s #EDGE_LOOP b",
    "ADVANCED_FACE": "s [#FACE_BOUND|FACE_OUTER_BOUND] " + SURFACE + " b",
    "CLOSED_SHELL": "s [#ADVANCED_FACE]",
    "MANIFOLD_SOLID_BREP": "s #CLOSED_SHELL",
    # appearance (46)
    "STYLED_ITEM": "s [#PRESENTATION_STYLE_ASSIGNMENT] #MANIFOLD_SOLID_BREP",
    "OVER_RIDING_STYLED_ITEM": "s [#PRESENTATION_STYLE_BY_CONTEXT] #MANIFOLD_SOLID_BREP #STYLED_ITEM",
    "PRESENTATION_STYLE_ASSIGNMENT": "[#SURFACE_STYLE_USAGE]",
    "PRESENTATION_STYLE_BY_CONTEXT": "[#SURFACE_STYLE_USAGE] #SHAPE_REPRESENTATION",
    "SURFACE_STYLE_USAGE": "e #SURFACE_SIDE_STYLE",
    "SURFACE_SIDE_STYLE": "s [#SURFACE_STYLE_FILL_AREA]",
    "SURFACE_STYLE_FILL_AREA": "#FILL_AREA_STYLE",
    "FILL_AREA_STYLE": "s [#FILL_AREA_STYLE_COLOUR]",
    "FILL_AREA_STYLE_COLOUR": "s #COLOUR_RGB",
    "COLOUR_RGB": "s r r r",
    "PRESENTATION_LAYER_ASSIGNMENT": "s s? [#MANIFOLD_SOLID_BREP]",
    "MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION":
        "s [#STYLED_ITEM|OVER_RIDING_STYLED_ITEM] " + CONTEXT,
}

BOOLEANS = {"b": {"T", "F"}, "l": {"T", "F", "U"}}
NUMBERS = {"r": float, "i": int}


def fits(file, kind, value):
    """Whether one parameter is of the kind."""
    if kind.endswith("?"):
        return value is UNSET or fits(file, kind[:-1], value)
    if kind.startswith("["):
        return isinstance(value, list) and bool(value) and all(fits(file, kind[1:-1], v) for v in value)
    if kind == "r3":
        return isinstance(value, list) and len(value) == 3 and all(type(v) is float for v in value)
    if kind == "s":
        return isinstance(value, Text)
    if kind in NUMBERS:
        return type(value) is NUMBERS[kind]
    if kind in BOOLEANS:
        return isinstance(value, Enumeration) and value in BOOLEANS[kind]
    if kind == "e":
        return isinstance(value, Enumeration)
    if kind.startswith("*|"):
        return value is DERIVED or fits(file, kind[2:], value)
    if kind == "*":
        return value is DERIVED
    if kind.startswith("n:"):
        return isinstance(value, Typed) and value.type == kind[2:] and isinstance(value.value, Text)
    if kind.startswith("t:"):
        return isinstance(value, Typed) and value.type in kind[2:].split("|") and type(value.value) is float
    if kind.startswith("#"):
        return isinstance(value, Ref) and bool(set(kind[1:].split("|")) & set(file.data[value]))
    raise AssertionError(kind)


def check(file):
    """Faults of references, entities and attributes."""
    for id_, parts in file.data.items():
        for attributes in parts.values():
            for ref in references(attributes):
                if ref not in file.data:
                    yield Fault("dangling", f"#{id_} refers to #{ref}, which is not there")
                    return
    for id_, parts in file.data.items():
        for type_, attributes in parts.items():
            kinds = ENTITIES.get(type_)
            if kinds is None:
                yield Fault("entity", f"#{id_}: {type_} is not among the entities looked up in the schema")
                continue
            kinds = kinds.split()
            if len(kinds) != len(attributes):
                yield Fault("attributes", f"#{id_}: {type_} has {len(attributes)} attributes, not {len(kinds)}")
                continue
            for number, (kind, value) in enumerate(zip(kinds, attributes), 1):
                if not fits(file, kind, value):
                    yield Fault("attributes", f"#{id_}: attribute {number} of {type_} is no {kind}")

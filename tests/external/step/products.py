"""Products, assembly, names, units, colours and properties: what receivers are known to trip over, and the schema's
rules about them."""
from collections import Counter, defaultdict

from part21 import UNSET, Fault

VALUES = ("volume", "surface area")


class Products:
    """The tree of products of one file."""

    def __init__(self, file):
        self.file = file
        self.product_of = {}  # PRODUCT_DEFINITION -> PRODUCT
        for definition, attributes in file.of("PRODUCT_DEFINITION"):
            self.product_of[definition] = file.get(attributes[2], "PRODUCT_DEFINITION_FORMATION")[2]
        self.shape_of = {a[2]: id_ for id_, a in file.of("PRODUCT_DEFINITION_SHAPE")}
        self.representations = defaultdict(list)  # PRODUCT_DEFINITION_SHAPE -> representations
        for _, (shape, representation) in file.of("SHAPE_DEFINITION_REPRESENTATION"):
            self.representations[shape].append(representation)
        self.uses = list(file.of("NEXT_ASSEMBLY_USAGE_OCCURRENCE"))
        self.below = defaultdict(set)  # PRODUCT_DEFINITION -> those used in it
        for _, attributes in self.uses:
            self.below[attributes[3]].add(attributes[4])
        self.assemblies = set(self.below)
        used = {d for definitions in self.below.values() for d in definitions}
        self.roots = [d for d in self.product_of if d not in used]
        self.leaves = [d for d in self.product_of if d not in self.assemblies]
        self.files = dict(self.linked())  # PRODUCT_DEFINITION -> path of the file that its shape stands in
        self.values = defaultdict(list)  # what a property belongs to -> (name, description, item)
        for _, (property_, representation) in file.of("PROPERTY_DEFINITION_REPRESENTATION"):
            name, kind, owner = file.get(property_, "PROPERTY_DEFINITION")
            self.values[owner].append((name, kind, file.get(representation, "REPRESENTATION")[1][0]))

    def linked(self):
        """Each reference to a document, by the product that it is the shape of."""
        version_of = {a[2]: a[3] for _, a in self.file.of("DOCUMENT_PRODUCT_EQUIVALENCE")}
        file_of = {a[2]: a[4][0] for _, a in self.file.of("PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS")}
        for _, (document, _, products) in self.file.of("APPLIED_DOCUMENT_REFERENCE"):
            path = self.file.get(file_of[version_of[document]], "DOCUMENT_FILE")[0]
            for product in products:
                yield product, path

    def name(self, definition):
        return self.file.get(self.product_of[definition], "PRODUCT")[1]

    def solids(self, definition):
        """The MANIFOLD_SOLID_BREPs of one product."""
        found = []
        for representation in self.representations[self.shape_of.get(definition)]:
            for items in self.file.data[representation].values():
                found += [i for i in items[1] if "MANIFOLD_SOLID_BREP" in self.file.data[i]]
        return found

    def check(self):
        yield from self.check_names()
        yield from self.check_tree()
        yield from self.check_placements()
        yield from self.check_units()
        yield from self.check_colours()
        yield from self.check_properties()
        yield from self.check_layers()

    def check_names(self):
        products = [a for _, a in self.file.of("PRODUCT")]
        for id_, count in Counter(a[0] for a in products).items():
            if count > 1 or not id_.strip():
                yield Fault("product-id", f"product id {id_!r} stands {count} times")
        for attributes in products:
            if not attributes[1].strip():
                yield Fault("name", f"product {attributes[0]!r} has no name")
        names = Counter((a[3], a[1]) for _, a in self.uses)
        for (parent, name), count in names.items():
            if count > 1 or not name.strip() or "=>" in name:
                yield Fault("name", f"use {name!r} stands {count} times in #{parent}")
        for path, count in Counter(self.files.values()).items():
            if count > 1 or not path.strip():
                yield Fault("link", f"file {path!r} is referred to {count} times")
        for leaf in self.leaves:
            for solid in self.solids(leaf):
                name = self.file.get(solid, "MANIFOLD_SOLID_BREP")[0]
                if name != self.name(leaf):
                    yield Fault("name", f"solid {name!r} is in product {self.name(leaf)!r}")

    def check_tree(self):
        names = [self.name(root) for root in self.roots]
        if len(names) != 1 and names[1:] != [names[0] + " stock"]:
            yield Fault("tree", f"{len(self.roots)} products are used by no other")
        for leaf in self.leaves:
            if leaf in self.files:
                if self.solids(leaf):
                    yield Fault("one-solid", f"product {self.name(leaf)!r} has a solid here and in a file")
            elif len(self.solids(leaf)) != 1:
                yield Fault("one-solid", f"product {self.name(leaf)!r} has {len(self.solids(leaf))} solids")
        for assembly in self.assemblies:
            if self.solids(assembly):
                yield Fault("one-solid", f"assembly {self.name(assembly)!r} has a solid of its own")
        if self.roots and self.depth(self.roots[0]) > 3:
            yield Fault("tree", "deeper than shell, wall and piece")

    def depth(self, definition):
        return 1 + max((self.depth(d) for d in self.below.get(definition, ())), default=0)

    def check_placements(self):
        placed = {a[1]: a[0] for _, a in self.file.of("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION")}
        for use, attributes in self.uses:
            relation = placed.get(self.shape_of.get(use))
            if relation is None:
                yield Fault("placement", f"use {attributes[1]!r} has no placement")
                continue
            _, _, child, parent = self.file.get(relation, "REPRESENTATION_RELATIONSHIP")
            transformation = self.file.get(relation, "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION")[0]
            _, _, origin, target = self.file.get(transformation, "ITEM_DEFINED_TRANSFORMATION")
            child_items, child_context = self.items_and_context(child)
            parent_items, parent_context = self.items_and_context(parent)
            if child_context == parent_context:  # representation_relationship_with_transformation.wr1
                yield Fault("placement", f"use {attributes[1]!r} relates representations of one context")
            if origin not in child_items or target not in parent_items:
                yield Fault("placement", f"use {attributes[1]!r} is placed by items of other representations")
            if child not in self.representations[self.shape_of[attributes[4]]]:
                yield Fault("placement", f"use {attributes[1]!r} places another product's shape")
            if parent not in self.representations[self.shape_of[attributes[3]]]:
                yield Fault("placement", f"use {attributes[1]!r} is placed in another product's shape")

    def items_and_context(self, representation):
        (attributes,) = self.file.data[representation].values()
        return attributes[1], attributes[2]

    def check_units(self):
        for id_, (units,) in self.file.of("GLOBAL_UNIT_ASSIGNED_CONTEXT"):
            lengths = [self.file.data[u] for u in units if "LENGTH_UNIT" in self.file.data[u]]
            if len(lengths) != 1 or not (self.is_millimetre(lengths[0]) or self.is_inch(lengths[0])):
                yield Fault("unit", f"context #{id_} is in neither millimetres nor inches")

    @staticmethod
    def is_millimetre(unit):
        return unit.get("SI_UNIT") == ["MILLI", "METRE"]

    def is_inch(self, unit):
        """25.4 mm by the international agreement of 1959."""
        if unit.get("CONVERSION_BASED_UNIT", [""])[0] != "INCH":
            return False
        factor, of = self.file.get(unit["CONVERSION_BASED_UNIT"][1], "LENGTH_MEASURE_WITH_UNIT")
        exponents = self.file.get(unit["NAMED_UNIT"][0], "DIMENSIONAL_EXPONENTS")
        return factor.value == 25.4 and self.is_millimetre(self.file.data[of]) and exponents == [1.0] + 6 * [0.0]

    def check_colours(self):
        styled = Counter(a[2] for _, a in self.file.of("STYLED_ITEM"))
        for solid, _ in self.file.of("MANIFOLD_SOLID_BREP"):
            if styled[solid] != 1:
                yield Fault("colour", f"solid #{solid} has {styled[solid]} colours of its own")
        for id_, (_, *channels) in self.file.of("COLOUR_RGB"):
            if not all(0 <= c <= 1 for c in channels):
                yield Fault("colour", f"#{id_} is outside 0 to 1")
        shown = Counter(i for _, a in self.file.of("MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION")
                        for i in a[1])
        for id_, _ in self.file.of("STYLED_ITEM", "OVER_RIDING_STYLED_ITEM"):
            if shown[id_] != 1:
                yield Fault("colour", f"style #{id_} is in {shown[id_]} presentations")

    def check_properties(self):
        derived = Counter(a[3] for _, a in self.file.of("GENERAL_PROPERTY_ASSOCIATION"))
        for id_, (_, _, general, property_) in self.file.of("GENERAL_PROPERTY_ASSOCIATION"):
            if derived[property_] != 1:  # general_property_association.wr1
                yield Fault("property", f"#{property_} is associated {derived[property_]} times")
            if self.file.get(general, "GENERAL_PROPERTY")[1] != self.file.get(property_, "PROPERTY_DEFINITION")[0]:
                yield Fault("property", f"#{id_} ties properties of different names")  # .wr2
        yield from self.check_assemblies()
        represented = Counter(a[0] for _, a in self.file.of("PROPERTY_DEFINITION_REPRESENTATION"))
        for id_, (name, kind, _) in self.file.of("PROPERTY_DEFINITION"):
            if represented[id_] != 1:
                yield Fault("property", f"property {name!r} #{id_} has {represented[id_]} values")
            if kind == "user defined attribute" and derived[id_] != 1:
                yield Fault("property", f"attribute {name!r} #{id_} has no general property")

    def check_assemblies(self):
        """An assembly states how many products it is put together of, and what these measure together."""
        for assembly in self.assemblies:
            children = [a[4] for _, a in self.uses if a[3] == assembly]
            counts = [self.file.get(item, "VALUE_REPRESENTATION_ITEM")[1].value
                      for kind, what, item in self.values[self.shape_of.get(assembly)] if what == "number of children"]
            if counts != [float(len(children))]:
                yield Fault("children", f"{self.name(assembly)!r} states {counts} children and has {len(children)}")
            for what in VALUES:
                total, stated = sum(self.stated(c).get(what, 0) for c in children), self.stated(assembly).get(what, 0)
                if abs(total - stated) > 1e-9 * total:
                    yield Fault("validation", f"{self.name(assembly)!r} states {what} {stated}, its parts {total}")

    def check_layers(self):
        on = Counter(s for _, a in self.file.of("PRESENTATION_LAYER_ASSIGNMENT") for s in a[2])
        for solid, _ in self.file.of("MANIFOLD_SOLID_BREP"):
            if not on[solid]:
                yield Fault("layer", f"solid #{solid} lies on no layer")
        names = Counter(a[0] for _, a in self.file.of("PRESENTATION_LAYER_ASSIGNMENT"))
        for name, count in names.items():
            if count > 1 or not name.strip():
                yield Fault("layer", f"layer {name!r} stands {count} times")

    def stated(self, definition):
        """{"volume": mm3, "surface area": mm2} from the validation properties."""
        return {what: self.file.get(item, "MEASURE_REPRESENTATION_ITEM")[1].value
                for _, what, item in self.values[self.shape_of.get(definition)] if what in VALUES}

    def attributes(self, owner):
        """User defined attributes of a PRODUCT_DEFINITION or NEXT_ASSEMBLY_USAGE_OCCURRENCE."""
        return {name: self.file.get(item, "DESCRIPTIVE_REPRESENTATION_ITEM")[1]
                for name, kind, item in self.values[owner] if kind == "user defined attribute"}

    def description(self, definition):
        text = self.file.get(self.product_of[definition], "PRODUCT")[2]
        return "" if text is UNSET else text

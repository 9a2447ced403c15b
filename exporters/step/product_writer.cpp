#include "exporters/step/product_writer.h"

#include "exporters/step/boundary_writer.h"
#include "exporters/step/common_writer.h"
#include "exporters/step/library_solid.h"
#include "exporters/step/link_writer.h"
#include "exporters/step/property_writer.h"
#include "exporters/step/style_writer.h"

#include <algorithm>

namespace roundlay::step {

using part21::Ref;

namespace {

/// One product's own instances that others refer to.
struct Product {
    Ref definition, shape, context;
    Ref origin; ///< the placement it is placed by
    Ref representation;
    Ref solid; ///< parts only
    Measures measures;
};

class TreeWriter {
  public:
    TreeWriter(part21::DataWriter &data, const ProductTree &tree, const std::vector<PartSolid> &solids,
               const Extras &extras)
        : data_(data), tree_(tree), solids_(solids), extras_(extras),
          commons_(add_commons(data, extras.schema, extras.unit)), properties_(data, commons_.length),
          styles_(data), links_(data, extras.schema) {}

    void write() {
        for (const Part &part : tree_.parts)
            parts_.push_back(write_part(part));
        use_colours_.resize(parts_.size());
        std::vector<Product> groups;
        for (const Group &group : tree_.groups)
            groups.push_back(write_group(group));
        if (!groups.empty()) write_whole(groups);
        for (std::size_t p = 0; p < parts_.size(); ++p)
            if (tree_.parts[p].file.empty())
                styles_.add(tree_.parts[p].colour, parts_[p].solid, parts_[p].context, use_colours_[p]);
        write_layers();
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    Product write_product(const std::string &id, const std::string &name, const std::string &description) {
        const Ref product =
            data_.add("PRODUCT", id, name, description, std::vector{commons_.product_context});
        data_.add("PRODUCT_RELATED_PRODUCT_CATEGORY", "part", part21::Unset{}, std::vector{product});
        const Ref version = data_.add("PRODUCT_DEFINITION_FORMATION", tree_.revision, "", product);
        Product made;
        made.definition = data_.add("PRODUCT_DEFINITION", "design", "", version, commons_.definition_context);
        made.shape = data_.add("PRODUCT_DEFINITION_SHAPE", "", "", made.definition);
        made.context = add_context(data_, commons_, id);
        made.origin = add_placement(data_, Frame{});
        return made;
    }

    /// Those that are written here.
    static std::vector<std::string> layers_of(const Part &part) {
        return part.file.empty() ? part.layers : std::vector<std::string>();
    }

    /// In the order in which they come first.
    void write_layers() {
        std::vector<std::pair<std::string, std::vector<Ref>>> layers;
        for (std::size_t p = 0; p < parts_.size(); ++p)
            for (const std::string &name : layers_of(tree_.parts[p])) {
                auto layer = std::ranges::find(layers, name, &decltype(layers)::value_type::first);
                if (layer == layers.end()) layer = layers.insert(layer, {name, {}});
                layer->second.push_back(parts_[p].solid);
            }
        for (const auto &[name, solids] : layers)
            data_.add("PRESENTATION_LAYER_ASSIGNMENT", name, "", solids);
    }

    void represent(Product &product, const char *type, const std::string &name,
                   const std::vector<Ref> &items) {
        product.representation = data_.add(type, name, items, product.context);
        data_.add("SHAPE_DEFINITION_REPRESENTATION", product.shape, product.representation);
    }

    Product write_part(const Part &part) {
        Product made = write_product(part.id, part.name, part.description);
        const PartSolid &solid = solids_[at(part.body)];
        made.measures = solid.measures;
        if (part.file.empty())
            write_solid(part, solid, made);
        else
            write_link(part, made);
        if (extras_.attributes) properties_.add_attributes(part.attributes, made.definition, made.context);
        if (extras_.validation) properties_.add_validation(made.measures, made.shape, made.context);
        return made;
    }

    void write_link(const Part &part, Product &made) {
        represent(made, "SHAPE_REPRESENTATION", part.name, {made.origin});
        links_.add(made.definition, part.file);
    }

    void write_solid(const Part &part, const PartSolid &solid, Product &made) {
        made.solid = solid.border ? add_solid(data_, *solid.border, part.name, solid.faces)
                                  : add_library_solid(data_, solid.built, part.name, solid.faces);
        represent(made, "ADVANCED_BREP_SHAPE_REPRESENTATION", part.name, {made.origin, made.solid});
    }

    /// Of an assembly, behind all that it is put together of.
    void write_checks(const Product &assembly, std::size_t children) {
        if (!extras_.validation) return;
        properties_.add_validation(assembly.measures, assembly.shape, assembly.context);
        properties_.add_children(children, assembly.shape, assembly.context);
    }

    static void add_measures(Measures &to, const Measures &of, const Frame &placed) {
        const double whole = to.volume + of.volume;
        to.centroid = (1 / whole) * (to.volume * to.centroid + of.volume * placed.to_world(of.centroid));
        to.volume = whole;
        to.area += of.area;
    }

    Product write_group(const Group &group) {
        Product made = write_product(group.id, group.name, "");
        std::vector<Ref> items{made.origin};
        for (const Use &use : group.uses)
            items.push_back(add_placement(data_, use.frame));
        represent(made, "SHAPE_REPRESENTATION", group.name, items);
        for (std::size_t u = 0; u < group.uses.size(); ++u)
            write_use(group.uses[u], made, items[u + 1]);
        for (const Use &use : group.uses)
            add_measures(made.measures, parts_[at(use.part)].measures, use.frame);
        write_checks(made, group.uses.size());
        return made;
    }

    void write_use(const Use &use, const Product &group, Ref placement) {
        const Product &part = parts_[at(use.part)];
        const Placed placed = place(use.name, group, part, placement);
        if (extras_.attributes) properties_.add_attributes(use.attributes, placed.occurrence, group.context);
        if (!use.colour || !tree_.parts[at(use.part)].file.empty()) return; // the solid's file says its own
        const Ref own = data_.add("SHAPE_REPRESENTATION", "", std::vector{placement}, part.context);
        data_.add("SHAPE_DEFINITION_REPRESENTATION", placed.shape, own);
        use_colours_[at(use.part)].push_back({*use.colour, own});
    }

    void write_whole(const std::vector<Product> &groups) {
        Product whole = write_product(tree_.id, tree_.name, "");
        std::vector<Ref> items{whole.origin};
        for (const Group &group : tree_.groups)
            items.push_back(add_placement(data_, group.frame));
        represent(whole, "SHAPE_REPRESENTATION", tree_.name, items);
        for (std::size_t g = 0; g < groups.size(); ++g)
            place(tree_.groups[g].name, whole, groups[g], items[g + 1]);
        for (std::size_t g = 0; g < groups.size(); ++g)
            add_measures(whole.measures, groups[g].measures, tree_.groups[g].frame);
        write_checks(whole, groups.size());
    }

    struct Placed {
        Ref occurrence, shape;
    };

    Placed place(const std::string &name, const Product &parent, const Product &child, Ref placement) {
        Placed placed;
        placed.occurrence = data_.add("NEXT_ASSEMBLY_USAGE_OCCURRENCE", name, name, "", parent.definition,
                                      child.definition, part21::Unset{});
        placed.shape =
            data_.add("PRODUCT_DEFINITION_SHAPE", "Placement", "Placement of an item", placed.occurrence);
        const Ref transformation = data_.add("ITEM_DEFINED_TRANSFORMATION", "", "", child.origin, placement);
        const Ref relation =
            data_.complex()
                .part("REPRESENTATION_RELATIONSHIP", "", "", child.representation, parent.representation)
                .part("REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION", transformation)
                .part("SHAPE_REPRESENTATION_RELATIONSHIP")
                .end();
        data_.add("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION", relation, placed.shape);
        return placed;
    }

    part21::DataWriter &data_;
    const ProductTree &tree_;
    const std::vector<PartSolid> &solids_;
    const Extras &extras_;
    Commons commons_;
    PropertyWriter properties_;
    StyleWriter styles_;
    LinkWriter links_;
    std::vector<Product> parts_;
    std::vector<std::vector<UseColour>> use_colours_; ///< by part
};

/// About what a piece of the usual shape takes, so that the text seldom moves while it grows.
constexpr std::size_t usual_part = 24'000, usual_use = 2'000;

} // namespace

std::string data_of(const ProductTree &tree, const std::vector<PartSolid> &solids, const Extras &extras) {
    part21::DataWriter data;
    std::size_t uses = 0;
    for (const Group &group : tree.groups)
        uses += group.uses.size();
    data.reserve(tree.parts.size() * usual_part + uses * usual_use);
    TreeWriter(data, tree, solids, extras).write();
    return data.take();
}

} // namespace roundlay::step

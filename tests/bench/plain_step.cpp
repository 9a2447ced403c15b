#include "tests/bench/plain_step.h"

#include <BRep_Builder.hxx>
#include <Interface_Static.hxx>
#include <STEPControl_Writer.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS_Compound.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Ax3.hxx>
#include <gp_Trsf.hxx>

#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <stdexcept>

namespace roundlay::bench {

namespace {

gp_Trsf placement(const Frame &f) {
    gp_Trsf t;
    t.SetTransformation(
        gp_Ax3({f.origin.x, f.origin.y, f.origin.z}, {f.z.x, f.z.y, f.z.z}, {f.x.x, f.x.y, f.x.z}), gp_Ax3());
    return t;
}

/// The library reports each transfer on standard output; a bench must not.
class Hushed {
  public:
    Hushed() : before_(std::cout.rdbuf(nullptr)) {}
    ~Hushed() { std::cout.rdbuf(before_); }
    Hushed(const Hushed &) = delete;
    Hushed &operator=(const Hushed &) = delete;

  private:
    std::streambuf *before_;
};

} // namespace

std::size_t write_plain_step(const Layout &layout, const std::vector<Solid> &solids) {
    BRep_Builder builder;
    TopoDS_Compound all;
    builder.MakeCompound(all);
    for (const auto i : layout.pieces.indices())
        builder.Add(all, solids[i.at()].shape().Moved(TopLoc_Location(placement(layout.pieces[i].frame))));
    const std::filesystem::path path = std::filesystem::temp_directory_path() / "roundlay-bench-plain.step";
    const Hushed hushed;
    STEPControl_Writer writer;
    if (writer.Transfer(all, STEPControl_AsIs) != IFSelect_RetDone ||
        writer.Write(path.c_str()) != IFSelect_RetDone)
        throw std::runtime_error("the library could not write the plain STEP file");
    const std::size_t size = std::filesystem::file_size(path);
    std::filesystem::remove(path);
    return size;
}

} // namespace roundlay::bench

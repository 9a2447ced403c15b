#include "exporters/registry/registry.h"

#include "exporters/registry/exporters.h"

namespace roundlay {

std::span<const Exporter> all_exporters() {
    return exporters_in_order();
}

const Exporter *exporter_named(std::string_view name) {
    for (const Exporter &exporter : all_exporters())
        if (exporter.name == name) return &exporter;
    return nullptr;
}

ExportFailure stopped() {
    return {Trouble::cancelled, "stopped; nothing was written"};
}

std::optional<ExportFailure> add_file(OutputFolder &folder, std::string_view name, std::string_view bytes,
                                      std::string_view what) {
    if (auto error = folder.add(name, bytes, what)) return ExportFailure{Trouble::file, error->message};
    return {};
}

} // namespace roundlay

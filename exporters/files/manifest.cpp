#include "exporters/files/manifest.h"

#include "exporters/files/safe_file.h"
#include "exporters/files/sha256.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace roundlay {

namespace {

using Json = nlohmann::ordered_json;

constexpr int format = 1;
constexpr std::size_t largest_file = std::size_t{1} << 32;

Json to_json(const OutputFile &f) {
    Json j = {
        {"file", f.name}, {"what", f.what}, {"exporter", f.maker}, {"bytes", f.bytes}, {"sha256", f.sha256}};
    if (!f.made_from.empty()) j["made_from"] = f.made_from;
    return j;
}

OutputFile file_of(const Json &j) {
    return {j.at("file").get<std::string>(),     j.at("what").get<std::string>(),
            j.at("exporter").get<std::string>(), j.at("bytes").get<std::uint64_t>(),
            j.at("sha256").get<std::string>(),   j.value("made_from", std::string())};
}

/// A manifest may have been tampered with: names that leave the folder are never touched.
bool stays_inside(const std::filesystem::path &name) {
    return name.is_relative() &&
           std::none_of(name.begin(), name.end(), [](auto &part) { return part == ".."; });
}

struct Found {
    std::uint64_t bytes = 0;
    std::string sha256;
    bool is(const OutputFile &file) const { return bytes == file.bytes && sha256 == file.sha256; }
};

std::optional<Found> found_in(const std::filesystem::path &folder, const std::string &name) {
    const auto bytes = read_file(folder / name, largest_file);
    const auto *text = std::get_if<std::string>(&bytes);
    if (!text) return {};
    return Found{text->size(), sha256_hex(*text)};
}

bool unchanged(const std::filesystem::path &folder, const OutputFile &file) {
    if (!stays_inside(file.name)) return false;
    const auto found = found_in(folder, file.name);
    return found && found->is(file);
}

bool lists(const Manifest &manifest, const std::string &name, const Found &found) {
    return std::any_of(manifest.files.begin(), manifest.files.end(),
                       [&](const OutputFile &file) { return file.name == name && found.is(file); });
}

bool holds_a_manifest(const std::filesystem::path &file) {
    const auto bytes = read_file(file, largest_file);
    const auto *text = std::get_if<std::string>(&bytes);
    return text && parse_manifest(*text);
}

/// Something that cannot be read is no output of ours: those have the person's own rights.
bool is_own(const std::filesystem::path &folder, const std::vector<Manifest> &earlier,
            const OutputFile &wanted) {
    std::error_code unknown;
    if (std::filesystem::symlink_status(folder / wanted.name, unknown).type() ==
        std::filesystem::file_type::not_found)
        return false;
    if (wanted.name == manifest_name && holds_a_manifest(folder / wanted.name)) return false;
    const auto found = found_in(folder, wanted.name);
    if (!found)
        return !std::filesystem::is_directory(folder / wanted.name, unknown); // the commit tells of those
    return !found->is(wanted) && std::none_of(earlier.begin(), earlier.end(), [&](const Manifest &manifest) {
        return lists(manifest, wanted.name, *found);
    });
}

/// The document's digest, and behind it which state of the house.
std::string source_of(const Manifest &manifest) {
    return manifest.document_sha256 + (manifest.state.empty() ? "" : " " + manifest.state);
}

std::string made_from(const OutputFile &file, const Manifest &manifest) {
    return file.made_from.empty() ? source_of(manifest) : file.made_from;
}

} // namespace

std::string manifest_json(const Manifest &manifest) {
    Json files = Json::array();
    for (const OutputFile &file : manifest.files)
        files.push_back(to_json(file));
    Json all = {{"format", format},
                {"program", "roundlay"},
                {"version", manifest.version},
                {"shell", manifest.shell}};
    if (!manifest.state.empty()) all["state"] = manifest.state;
    all["document"] = {{"file", manifest.document}, {"sha256", manifest.document_sha256}};
    all["files"] = files;
    constexpr int indent = 2;
    return all.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::optional<Manifest> parse_manifest(std::string_view json) {
    try {
        const Json all = Json::parse(json);
        if (all.at("program") != "roundlay" || all.at("format") != format) return {};
        Manifest manifest{all.at("version"),
                          all.at("shell"),
                          all.at("document").at("file"),
                          all.at("document").at("sha256"),
                          {},
                          all.value("state", std::string())};
        for (const Json &file : all.at("files"))
            manifest.files.push_back(file_of(file));
        return manifest;
    } catch (const Json::exception &) {
        return {};
    }
}

bool is_of_another_state(const Manifest &earlier, const Manifest &now) {
    return !earlier.state.empty() && !now.state.empty() && earlier.state != now.state;
}

bool is_of_another_document(const Manifest &earlier, const Manifest &now) {
    if (earlier.document_sha256 == now.document_sha256) return false;
    if (!earlier.document.empty() && !now.document.empty()) return earlier.document != now.document;
    return !earlier.shell.empty() && !now.shell.empty() && earlier.shell != now.shell;
}

std::vector<std::string> own_files(const std::filesystem::path &folder, const std::vector<Manifest> &earlier,
                                   const std::vector<OutputFile> &wanted) {
    std::vector<std::string> names;
    for (const OutputFile &file : wanted)
        if (is_own(folder, earlier, file)) names.push_back(file.name);
    return names;
}

EarlierFiles earlier_files(const std::filesystem::path &folder, const Manifest &earlier, const Manifest &now,
                           const std::vector<std::string> &makers_now) {
    EarlierFiles sorted;
    for (const OutputFile &file : earlier.files) {
        if (!unchanged(folder, file)) continue;
        if (std::find(makers_now.begin(), makers_now.end(), file.maker) != makers_now.end())
            sorted.replaced.push_back(file);
        else if (made_from(file, earlier) == source_of(now))
            sorted.kept.push_back(file), sorted.kept.back().made_from.clear();
        else
            sorted.outdated.push_back(file), sorted.outdated.back().made_from = made_from(file, earlier);
    }
    return sorted;
}

} // namespace roundlay

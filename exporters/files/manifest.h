// manifest.json: what an output folder holds, so that a receiver can check that all of it arrived.
//
// It holds no time of day: the same document gives the same bytes.
#pragma once

#include "exporters/files/output_folder.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

struct Manifest {
    std::string version;         ///< of the program
    std::string shell;           ///< the shell's name
    std::string document;        ///< file name without folders
    std::string document_sha256; ///< of the document's bytes
    std::vector<OutputFile> files;
    std::string state = {}; ///< which of the house's; empty where its document says nothing of it
    bool operator==(const Manifest &) const = default;
};

inline constexpr std::string_view manifest_name = "manifest.json";

std::string manifest_json(const Manifest &manifest);

/// Reads a manifest back. Nothing when the text is none of ours.
std::optional<Manifest> parse_manifest(std::string_view json);

/// Do two exports show different states of a house?
bool is_of_another_state(const Manifest &earlier, const Manifest &now);

/// Do two exports come from different documents? Their files are called otherwise or, where one of them has
/// no file, as from a pipe or before it is saved, their shells are. What has no name at all tells nothing.
bool is_of_another_document(const Manifest &earlier, const Manifest &now);

/// Which of `wanted` lie in the folder already and are a person's own: listed by none of these manifests, or
/// changed since. A file that holds the very bytes that are wanted is in nobody's way, nor is an earlier
/// manifest.
std::vector<std::string> own_files(const std::filesystem::path &folder, const std::vector<Manifest> &earlier,
                                   const std::vector<OutputFile> &wanted);

/// Files of the earlier export into this folder, sorted by what becomes of them.
struct EarlierFiles {
    std::vector<OutputFile> kept; ///< by exporters that do not run now, of the same document: still listed
    std::vector<OutputFile> replaced; ///< by exporters that run now: gone unless made again
    std::vector<OutputFile> outdated; ///< by exporters that do not run now, of another state of the document
};

/// Only files whose bytes are still those of the manifest count: what a person changed is theirs.
EarlierFiles earlier_files(const std::filesystem::path &folder, const Manifest &earlier, const Manifest &now,
                           const std::vector<std::string> &makers_now);

} // namespace roundlay

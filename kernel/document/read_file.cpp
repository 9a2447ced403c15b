#include "kernel/document/document.h"
#include "kernel/document/limits.h"

#include <cerrno>
#include <fstream>
#include <system_error>

namespace roundlay {

namespace {

Problem no_file(const std::filesystem::path &path, std::string message, std::string expected) {
    return {Weight::error, path.string(), {}, std::move(message), std::move(expected)};
}

} // namespace

std::variant<std::string, Problem> read_document_text(const std::filesystem::path &path) {
    constexpr const char *expected = "the path of a .roundlay document";
    std::error_code code;
    const auto status = std::filesystem::status(path, code);
    if (status.type() == std::filesystem::file_type::not_found)
        return no_file(path, "there is no such file", expected);
    if (code) return no_file(path, "the file cannot be reached: " + code.message(), expected);
    if (std::filesystem::is_directory(status))
        return no_file(path, "this is a folder, not a document", expected);
    errno = 0;
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return no_file(path, "the file cannot be opened: " + std::generic_category().message(errno),
                       "a file that you may read");
    // One byte more than is allowed is enough to know; a pipe or device tells no size beforehand.
    std::string text(limits::bytes + 1, '\0');
    file.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (file.bad())
        return no_file(path, "the file cannot be read: " + std::generic_category().message(errno),
                       "a file that you may read");
    text.resize(static_cast<std::size_t>(file.gcount()));
    if (text.size() > limits::bytes)
        return no_file(path, "the file is larger than 4 MB (4,000,000 bytes)", "a document written by hand");
    return text;
}

ReadResult read_document_file(const std::filesystem::path &path, const std::string &state) {
    const auto text = read_document_text(path);
    if (const auto *problem = std::get_if<Problem>(&text)) return {std::nullopt, {*problem}, {}};
    return read_document(std::get<std::string>(text), path.string(), state);
}

} // namespace roundlay

// PKWARE: .ZIP File Format Specification (APPNOTE), sections 4.3.7, 4.3.12 and 4.3.16.
#include "exporters/print/zipped.h"

#include "exporters/files/deflated.h"

#include <zlib.h>

#include <cstdint>

namespace roundlay {

namespace {

constexpr std::uint32_t first_of_january_1980 = 0x00210000; // the earliest that the format knows

void put(std::string &bytes, std::uint32_t number, int count) {
    for (int i = 0; i < count; ++i)
        bytes += static_cast<char>(number >> (8 * i) & 0xff);
}

/// What stands before a file and in the directory alike.
std::string described(const FileInside &file, const std::string &packed) {
    constexpr std::uint32_t version = 20, utf8_names = 0x0800, deflate_method = 8;
    std::string head;
    put(head, version, 2);
    put(head, utf8_names, 2);
    put(head, deflate_method, 2);
    put(head, first_of_january_1980, 4);
    put(head,
        static_cast<std::uint32_t>(crc32(0, reinterpret_cast<const Bytef *>(file.bytes.data()),
                                         static_cast<uInt>(file.bytes.size()))),
        4);
    put(head, static_cast<std::uint32_t>(packed.size()), 4);
    put(head, static_cast<std::uint32_t>(file.bytes.size()), 4);
    put(head, static_cast<std::uint32_t>(file.name.size()), 2);
    put(head, 0, 2); // nothing extra
    return head;
}

} // namespace

std::string zipped(const std::vector<FileInside> &files) {
    constexpr std::uint32_t of_file = 0x04034b50, of_directory = 0x02014b50, of_end = 0x06054b50,
                            version = 20;
    std::string bytes, directory;
    for (const FileInside &file : files) {
        const std::string packed = deflated(file.bytes), head = described(file, packed);
        put(directory, of_directory, 4);
        put(directory, version, 2);
        directory += head;
        put(directory, 0, 10); // no comment, first disk, no attributes
        put(directory, static_cast<std::uint32_t>(bytes.size()), 4);
        directory += file.name;
        put(bytes, of_file, 4);
        bytes += head + file.name + packed;
    }
    const auto count = static_cast<std::uint32_t>(files.size()),
               begin = static_cast<std::uint32_t>(bytes.size());
    bytes += directory;
    put(bytes, of_end, 4);
    put(bytes, 0, 4);
    put(bytes, count, 2);
    put(bytes, count, 2);
    put(bytes, static_cast<std::uint32_t>(directory.size()), 4);
    put(bytes, begin, 4);
    put(bytes, 0, 2);
    return bytes;
}

} // namespace roundlay

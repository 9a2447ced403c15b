#include "exporters/files/deflated.h"

#include <zlib.h>

#include <stdexcept>

namespace roundlay {

std::string deflated(std::string_view bytes) {
    constexpr int raw_window = -15, memory = 9;
    z_stream stream{};
    if (deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, raw_window, memory, Z_DEFAULT_STRATEGY) != Z_OK)
        throw std::runtime_error("zlib does not start");
    std::string out(deflateBound(&stream, bytes.size()), '\0');
    std::string in(bytes);
    stream.next_in = reinterpret_cast<Bytef *>(in.data());
    stream.avail_in = static_cast<uInt>(in.size());
    stream.next_out = reinterpret_cast<Bytef *>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    const int outcome = deflate(&stream, Z_FINISH);
    out.resize(stream.total_out);
    deflateEnd(&stream);
    if (outcome != Z_STREAM_END) throw std::runtime_error("zlib does not end");
    return out;
}

} // namespace roundlay

// The names of functions and variables are those of FIPS 180-4, sections 4.1.2, 5 and 6.2.
#include "exporters/files/sha256.h"

#include <bit>
#include <cstring>

namespace roundlay {

namespace {

using Word = std::uint32_t;
using State = std::array<Word, 8>;

constexpr std::size_t block_bytes = 64;
constexpr std::size_t length_bytes = 8;

// FIPS 180-4 section 4.2.2: the first 32 bits of the fractional parts of the cube roots of the first
// sixty-four primes.
constexpr std::array<Word, 64> K = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

// Section 5.3.3: the same of the square roots of the first eight primes.
constexpr State H0 = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                      0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};

constexpr Word Ch(Word x, Word y, Word z) {
    return (x & y) ^ (~x & z);
}
constexpr Word Maj(Word x, Word y, Word z) {
    return (x & y) ^ (x & z) ^ (y & z);
}
constexpr Word Sigma0(Word x) {
    return std::rotr(x, 2) ^ std::rotr(x, 13) ^ std::rotr(x, 22);
}
constexpr Word Sigma1(Word x) {
    return std::rotr(x, 6) ^ std::rotr(x, 11) ^ std::rotr(x, 25);
}
constexpr Word sigma0(Word x) {
    return std::rotr(x, 7) ^ std::rotr(x, 18) ^ (x >> 3);
}
constexpr Word sigma1(Word x) {
    return std::rotr(x, 17) ^ std::rotr(x, 19) ^ (x >> 10);
}

using Block = std::array<std::uint8_t, block_bytes>;

std::array<Word, 64> schedule(const Block &block) {
    std::array<Word, 64> W{};
    for (std::size_t t = 0; t < 16; ++t)
        W[t] = Word{block[4 * t]} << 24 | Word{block[4 * t + 1]} << 16 | Word{block[4 * t + 2]} << 8 |
               Word{block[4 * t + 3]};
    for (std::size_t t = 16; t < 64; ++t)
        W[t] = sigma1(W[t - 2]) + W[t - 7] + sigma0(W[t - 15]) + W[t - 16];
    return W;
}

void mix(State &H, const Block &block) {
    const auto W = schedule(block);
    auto [a, b, c, d, e, f, g, h] = H;
    for (std::size_t t = 0; t < 64; ++t) {
        const Word T1 = h + Sigma1(e) + Ch(e, f, g) + K[t] + W[t];
        const Word T2 = Sigma0(a) + Maj(a, b, c);
        h = g, g = f, f = e, e = d + T1, d = c, c = b, b = a, a = T1 + T2;
    }
    const State add = {a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < 8; ++i)
        H[i] += add[i];
}

/// Section 5.1.1: one bit, zeros, and the length in bits, filling one or two blocks.
void mix_rest(State &H, std::string_view rest, std::uint64_t total_bytes) {
    Block block{};
    std::memcpy(block.data(), rest.data(), rest.size());
    block[rest.size()] = 0x80;
    if (rest.size() + 1 + length_bytes > block_bytes) {
        mix(H, block);
        block.fill(0);
    }
    const std::uint64_t bits = total_bytes * 8;
    for (std::size_t i = 0; i < length_bytes; ++i)
        block[block_bytes - 1 - i] = static_cast<std::uint8_t>(bits >> (8 * i));
    mix(H, block);
}

} // namespace

std::array<std::uint8_t, 32> sha256(std::string_view bytes) {
    State H = H0;
    const std::uint64_t total = bytes.size();
    Block block;
    for (; bytes.size() >= block_bytes; bytes.remove_prefix(block_bytes)) {
        std::memcpy(block.data(), bytes.data(), block_bytes);
        mix(H, block);
    }
    mix_rest(H, bytes, total);
    std::array<std::uint8_t, 32> digest{};
    for (std::size_t i = 0; i < digest.size(); ++i)
        digest[i] = static_cast<std::uint8_t>(H[i / 4] >> (24 - 8 * (i % 4)));
    return digest;
}

std::string sha256_hex(std::string_view bytes) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    for (const std::uint8_t byte : sha256(bytes)) {
        text += digits[byte >> 4];
        text += digits[byte & 15];
    }
    return text;
}

} // namespace roundlay

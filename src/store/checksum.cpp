// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/checksum.hpp"

#include "store/files.hpp"

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <string>
#include <system_error>
#include <unistd.h>

namespace bw::store {

namespace {
constexpr std::uint32_t kReversedPolynomial = 0xEDB88320U; // ISO 3309

constexpr std::array<std::uint32_t, 256> makeTable() {
    std::array<std::uint32_t, 256> table{};
    for (std::uint32_t n = 0; n < table.size(); ++n) {
        std::uint32_t c = n;
        for (int bit = 0; bit < 8; ++bit) c = (c & 1U) ? kReversedPolynomial ^ (c >> 1U) : c >> 1U;
        table[n] = c;
    }
    return table;
}
constexpr auto kTable = makeTable();
} // namespace

std::uint32_t checksum(std::string_view bytes, std::uint32_t before) {
    std::uint32_t c = ~before;
    for (const char byte : bytes)
        c = kTable[(c ^ static_cast<unsigned char>(byte)) & 0xFFU] ^ (c >> 8U);
    return ~c;
}

std::uint32_t checksumOf(const std::filesystem::path& file) {
    const Descriptor fd(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    std::uint32_t sum = 0;
    std::string piece(std::size_t{1} << 16U, '\0');
    for (ssize_t got = 1; got > 0;) {
        got = fd.any() ? ::read(fd.get(), piece.data(), piece.size()) : -1;
        if (got < 0 && errno != EINTR)
            throw std::system_error(errno, std::generic_category(), file.string());
        if (got < 0)
            got = 1; // interrupted: once more
        else
            sum = checksum({piece.data(), static_cast<std::size_t>(got)}, sum);
    }
    return sum;
}

} // namespace bw::store

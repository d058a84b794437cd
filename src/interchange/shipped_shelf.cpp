// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_bundle.hpp"
#include "interchange/shipped_text.hpp"

#include <stdexcept>

namespace bw {

namespace {
Bundle readShipped(const ShippedText& text, const Gym* over, Follow follow) {
    auto reading = readBundleFollowing(text.json, over, follow);
    if (reading.bundle) return std::move(*reading.bundle);
    const auto& fault = reading.errors.front();
    throw std::logic_error(std::string(text.name) + fault.pointer + ": " + fault.text.english());
}

// The files may refer to each other, so all are laid down before any reference is followed.
Bundle readAll() {
    Gym gym;
    for (const auto& text : shippedTexts()) layOver(gym, readShipped(text, nullptr, Follow::No));
    for (const auto& text : shippedTexts()) (void)readShipped(text, &gym, Follow::Yes);
    Bundle out = bundleOf(gym);
    out.settings.reset();
    return out;
}
} // namespace

const Bundle& shippedShelf() {
    static const Bundle shelf = readAll();
    return shelf;
}

} // namespace bw

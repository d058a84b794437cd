// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a bundle: refused with faults, or read whole; and what was read is written so that
// it is read again as it was.
#include "interchange/bundle.hpp"
#include "interchange/utf8.hpp"
#include "law.hpp"

namespace bw::fuzz {

namespace {
void sayable(const std::vector<BundleFault>& faults) {
    law(faults.size() <= kMostFaults + 1, "no more faults than are promised");
    for (const BundleFault& fault : faults)
        law(!firstNotUtf8(fault.text.english()), "a fault is text that can be shown");
}
} // namespace

void readAny(std::string_view text) {
    const BundleReading reading = readBundle(text);
    law(reading.bundle.has_value() == reading.errors.empty(), "a bundle, or faults");
    sayable(reading.errors);
    sayable(reading.notes);
    if (!reading.bundle) return;

    const std::string written = writeBundle(*reading.bundle);
    const BundleReading again = readBundle(written);
    law(again.bundle.has_value(), "what was written is read");
    law(writeBundle(*again.bundle) == written, "what was read again is written the same");

    Gym gym;
    layOver(gym, *reading.bundle);
    law(!writeBundle(bundleOf(gym, reading.bundle->results)).empty(), "a gym can be written");
}

} // namespace bw::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    bw::fuzz::readAny(bw::fuzz::textOf(data, size));
    return 0;
}

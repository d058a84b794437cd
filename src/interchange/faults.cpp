// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/faults.hpp"

#include "interchange/utf8.hpp"

namespace bw {

void Faults::List::add(json::Node at, Message text) {
    ++count;
    if (first.size() == kMostFaults) {
        const auto last = std::prev(first.end());
        if (last->first <= at) return;
        first.erase(last);
    }
    for (auto& arg : text.args) arg = shown(arg); // it may be bytes out of the file
    first.emplace(at, std::move(text));
}

std::vector<BundleFault> Faults::errors() const {
    auto out = listed(errors_);
    if (const auto more = errors_.count - errors_.first.size(); more > 0)
        out.push_back({"", {"%1 more faults are not listed.", {std::to_string(more)}}});
    return out;
}

std::vector<BundleFault> Faults::notes() const {
    auto out = listed(notes_);
    if (const auto more = notes_.count - notes_.first.size(); more > 0)
        out.push_back({"", {"%1 more notes are not listed.", {std::to_string(more)}}});
    return out;
}

std::vector<BundleFault> Faults::listed(const List& list) const {
    std::vector<BundleFault> out;
    for (const auto& [at, text] : list.first) out.push_back({tree_.pointer(at), text});
    return out;
}

} // namespace bw

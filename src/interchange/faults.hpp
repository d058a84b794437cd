// SPDX-License-Identifier: GPL-3.0-or-later
// Collects what is wrong with a bundle and what is worth a note. The first kMostFaults of the file
// are kept, in its order, whatever order they are found in; the rest is counted.
#pragma once
#include "interchange/bundle.hpp"
#include "interchange/json_tree.hpp"

#include <map>

namespace bw {

class Faults {
public:
    explicit Faults(const json::Tree& tree) : tree_(tree) {}
    Faults(const Faults&) = delete;
    Faults& operator=(const Faults&) = delete;

    void error(json::Node at, Message text) { errors_.add(at, std::move(text)); }
    void note(json::Node at, Message text) { notes_.add(at, std::move(text)); }

    [[nodiscard]] bool any() const { return errors_.count > 0; }
    [[nodiscard]] std::vector<BundleFault> errors() const;
    [[nodiscard]] std::vector<BundleFault> notes() const;

private:
    struct List {
        std::multimap<json::Node, Message> first;
        std::size_t count = 0;
        void add(json::Node at, Message text);
    };
    [[nodiscard]] std::vector<BundleFault> listed(const List& list) const;

    const json::Tree& tree_;
    List errors_, notes_;
};

} // namespace bw

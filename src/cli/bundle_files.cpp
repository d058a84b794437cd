// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/bundle_files.hpp"

#include "cli/ending.hpp"
#include "cli/interrupt.hpp"
#include "cli/terminal.hpp"
#include "cli/whole_file.hpp"
#include "interchange/read_bundle.hpp"

#include <fmt/core.h>

namespace bw::cli {

namespace {
struct Source {
    std::string file, json;
};

std::vector<Source> readAll(const std::vector<std::string>& files) {
    std::vector<Source> sources;
    for (const auto& file : files) {
        Interrupt::check();
        sources.push_back({file, readWholeFile(file, kMostBundleBytes)});
    }
    return sources;
}

void complainOf(const std::string& file, const std::vector<BundleFault>& faults,
                std::string_view kind) {
    for (const auto& fault : faults)
        complain(fmt::format("{}: {}{}: {}", file, kind,
                             fault.pointer.empty() ? "(the whole file)" : fault.pointer,
                             fault.text.english()));
}

template <class T> void append(std::vector<T>& to, const std::vector<T>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

void join(Bundle& all, const Bundle& next) {
    if (next.settings) all.settings = next.settings;
    all.hasKit |= next.hasKit;
    all.hasShelf |= next.hasShelf;
    append(all.kit, next.kit);
    append(all.shelf, next.shelf);
    append(all.blocks, next.blocks);
    append(all.members, next.members);
    append(all.results, next.results);
    if (!next.extras.json.empty()) all.extras = next.extras;
    if (!next.gymExtras.json.empty()) all.gymExtras = next.gymExtras;
}

[[noreturn]] void refuse() {
    throw Ending(Exit::BadInput,
                 "Nothing was taken from the bundles; mend the faults above first.");
}

// Each bundle may refer to what the ones before it brought.
LaidBundles layInOrder(const std::vector<Source>& sources, Gym ground, bool groundKnows) {
    LaidBundles laid{std::move(ground), {}};
    bool bad = false;
    for (const auto& source : sources) {
        Interrupt::check();
        const Progress progress("Reading " + source.file);
        const auto reading = readBundle(source.json, groundKnows ? &laid.gym : nullptr);
        complainOf(source.file, reading.notes, "note: ");
        complainOf(source.file, reading.errors, "");
        if (reading.bundle) {
            layOver(laid.gym, *reading.bundle);
            join(laid.all, *reading.bundle);
            groundKnows = true;
        } else {
            bad = true;
        }
    }
    if (bad) refuse();
    return laid;
}

// Only a look: faults are told by the reading that counts.
bool anyHasShelf(const std::vector<Source>& sources) {
    for (const auto& source : sources) {
        const auto reading = readBundleFollowing(source.json, nullptr, Follow::No);
        if (!reading.bundle || reading.bundle->hasShelf) return true;
    }
    return false;
}
} // namespace

Gym shippedGround() {
    Gym gym;
    layOver(gym, shippedShelf());
    gym.settings = {};
    return gym;
}

LaidBundles layOverGround(const std::vector<std::string>& files, Gym ground) {
    return layInOrder(readAll(files), std::move(ground), true);
}

LaidBundles layAlone(const std::vector<std::string>& files) {
    const auto sources = readAll(files);
    return anyHasShelf(sources) ? layInOrder(sources, {}, false)
                                : layInOrder(sources, shippedGround(), true);
}

} // namespace bw::cli

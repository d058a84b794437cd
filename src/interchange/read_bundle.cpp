// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_bundle.hpp"

#include "interchange/json_parse.hpp"
#include "interchange/read_parts.hpp"

#include <algorithm>

namespace bw {

using json::Kind;
using json::kNone;
using json::kRoot;
using json::Node;

namespace {
constexpr std::string_view kFormat = "blockwright-bundle";
constexpr int kVersion = 1;

void checkFormat(Reading& r, Node format, Node version) {
    if (format != kNone && !(r.tree.is(format, Kind::Text) && r.tree.text(format) == kFormat))
        r.error(format, {"This is not a bundle: its format must be “%1”.", {std::string(kFormat)}});
    if (version == kNone) return;
    const double v = r.tree.is(version, Kind::Number) ? r.tree.number(version) : 0;
    if (v > kVersion)
        r.error(version,
                {"This bundle was written by a newer version of the program, which is needed "
                 "to read it. This one reads version %1.",
                 {std::to_string(kVersion)}});
    else if (v != kVersion)
        r.error(version, {"The version of a bundle must be %1.", {std::to_string(kVersion)}});
}

Bundle readParts(Reading& r, const Gym* over, Follow follow) {
    Bundle b;
    Fields f(r, kRoot);
    const Node format = f.need("format");
    checkFormat(r, format, f.need("version"));
    if (const Node gym = f.take("gym"); gym != kNone)
        readGym(r, gym, b, over ? over->settings : GymSettings{});
    const Node shelf = f.take("shelf");
    b.hasShelf = shelf != kNone;
    b.shelf = readList<Exercise>(r, shelf, readExercise);
    b.blocks = readList<Block>(r, f.take("blocks"), readBlock);
    const Node members = f.take("members");
    b.members = readList<Member>(r, members, readMember);
    b.results = readList<LiftResult>(r, f.take("results"), readResult);
    b.extras = f.rest();
    if (follow == Follow::Yes) r.refs.follow({b.hasKit, b.hasShelf, members != kNone}, over);
    return b;
}

BundleReading tooLarge() {
    return {{},
            {{"",
              {"This bundle is larger than the %1 MiB that can be read. Export fewer results at a "
               "time.",
               {std::to_string(kMostBundleBytes >> 20)}}}},
            {}};
}

BundleReading readTree(const json::Parsed& parsed, const Gym* over, Follow follow) {
    Faults faults(parsed.tree);
    Reading r(parsed.tree, faults);
    for (const Node n : parsed.twice)
        r.error(n,
                {"The key “%1” stands in this object twice.", {std::string(parsed.tree.key(n))}});
    if (parsed.byteMark)
        faults.note(kRoot,
                    {"The file begins with a byte order mark, which a bundle does not need; it "
                     "was left out.",
                     {}});
    Bundle bundle = readParts(r, over, follow);
    BundleReading out{{}, faults.errors(), faults.notes()};
    if (!faults.any()) out.bundle = std::move(bundle);
    return out;
}
} // namespace

BundleReading readBundleFollowing(std::string_view json, const Gym* over, Follow follow) {
    if (json.size() > kMostBundleBytes) return tooLarge();
    const auto parsed = json::parse(json);
    if (parsed.fault) return {{}, {*parsed.fault}, {}};
    return readTree(parsed, over, follow);
}

BundleReading readBundle(std::string_view json, const Gym* over) {
    return readBundleFollowing(json, over, Follow::Yes);
}

} // namespace bw

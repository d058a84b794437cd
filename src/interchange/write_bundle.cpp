// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/write_parts.hpp"

namespace bw {

std::string writeBundle(const Bundle& bundle) {
    using json::Out;
    auto out = Out::object();
    out.add("format", Out::text("blockwright-bundle"));
    out.add("version", Out::whole(1));
    addUnlessEmpty(out, "gym", gymOut(bundle));
    if (bundle.hasShelf || !bundle.shelf.empty())
        out.add("shelf", listOut(bundle.shelf, exerciseOut));
    addUnlessEmpty(out, "blocks", listOut(bundle.blocks, blockOut));
    addUnlessEmpty(out, "members", listOut(bundle.members, memberOut));
    addUnlessEmpty(out, "results", listOut(bundle.results, resultOut));
    return out.addAll(bundle.extras.json).print();
}

} // namespace bw

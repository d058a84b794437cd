// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of one object of a bundle: taken one by one, and what is left over is kept.
#pragma once
#include "blockwright/model/extras.hpp"
#include "interchange/read_values.hpp"

#include <initializer_list>

namespace bw {

class Fields {
public:
    // Something that is no object is a fault, and has no keys; kNone has none either.
    Fields(Reader& reader, json::Node object);

    [[nodiscard]] bool there() const { return object_ != json::kNone; }
    [[nodiscard]] json::Node node() const { return object_; }

    // kNone when the key is not there; of two, the first.
    json::Node take(std::string_view key);
    // The same, but a key that is not there is a fault of the object.
    json::Node need(std::string_view key);

    // The keys that nobody took, each with a note. Comes last. `parts` are objects inside this one
    // that have no extras of their own; what they left over comes under their key.
    [[nodiscard]] Extras rest(std::initializer_list<Fields*> parts = {});

private:
    [[nodiscard]] std::string restJson(); // the members, without the braces

    Reader& reader_;
    json::Node object_;
    std::vector<json::Node> taken_;
};

} // namespace bw

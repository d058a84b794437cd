// SPDX-License-Identifier: GPL-3.0-or-later
// A value, or the sentence that says why there is none. Used where failure is expected: reading
// what a person or a file wrote. Bugs and dead disks throw instead.
#pragma once
#include "blockwright/model/message.hpp"

#include <utility>
#include <variant>

namespace bw {

template <class T> class [[nodiscard]] Result {
public:
    Result(T value) : state_(std::in_place_index<0>, std::move(value)) {}
    Result(Message why) : state_(std::in_place_index<1>, std::move(why)) {}

    [[nodiscard]] bool ok() const { return state_.index() == 0; }
    explicit operator bool() const { return ok(); }

    // Only after ok(); otherwise std::bad_variant_access.
    [[nodiscard]] const T& value() const& { return std::get<0>(state_); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(state_)); }
    const T& operator*() const& { return value(); }
    const T* operator->() const { return &value(); }

    // Only after !ok().
    [[nodiscard]] const Message& why() const { return std::get<1>(state_); }

private:
    std::variant<T, Message> state_;
};

} // namespace bw

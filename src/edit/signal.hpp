// SPDX-License-Identifier: GPL-3.0-or-later
// Tells listeners that something happened. A listener hears as long as the Connection it was given
// lives; either side may go first. One thread only.
#pragma once
#include <functional>
#include <memory>
#include <utility>
#include <vector>

namespace bw {

// Ends the listening when it goes.
using Connection = std::shared_ptr<void>;

template <class... Args> class Signal {
public:
    using Listener = std::function<void(Args...)>;

    [[nodiscard]] Connection connect(Listener listener) {
        auto kept = std::make_shared<Listener>(std::move(listener));
        listeners_.push_back(kept);
        return kept;
    }
    void operator()(Args... args) {
        std::erase_if(listeners_, [](const auto& weak) { return weak.expired(); });
        const auto now = listeners_; // a listener may connect or let go while it is told
        for (const auto& weak : now)
            if (const auto listener = weak.lock()) (*listener)(args...);
    }

private:
    std::vector<std::weak_ptr<Listener>> listeners_;
};

} // namespace bw

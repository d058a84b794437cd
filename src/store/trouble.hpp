// SPDX-License-Identifier: GPL-3.0-or-later
// What went wrong with a gym file, worded for the coach: what happened, what was kept, what to do.
#pragma once
#include "blockwright/model/message.hpp"
#include "store/sqlite/failure.hpp"

#include <filesystem>
#include <system_error>

namespace bw::store {

// Inside the store a refusal travels as this; GymFile turns it into the Result.
struct Refusal {
    Message why;
};
// A row holds what no gym can hold; the text says what.
class Unreadable : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

[[nodiscard]] Message trouble(const std::filesystem::path& file, const sqlite::Failure& failure);
// `file` was to be read or written; nothing of it has changed.
[[nodiscard]] Message trouble(const std::filesystem::path& file, const std::system_error& error);
[[nodiscard]] Message damaged(const std::filesystem::path& file, const std::string& detail);
[[nodiscard]] Message unreadable(const std::filesystem::path& file, const std::string& detail);
[[nodiscard]] Message notAGymFile(const std::filesystem::path& file);
[[nodiscard]] Message alreadyThere(const std::filesystem::path& file);

// Runs `work`; whatever it throws of the above becomes the answer.
template <class R, class Work> R answered(const std::filesystem::path& file, const Work& work) {
    try {
        return work();
    } catch (const Refusal& refusal) {
        return refusal.why;
    } catch (const Unreadable& what) {
        return unreadable(file, what.what());
    } catch (const sqlite::Failure& failure) {
        return trouble(file, failure);
    } catch (const std::system_error& error) {
        return trouble(file, error);
    }
}

} // namespace bw::store

// SPDX-License-Identifier: GPL-3.0-or-later
// A disk between SQLite and the real one that stops taking writes when told to
// (https://www.sqlite.org/vfs.html). One at a time; files opened through it must close before it
// goes.
#pragma once
#include <string>

namespace bw::test {

class FailingDisk {
public:
    FailingDisk();
    ~FailingDisk();
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;

    // The next `count` writes, syncs and truncations succeed; then all fail with `code`, until
    // mend().
    void failAfter(int count, int code);
    void mend();
    // Writes to files of the gym that no sync has made to last.
    [[nodiscard]] int unsynced() const;
};

} // namespace bw::test

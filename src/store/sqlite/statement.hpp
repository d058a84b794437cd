// SPDX-License-Identifier: GPL-3.0-or-later
// A prepared statement. Text goes in and comes out with every byte, NUL included.
//   Statement put(db, "INSERT INTO kit_load VALUES (?, ?, ?)");
//   put.bind(key, mass, count); put.step(); put.reset();
#pragma once
#include "store/sqlite/failure.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace bw::sqlite {

class Statement {
public:
    // Prepares the first statement of `sql`; `rest` is set to what follows it.
    Statement(sqlite3* db, std::string_view sql, std::string_view* rest = nullptr);
    ~Statement();
    Statement(Statement&& other) noexcept;
    Statement& operator=(Statement&&) = delete;
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    // In the order of the question marks. Booleans are 0 or 1, an empty optional is NULL.
    template <class... A> void bind(const A&... values) {
        int index = 0;
        (bindOne(++index, values), ...);
    }
    // True while there is a row to read.
    bool step();
    void reset();
    // False for a comment or white space at the end of a script.
    [[nodiscard]] bool any() const { return handle_ != nullptr; }

    // Columns count from 0.
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] double real(int column) const;
    [[nodiscard]] bool flag(int column) const { return integer(column) != 0; }
    [[nodiscard]] bool null(int column) const;
    // Until the next step.
    [[nodiscard]] std::string_view text(int column) const;
    [[nodiscard]] std::string string(int column) const { return std::string(text(column)); }

private:
    void bindOne(int index, std::int64_t value);
    void bindOne(int index, int value) { bindOne(index, std::int64_t{value}); }
    void bindOne(int index, bool value) { bindOne(index, std::int64_t{value}); }
    void bindOne(int index, double value);
    void bindOne(int index, std::string_view value);
    void bindOne(int index, const std::string& value) { bindOne(index, std::string_view(value)); }
    void bindOne(int index, const char* value) { bindOne(index, std::string_view(value)); }
    void bindNull(int index);
    template <class T> void bindOne(int index, const std::optional<T>& value) {
        value ? bindOne(index, *value) : bindNull(index);
    }
    void check(int code) const;

    sqlite3* db_;
    sqlite3_stmt* handle_ = nullptr;
    bool running_ = false;
};

} // namespace bw::sqlite

// SPDX-License-Identifier: GPL-3.0-or-later
// One connection to a database file. For one thread at a time.
#pragma once
#include "store/sqlite/statement.hpp"

#include <filesystem>
#include <functional>
#include <memory>
#include <unordered_map>

namespace bw::sqlite {

// The rows of a query, standing on the first one.
//   for (Rows r = db.query("SELECT name FROM member"); r.any(); r.next()) use(r->text(0));
class Rows {
public:
    explicit Rows(Statement statement)
        : statement_(std::move(statement)), any_(statement_.step()) {}
    [[nodiscard]] bool any() const { return any_; }
    void next() { any_ = statement_.step(); }
    // Is there a row, and does it begin with these keys?
    template <class... K> [[nodiscard]] bool at(K... keys) const {
        int column = 0;
        return any_ && ((statement_.integer(column++) == keys) && ...);
    }
    const Statement* operator->() const { return &statement_; }
    const Statement& operator*() const { return statement_; }

private:
    Statement statement_;
    bool any_;
};

class Database {
public:
    // Frozen: nobody may change the file meanwhile; needs no side files, so it works where none can
    // be made.
    enum class Mode { Write, Read, Frozen };
    // `foldOnClose`: see below.
    Database(const std::filesystem::path& path, Mode mode, bool foldOnClose = true);

    // Several statements without gaps, and pragmas.
    void script(std::string_view sql);
    // Prepared once and kept: `sql` should be one of a fixed number of texts.
    template <class... A> void run(std::string_view sql, const A&... values) {
        const Use use(kept(sql));
        use.statement.bind(values...);
        while (use.statement.step()) {
        }
    }
    // As run; gives the integer in the only row, none without a row.
    template <class... A>
    std::optional<std::int64_t> number(std::string_view sql, const A&... values) {
        const Use use(kept(sql));
        use.statement.bind(values...);
        std::optional<std::int64_t> answer;
        while (use.statement.step()) answer = use.statement.integer(0);
        return answer;
    }
    template <class... A> [[nodiscard]] Rows query(std::string_view sql, const A&... values) {
        Statement statement(handle_.get(), sql);
        statement.bind(values...);
        return Rows(std::move(statement));
    }
    // For a query that is asked again and again with other values.
    [[nodiscard]] Statement prepare(std::string_view sql) { return {handle_.get(), sql}; }
    // True outside a transaction.
    [[nodiscard]] bool settled() const;
    // Ends a transaction as if it had never begun. What can't be undone now, SQLite undoes when the
    // file is opened again.
    void undo();
    // Whether closing, as the last to have the file open, folds the log into it and removes the
    // log.
    void foldOnClose(bool on);

private:
    struct Use {
        explicit Use(Statement& s) : statement(s) {}
        ~Use() { statement.reset(); }
        Use(const Use&) = delete;
        Use& operator=(const Use&) = delete;
        Statement& statement;
    };
    struct Close {
        void operator()(sqlite3* db) const;
    };
    struct TextHash : std::hash<std::string_view> {
        using is_transparent = void;
    };
    Statement& kept(std::string_view sql);

    std::unique_ptr<sqlite3, Close> handle_;
    std::unordered_map<std::string, Statement, TextHash, std::equal_to<>>
        kept_; // before handle_ goes
};

} // namespace bw::sqlite

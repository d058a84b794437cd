// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/results_row.hpp"

#include "interchange/utf8.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace bw {

namespace {
constexpr int kMostSets = 100, kMostReps = 1000; // as LiftResult says

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

// "62.5", "62,5"; nothing around it.
Result<double> numberFrom(std::string_view text) {
    std::string digits(text);
    std::replace(digits.begin(), digits.end(), ',', '.');
    double value = 0;
    const char* last = digits.data() + digits.size();
    const auto [end, error] = std::from_chars(digits.data(), last, value, std::chars_format::fixed);
    if (error != std::errc{} || end != last || !std::isfinite(value))
        return Message{"“%1” is no number.", {shown(text)}};
    return value;
}

Result<int> wholeFrom(std::string_view text, int least, int most) {
    const auto value = numberFrom(text);
    if (!value || *value != std::floor(*value) || *value < least || *value > most)
        return Message{"“%1” is no whole number from %2 to %3.",
                       {shown(text), std::to_string(least), std::to_string(most)}};
    return static_cast<int>(*value);
}

// 2026-09-03 or 3.9.2026.
Result<Date> dateFrom(std::string_view text) {
    const auto first = text.find('.'), second = text.rfind('.');
    if (first != std::string_view::npos && second != first) {
        const auto day = wholeFrom(text.substr(0, first), 1, 31);
        const auto month = wholeFrom(text.substr(first + 1, second - first - 1), 1, 12);
        const auto year = wholeFrom(text.substr(second + 1), 1900, 2999);
        if (day && month && year) return Date::of(*year, *month, *day);
    } else if (auto date = Date::parse(text)) {
        return date;
    }
    return Message{"“%1” is no date: write it as 2026-09-03 or 3.9.2026.", {shown(text)}};
}

// The fields of one row, and what is wrong with them.
class Row {
public:
    Row(const CsvRecord& record, const CsvColumns& columns, std::vector<CsvFault>& faults)
        : record_(record), columns_(columns), faults_(faults) {}

    [[nodiscard]] std::string_view field(ResultsColumn c) const {
        return columns_.field(record_, c);
    }
    // The value, or none and a fault.
    template <class T> std::optional<T> take(ResultsColumn c, Result<T> value) {
        if (value) return std::move(value).value();
        faults_.push_back({record_.line, columns_.word(c), value.why()});
        return std::nullopt;
    }
    // Of the first of two columns that is filled; a fault when none is.
    template <class Find> auto named(ResultsColumn id, ResultsColumn name, const Find& find) {
        const ResultsColumn c = field(id).empty() && columns_.has(name) ? name : id;
        using R = decltype(find(field(c)));
        if (field(c).empty()) return take(c, R(Message{"This is empty.", {}}));
        return take(c, find(field(c)));
    }
    // False after a fault; an empty field leaves the value out.
    template <class T, class Read>
    bool maybe(ResultsColumn c, std::optional<T>& into, const Read& read) {
        if (field(c).empty()) return true;
        into = take(c, read(field(c)));
        return into.has_value();
    }

private:
    const CsvRecord& record_;
    const CsvColumns& columns_;
    std::vector<CsvFault>& faults_;
};

template <class Make> auto fromNumber(std::string_view text, const Make& make) {
    const auto number = numberFrom(text);
    using R = decltype(make(0.0));
    return number ? make(*number) : R(number.why());
}

bool readEffort(Row& row, std::optional<Rir>& rir) {
    if (!row.field(ResultsColumn::Rir).empty())
        return row.maybe(ResultsColumn::Rir, rir,
                         [](auto text) { return fromNumber(text, &Rir::of); });
    constexpr double kMostRpe = 10;
    return row.maybe(ResultsColumn::Rpe, rir, [](auto text) {
        return fromNumber(text, [](double rpe) { return Rir::of(kMostRpe - rpe); });
    });
}

bool readLoad(Row& row, MassUnit unit, std::optional<Mass>& load) {
    const auto kg = [](auto text) { return fromNumber(text, &Mass::fromKg); };
    const auto lb = [](auto text) { return fromNumber(text, &Mass::fromLb); };
    using enum ResultsColumn;
    if (!row.field(LoadKg).empty()) return row.maybe(LoadKg, load, kg);
    if (!row.field(LoadLb).empty()) return row.maybe(LoadLb, load, lb);
    return unit == MassUnit::Kg ? row.maybe(Load, load, kg) : row.maybe(Load, load, lb);
}

} // namespace

template <class I> void NameBook::Index<I>::add(const I& id, std::string_view name) {
    ids.emplace(id.text(), id);
    names[lower(trimmed(name))].push_back(id);
}

template <class I> Result<I> NameBook::Index<I>::find(std::string_view word, Message none) const {
    if (const auto it = ids.find(lower(word)); it != ids.end()) return it->second;
    const auto named = names.find(lower(word));
    if (named == names.end()) return none;
    if (named->second.size() == 1) return named->second.front();
    return Message{"There are %1 by the name of “%2”: write the id.",
                   {std::to_string(named->second.size()), shown(word)}};
}

NameBook::NameBook(const Gym& gym) {
    for (const Member& m : gym.members) members_.add(m.id, m.name);
    for (const Shelf::Entry& e : gym.shelf.entries()) exercises_.add(e->id, e->name);
}

Result<MemberId> NameBook::member(std::string_view word) const {
    return members_.find(word, {"There is no member “%1”.", {shown(word)}});
}
Result<ExerciseId> NameBook::exercise(std::string_view word) const {
    return exercises_.find(word, {"There is no exercise “%1” on the Shelf.", {shown(word)}});
}

std::optional<LiftResult> readResultsRow(const CsvRecord& record, const CsvColumns& columns,
                                         const NameBook& names, MassUnit unit,
                                         std::vector<CsvFault>& faults) {
    using enum ResultsColumn;
    Row row(record, columns, faults);
    auto member = row.named(ResultsColumn::Member, Name, [&](auto w) { return names.member(w); });
    auto exercise =
        row.named(ResultsColumn::Exercise, ExerciseName, [&](auto w) { return names.exercise(w); });
    const auto date = row.take(ResultsColumn::Date, dateFrom(row.field(ResultsColumn::Date)));
    const auto reps = row.take(Reps, wholeFrom(row.field(Reps), 0, kMostReps));
    std::optional<int> set;
    std::optional<bw::Rir> rir;
    std::optional<Mass> load;
    bool good = row.maybe(Set, set, [](auto text) { return wholeFrom(text, 1, kMostSets); });
    good = readEffort(row, rir) && good;
    good = readLoad(row, unit, load) && good;
    if (!member || !exercise || !date || !reps || !good) return std::nullopt;
    return LiftResult{
        std::move(*member), *date, std::move(*exercise), set.value_or(0), *reps, rir, load, {}};
}

} // namespace bw

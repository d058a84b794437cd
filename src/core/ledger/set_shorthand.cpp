// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/set_shorthand.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "core/model/board_text.hpp"

#include <algorithm>
#include <charconv>

namespace bw {

namespace {
constexpr int kMostReps = 1000;
constexpr double kMostRpe = 10;

Message notSets(std::string_view typed) {
    return {"“%1” is no set: write 40x5 2 for 40 at 5 repetitions with 2 left, 8 2 without load, "
            "40x5x3 for three alike, and “;” between sets.",
            {board::quoted(typed)}};
}
Message outOfRange(std::string_view typed) {
    return {"“%1” is out of range: at most 1000 repetitions, 2000 kg, 10 left and 100 sets.",
            {board::quoted(typed)}};
}

// Reads one set from its front to its end.
class SetReader {
public:
    explicit SetReader(std::string_view text) : left_(text) {}

    [[nodiscard]] bool ended() {
        blanks();
        return left_.empty();
    }
    bool word(std::string_view word) {
        blanks();
        if (!left_.starts_with(word)) return false;
        left_.remove_prefix(word.size());
        return true;
    }
    std::optional<double> number() {
        blanks();
        constexpr std::size_t kMostDigits = 12;
        const auto end = std::min(left_.find_first_not_of("0123456789."), left_.size());
        double value = 0;
        const char* last = left_.data() + end;
        const auto [at, error] =
            std::from_chars(left_.data(), last, value, std::chars_format::fixed);
        if (end > kMostDigits || error != std::errc{} || at != last) return std::nullopt;
        left_.remove_prefix(end);
        return value;
    }
    std::optional<int> whole() {
        const auto value = number();
        constexpr double kMost = 1e6;
        if (!value || *value != static_cast<int>(std::min(*value, kMost))) return std::nullopt;
        return static_cast<int>(*value);
    }

private:
    void blanks() { left_.remove_prefix(std::min(left_.find_first_not_of(' '), left_.size())); }
    std::string_view left_;
};

struct Typed {
    std::optional<double> load;
    MassUnit unit;
    int reps = 0, sets = 1;
    std::optional<double> rir;
};

// "2", "2 left", "RPE 8" at the end of a set, or nothing.
bool readReserve(SetReader& in, Typed& out) {
    if (in.ended()) return true;
    const bool rpe = in.word("rpe");
    const auto value = in.number();
    if (!value) return false;
    out.rir = rpe ? kMostRpe - *value : *value;
    if (!rpe && !in.word("left")) (void)in.word("rir");
    return in.ended();
}

std::optional<Typed> readSet(std::string_view part, MassUnit usual) {
    SetReader in(part);
    Typed out{{}, usual, 0, 1, {}};
    std::optional<int> reps;
    if (in.word("bw")) {
        if (!in.word("x")) return std::nullopt;
        reps = in.whole();
    } else {
        SetReader ahead = in;
        const auto first = ahead.number();
        const bool kg = ahead.word("kg"), lb = !kg && ahead.word("lb");
        if (first && ahead.word("x")) {
            out.load = first;
            if (kg || lb) out.unit = kg ? MassUnit::Kg : MassUnit::Lb;
            in = ahead;
        }
        reps = in.whole();
    }
    if (!reps) return std::nullopt;
    out.reps = *reps;
    if (in.word("x")) {
        const auto sets = in.whole();
        if (!sets || *sets < 1) return std::nullopt;
        out.sets = *sets;
    }
    if (!readReserve(in, out)) return std::nullopt;
    return out;
}

std::optional<LiftedSet> setOf(const Typed& typed) {
    LiftedSet set{typed.reps, {}, {}};
    if (typed.reps > kMostReps) return std::nullopt;
    if (typed.rir) {
        const auto rir = Rir::of(*typed.rir);
        if (!rir) return std::nullopt;
        set.rir = *rir;
    }
    if (typed.load) {
        const auto mass =
            typed.unit == MassUnit::Kg ? Mass::fromKg(*typed.load) : Mass::fromLb(*typed.load);
        if (!mass) return std::nullopt;
        set.load = *mass;
    }
    return set;
}

std::string_view withoutBlanks(std::string_view text) {
    const auto from = text.find_first_not_of(" \n\r");
    if (from == std::string_view::npos) return {};
    return text.substr(from, text.find_last_not_of(" \n\r") - from + 1);
}
} // namespace

Result<std::vector<LiftedSet>> parseSets(std::string_view text, MassUnit usual) {
    std::string plain = board::plainSigns(text);
    std::replace(plain.begin(), plain.end(), ',', '.'); // a decimal comma
    std::string_view rest = plain;
    std::vector<LiftedSet> out;
    for (bool more = true; more;) {
        const auto end = rest.find(';');
        const auto part = withoutBlanks(rest.substr(0, end));
        more = end != std::string_view::npos;
        if (more) rest.remove_prefix(end + 1);
        if (part.empty() && !more) break; // nothing, or nothing behind the last ";"
        if (part == "=" && !out.empty()) {
            out.push_back(out.back());
        } else {
            const auto typed = readSet(part, usual);
            if (!typed) return notSets(part.empty() ? text : part);
            const auto set = setOf(*typed);
            if (!set || out.size() + static_cast<std::size_t>(typed->sets) > kMostSetsOfDay)
                return outOfRange(part);
            out.insert(out.end(), static_cast<std::size_t>(typed->sets), *set);
        }
        if (out.size() > kMostSetsOfDay) return outOfRange(part);
    }
    return out;
}

std::string setsText(std::span<const LiftedSet> sets, MassUnit unit) {
    std::string out;
    for (std::size_t i = 0; i < sets.size();) {
        const LiftedSet& set = sets[i];
        std::size_t alike = 1;
        while (i + alike < sets.size() && sets[i + alike] == set) ++alike;
        if (!out.empty()) out += "; ";
        if (set.load)
            out += massNumber(*set.load, unit) + "×";
        else if (alike > 1)
            out += "bw×";
        out += std::to_string(set.reps);
        if (alike > 1) out += "×" + std::to_string(alike);
        if (set.rir) out += " " + rirText(set.rir->reps());
        i += alike;
    }
    return out;
}

} // namespace bw

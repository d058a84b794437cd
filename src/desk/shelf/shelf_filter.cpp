// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/shelf_filter.hpp"

#include "blockwright/model/exercise_text.hpp"
#include "desk/frame/typed_month.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"
#include "sheets/worded.hpp"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("shelf", source); }

constexpr int kMostMonths = 1'200;

std::optional<int> takeNumber(QStringList& left) {
    bool is = false;
    const int n = left.isEmpty() ? 0 : left.first().toInt(&is);
    if (!is || n < 0 || n > kMostMonths) return std::nullopt;
    left.removeFirst();
    return n;
}

std::optional<Demand> demandOf(const QString& word) {
    for (std::size_t i = 0; i < kCount<Demand>; ++i)
        if (demandName(static_cast<Demand>(i)).toLower() == word) return static_cast<Demand>(i);
    return std::nullopt;
}

// One reading of the line, word by word.
class Parsing {
public:
    Parsing(const QString& text, std::optional<Month> latest)
        : left_(text.toLower().simplified().split(u' ', Qt::SkipEmptyParts)), latest_(latest) {}

    ShelfFilter all() {
        while (!left_.isEmpty()) next(left_.takeFirst());
        return std::move(filter_);
    }

private:
    void next(const QString& word) {
        if (word == tr("no") || word == tr("not")) {
            no_ = true;
            return;
        }
        if (word == tr("retired"))
            filter_.retired = true;
        else if (word == tr("unused") || word == tr("used"))
            use((word == tr("used")) != no_);
        else if (word == tr("since"))
            since(!no_);
        else if (!figure(word))
            filter_.words.push_back({findable(word), demandOf(word), no_});
        no_ = false;
    }

    void use(bool used) {
        if (!left_.isEmpty() && left_.first() == tr("since")) {
            left_.removeFirst();
            return since(used);
        }
        const auto months = takeNumber(left_);
        if (!months || *months == 0 || !latest_)
            filter_.everUsed = used;
        else
            (used ? filter_.usedFrom : filter_.unusedFrom) = latest_->plus(1 - *months);
    }

    void since(bool used) {
        const auto month = latest_ ? takeMonth(left_, *latest_) : std::nullopt;
        if (month)
            (used ? filter_.usedFrom : filter_.unusedFrom) = month;
        else if (latest_)
            filter_.trouble = tr("After “since” comes a month, such as %1 or July.")
                                  .arg(plain(latest_->plus(-3).text()));
    }

    // "grip 2", "skill 1"
    bool figure(const QString& word) {
        const auto demand = demandOf(word);
        if ((!demand && word != tr("skill").toLower()) || no_) return false;
        const auto number = takeNumber(left_);
        if (!number) return false;
        if (demand)
            filter_.atLeast.emplace_back(*demand, *number);
        else
            filter_.skill = number;
        return true;
    }

    QStringList left_;
    std::optional<Month> latest_;
    ShelfFilter filter_;
    bool no_ = false;
};
} // namespace

ShelfFilter ShelfFilter::parse(const QString& text, std::optional<Month> latest) {
    return Parsing(text, latest).all();
}

bool ShelfFilter::fits(const ShelfLine& line) const {
    const Exercise& e = *line.entry;
    if (e.retired != retired) return false;
    if (skill && e.skill != *skill) return false;
    if (everUsed && *everUsed != line.last.has_value()) return false;
    if (usedFrom && (!line.last || *line.last < *usedFrom)) return false;
    if (unusedFrom && line.last && !(*line.last < *unusedFrom)) return false;
    for (const auto& [demand, level] : atLeast)
        if (e.demands[demand] < level) return false;
    return std::all_of(words.begin(), words.end(), [&](const Word& word) {
        const bool asked = word.demand && e.demands[*word.demand] > 0;
        if (word.no && word.demand) return !asked;
        return (asked || line.words.contains(word.text)) != word.no;
    });
}

bool isUnfinished(const QString& text) {
    constexpr int kShortest = 2;
    const QString last = text.toLower().section(u' ', -1);
    if (last.size() < kShortest) return false;
    const QStringList own{tr("unused"),  tr("used"), tr("since"),
                          tr("retired"), tr("not"),  tr("skill").toLower()};
    return std::any_of(own.begin(), own.end(),
                       [&](const QString& word) { return word.startsWith(last); });
}

QStringList filterWords(const Gym& gym) {
    QStringList words;
    const auto add = [&](const QString& word) {
        const QString joined = word.toLower().replace(u' ', u'-');
        if (!joined.isEmpty() && !words.contains(joined)) words << joined;
    };
    for (const auto field : {ExerciseField::Patterns, ExerciseField::Roles, ExerciseField::Kit,
                             ExerciseField::Load, ExerciseField::Demands, ExerciseField::Muscles})
        for (const std::string& word : fieldWords(gym, field)) {
            add(plain(word));
            add(vocabularyWord(word));
        }
    for (const char* own : {"unused", "used", "since", "retired", "not", "skill"}) add(tr(own));
    for (int month = 1; month <= 12; ++month) add(QLocale().standaloneMonthName(month));
    return words;
}

} // namespace bw

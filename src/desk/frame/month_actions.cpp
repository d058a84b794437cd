// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/month_actions.hpp"

#include "desk/bench/must_change.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/words.hpp"
#include "edit/month_verbs.hpp"

#include <QDate>

namespace bw {

MonthActions::MonthActions(Draft& draft, Actions& actions, Notice& notice, QWidget* window)
    : QObject(window), draft_(draft), notice_(notice), window_(window) {
    addVerbs(actions);
    addSteps(actions);
    addWeeks(actions);
    Actions::explain(previous_, tr("no month is earlier"));
    Actions::explain(next_, tr("no month is later"));
    for (QAction* week : weeks_) Actions::explain(week, tr("the month has no such week"));
    connect(&draft_, &Draft::changed, this, &MonthActions::follow);
    follow();
}

void MonthActions::addVerbs(Actions& actions) {
    const QString group = tr("Month");
    start_ = actions.add(group, QStringLiteral("start-next"), tr("Start the &next month…"),
                         {Qt::CTRL | Qt::Key_N}, nullptr, [this] { startNext(); });
    empty_ = actions.add(group, QStringLiteral("start-empty"), tr("Start it &empty"), {}, nullptr,
                         [this] { startEmpty(); });
    copy_ = actions.add(group, QStringLiteral("copy-last"), tr("Start it as a &copy of the last"),
                        {}, nullptr, [this] { copyLast(); });
    copyShown_ = actions.add(group, QStringLiteral("copy-shown"),
                             tr("Start it as a copy of the month on &show"), {}, nullptr,
                             [this] { copyShown(); });
    remove_ = actions.add(group, QStringLiteral("remove-month"), tr("&Remove the month on show…"),
                          {}, nullptr, [this] { removeShown(); });
}

void MonthActions::addSteps(Actions& actions) {
    const QString group = tr("Month");
    previous_ = actions.add(group, QStringLiteral("previous-month"), tr("&Previous month"),
                            {Qt::CTRL | Qt::Key_PageUp}, nullptr, [this] { step(-1); });
    next_ = actions.add(group, QStringLiteral("next-month"), tr("N&ext month"),
                        {Qt::CTRL | Qt::Key_PageDown}, nullptr, [this] { step(1); });
}

void MonthActions::addWeeks(Actions& actions) {
    for (int n = 1; n <= Week::kMost; ++n) {
        QAction* show =
            actions.add(tr("Month"), QStringLiteral("week-%1").arg(n), tr("Week &%1").arg(n),
                        {QKeySequence(QStringLiteral("Ctrl+%1").arg(n))}, nullptr,
                        [this, n] { draft_.showWeek(Week::of(n).value()); });
        show->setCheckable(true);
        weeks_ << show;
    }
}

void MonthActions::follow() {
    const Block* block = draft_.block();
    const bool writable = draft_.gym().file().writable();
    for (QAction* verb : {start_, empty_}) verb->setEnabled(writable);
    for (QAction* verb : {copy_, copyShown_, remove_}) verb->setEnabled(writable && block);
    for (QAction* verb : {start_, empty_, copy_, copyShown_, remove_})
        Actions::explain(verb, writable ? tr("the gym has no month yet") : tr("read-only"));
    previous_->setEnabled(neighbour(-1).has_value());
    next_->setEnabled(neighbour(1).has_value());
    const auto steps = block ? static_cast<qsizetype>(block->stair.size()) : 0;
    for (qsizetype i = 0; i < weeks_.size(); ++i) {
        weeks_[i]->setVisible(i < steps); // one that is not visible has no key either
        weeks_[i]->setChecked(block && i == draft_.week().index());
    }
}

Month MonthActions::nextMonth() const {
    if (const auto latest = draft_.gym().gym().latest()) return latest->month.plus(1);
    const QDate today = QDate::currentDate();
    const Month now = Month::of(today.year(), today.month()).value();
    constexpr int kLate = 20; // too few classes are left of the month
    return today.day() > kLate ? now.plus(1) : now;
}

void MonthActions::startNext() {
    const auto latest = draft_.gym().gym().latest();
    if (!latest) return startEmpty();
    const QString from = monthName(latest->month);
    const int chosen = prompts().choose(
        window_, tr("Start %1").arg(monthName(nextMonth())),
        tr("How should %1 begin? %2 stays as it is.").arg(monthName(nextMonth()), from),
        {tr("As a copy of %1").arg(from), tr("Empty")});
    if (chosen == 0) copyLast();
    if (chosen == 1) startEmpty();
}

void MonthActions::startEmpty() { notice_.hear(startMonth(draft_.gym(), nextMonth())); }

void MonthActions::copyLast() {
    if (const auto latest = draft_.gym().gym().latest())
        copied(copyMonth(draft_.gym(), latest->month, nextMonth()));
}

void MonthActions::copyShown() {
    if (draft_.month()) copied(startNextFrom(draft_.gym(), *draft_.month()));
}

void MonthActions::copied(const Result<bool>& did) {
    notice_.hear(did);
    if (did && *did) markMustChange(draft_);
}

void MonthActions::removeShown() {
    if (!draft_.month()) return;
    const QString name = monthName(*draft_.month());
    const int chosen = prompts().choose(
        window_, tr("Remove %1").arg(name),
        tr("Remove %1 with its whole session? You can undo it until the gym is closed.").arg(name),
        {tr("Remove %1").arg(name)});
    if (chosen == 0) notice_.hear(removeMonth(draft_.gym(), *draft_.month()));
}

std::optional<Month> MonthActions::neighbour(int months) const {
    if (!draft_.month()) return std::nullopt;
    const auto& blocks = draft_.gym().gym().blocks;
    auto at = blocks.find(*draft_.month());
    if (at == blocks.end()) return std::nullopt;
    if (months < 0) return at == blocks.begin() ? std::nullopt : std::optional((--at)->first);
    return ++at == blocks.end() ? std::nullopt : std::optional(at->first);
}

void MonthActions::step(int months) {
    if (const auto to = neighbour(months)) draft_.showMonth(*to);
}

} // namespace bw

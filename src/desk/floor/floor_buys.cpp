// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_buys.hpp"

#include "desk/floor/floor_words.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/words.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace bw {

namespace {
constexpr MeanTime kWorthTelling = std::chrono::seconds(5); // less is within luck
constexpr std::size_t kMost = 9;

void startWith(Block& block, const FloorHeads& heads) {
    for (std::size_t s = 0; s < heads.counts.size() && s < block.sections.size(); ++s)
        if (!heads.counts[s].empty() && heads.counts[s].size() == block.sections[s].groups.size())
            block.sections[s].start = StartCounts{heads.counts[s]};
}

// The only section that it changes, or the session.
Place changedPlace(const FloorHeads& heads) {
    Place place;
    int sections = 0;
    for (std::size_t s = 0; s < heads.counts.size(); ++s)
        if (!heads.counts[s].empty()) {
            place.section = static_cast<int>(s);
            ++sections;
        }
    return sections == 1 ? place : Place{};
}

// "Trap bar", "Kettlebell, 2 × 16 kg"
QString unitName(const Gym& gym, const OneMoreUnit& more) {
    const QString name = kitName(gym, more.kit);
    if (!more.load) return name;
    const bool pounds = gym.settings.massUnit == MassUnit::Lb;
    const QString load = QLocale().toString(pounds ? more.load->lb() : more.load->kg(), 'g', 4) +
                         (pounds ? FloorBuys::tr(" lb") : FloorBuys::tr(" kg"));
    return more.units == 1 ? name + QStringLiteral(", ") + load
                           : FloorBuys::tr("%1, %2 × %3").arg(name).arg(more.units).arg(load);
}
} // namespace

FloorBuys::FloorBuys(QWidget* parent) : QWidget(parent), empty_(new QLabel(this)) {
    dressAsFrame(this);
    empty_->setWordWrap(true);
    empty_->setProperty("quiet", true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(empty_);
    column->addStretch(1);
}

// A change that the study has proven says itself what it saves.
std::vector<FloorBuys::Row> FloorBuys::rowsOf(const FloorView& view, const FloorWeek* week) {
    std::vector<Row> rows;
    if (week)
        for (const ProvenChange& c : week->changes)
            rows.push_back({say(c.label), FloorChange{c.label, c.place, c.change}});
    if (!view.answer) return rows;
    for (const FloorBuy& buy : view.answer->buys)
        if (buy.saves >= kWorthTelling) rows.push_back(rowOf(view, buy));
    std::ranges::stable_partition(rows, [](const Row& row) { return row.change.has_value(); });
    return rows;
}

FloorBuys::Row FloorBuys::rowOf(const FloorView& view, const FloorBuy& buy) {
    const QString saves = floorClock(buy.saves);
    if (const auto* unit = std::get_if<OneMoreUnit>(&buy.change))
        return {tr("One more %1: saves %2").arg(unitName(*view.gym, *unit), saves), {}};
    const auto* best = std::get_if<BestHeads>(&buy.change);
    if (!best) return {tr("One member fewer: saves %1").arg(saves), {}};
    const FloorHeads& heads = best->heads;
    const QString starts = headsWords(*view.block, heads);
    return {heads.allTried
                ? tr("Start with %1: saves %2").arg(starts, saves)
                : tr("Start with %1, the best of those tried: saves %2").arg(starts, saves),
            FloorChange{{"start with %1", {starts.toStdString()}},
                        changedPlace(heads),
                        [heads](Block& b) { startWith(b, heads); }}};
}

void FloorBuys::show(const FloorView& view, const FloorWeek* week, bool writable) {
    writable_ = writable;
    std::vector<Row> rows = rowsOf(view, week);
    if (rows.size() > kMost) rows.resize(kMost);
    empty_->setVisible(rows.empty() || !view.whole);
    empty_->setText(!view.answer  ? QString()
                    : !view.whole ? tr("Kit, members and starts are being tried…")
                                  : tr("Nothing that was tried ends the class 5 s earlier."));
    fill(rows);
}

void FloorBuys::fill(const std::vector<Row>& rows) {
    std::vector<QString> next;
    for (const Row& row : rows) next.push_back(row.text);
    if (body_ && next == shown_) return;
    shown_ = next;
    const bool hadFocus = body_ && body_->isAncestorOf(window()->focusWidget());
    if (body_) body_->deleteLater(); // it may be one of its buttons that was pressed
    if (body_) body_->hide();
    body_ = new QWidget(this);
    auto* grid = new QGridLayout(body_);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(0, 1);
    for (std::size_t i = 0; i < rows.size(); ++i) add(static_cast<int>(i), rows[i]);
    static_cast<QVBoxLayout*>(layout())->insertWidget(0, body_);
    if (auto* first = body_->findChild<QPushButton*>(); first && hadFocus) first->setFocus();
}

void FloorBuys::add(int line, const Row& row) {
    auto* grid = static_cast<QGridLayout*>(body_->layout());
    auto* text = new QLabel(row.text, body_);
    text->setWordWrap(true);
    text->setTextFormat(Qt::PlainText);
    grid->addWidget(text, line, 0, Qt::AlignVCenter);
    if (!row.change) return;
    auto* apply = new QPushButton(tr("Apply"), body_);
    apply->setEnabled(writable_);
    apply->setAccessibleName(tr("Apply: %1").arg(row.text));
    grid->addWidget(apply, line, 1, Qt::AlignVCenter);
    connect(apply, &QPushButton::clicked, this,
            [this, change = *row.change] { Q_EMIT applyWanted(change); });
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_page.hpp"

#include "desk/almanac/almanac_marks.hpp"
#include "desk/almanac/almanac_view.hpp"
#include "desk/bench/must_change.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/words.hpp"
#include "edit/month_verbs.hpp"

#include <QComboBox>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QStyle>

namespace bw {

namespace {
enum Table : std::size_t { kTurns, kExercises, kRatios, kTables };
constexpr int kSpans[] = {12, 24, 36, 0};

std::optional<Place> placeIn(const Block& block, const ExerciseId& exercise) {
    std::optional<Place> found;
    Place at{0, 0, 0};
    for (at.section = 0; const Section* s = sectionAt(block, {at.section}); ++at.section)
        for (at.group = 0; at.group < static_cast<int>(s->groups.size()); ++at.group)
            for (at.slot = 0; const Slot* slot = slotAt(block, at); ++at.slot)
                if (slot->exercise == exercise && (!found || slot->main)) {
                    if (slot->main) return at;
                    found = at;
                }
    return found;
}
} // namespace

AlmanacPage::AlmanacPage(Draft& draft, QWidget* parent) : QWidget(parent), draft_(draft) {
    assemble();
    connect(&draft_, &Draft::changed, this, &AlmanacPage::draftChanged);
    setFocusProxy(views_[kExercises]);
}

void AlmanacPage::assemble() {
    auto* paper = new QFrame(this);
    paper->setFrameShape(QFrame::StyledPanel);
    paper->setAutoFillBackground(true);
    paper->setBackgroundRole(QPalette::Base);
    auto* tables = new QVBoxLayout(paper);
    tables->setContentsMargins(1, 1, 1, 1);
    tables->setSpacing(0);
    addTable(tables, kTurns, tr("Formats by month"));
    addTable(tables, kExercises, tr("Exercises by month"));
    addTable(tables, kRatios, tr("Balance by month"));
    for (int which = 0; which < static_cast<int>(kTables); ++which) wire(which);
    views_[kExercises]->setEmptyText(tr("No exercise fits these words."));
    sentence_ = makeSentence(this, "sentence");
    sentence_->setContentsMargins(4, 0, 4, 0);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->setSpacing(6);
    layout->addWidget(makeBar());
    layout->addWidget(paper, 1);
    layout->addWidget(sentence_);
}

QWidget* AlmanacPage::makeBar() {
    auto* bar = new QWidget(this);
    filter_ = new QLineEdit(bar);
    filter_->setPlaceholderText(tr("squat · row · main · new · not since July"));
    filter_->setAccessibleName(tr("Show only exercises that fit"));
    filter_->setToolTip(tr("Parts of a name or a pattern; “main” for main lifts; “new”; “not since "
                           "2026-07” for what no month since then has used."));
    filter_->setClearButtonEnabled(true);
    filter_->setMinimumWidth(120);
    filter_->setMaximumWidth(380);
    auto* label = new QLabel(tr("&Filter"), bar);
    label->setBuddy(filter_);
    count_ = new QLabel(bar);
    count_->setProperty("quiet", true);
    span_ = new QComboBox(bar);
    for (const int months : kSpans)
        span_->addItem(months ? tr("%1 months").arg(months) : tr("all months"));
    span_->setCurrentIndex(1);
    span_->setAccessibleName(tr("How many months"));
    start_ = new QPushButton(bar);
    start_->setAutoDefault(true);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(label);
    row->addWidget(filter_, 3);
    row->addWidget(count_);
    row->addStretch(1);
    row->addWidget(span_);
    row->addWidget(start_);
    connect(filter_, &QLineEdit::textChanged, this, &AlmanacPage::fill);
    connect(span_, &QComboBox::currentIndexChanged, this, &AlmanacPage::refresh);
    connect(start_, &QPushButton::clicked, this, &AlmanacPage::startNext);
    dressAsFrame(bar);
    return bar;
}

void AlmanacPage::addTable(QVBoxLayout* column, int which, const QString& name) {
    const auto at = static_cast<std::size_t>(which);
    models_[at] = new AlmanacModel(this);
    const auto top = at == kTurns ? AlmanacView::Top::Months : AlmanacView::Top::None;
    views_[at] = new AlmanacView(*models_[at], top, name, this);
    const bool middle = at == kExercises;
    views_[at]->setVerticalScrollBarPolicy(middle ? Qt::ScrollBarAlwaysOn : Qt::ScrollBarAlwaysOff);
    auto* across = new QHBoxLayout;
    across->addWidget(views_[at]);
    if (!middle) across->addSpacing(scrollBarWidth());
    column->addLayout(across, middle ? 1 : 0);
    if (at != kRatios) {
        auto* rule = new QWidget(this);
        rule->setFixedHeight(1);
        rule->setAutoFillBackground(true);
        rule->setBackgroundRole(QPalette::Mid);
        column->addWidget(rule);
    }
}

void AlmanacPage::wire(int which) {
    AlmanacView* view = views_[static_cast<std::size_t>(which)];
    connect(view, &AlmanacView::moved, this, [this, which](const QModelIndex& to) {
        active_ = static_cast<std::size_t>(which);
        setColumn(to.column());
        tell(to);
    });
    connect(view, &AlmanacView::left, this, [this, which](int step) {
        for (int to = which + step; to >= 0 && to < static_cast<int>(kTables); to += step)
            if (views_[static_cast<std::size_t>(to)]->enter(column_, step)) return;
    });
    connect(view, &AlmanacView::opened, this, [this, view](const QModelIndex& cell) {
        open(cell.column(), view->almanac().line(cell.row()).exercise);
    });
    connect(view, &AlmanacView::monthWanted, this, [this](int column) { open(column, {}); });
    for (AlmanacView* other : views_)
        if (other != view)
            connect(view->horizontalScrollBar(), &QScrollBar::valueChanged,
                    other->horizontalScrollBar(), &QScrollBar::setValue);
}

std::optional<Month> AlmanacPage::month() const {
    if (!almanac_ || column_ < 0 || column_ >= static_cast<int>(almanac_->months.size()))
        return std::nullopt;
    return almanac_->months[static_cast<std::size_t>(column_)].month;
}

// Typing, weeks and simulated classes change the draft without a change here.
void AlmanacPage::draftChanged() {
    const auto revision = draft_.gym().gymRevision();
    if (almanac_ && revision == revision_ && draft_.month() == shown_) return;
    stale_ = true;
    if (isVisible()) refresh();
}

void AlmanacPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void AlmanacPage::refresh() {
    stale_ = false;
    const auto cursor = draft_.month() == shown_ ? month() : std::nullopt;
    revision_ = draft_.gym().gymRevision();
    shown_ = draft_.month();
    almanac_ = std::make_shared<const Almanac>(
        almanac(draft_.gym().gym(), {kSpans[std::max(0, span_->currentIndex())], {}}));
    column_ = columnOf(cursor ? cursor : shown_);
    fill();
}

// The month's column, else the last.
int AlmanacPage::columnOf(std::optional<Month> month) const {
    const int last = static_cast<int>(almanac_->months.size()) - 1;
    if (last < 0 || !month) return last;
    const int column = month->monthsSince(almanac_->months.front().month);
    return column >= 0 && column <= last ? column : last;
}

void AlmanacPage::fill() {
    if (!almanac_) return;
    AlmanacFilter filter;
    if (!almanac_->months.empty())
        filter = AlmanacFilter::parse(filter_->text(), almanac_->months.back().month);
    std::array lines{turnLines(*almanac_), exerciseLines(*almanac_, filter),
                     ratioLines(*almanac_, draft_.gym().gym().settings)};
    const int fit = countExercises(lines[kExercises]);
    for (std::size_t i = 0; i < models_.size(); ++i) {
        if (draft_.block()) markLines(lines[i], *draft_.block(), draft_.verdict().findings);
        views_[i]->show(almanac_, std::move(lines[i]), shown_, column_);
    }
    count_->setText(!filter.trouble.isEmpty() ? filter.trouble
                    : fit == 1                ? tr("1 exercise")
                                              : tr("%1 exercises").arg(fit));
    fitSizes();
    setColumn(column_);
    tell(views_[active_]->currentIndex());
}

void AlmanacPage::fitSizes() {
    if (!almanac_ || almanac_->months.empty()) return;
    const QFontMetrics metrics(font());
    const int digit = metrics.horizontalAdvance(QLatin1Char('0')), line = metrics.height();
    const int names = std::min(38 * digit, width() * 2 / 5);
    const int room = views_[kExercises]->width() - names - scrollBarWidth();
    const int months = static_cast<int>(almanac_->months.size());
    const int column = std::clamp(room / months, 5 * digit, 11 * digit);
    const bool low = height() < 28 * line; // then the exercises get what the others can spare
    views_[kTurns]->setSizes(names, column, low ? line : line * 5 / 4, line);
    views_[kExercises]->setSizes(names, column, line * 3 / 2, line * 7 / 4);
    views_[kRatios]->setSizes(names, column, low ? line * 2 : line * 16 / 5, line);
    for (AlmanacView* view : {views_[kTurns], views_[kRatios]}) {
        const int rows = view->almanac().rowCount();
        const int lowRows = (view == views_[kTurns] ? line : line * 2) * rows;
        const int whole = view->wholeHeight();
        view->setMaximumHeight(whole);
        view->setMinimumHeight(std::min(whole, lowRows + whole - view->rowsHeight()));
    }
}

int AlmanacPage::scrollBarWidth() const { return style()->pixelMetric(QStyle::PM_ScrollBarExtent); }

void AlmanacPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate(); // the tables have their new width
    fitSizes();
    setColumn(column_);
}

void AlmanacPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitSizes();
}

void AlmanacPage::setColumn(int column) {
    column_ = column;
    for (AlmanacView* view : views_) view->showColumn(column);
    const auto from = month();
    const auto latest = draft_.gym().gym().latest();
    const bool drafted = from && draft_.gym().gym().block(*from);
    start_->setEnabled(drafted && draft_.gym().file().writable());
    start_->setText(
        drafted ? tr("&Start %1 from %2").arg(monthName(latest->month.plus(1)), monthName(*from))
                : tr("&Start the next month"));
}

void AlmanacPage::tell(const QModelIndex& cell) {
    sentence_->setText(cell.isValid() ? cell.data(Qt::AccessibleTextRole).toString() : QString());
}

void AlmanacPage::open(int column, const std::optional<ExerciseId>& exercise) {
    const AlmanacMonth& wanted = almanac_->months.at(static_cast<std::size_t>(column));
    if (!wanted.block)
        return sentence_->setText(tr("%1 has no block.").arg(monthName(wanted.month)));
    const auto place = exercise ? placeIn(*wanted.block, *exercise) : std::nullopt;
    draft_.showMonth(wanted.month);
    if (place) draft_.setPlace(*place);
    Q_EMIT benchWanted();
}

void AlmanacPage::startNext() {
    const auto from = month();
    if (!from) return;
    const Did did = startNextFrom(draft_.gym(), *from);
    if (!did) return Q_EMIT refused(did.why());
    if (!*did) return;
    markMustChange(draft_);
    Q_EMIT benchWanted();
}

} // namespace bw

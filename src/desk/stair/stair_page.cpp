// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_page.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"
#include "desk/stair/member_panel.hpp"
#include "desk/stair/stair_view.hpp"
#include "desk/stair/week_table.hpp"

#include <QEvent>
#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace bw {

namespace {
QString caveatsOf(const Block& block) {
    QStringList all;
    for (const Message& m : loadCaveats(block)) all << say(m);
    return all.join(QLatin1Char(' '));
}

bool saysMuch(const SlotTargets& t) { return t.estimate || t.instead; }

QWidget* rule(QWidget* parent) {
    auto* line = new QWidget(parent);
    line->setFixedHeight(1);
    line->setAutoFillBackground(true);
    line->setBackgroundRole(QPalette::Mid);
    return line;
}
} // namespace

StairPage::StairPage(Draft& draft, Actions& actions, QWidget* parent)
    : QWidget(parent), draft_(draft), stair_(new StairView(draft, actions, this)),
      loads_(new LoadModel(this)), slots_(new SlotModel(this)),
      loadTable_(new WeekTable(*loads_, tr("Load of the weeks"), this)),
      slotTable_(new WeekTable(*slots_, tr("What each slot asks, week by week"), this)),
      panel_(new StairMemberPanel(this)), caveats_(new QLabel(this)),
      sentence_(makeSentence(this, "stair-sentence")) {
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setChildrenCollapsible(false);
    across->addWidget(makePaper());
    auto* side = new QFrame(across);
    lookLikePaper(*side);
    auto* sideLayout = new QVBoxLayout(side);
    sideLayout->setContentsMargins(1, 1, 1, 1);
    sideLayout->addWidget(panel_);
    across->addWidget(side);
    across->setStretchFactor(0, 5);
    across->setStretchFactor(1, 2);
    across->setSizes({840, 300});
    sentence_->setContentsMargins(4, 0, 4, 0);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->setSpacing(6);
    layout->addWidget(across, 1);
    layout->addWidget(sentence_);
    wire();
    setFocusProxy(stair_);
}

StairPage::~StairPage() { stair_->finishTyping(); }

QWidget* StairPage::makePaper() {
    auto* paper = new QFrame(this);
    lookLikePaper(*paper);
    loadTable_->setObjectName(QStringLiteral("stair-loads"));
    loadTable_->horizontalHeader()->hide();
    loadTable_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    slotTable_->setObjectName(QStringLiteral("stair-slots"));
    slotTable_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    slotTable_->setEmptyText(
        tr("This month has no exercises yet. Draft them on the Bench, Alt+1."));
    caveats_->setObjectName(QStringLiteral("stair-caveats"));
    caveats_->setWordWrap(true);
    caveats_->setTextFormat(Qt::PlainText);
    caveats_->setForegroundRole(QPalette::PlaceholderText);
    caveats_->setIndent(8);
    caveats_->setFont(smallFont(font()));
    auto* column = new QVBoxLayout(paper);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(stair_, 2);
    column->addWidget(loadTable_);
    column->addWidget(caveats_);
    column->addWidget(rule(paper));
    column->addWidget(slotTable_, 3);
    return paper;
}

void StairPage::wire() {
    connect(&draft_, &Draft::changed, this, &StairPage::draftChanged);
    connect(&draft_, &Draft::placeChanged, this, &StairPage::followPlace);
    connect(stair_, &StairView::refused, this, &StairPage::refused);
    connect(stair_, &StairView::trouble, this, [this](const QString& why) {
        if (why.isEmpty()) return tell(slotTable_->currentIndex());
        tellTrouble(*sentence_, why);
    });
    for (WeekTable* table : {loadTable_, slotTable_})
        connect(table, &WeekTable::moved, this, &StairPage::moved);
    connect(slotTable_, &WeekTable::entered, this, [this](const QModelIndex& at) {
        draft_.setPlace(slots_->row(at.row()).place);
        Q_EMIT picked();
    });
    connect(panel_, &StairMemberPanel::chosen, this, [this] {
        results_.reset();
        shown_.reset();
        refresh();
        toFirstEstimate();
    });
}

// Unless there is something to say of the slot on show.
void StairPage::toFirstEstimate() {
    const SlotTargets* here = member_ && place_ ? targetsAt(*member_, *place_) : nullptr;
    if (const auto to = usualPlace(); to && !(here && saysMuch(*here))) draft_.setPlace(*to);
}

// Where a coach most likely looks first: what there is something to say of for the member, else the
// first main lift.
std::optional<Place> StairPage::usualPlace() const {
    if (member_)
        if (const auto first = std::ranges::find_if(member_->slots, saysMuch);
            first != member_->slots.end())
            return first->place;
    for (int r = 0; r < slots_->rowCount(); ++r)
        if (slots_->row(r).main) return slots_->row(r).place;
    return slots_->rowCount() > 0 ? std::optional(slots_->row(0).place) : std::nullopt;
}

// A page out of sight is filled when it is next shown; until then it holds nothing of the gym.
void StairPage::draftChanged() {
    if (isVisible()) return refresh();
    stale_ = true;
    member_.reset();
    shown_.reset();
}

void StairPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
    followPlace(draft_.place());
}

void StairPage::readMember() {
    const auto member = panel_->member();
    const auto revision = draft_.gym().revision();
    if (results_ && revision == revision_ && member == results_->member()) return;
    revision_ = revision;
    results_.reset();
    if (!member) return;
    auto read = MemberResults::read(draft_.gym(), *member);
    if (!read) return panel_->showTrouble(say(read.why()));
    results_ = std::move(read).value();
}

void StairPage::refresh() {
    stale_ = false;
    const Block* block = draft_.block();
    if (!block) return;
    const Gym& gym = draft_.gym().gym();
    const int weeks = static_cast<int>(block->stair.size());
    if (shown_ != draft_.shown() || draft_.gym().revision() != revision_) {
        filling_ = true;
        panel_->setMembers(gym.members);
        readMember();
        member_ = results_ ? results_->stairOf(gym, *block) : std::nullopt;
        const MemberStair* member = member_ ? &*member_ : nullptr;
        loads_->show(loadRows(gym, *block, member), weeks);
        slots_->show(stairRows(gym, *block, member), weeks);
        caveats_->setText(caveatsOf(*block));
        shown_ = draft_.shown();
        if (month_ != block->month || !place_ || slots_->rowOf(*place_) < 0) place_ = usualPlace();
        month_ = block->month;
        filling_ = false;
        fitSizes();
    }
    const int week = std::min(draft_.week().index(), weeks - 1);
    filling_ = true;
    for (WeekTable* table : {loadTable_, slotTable_}) table->showWeek(week);
    if (place_)
        slotTable_->setCurrentIndex(
            slots_->index(slots_->rowOf(*place_), WeekModel::kFirstWeek + week));
    filling_ = false;
    showMember();
    tell(slotTable_->currentIndex());
}

void StairPage::showMember() {
    if (!draft_.block() || (panel_->member() && !member_)) return;
    panel_->show({draft_.gym().gym(), *draft_.block(), place_, member_ ? &*member_ : nullptr,
                  draft_.week().index()});
}

void StairPage::moved(const QModelIndex& to) {
    if (filling_) return;
    const bool slot = to.model() == slots_;
    if (slot) {
        place_ = slots_->row(to.row()).place;
        draft_.setPlace(*place_);
    }
    const int week = to.column() - WeekModel::kFirstWeek;
    if (week >= 0) draft_.showWeek(Week::of(week + 1).value());
    showMember();
    tell(to);
}

void StairPage::followPlace(Place place) {
    const int row = place.isSlot() ? slots_->rowOf(place) : -1;
    if (filling_ || !isVisible() || row < 0 || place == place_) return;
    place_ = place;
    slotTable_->setCurrentIndex(slots_->index(row, WeekModel::kFirstWeek + slotTable_->week()));
}

// Of a slot always the week on show, whichever of its cells is chosen.
void StairPage::tell(const QModelIndex& cell) {
    const bool before = cell.model() == slots_ && cell.column() < WeekModel::kFirstWeek;
    const QModelIndex at =
        before ? cell.siblingAtColumn(WeekModel::kFirstWeek + slotTable_->week()) : cell;
    const QString words = at.isValid() ? at.data(Qt::AccessibleTextRole).toString() : QString();
    sentence_->setPalette({});
    sentence_->setText(words);
    sentence_->setToolTip(words);
}

void StairPage::fitSizes() {
    const int weeks =
        std::max(1, static_cast<int>(draft_.block() ? draft_.block()->stair.size() : 1));
    const int digit = fontMetrics().horizontalAdvance(QLatin1Char('0'));
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    const int room = std::max(300, slotTable_->width() - bar);
    WeekColumns columns;
    columns.dose = 12 * digit;
    columns.week = (room - std::max(38 * digit, room * 3 / 10)) / weeks;
    columns.names = room - columns.week * weeks - columns.dose;
    stair_->setColumns(columns.left(), columns.week);
    for (WeekTable* table : {loadTable_, slotTable_}) table->setColumns(columns);
    loadTable_->setFixedHeight(loadTable_->wholeHeight() + 6);
}

void StairPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate();
    fitSizes();
}

void StairPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitSizes();
    if (event->type() == QEvent::PaletteChange && isVisible()) showMember();
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_page.hpp"

#include "desk/floor/finish_chart.hpp"
#include "desk/floor/floor_controls.hpp"
#include "desk/floor/floor_lanes.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/floor/lane_legend.hpp"
#include "desk/floor/wait_table.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "edit/block_verbs.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedLayout>

namespace bw {

namespace {
QFrame* paper(QWidget* parent) {
    auto* sheet = new QFrame(parent);
    sheet->setFrameShape(QFrame::StyledPanel);
    sheet->setAutoFillBackground(true);
    sheet->setBackgroundRole(QPalette::Base);
    return sheet;
}

QLabel* heading(QWidget* parent, const QString& text, QWidget* buddy) {
    auto* label = new QLabel(text, parent);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    if (buddy) label->setBuddy(buddy);
    return label;
}
} // namespace

FloorPage::FloorPage(Draft& draft, FloorRunner& runner, QWidget* parent)
    : QWidget(parent), draft_(draft), runner_(runner), controls_(new FloorControls(this)),
      summary_(makeWords(this, "floor-summary")) {
    summary_->setTextFormat(Qt::RichText);
    summary_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    summary_->setFocusPolicy(Qt::StrongFocus);
    dressAsFrame(summary_);
    summary_->setAccessibleName(tr("The class in words"));
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setChildrenCollapsible(false);
    across->addWidget(makePicture());
    across->addWidget(makeFigures());
    across->setStretchFactor(0, 5);
    across->setStretchFactor(1, 2);
    across->setSizes({760, 340});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->setSpacing(8);
    layout->addWidget(controls_);
    layout->addWidget(summary_);
    layout->addWidget(across, 1);
    setFocusProxy(lanes_);
    connect(controls_, &FloorControls::changed, this, &FloorPage::ask);
    connect(controls_, &FloorControls::orderChanged, this,
            [this] { lanes_->setOrder(controls_->order()); });
    connect(&runner_, &FloorRunner::told, this, &FloorPage::refresh);
    connect(&draft_, &Draft::changed, this, &FloorPage::ask);
    connect(&draft_, &Draft::changed, this, &FloorPage::refresh);
    refresh();
}

QWidget* FloorPage::makePicture() {
    auto* sheet = paper(this);
    lanes_ = new FloorLanes(sheet);
    trouble_ = makeWords(sheet, "floor-trouble");
    trouble_->setAlignment(Qt::AlignCenter);
    toRows_ = new QPushButton(tr("Go to the rows"), sheet);
    toRows_->setObjectName(QStringLiteral("floor-to-rows"));
    auto* stopped = new QWidget(sheet);
    auto* middle = new QVBoxLayout(stopped);
    middle->setContentsMargins(40, 0, 40, 0);
    middle->addStretch(2);
    middle->addWidget(trouble_);
    middle->addWidget(toRows_, 0, Qt::AlignHCenter);
    middle->addStretch(3);
    piece_ = makeSentence(sheet, "floor-piece");
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(12, 4, 12, 6);
    foot->setSpacing(2);
    foot->addWidget(piece_);
    foot->addWidget(new LaneLegend(sheet));
    auto* played = new QWidget(sheet);
    auto* lanes = new QVBoxLayout(played);
    lanes->setContentsMargins(0, 0, 0, 0);
    lanes->setSpacing(0);
    lanes->addWidget(lanes_, 1);
    lanes->addLayout(foot);
    picture_ = new QStackedLayout(sheet);
    picture_->addWidget(played);
    picture_->addWidget(stopped);
    connect(lanes_, &FloorLanes::moved, this, &FloorPage::tellPiece);
    connect(lanes_, &FloorLanes::picked, this, &FloorPage::goTo);
    connect(toRows_, &QPushButton::clicked, this, [this] { goTo(troubled_); });
    return sheet;
}

QWidget* FloorPage::makeFigures() {
    auto* sheet = paper(this);
    sheet->setMinimumWidth(300);
    finish_ = new FinishChart(sheet);
    waits_ = new WaitTable(sheet);
    buys_ = new FloorBuys(sheet);
    buys_->setObjectName(QStringLiteral("floor-buys"));
    auto* room = new QScrollArea(sheet);
    room->setFrameShape(QFrame::NoFrame);
    room->setWidgetResizable(true);
    room->setFocusPolicy(Qt::NoFocus);
    room->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    room->setWidget(buys_);
    buys_->setBackgroundRole(QPalette::Base);
    auto* column = new QVBoxLayout(sheet);
    column->setContentsMargins(14, 10, 14, 10);
    column->setSpacing(4);
    column->addWidget(heading(sheet, tr("When the class ends"), nullptr));
    column->addWidget(finish_);
    column->addSpacing(8);
    column->addWidget(heading(sheet, tr("Waiting for &kit"), waits_));
    column->addWidget(waits_, 3);
    column->addSpacing(8);
    column->addWidget(heading(sheet, tr("What ends it earlier"), nullptr));
    column->addWidget(room, 4);
    connect(buys_, &FloorBuys::applyWanted, this, &FloorPage::apply);
    return sheet;
}

void FloorPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    ask();
    refresh();
}

void FloorPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    runner_.want(std::nullopt);
}

void FloorPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && buys_) refresh();
}

void FloorPage::ask() {
    if (!isVisible() || !draft_.block()) return;
    auto options = controls_->options();
    if (!options) return showTrouble(options.why(), {});
    FloorOptions asked = std::move(options).value();
    if (asked.loadAware) asked.targets = targets();
    runner_.want(std::move(asked));
    refresh();
}

// What the members want to lift of the exercises on the sheet. A file that can't be read has no
// results.
FloorTargets FloorPage::targets() {
    ResultQuery query;
    for (const Section& section : draft_.block()->sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise) query.exercises.push_back(*slot.exercise);
    std::vector<LiftResult> results;
    if (query.exercises.empty()) return {};
    const auto read = draft_.gym().file().eachResultOf(query, [&](const LiftResult& result) {
        results.push_back(result);
        return true;
    });
    return read ? latestLoads(draft_.gym().gym(), results) : FloorTargets{};
}

void FloorPage::refresh() {
    if (!draft_.block()) return;
    controls_->setPlaces(draft_.gym().gym().settings.places);
    if (!isVisible() || !controls_->options()) return;
    const FloorView& view = runner_.wanted();
    const FloorWeek* week = draft_.study() ? draft_.study()->of(draft_.week()) : nullptr;
    buys_->show(view, week, draft_.gym().file().writable());
    if (!view.answer && !view.why) return; // soon
    if (view.why) {
        const auto shortages = floorShortages(*view.gym, *view.block);
        return showTrouble(*view.why, shortages.empty() ? Place{} : shortages.front().place);
    }
    picture_->setCurrentIndex(0);
    const QString summary = QStringLiteral("%1 <span style=\"color:%2\">%3</span>")
                                .arg(floorLead(view).toHtmlEscaped(), inks().quiet.name(),
                                     floorDetails(view).toHtmlEscaped());
    if (summary != summary_->text()) summary_->setText(summary);
    summary_->setAccessibleName(floorSummary(view));
    lanes_->show(view);
    finish_->show(view);
    waits_->show(view);
}

void FloorPage::showTrouble(const Message& why, Place place) {
    summary_->setText(tr("The class can't be played."));
    summary_->setAccessibleName(summary_->text());
    trouble_->setText(levelShape(Level::Stop) + QLatin1Char(' ') + say(why));
    troubled_ = place;
    toRows_->setVisible(!place.isSession());
    picture_->setCurrentIndex(1);
    finish_->show({});
    waits_->show({});
    buys_->show({}, nullptr, false);
}

void FloorPage::tellPiece() { piece_->setText(lanes_->words()); }

void FloorPage::goTo(Place place) {
    draft_.setPlace(place);
    Q_EMIT picked(place);
}

void FloorPage::apply(const FloorChange& change) {
    if (!draft_.month()) return;
    const Did did =
        editBlock(draft_.gym(), {*draft_.month(), change.place}, change.label, change.change);
    if (!did) Q_EMIT failed(did.why());
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/bench_page.hpp"

#include "desk/bench/beam_panel.hpp"
#include "desk/bench/draft.hpp"
#include "desk/bench/findings_panel.hpp"
#include "desk/bench/minute_rail.hpp"
#include "desk/bench/new_exercise.hpp"
#include "desk/bench/sheet_delegate.hpp"
#include "desk/bench/sheet_model.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/bench/slot_strip.hpp"
#include "desk/floor/floor_strip.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"
#include "desk/propose/propose_strip.hpp"
#include "edit/gym_verbs.hpp"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

namespace bw {

namespace {
QWidget* onPaper(QWidget* parent, std::initializer_list<QWidget*> column) {
    auto* paper = new QFrame(parent);
    lookLikePaper(*paper);
    auto* layout = new QVBoxLayout(paper);
    layout->setContentsMargins(1, 1, 1, 1);
    layout->setSpacing(0);
    for (QWidget* w : column) layout->addWidget(w);
    return paper;
}
} // namespace

BenchPage::BenchPage(Draft& draft, FloorRunner& floor, Actions& actions, QWidget* parent)
    : QWidget(parent), draft_(draft), model_(new SheetModel(draft, this)),
      sheet_(new SheetView(draft, *model_, this)), findings_(new FindingsPanel(draft, this)),
      propose_(new ProposeStrip(draft, this)), notice_(new QLabel(this)) {
    notice_->setWordWrap(true);
    notice_->setContentsMargins(12, 6, 12, 6);
    notice_->setTextFormat(Qt::PlainText);
    notice_->hide();
    assemble(floor);
    connect(model_, &SheetModel::refused, this, &BenchPage::tell);
    connect(findings_, &FindingsPanel::failed, this, &BenchPage::tell);
    connect(findings_, &FindingsPanel::limitWanted, this, &BenchPage::limitWanted);
    connect(findings_, &FindingsPanel::picked, this, [this] { sheet_->setFocus(); });
    connect(&sheet_->delegate(), &SheetDelegate::trouble, this, &BenchPage::tell);
    connect(&sheet_->delegate(), &SheetDelegate::clear, this, &BenchPage::quiet);
    connect(&sheet_->delegate(), &SheetDelegate::addWanted, this, &BenchPage::addNew);
    connect(propose_, &ProposeStrip::failed, this, &BenchPage::tell);
    connect(propose_, &ProposeStrip::left, this, [this] { sheet_->setFocus(); });
    connect(&draft_, &Draft::placeChanged, this, &BenchPage::quiet);
    addActions(actions);
    addMoves(actions);
    setFocusProxy(sheet_);
}

BenchPage::~BenchPage() { sheet_->delegate().finishTyping(*sheet_); }

void BenchPage::assemble(FloorRunner& floor) {
    auto* strip = new SlotStrip(draft_, this);
    connect(strip, &SlotStrip::refused, this, &BenchPage::tell);
    auto* rail = new MinuteRail(draft_, this);
    connect(rail, &MinuteRail::picked, this, [this] { sheet_->setFocus(); });
    auto* onFloor = new FloorStrip(draft_, floor, *rail);
    connect(onFloor, &FloorStrip::floorWanted, this, &BenchPage::floorWanted);
    connect(&floor, &FloorRunner::stateChanged, findings_,
            [this, &floor] { findings_->setFloorBehind(floor.behind()); });
    findings_->setFloorBehind(floor.behind());
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setChildrenCollapsible(false);
    across->addWidget(onPaper(across, {sheet_, notice_, strip}));
    across->addWidget(makeSide(across));
    across->setStretchFactor(0, 5);
    across->setStretchFactor(1, 2);
    across->setSizes({720, 300});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->setSpacing(8);
    layout->addWidget(across, 1);
    layout->addWidget(propose_);
    layout->addWidget(onPaper(this, {rail}));
}

// The findings and, below, the beam.
QWidget* BenchPage::makeSide(QWidget* parent) {
    auto* side = new QWidget(parent);
    beam_ = new BeamPanel(draft_, side);
    connect(beam_, &BeamPanel::picked, this, [this] { sheet_->setFocus(); });
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(onPaper(side, {findings_}), 1);
    column->addWidget(beam_);
    return side;
}

void BenchPage::tell(const Message& what) { tellTrouble(*notice_, say(what)); }

void BenchPage::quiet() { notice_->hide(); }

void BenchPage::propose(void (ProposeStrip::*ask)()) {
    sheet_->delegate().finishTyping(*sheet_);
    quiet();
    (propose_->*ask)();
    propose_->setFocus();
}

Place BenchPage::groupHere() const {
    Place p = draft_.place();
    p.slot = -1;
    return p;
}

void BenchPage::addActions(Actions& actions) {
    const QString group = tr("Bench");
    const auto verb = [&](const char* id, const QString& text, const QList<QKeySequence>& keys,
                          std::function<Did(OpenGym&, Spot)> run) {
        actions.add(group, QLatin1String(id), text, keys, this, [this, run = std::move(run)] {
            if (!draft_.block()) return;
            quiet();
            if (const Did did = run(draft_.gym(), draft_.spot()); !did) tell(did.why());
        });
    };
    verb("add-slot", tr("Add a slot below"), {Qt::CTRL | Qt::Key_Return, Qt::Key_Insert}, addSlot);
    verb("add-group", tr("Add a pair below"), {Qt::CTRL | Qt::Key_G}, addGroup);
    const std::pair<SectionKind, QKeySequence> kinds[] = {
        {SectionKind::WarmUp, {}},
        {SectionKind::Power, {}},
        {SectionKind::Strength, Qt::CTRL | Qt::SHIFT | Qt::Key_G},
        {SectionKind::Finisher, {}}};
    for (const auto& [kind, key] : kinds)
        verb(("add-" + std::string(wordOf(kind))).c_str(),
             tr("Add a section below: %1").arg(kindName(kind)),
             key.isEmpty() ? QList<QKeySequence>{} : QList<QKeySequence>{key},
             [kind = kind](OpenGym& gym, Spot spot) { return addSection(gym, spot, kind); });
    verb("clear", tr("Clear the cell, or open the slot"), {Qt::Key_Delete}, [this](OpenGym&, Spot) {
        const QModelIndex now = sheet_->currentIndex();
        const auto cell = model_->cellAt(now);
        if (!cell || !(model_->flags(now) & Qt::ItemIsEditable)) return Did(false);
        if (const auto read = readCell(*cell, QString()); !read) return Did(read.why());
        return Did(model_->setData(now, QString(), Qt::EditRole));
    });
    verb("remove", tr("Remove the line"), {Qt::CTRL | Qt::Key_Delete, Qt::CTRL | Qt::Key_Backspace},
         removeAt);
    actions.add(group, QStringLiteral("accept-finding"), tr("Accept the finding…"),
                {Qt::CTRL | Qt::SHIFT | Qt::Key_A}, this, [this] { findings_->askWhy(); });
    verb("main", tr("Main lift"), {Qt::CTRL | Qt::Key_M}, [this](OpenGym& gym, Spot spot) {
        const Slot* slot = slotAt(*draft_.block(), spot.place);
        return slot ? setMain(gym, spot, !slot->main) : Did(false);
    });
    verb("lock", tr("Lock the slot"), {Qt::CTRL | Qt::Key_L}, [this](OpenGym& gym, Spot spot) {
        const Slot* slot = slotAt(*draft_.block(), spot.place);
        return slot ? setLocked(gym, spot, !slot->locked) : Did(false);
    });
}

void BenchPage::addMoves(Actions& actions) {
    const auto move = [&](const char* id, const QString& text, const QKeySequence& key, int step,
                          bool group) {
        actions.add(tr("Bench"), QLatin1String(id), text, {key}, this, [this, step, group] {
            if (!draft_.block()) return;
            Spot spot = draft_.spot();
            if (group) spot.place = groupHere();
            if (const Did did = moveBy(draft_.gym(), spot, step); !did) tell(did.why());
        });
    };
    move("move-up", tr("Move the line up"), Qt::CTRL | Qt::Key_Up, -1, false);
    move("move-down", tr("Move the line down"), Qt::CTRL | Qt::Key_Down, 1, false);
    move("move-group-up", tr("Move the group up"), Qt::CTRL | Qt::SHIFT | Qt::Key_Up, -1, true);
    move("move-group-down", tr("Move the group down"), Qt::CTRL | Qt::SHIFT | Qt::Key_Down, 1,
         true);
}

void BenchPage::addNew(const QModelIndex& index, const QString& name) {
    const auto cell = model_->cellAt(index);
    if (!cell || !draft_.month()) return;
    const Place place = cell->row.place;
    const Pattern pattern = likelyPattern(*cell, name.toStdString());
    auto made = newExercise(draft_.gym().gym(), name.toStdString(), pattern);
    if (!made) return tell(made.why());
    draft_.endPreview();
    const Did did =
        addAndSetExercise(draft_.gym(), {*draft_.month(), place}, std::move(made).value());
    if (!did) return tell(did.why());
    tell({"“%1” is on the Shelf now, taken for %2, 3 s a rep, no kit.",
          {name.toStdString(), std::string(wordOf(pattern))}});
}

} // namespace bw

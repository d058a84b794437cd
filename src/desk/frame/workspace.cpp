// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/workspace.hpp"

#include "desk/almanac/almanac_page.hpp"
#include "desk/bench/beam_panel.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/bench/findings_panel.hpp"
#include "desk/board/board_actions.hpp"
#include "desk/floor/floor_line.hpp"
#include "desk/floor/floor_page.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/backing_up.hpp"
#include "desk/frame/bundle_actions.hpp"
#include "desk/frame/damage_watch.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/headline.hpp"
#include "desk/frame/month_actions.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/places_column.hpp"
#include "desk/frame/status_line.hpp"
#include "desk/frame/undo_actions.hpp"
#include "desk/gym/gym_page.hpp"
#include "desk/handbook/handbook.hpp"
#include "desk/ledger/ledger_actions.hpp"
#include "desk/ledger/ledger_page.hpp"
#include "desk/limits/limits_page.hpp"
#include "desk/propose/propose_line.hpp"
#include "desk/propose/propose_strip.hpp"
#include "desk/sheets/sheets_page.hpp"
#include "desk/shelf/shelf_page.hpp"
#include "desk/stair/stair_page.hpp"

#include <QActionGroup>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <utility>

namespace bw {

Workspace::Workspace(std::unique_ptr<OpenGym> gym, Actions& actions, QWidget* parent)
    : QWidget(parent), gym_(std::move(gym)), draft_(*gym_), floor_(draft_),
      content_(new QWidget(this)), notice_(new Notice(content_)),
      status_(new StatusLine(gym_->file(), this)), column_(new PlacesColumn(content_)),
      pages_(new QStackedWidget(content_)), places_(new QActionGroup(content_)) {
    addActions(actions);
    addProposals(actions);
    assemble(actions);
    addPlaces(actions);
    addLimits(actions);
    addGymPage(actions);
    addHandbook();
    status_->add(new ProposeLine(bench_->proposals(), status_));
    pages_->addWidget(noMonth_ = emptyMonth(actions));
    keepSplits(*pages_);
    listening_ = gym_->changed.connect([this](const auto&) { notice_->quiet(); });
    connect(&draft_, &Draft::changed, content_, [this] { follow(); });
    connect(new DailyBackup(gym_->file(), content_), &DailyBackup::failed, notice_, &Notice::tell);
    connect(new DamageWatch(gym_->file(), content_), &DamageWatch::found, notice_, &Notice::tell);
    goTo(bench_);
    if (GymPage::comesFirst(gym_->gym())) goTo(gymPage_);
}

Workspace::~Workspace() { (void)letGo(); }

// The pages go first: they may store what is being typed.
std::unique_ptr<OpenGym> Workspace::letGo() {
    listening_.reset();
    disconnect(&draft_, nullptr, content_, nullptr);
    delete std::exchange(content_, nullptr);
    return std::move(gym_);
}

void Workspace::addPlaces(Actions& actions) {
    bench_ = new BenchPage(draft_, floor_, actions, pages_);
    auto* floor = new FloorPage(draft_, floor_, pages_);
    auto* stair = new StairPage(draft_, actions, pages_);
    auto* almanac = new AlmanacPage(draft_, pages_);
    const QDate now = QDate::currentDate();
    auto* ledger =
        new LedgerPage(draft_, Date::of(now.year(), now.month(), now.day()).value(), pages_);
    new LedgerActions(*gym_, *ledger, actions, *notice_, status_->work());
    sheets_ = new SheetsPage(draft_, status_->work(), pages_);
    connect(sheets_, &SheetsPage::boardWanted, actions.find(QStringLiteral("board")),
            &QAction::trigger);
    addPlace(actions, 1, QStringLiteral("bench"), tr("Bench"), bench_);
    addPlace(actions, 2, QStringLiteral("floor"), tr("Floor"), floor);
    addPlace(actions, 3, QStringLiteral("stair"), tr("Stair"), stair);
    shelf_ = new ShelfPage(draft_, actions, pages_);
    addPlace(actions, 4, QStringLiteral("shelf"), tr("Shelf"), shelf_);
    addPlace(actions, 5, QStringLiteral("almanac"), tr("Almanac"), almanac);
    addPlace(actions, 6, QStringLiteral("ledger"), tr("Ledger"), ledger);
    addPlace(actions, 7, QStringLiteral("sheets"), tr("Sheets"), sheets_);
    connect(bench_, &BenchPage::floorWanted, content_, [this, floor] { goTo(floor); });
    connect(floor, &FloorPage::picked, content_, [this] { goTo(bench_); });
    connect(floor, &FloorPage::failed, notice_, &Notice::tell);
    connect(stair, &StairPage::picked, content_, [this] { goTo(bench_); });
    connect(stair, &StairPage::refused, notice_, &Notice::tell);
    connect(shelf_, &ShelfPage::benchWanted, content_, [this] { goTo(bench_); });
    connect(almanac, &AlmanacPage::benchWanted, content_, [this] { goTo(bench_); });
    connect(almanac, &AlmanacPage::refused, notice_, &Notice::tell);
    connect(ledger, &LedgerPage::refused, notice_, &Notice::tell);
}

// A page beside the places: reached from a finding or the menu, left by Esc.
void Workspace::addLimits(Actions& actions) {
    limits_ = new LimitsPage(draft_, pages_);
    pages_->addWidget(limits_);
    places_->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
    actions.add(tr("Everywhere"), QStringLiteral("house-limits"), tr("House &limits…"),
                {Qt::CTRL | Qt::SHIFT | Qt::Key_L}, nullptr, [this] {
                    const QString here =
                        wanted_ == bench_ ? bench_->findings().limitKey() : QString();
                    goTo(limits_);
                    if (!here.isEmpty()) limits_->goTo(here);
                });
    connect(bench_, &BenchPage::limitWanted, content_, [this](const QString& key) {
        goTo(limits_);
        limits_->goTo(key);
    });
    connect(limits_, &LimitsPage::closed, content_, [this] { goTo(before_); });
}

// Likewise.
void Workspace::addGymPage(Actions& actions) {
    gymPage_ = new GymPage(draft_, pages_);
    pages_->addWidget(gymPage_);
    actions.add(tr("Everywhere"), QStringLiteral("gym-and-kit"), tr("Gym and &kit…"),
                {Qt::CTRL | Qt::SHIFT | Qt::Key_K}, nullptr, [this] { goTo(gymPage_); });
    connect(gymPage_, &GymPage::closed, content_, [this] { goTo(before_); });
    QAction* start = actions.find(QStringLiteral("start-empty"));
    connect(gymPage_, &GymPage::monthWanted, content_, [this, start] {
        start->trigger();
        goTo(bench_);
    });
}

// F1 on a part of the Bench opens what is said of that part.
void Workspace::addHandbook() {
    setHandbookPlace(limits_, QStringLiteral("guide.md#house-limits"));
    setHandbookPlace(gymPage_, QStringLiteral("guide.md#gym-and-kit"));
    setHandbookPlace(&bench_->findings(), QStringLiteral("guide.md#findings"));
    setHandbookPlace(&bench_->beam(), QStringLiteral("guide.md#the-beam"));
    setHandbookPlace(&bench_->proposals(), QStringLiteral("guide.md#proposals"));
    connect(&bench_->findings(), &FindingsPanel::ruleWanted, content_, [this](const QString& rule) {
        openHandbook(this, QStringLiteral("rules.md#") + rule);
    });
}

void Workspace::assemble(Actions& actions) {
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    auto* top = new QVBoxLayout;
    top->setContentsMargins(12, 0, 12, 0);
    top->addWidget(notice_);
    right->addWidget(new Headline(draft_, actions, *notice_, content_));
    right->addLayout(top);
    right->addWidget(pages_, 1);
    auto* across = new QHBoxLayout(content_);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(column_);
    across->addLayout(right, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(content_, 1);
    layout->addWidget(status_);
    status_->add(new FloorLine(floor_, status_));
}

void Workspace::addActions(Actions& actions) {
    new UndoActions(*gym_, actions, *notice_, content_);
    new MonthActions(draft_, actions, *notice_, content_);
    new BundleActions(*gym_, actions, *notice_, status_->work(), content_);
    const QString group = tr("Everywhere");
    actions.add(group, QStringLiteral("next-finding"), tr("Next &finding"), {Qt::Key_F8}, nullptr,
                [this] { nextFinding(1); });
    actions.add(group, QStringLiteral("previous-finding"), tr("Previous f&inding"),
                {Qt::SHIFT | Qt::Key_F8}, nullptr, [this] { nextFinding(-1); });
    actions.add(group, QStringLiteral("go-findings"), tr("Go to the fin&dings"), {Qt::Key_F9},
                nullptr, [this] {
                    goTo(bench_);
                    bench_->findings().setFocus(Qt::ShortcutFocusReason);
                });
    actions.add(group, QStringLiteral("go-beam"), tr("Go to the &beam"), {Qt::SHIFT | Qt::Key_F9},
                nullptr, [this] {
                    goTo(bench_);
                    bench_->beam().goTo();
                });
    ofMonth_ << actions.add(group, QStringLiteral("print"), tr("&Print…"), {Qt::CTRL | Qt::Key_P},
                            nullptr, [this] { print(); });
    ofMonth_ << actions.add(group, QStringLiteral("save-pdf"), tr("&Keep the sheet as PDF…"), {},
                            nullptr, [this] {
                                goTo(sheets_);
                                sheets_->savePdf();
                            });
    ofMonth_ << actions.add(group, QStringLiteral("save-all-pdf"), tr("Every &sheet as PDF…"), {},
                            nullptr, [this] {
                                goTo(sheets_);
                                sheets_->saveAll();
                            });
    new BoardActions(draft_, actions, content_);
}

// What is proposed is seen on the Bench.
void Workspace::addProposals(Actions& actions) {
    const auto add = [&](const char* id, const QString& text, const QKeySequence& key,
                         void (ProposeStrip::*ask)()) {
        ofMonth_ << actions.add(tr("Proposals"), QLatin1String(id), text, {key}, nullptr,
                                [this, ask] {
                                    if (wanted_ != bench_) goTo(bench_);
                                    bench_->propose(ask);
                                });
    };
    add("propose", tr("Propose for all open slots"), Qt::Key_F7, &ProposeStrip::askAll);
    add("propose-slot", tr("Swap this slot, or fill it"), Qt::CTRL | Qt::Key_F7,
        &ProposeStrip::askSlot);
    add("propose-month", tr("Propose the whole month anew"), Qt::CTRL | Qt::SHIFT | Qt::Key_F7,
        &ProposeStrip::askMonth);
    add("propose-section", tr("Propose for the open slots of this section"), Qt::SHIFT | Qt::Key_F7,
        &ProposeStrip::askSection);
}

void Workspace::addPlace(Actions& actions, int number, const QString& icon, const QString& word,
                         QWidget* page) {
    pages_->addWidget(page);
    setHandbookPlace(page, QStringLiteral("guide.md#the-") + icon);
    QAction* go = actions.add(tr("Places"), QStringLiteral("place-") + icon, word,
                              {QKeySequence(QStringLiteral("Alt+%1").arg(number))}, nullptr,
                              [this, page] { goTo(page); });
    go->setCheckable(true);
    go->setData(QVariant::fromValue(page));
    places_->addAction(go);
    column_->add(icon, go);
}

QWidget* Workspace::emptyMonth(Actions& actions) {
    auto* page = new QWidget(pages_);
    auto* words = new QLabel(tr("This gym has no month yet."), page);
    dressAsFrame(page);
    const auto button = [&](const QString& text, const char* id) {
        auto* made = new QPushButton(text, page);
        QAction* action = actions.find(QLatin1String(id));
        made->setEnabled(action->isEnabled());
        made->setAutoDefault(true); // Enter presses it too
        connect(made, &QPushButton::clicked, action, &QAction::trigger);
        return made;
    };
    auto* start = button(tr("Start the first month"), "start-empty");
    auto* gym = button(tr("Gym and kit"), "gym-and-kit");
    auto* layout = new QVBoxLayout(page);
    layout->addStretch(2);
    layout->addWidget(words, 0, Qt::AlignHCenter);
    layout->addWidget(start, 0, Qt::AlignHCenter);
    layout->addWidget(gym, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    page->setFocusProxy(start);
    return page;
}

QWidget* Workspace::page() const { return pages_->currentWidget(); }

void Workspace::goTo(QWidget* page) {
    if (isBeside(page) && !isBeside(wanted_)) before_ = wanted_;
    wanted_ = page;
    setHandbookPlace(this, {});
    setHandbookPlace(this, handbookPlaceFor(page)); // from the top line and the column, too
    for (QAction* go : places_->actions()) go->setChecked(go->data().value<QWidget*>() == page);
    follow();
    pages_->currentWidget()->setFocus(Qt::ShortcutFocusReason);
}

bool Workspace::isBeside(const QWidget* page) const { return page == limits_ || page == gymPage_; }

void Workspace::follow() {
    for (QAction* action : ofMonth_) {
        action->setEnabled(draft_.block());
        Actions::explain(action, tr("the gym has no month yet"));
    }
    const bool needsNone = wanted_ == shelf_ || wanted_ == gymPage_;
    QWidget* page = draft_.block() || needsNone ? wanted_ : noMonth_;
    if (page == pages_->currentWidget()) return;
    bench_->proposals().leave(); // it is not for other pages
    pages_->setCurrentWidget(page);
}

void Workspace::goBackTo(const KeptView& view) {
    if (view.month) draft_.showMonth(*view.month);
    const int weeks = draft_.block() ? static_cast<int>(draft_.block()->stair.size()) : 0;
    if (view.week >= 1 && view.week <= weeks) draft_.showWeek(Week::of(view.week).value());
    for (QAction* go : places_->actions())
        if (go->objectName() == view.place) go->trigger();
}

KeptView Workspace::view() const {
    const QAction* place = places_->checkedAction();
    return {place ? place->objectName() : QString(), draft_.month(), draft_.week().number()};
}

void Workspace::nextFinding(int step) {
    if (draft_.verdict().findings.empty()) return;
    if (wanted_ != bench_) goTo(bench_);
    bench_->findings().nextFinding(step);
}

// From any other page first to where it can be seen what will be printed.
void Workspace::print() {
    if (pages_->currentWidget() == sheets_) return sheets_->print();
    goTo(sheets_);
}

} // namespace bw

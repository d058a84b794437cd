// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/shelf_page.hpp"

#include "desk/bench/draft.hpp"
#include "desk/bench/new_exercise.hpp"
#include "desk/bench/reason_line.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"
#include "desk/shelf/entry_view.hpp"
#include "desk/shelf/family_view.hpp"
#include "desk/shelf/shelf_table.hpp"
#include "desk/shelf/word_line.hpp"

#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QToolButton>

namespace bw {

namespace {
// The one exercise that is not as it was; none when several are not, or none is.
std::optional<ExerciseId> changedOne(const Shelf& before, const Shelf& now) {
    std::optional<ExerciseId> found;
    for (const Shelf::Entry& entry : now.entries()) {
        if (before.entry(entry->id) == entry) continue;
        if (found) return std::nullopt;
        found = entry->id;
    }
    return found;
}
} // namespace

ShelfPage::ShelfPage(Draft& draft, Actions& actions, QWidget* parent)
    : QWidget(parent), draft_(draft), model_(new ShelfModel(this)),
      entry_(new EntryModel(draft.gym(), this)), table_(new ShelfTable(*model_, this)),
      view_(new EntryView(*entry_, this)), family_(new FamilyView(draft.gym(), this)),
      name_(new ReasonLine(this)), filter_(new WordLine(WordLine::Between::Blanks, this)),
      count_(new QLabel(this)), none_(makeWords(this, "shelf-none")),
      notice_(makeWords(this, "shelf-notice")) {
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setChildrenCollapsible(false);
    across->addWidget(makeLeft());
    across->addWidget(makeRight());
    across->setStretchFactor(0, 5);
    across->setStretchFactor(1, 3);
    across->setSizes({780, 390});
    notice_->setContentsMargins(4, 0, 4, 0);
    notice_->hide();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->setSpacing(6);
    layout->addWidget(makeBar(addActions(actions)));
    layout->addWidget(across, 1);
    layout->addWidget(notice_);
    setFocusProxy(table_);
    for (const auto& [one, next] : {std::pair<QWidget*, QWidget*>(filter_, table_),
                                    {table_, family_->focusProxy()},
                                    {family_->focusProxy(), view_}})
        setTabOrder(one, next);
    wire();
}

ShelfPage::~ShelfPage() {
    delete view_; // while there is a page to tell
}

QWidget* ShelfPage::makeBar(const QList<QAction*>& buttons) {
    auto* bar = new QWidget(this);
    filter_->setPlaceholderText(tr("hinge kettlebell · no barbell · grip 2 · unused 3 · retired"));
    filter_->setAccessibleName(tr("Show only exercises that fit"));
    filter_->setToolTip(
        tr("Beginnings of words, all of which must fit: name, pattern, role, kit, load, muscle, "
           "demand.\nno barbell: without that word\ngrip 2, skill 1: a demand of so much or more; "
           "that skill\nunused, unused 3: by no month; by none of the last three (used likewise)\n"
           "since July, not since July: used then or later, or not\nretired: those that are no "
           "longer offered\nRight takes the rest of a word."));
    filter_->setAccessibleDescription(filter_->toolTip());
    filter_->setClearButtonEnabled(true);
    filter_->setMinimumWidth(120);
    auto* label = new QLabel(tr("&Filter"), bar);
    label->setBuddy(filter_);
    count_->setProperty("quiet", true);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(label);
    row->addWidget(filter_, 1);
    row->addWidget(count_);
    row->addSpacing(12);
    for (QAction* action : buttons) {
        auto* button = new QToolButton(bar);
        button->setDefaultAction(action);
        button->setFocusPolicy(Qt::TabFocus);
        row->addWidget(button);
    }
    dressAsFrame(bar);
    return bar;
}

QWidget* ShelfPage::makeLeft() {
    auto* paper = new QFrame(this);
    lookLikePaper(*paper);
    none_->setContentsMargins(12, 12, 12, 12);
    none_->hide();
    auto* column = new QVBoxLayout(paper);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(none_);
    column->addWidget(table_, 1);
    paper->setMinimumWidth(360);
    return paper;
}

QWidget* ShelfPage::makeRight() {
    auto* paper = new QFrame(this);
    lookLikePaper(*paper);
    auto* column = new QVBoxLayout(paper);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(name_);
    column->addWidget(family_);
    column->addWidget(view_, 1);
    paper->setMinimumWidth(300);
    return paper;
}

QList<QAction*> ShelfPage::addActions(Actions& actions) {
    const auto add = [&](const char* id, const QString& text, const QKeySequence& key, auto run) {
        return actions.add(tr("Shelf"), QLatin1String(id), text, {key}, this, run);
    };
    QAction* fresh = add("shelf-add", tr("&Add an exercise…"), Qt::CTRL | Qt::SHIFT | Qt::Key_N,
                         [this] { askName(false); });
    copy_ = add("shelf-copy", tr("&Copy…"), Qt::CTRL | Qt::Key_D, [this] { askName(true); });
    retire_ = add("shelf-retire", tr("&Retire"), Qt::CTRL | Qt::Key_R, [this] { retire(); });
    add("shelf-sort", tr("&Sort by this column"), Qt::CTRL | Qt::SHIFT | Qt::Key_S,
        [this] { table_->sortHere(); });
    fresh->setEnabled(draft_.gym().file().writable());
    Actions::explain(fresh, tr("read-only"));
    return {fresh, copy_, retire_};
}

void ShelfPage::wire() {
    connect(filter_, &QLineEdit::textChanged, this, &ShelfPage::choose);
    connect(filter_, &QLineEdit::returnPressed, table_, [this] { table_->setFocus(); });
    connect(table_, &ShelfTable::typed, this, [this](const QString& text) {
        filter_->setFocus();
        filter_->end(false);
        filter_->insert(filter_->text().isEmpty() || filter_->text().endsWith(u' ')
                            ? text
                            : QLatin1Char(' ') + text);
    });
    connect(table_, &ShelfTable::lineChanged, this,
            [this] { follow(table_->currentIndex().row()); });
    connect(table_, &ShelfTable::entryWanted, this, [this] { view_->setFocus(); });
    connect(table_->horizontalHeader(), &QHeaderView::sortIndicatorChanged, this, [this] {
        if (here_) table_->goTo(model_->rowOf(*here_));
    });
    connect(entry_, &EntryModel::refused, this, &ShelfPage::tell);
    connect(view_, &EntryView::trouble, this, &ShelfPage::tell);
    connect(view_, &EntryView::clear, this, &ShelfPage::quiet);
    connect(view_, &EntryView::monthWanted, this, &ShelfPage::openMonth);
    connect(view_, &EntryView::left, table_, [this] { table_->setFocus(); });
    connect(family_, &FamilyView::wanted, this, &ShelfPage::goTo);
    connect(family_, &FamilyView::refused, this, &ShelfPage::tell);
    connect(family_, &FamilyView::clear, this, &ShelfPage::quiet);
    connect(family_, &FamilyView::left, table_, [this] { table_->setFocus(); });
    connect(name_, &ReasonLine::given, this, &ShelfPage::takeName);
    connect(name_, &ReasonLine::left, table_, [this] { table_->setFocus(); });
    connect(&draft_, &Draft::changed, this, &ShelfPage::draftChanged);
}

// Typing, weeks and simulated classes change the draft without a change here.
void ShelfPage::draftChanged() {
    if (!stale_ && revision_ == draft_.gym().gymRevision()) return;
    stale_ = true;
    if (isVisible()) refresh();
}

void ShelfPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

// Undo leads to the exercise that it changes, as far as the filter lets it be seen.
void ShelfPage::refresh() {
    const Gym& gym = draft_.gym().gym();
    const auto changed = shown_.size() > 0 ? changedOne(shown_, gym.shelf) : std::nullopt;
    const int row = std::max(0, table_->currentIndex().row());
    stale_ = false;
    revision_ = draft_.gym().gymRevision();
    shown_ = gym.shelf;
    model_->refresh(gym);
    filter_->setWords(filterWords(gym));
    int to = changed ? model_->rowOf(*changed) : -1;
    if (to < 0 && here_) to = model_->rowOf(*here_);
    if (to < 0) to = std::min(row, model_->rowCount() - 1);
    showCount();
    arrive(to);
}

void ShelfPage::choose() {
    quiet();
    model_->choose(filter_->text());
    showCount();
    const int row = here_ ? model_->rowOf(*here_) : -1;
    arrive(row >= 0 ? row : model_->rowCount() > 0 ? 0 : -1);
}

void ShelfPage::arrive(int row) {
    if (row >= 0) table_->goTo(row); // which tells when it is another one
    follow(row);
}

void ShelfPage::showCount() {
    const int n = model_->rowCount();
    count_->setText(!model_->trouble().isEmpty() ? model_->trouble()
                    : n == 1                     ? tr("1 exercise")
                                                 : tr("%1 exercises").arg(n));
    none_->setText(shown_.size() == 0
                       ? tr("The Shelf is empty. Ctrl+Shift+N adds an exercise; Gym → Bring in a "
                            "bundle brings many.")
                       : tr("No exercise fits all of these words. Take one away, or add an "
                            "exercise with Ctrl+Shift+N."));
    none_->setVisible(n == 0);
}

// The row that is on show at the right; none: there is none.
void ShelfPage::follow(int row) {
    const Exercise* e = model_->exerciseAt(row);
    auto id = e ? std::optional(e->id) : std::nullopt;
    const bool same = id == here_;
    if (same && id && read_ == revision_) return;
    if (!same) quiet();
    here_ = std::move(id);
    read_ = revision_;
    showEntry(same);
}

void ShelfPage::showEntry(bool same) {
    const int line = std::max(0, view_->currentIndex().row());
    entry_->show(here_, model_->uses());
    family_->show(here_);
    if (!same || !view_->currentIndex().isValid()) {
        const int to = same ? std::min(line, entry_->rowCount() - 1) : 0;
        view_->setCurrentIndex(entry_->index(to));
        if (!same) view_->scrollToTop();
    }
    const Exercise* e = entry_->exercise();
    const bool writable = draft_.gym().file().writable();
    copy_->setEnabled(e && writable);
    retire_->setEnabled(e && writable);
    for (QAction* verb : {copy_, retire_})
        Actions::explain(verb, writable ? tr("no exercise is chosen") : tr("read-only"));
    retire_->setText(e && e->retired ? tr("B&ring back") : tr("&Retire"));
}

void ShelfPage::goTo(const ExerciseId& id) {
    const Exercise* e = draft_.gym().gym().shelf.find(id);
    if (!e) return;
    if (model_->rowOf(id) < 0) filter_->setText(e->retired ? tr("retired") : QString());
    const int row = model_->rowOf(id);
    if (row >= 0) arrive(row);
}

void ShelfPage::askName(bool copy) {
    const Exercise* e = entry_->exercise();
    if (copy && !e) return;
    copying_ = copy;
    name_->ask(copy ? tr("Name of the copy of %1").arg(plain(e->name))
                    : tr("Name of the new exercise"),
               copy ? plain(e->name) : QString());
}

void ShelfPage::takeName(const QString& name) {
    const std::string typed = name.toStdString();
    const auto made = copying_ && here_
                          ? copyExercise(draft_.gym(), *here_, typed)
                          : addExercise(draft_.gym(), typed,
                                        patternInName(typed).value_or(Pattern::TrunkStability));
    if (!made) return name_->tell(bw::say(made.why()));
    name_->leave();
    goTo(*made);
    view_->setFocus();
    if (!copying_)
        say(tr("Look through its lines: only the name is yours so far. Enter opens one."));
}

void ShelfPage::retire() {
    const Exercise* e = entry_->exercise();
    if (!e) return;
    const bool retired = !e->retired;
    const QString name = plain(e->name);
    if (const Did did = setRetired(draft_.gym(), e->id, retired); !did) return tell(did.why());
    say(retired ? tr("%1 is retired: no longer offered, kept for the months that used it. The word "
                     "“retired” in the filter shows it.")
                      .arg(name)
                : tr("%1 is offered again.").arg(name));
}

void ShelfPage::openMonth(int row) {
    const ShelfUse* use = entry_->useAt(row);
    if (!use) return;
    const Place place = use->places.front();
    draft_.showMonth(use->month);
    draft_.setPlace(place);
    Q_EMIT benchWanted();
}

void ShelfPage::tell(const Message& what) { tellTrouble(*notice_, bw::say(what)); }

void ShelfPage::say(const QString& what) {
    notice_->setPalette(QPalette());
    notice_->setText(what);
    notice_->show();
}

void ShelfPage::quiet() { notice_->hide(); }

void ShelfPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) quiet();
}

} // namespace bw

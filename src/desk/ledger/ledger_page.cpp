// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/ledger_page.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/class_delegate.hpp"
#include "desk/ledger/class_model.hpp"
#include "desk/ledger/class_view.hpp"
#include "desk/ledger/day_bar.hpp"
#include "desk/ledger/ledger_words.hpp"
#include "desk/ledger/member_panel.hpp"

#include <QFrame>
#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace bw {

LedgerPage::LedgerPage(Draft& draft, Date today, QWidget* parent)
    : QWidget(parent), draft_(draft), bar_(new DayBar(today, this)),
      model_(new ClassModel(draft.gym(), this)), view_(new ClassView(*model_, this)),
      panel_(new MemberPanel(draft.gym().file(), this)), sentence_(new QLabel(this)) {
    assemble();
    connect(bar_, &DayBar::changed, this, &LedgerPage::refresh);
    connect(bar_, &DayBar::membersChanged, this, &LedgerPage::fill);
    connect(bar_, &DayBar::gridWanted, view_, qOverload<>(&QWidget::setFocus));
    connect(model_, &ClassModel::refused, this, &LedgerPage::refused);
    connect(panel_, &MemberPanel::refused, this, &LedgerPage::refused);
    connect(view_, &ClassView::moved, this, &LedgerPage::tellCell);
    connect(&view_->delegate(), &ClassDelegate::trouble, this,
            [this](const Message& why) { tell(say(why), true); });
    connect(&view_->delegate(), &ClassDelegate::clear, this,
            [this] { tellCell(view_->currentIndex()); });
    listening_ = draft_.gym().changed.connect([this](const auto&) { follow(); });
    setFocusProxy(view_);
}

void LedgerPage::assemble() {
    auto* sheet = new QFrame(this);
    lookLikePaper(*sheet);
    auto* inside = new QVBoxLayout(sheet);
    inside->setContentsMargins(1, 1, 1, 1);
    inside->addWidget(view_);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setChildrenCollapsible(false);
    across->addWidget(sheet);
    across->addWidget(panel_);
    across->setStretchFactor(0, 1);
    across->setSizes({840, 340});
    sentence_->setObjectName(QStringLiteral("sentence"));
    sentence_->setTextFormat(Qt::PlainText);
    sentence_->setWordWrap(true);
    sentence_->setContentsMargins(4, 0, 4, 0);
    sentence_->setFixedHeight(fontMetrics().height() * 2 + 2);
    sentence_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->setSpacing(6);
    layout->addWidget(bar_);
    layout->addWidget(across, 1);
    layout->addWidget(sentence_);
}

const Member* LedgerPage::member() const { return model_->member(view_->currentIndex().row()); }

void LedgerPage::goTo(const MemberId& member) {
    const auto& ids = model_->members();
    const auto at = std::find(ids.begin(), ids.end(), member);
    if (at != ids.end())
        view_->setCurrentIndex(model_->index(static_cast<int>(at - ids.begin()),
                                             std::max(0, view_->currentIndex().column())));
}

void LedgerPage::showDay(Date date) { bar_->setDate(date); }

void LedgerPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    follow();
}

// What is not seen is not read.
void LedgerPage::follow() {
    if (!isVisible()) return;
    const OpenGym& gym = draft_.gym();
    if (!day_ || gym.gymRevision() != gymRevision_) return refresh();
    if (gym.revision() == revision_) return;
    revision_ = gym.revision();
    model_->readAgain();
    tellClass();
    tellCell(view_->currentIndex());
}

void LedgerPage::refresh() {
    if (!isVisible()) {
        day_.reset(); // read when it is seen
        return;
    }
    OpenGym& gym = draft_.gym();
    gymRevision_ = gym.gymRevision();
    revision_ = gym.revision();
    day_ = std::make_shared<ClassDay>(gym.gym(), bar_->date(), bar_->whole());
    if (const auto read = day_->readCame(gym.file()); !read) Q_EMIT refused(read.why());
    fill();
}

// Active members, and whoever came that day all the same.
std::vector<MemberId> LedgerPage::wanted() const {
    const QString part = bar_->filter();
    std::vector<MemberId> out;
    for (const Member& m : day_->gym().members) {
        const bool came = day_->came().contains(m.id);
        const bool fits = plain(m.name).contains(part, Qt::CaseInsensitive);
        if (fits && (came || (m.active && !bar_->onlyCame()))) out.push_back(m.id);
    }
    return out;
}

void LedgerPage::fill() {
    if (!day_) return;
    const QModelIndex at = view_->currentIndex();
    const Member* before = model_->member(at.row());
    const std::optional<MemberId> was = before ? std::optional(before->id) : std::nullopt;
    const int column = at.isValid() ? at.column() : firstColumn();
    model_->show(day_, wanted());
    view_->setEmptyText(emptyText());
    const auto& ids = model_->members();
    const auto found = was ? std::find(ids.begin(), ids.end(), *was) : ids.end();
    const int row = found == ids.end() ? 0 : static_cast<int>(found - ids.begin());
    view_->setCurrentIndex(model_->index(row, std::min(column, model_->columnCount() - 1)));
    tellClass();
    tellCell(view_->currentIndex());
}

// The first of strength, where there is one.
int LedgerPage::firstColumn() const {
    const auto& columns = day_->columns();
    const auto at = std::find_if(columns.begin(), columns.end(), [&](const ClassColumn& c) {
        return sectionAt(*day_->block(), c.place)->kind == SectionKind::Strength;
    });
    return at == columns.end() ? 0 : static_cast<int>(at - columns.begin());
}

QString LedgerPage::emptyText() const {
    if (!day_->block())
        return tr("%1 has no block, so there is nothing to write results beside. Choose another "
                  "day, or start the month on the Bench.")
            .arg(monthName(day_->date().month()));
    if (day_->columns().empty())
        return tr("No exercise of this session is counted in repetitions. Fill its slots on the "
                  "Bench, or look at warm-up and finisher, too.");
    if (day_->gym().members.empty())
        return tr("No members yet. Add the first with Member, Add a member, or bring a bundle in.");
    if (bar_->onlyCame()) return tr("Nobody is written down for this day yet.");
    return tr("No member's name has these letters.");
}

void LedgerPage::tellClass() {
    const Gym::BlockPtr& block = day_->block();
    if (!block) return bar_->setWords({});
    QString words = tr("week %1").arg(day_->week().number());
    if (!block->title.empty()) words += QStringLiteral(" · ") + plain(block->title);
    words += QStringLiteral(" · ") + tr("%1 came").arg(model_->count());
    bar_->setWords(words);
}

void LedgerPage::tell(const QString& words, bool trouble) {
    QPalette colours = palette();
    if (trouble) colours.setColor(QPalette::WindowText, inks().level[0]);
    sentence_->setPalette(colours);
    sentence_->setText(words);
}

void LedgerPage::tellCell(const QModelIndex& cell) {
    tell(cell.data(Qt::AccessibleTextRole).toString(),
         !cell.data(ClassModel::TroubleRole).toString().isEmpty());
    Q_EMIT memberChanged();
    const Member* member = model_->member(cell.row());
    if (!member) return panel_->show({}, tr("Choose a member in the grid."));
    const ClassCell* at = model_->cell(cell);
    const Told now{member->id, at ? std::optional(at->exercise) : std::nullopt, revision_, day_};
    if (now == told_ && panel_->story()) return;
    told_ = now;
    StoryAsk ask{day_->gymKept(), member->id, {}, {}, day_->date(), day_->block()};
    if (const ClassRow* row = day_->row(member->id))
        for (const ClassCell& c : row->cells)
            if (!c.ruledOut) ask.session.push_back(c.exercise);
    if (at) ask.exercise = at->exercise;
    panel_->show(std::move(ask), {});
}

} // namespace bw

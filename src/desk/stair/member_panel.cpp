// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/member_panel.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"
#include "desk/stair/estimate_ruler.hpp"
#include "desk/stair/member_words.hpp"

#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTextBrowser>

#include <algorithm>

namespace bw {

namespace {
QString dayText(const std::optional<Date>& newest) {
    return newest ? StairMemberPanel::tr("As of %1, the day of the newest result.")
                        .arg(plain(newest->text()))
                  : StairMemberPanel::tr("This gym has no results yet.");
}

// As broad as a sheet leaves it, in a style of its own.
QTextBrowser* makePage(QWidget* parent) {
    auto* page = new QTextBrowser(parent);
    page->setObjectName(QStringLiteral("stair-slot-page"));
    page->setFrameShape(QFrame::NoFrame);
    page->setOpenLinks(false);
    page->setTabChangesFocus(true);
    page->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    page->setAccessibleName(StairMemberPanel::tr("What the slot asks of the member"));
    page->document()->setDocumentMargin(0);
    return page;
}
} // namespace

StairMemberPanel::StairMemberPanel(QWidget* parent)
    : QWidget(parent), box_(new QComboBox(this)), about_(new QLabel(this)),
      empty_(new QLabel(this)), ruler_(new EstimateRuler(this)), page_(makePage(this)),
      stack_(new QStackedWidget(this)) {
    dressAsFrame(this);
    box_->setObjectName(QStringLiteral("stair-member"));
    box_->setEditable(true);
    box_->setInsertPolicy(QComboBox::NoInsert);
    box_->completer()->setFilterMode(Qt::MatchContains);
    box_->completer()->setCompletionMode(QCompleter::PopupCompletion);
    box_->setAccessibleName(tr("Member whose loads are shown"));
    box_->lineEdit()->setPlaceholderText(tr("nobody: the class"));
    auto* label = new QLabel(tr("Mem&ber"), this);
    label->setBuddy(box_);
    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(box_, 1);
    for (QLabel* words : {about_, empty_}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
        words->setProperty("quiet", true);
    }
    empty_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* one = new QWidget(stack_);
    auto* column = new QVBoxLayout(one);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(about_);
    column->addWidget(ruler_);
    column->addWidget(page_, 1);
    stack_->addWidget(empty_);
    stack_->addWidget(one);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 8);
    layout->setSpacing(8);
    layout->addLayout(top);
    layout->addWidget(stack_, 1);
    connect(box_, &QComboBox::activated, this, [this](int at) {
        choose(at <= 0 ? std::nullopt
                       : std::optional(offered_[static_cast<std::size_t>(at - 1)].first));
    });
    connect(box_->lineEdit(), &QLineEdit::editingFinished, this, &StairMemberPanel::typed);
    setFocusProxy(box_);
}

void StairMemberPanel::setMembers(const std::vector<Member>& members) {
    std::vector<std::pair<MemberId, QString>> offered;
    for (const Member& m : members)
        if (m.active) offered.emplace_back(m.id, plain(m.name));
    std::ranges::stable_sort(offered, [](const auto& a, const auto& b) {
        return QString::localeAwareCompare(a.second, b.second) < 0;
    });
    if (offered == offered_ && box_->count() > 0) return;
    offered_ = std::move(offered);
    const QSignalBlocker quiet(box_);
    box_->clear();
    box_->addItem(tr("nobody: the class"));
    for (const auto& [id, name] : offered_) box_->addItem(name);
    follow();
}

void StairMemberPanel::follow() {
    const auto at =
        std::ranges::find_if(offered_, [&](const auto& o) { return o.first == member_; });
    if (at == offered_.end()) member_.reset();
    const QSignalBlocker quiet(box_);
    box_->setCurrentIndex(member_ ? static_cast<int>(at - offered_.begin()) + 1 : 0);
}

void StairMemberPanel::choose(const std::optional<MemberId>& member) {
    const bool other = member != member_;
    member_ = member;
    follow();
    if (other) Q_EMIT chosen();
}

// A name, or the beginning of exactly one; else as before.
void StairMemberPanel::typed() {
    const QString text = box_->currentText().trimmed();
    if (text.isEmpty() || text == box_->itemText(0)) return choose(std::nullopt);
    const auto count = [&](const auto& fits) {
        std::vector<MemberId> found;
        for (const auto& [id, name] : offered_)
            if (fits(name)) found.push_back(id);
        return found;
    };
    auto found = count([&](const QString& n) { return n.compare(text, Qt::CaseInsensitive) == 0; });
    // Two of the same name: the one that was picked from the list.
    if (member_ && std::ranges::find(found, *member_) != found.end()) return follow();
    if (found.empty())
        found = count([&](const QString& n) { return n.contains(text, Qt::CaseInsensitive); });
    if (found.size() == 1) return choose(found.front());
    follow();
}

void StairMemberPanel::goTo() {
    box_->setFocus(Qt::ShortcutFocusReason);
    box_->lineEdit()->selectAll();
}

void StairMemberPanel::showTrouble(const QString& why) {
    stack_->setCurrentIndex(0);
    tellTrouble(*empty_, why);
}

void StairMemberPanel::show(const Shown& shown) {
    empty_->setPalette({});
    if (!shown.member) {
        empty_->setText(offered_.empty()
                            ? tr("This gym has no members yet. They come in with a bundle: Gym, "
                                 "then Bring in.")
                            : tr("Choose a member to see what each week asks of them, in loads "
                                 "that this gym has. Part of a name is enough."));
        stack_->setCurrentIndex(0);
        return;
    }
    const MemberStair& m = *shown.member;
    const QString flags = flagsOf(*m.member);
    about_->setText(flags.isEmpty() ? dayText(m.newest)
                                    : flags + QLatin1Char('\n') + dayText(m.newest));
    const SlotTargets* targets = shown.place ? targetsAt(m, *shown.place) : nullptr;
    ruler_->show(targets, m.rules.unit, shown.week);
    page_->setHtml(shown.place ? slotPage(shown.gym, shown.block, *shown.place, m)
                               : tr("Choose a slot in the table."));
    stack_->setCurrentIndex(1);
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/gym_page.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"
#include "desk/gym/gym_lines.hpp"
#include "desk/gym/gym_table.hpp"
#include "desk/gym/kit_model.hpp"
#include "desk/gym/kit_sayings.hpp"
#include "desk/gym/kit_table.hpp"
#include "edit/kit_verbs.hpp"

#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <utility>

namespace bw {

namespace {
bool ownsNothing(const Gym& gym) {
    return !gym.kit.empty() && std::none_of(gym.kit.begin(), gym.kit.end(),
                                            [](const KitItem& item) { return item.units > 0; });
}
} // namespace

GymPage::GymPage(Draft& draft, QWidget* parent)
    : QWidget(parent), draft_(draft), lines_(new GymLines(draft.gym(), this)),
      kit_(new KitModel(draft.gym(), this)), gymTable_(new GymTable(*lines_, this)),
      kitTable_(new KitTable(*kit_, this)), lead_(makeWords(this, "gym-lead")),
      lost_(makeWords(this, "gym-lost")), about_(makeWords(this, "gym-about")),
      usual_(new QPushButton(tr("&Tick the usual kit"), this)),
      start_(new QPushButton(tr("&Start the first month"), this)),
      back_(new QPushButton(tr("Back"), this)) {
    auto* sheet = new QFrame(this);
    lookLikePaper(*sheet);
    auto* column = new QVBoxLayout(sheet);
    column->setContentsMargins(12, 10, 12, 8);
    column->setSpacing(6);
    column->addWidget(makeHead());
    column->addLayout(makeTables(), 1);
    column->addWidget(lost_);
    column->addWidget(about_);
    lost_->hide();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->addWidget(sheet);
    about_->setMinimumHeight(2 * about_->fontMetrics().lineSpacing());
    about_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    about_->setAccessibleName(tr("About this line"));
    setFocusProxy(gymTable_);
    wire();
}

GymPage::~GymPage() {
    gymTable_->finishTyping();
    kitTable_->finishTyping();
}

bool GymPage::comesFirst(const Gym& gym) { return gym.blocks.empty() && ownsNothing(gym); }

QWidget* GymPage::makeHead() {
    auto* head = new QWidget(this);
    dressAsFrame(head);
    auto* title = new QLabel(tr("Gym and kit"), head);
    QFont bold = title->font();
    bold.setPointSizeF(bold.pointSizeF() * 1.2);
    bold.setWeight(QFont::DemiBold);
    title->setFont(bold);
    lead_->setProperty("quiet", true);
    back_->setToolTip(tr("Esc"));
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    row->addWidget(title);
    row->addStretch(1);
    for (QPushButton* button : {usual_, start_, back_}) {
        button->setAutoDefault(true); // Enter presses it too
        row->addWidget(button);
    }
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(row);
    column->addWidget(lead_);
    return head;
}

QLayout* GymPage::makeTables() {
    constexpr int kLeast = 230, kDigits = 34;
    gymTable_->setFixedWidth(
        std::max(kLeast, kDigits * fontMetrics().horizontalAdvance(QLatin1Char('0'))));
    auto* row = new QHBoxLayout;
    row->setSpacing(18);
    row->addWidget(gymTable_);
    row->addWidget(kitTable_, 1);
    return row;
}

void GymPage::wire() {
    setTabOrder(gymTable_, kitTable_);
    setTabOrder(kitTable_, usual_);
    setTabOrder(usual_, start_);
    setTabOrder(start_, back_);
    connect(gymTable_, &TypedTable::lineChanged, this, &GymPage::showGymLine);
    connect(kitTable_, &TypedTable::lineChanged, this, &GymPage::showKitLine);
    connect(kit_, &KitModel::lost, this, &GymPage::tellLoss);
    const auto toNew = [this](const KitId& id) { kitTable_->goTo(kit_->rowOf(id)); };
    connect(kit_, &KitModel::added, this, toNew, Qt::QueuedConnection); // its cell closes first
    connect(usual_, &QPushButton::clicked, this, &GymPage::takeUsual);
    connect(start_, &QPushButton::clicked, this, &GymPage::monthWanted);
    connect(back_, &QPushButton::clicked, this, &GymPage::closed);
    connect(&draft_, &Draft::changed, this, &GymPage::draftChanged);
}

void GymPage::draftChanged() {
    stale_ = true;
    if (isVisible()) refresh();
}

void GymPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void GymPage::refresh() {
    stale_ = false;
    const std::uint64_t now = draft_.gym().gymRevision();
    if (now != std::exchange(shown_, now)) lost_->hide();
    lines_->refresh();
    const KitItem* item = kit_->itemAt(kitTable_->currentIndex().row());
    const auto line = item ? std::optional(item->id) : std::nullopt;
    kit_->refresh();
    if (!kitTable_->currentIndex().isValid())
        kitTable_->goTo(std::max(1, line ? kit_->rowOf(*line) : 1));
    offer();
    if (gymTable_->hasFocus())
        showGymLine();
    else
        showKitLine();
}

void GymPage::offer() {
    const Gym& gym = draft_.gym().gym();
    const bool writable = draft_.gym().file().writable();
    const bool none = ownsNothing(gym);
    usual_->setVisible(none && writable);
    start_->setVisible(gym.blocks.empty() && writable);
    lead_->setVisible(none || gym.blocks.empty());
    lead_->setText(none
                       ? tr("Nothing is ticked yet. Tick what stands in your gym and write how "
                            "many, or tick the usual kit and mend it. It need not be complete.")
                       : tr("A tick takes a usual number: write your own over it. Weights tell the "
                            "program what it can ask members to lift."));
}

void GymPage::takeUsual() {
    const Did did = ownUsualKit(draft_.gym());
    if (!did) return tellTrouble(*lost_, say(did.why()));
    kitTable_->goTo(1);
    kitTable_->setFocus(Qt::ShortcutFocusReason);
}

void GymPage::showGymLine() { about_->setText(lines_->about(gymTable_->currentIndex().row())); }

void GymPage::showKitLine() {
    const int row = kitTable_->currentIndex().row();
    const KitItem* item = kit_->itemAt(row);
    about_->setText(item ? kitNeeded(draft_.gym().gym(), *item, kit_->useAt(row), draft_.month())
                         : QString());
}

void GymPage::tellLoss(const KitId& id, const KitLoss& loss) {
    const Gym& gym = draft_.gym().gym();
    const KitItem* item = gym.findKit(id);
    const QString said = item ? kitLost(gym, *item, loss, draft_.month()) : QString();
    if (!said.isEmpty()) tellTrouble(*lost_, said);
}

void GymPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    Q_EMIT closed();
}

} // namespace bw

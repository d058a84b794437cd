// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/beam_panel.hpp"

#include "desk/bench/beam_view.hpp"
#include "desk/bench/draft.hpp"
#include "desk/bench/fold_head.hpp"
#include "desk/bench/tally_list.hpp"
#include "desk/bench/tally_model.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/remembered.hpp"

#include <QEvent>
#include <QVBoxLayout>

#include <map>

namespace bw {

namespace {
const QString kBeam = QStringLiteral("beam"), kTallies = QStringLiteral("tallies");

// What each row brings to all of these patterns together.
std::map<Place, double> rowsOf(const Gym& gym, const Block& block,
                               const std::vector<Pattern>& patterns) {
    std::map<Place, double> rows;
    const auto slots_ = slotSets(gym, block);
    for (const Pattern pattern : patterns)
        for (const TallyRow& row : rowsBehind(gym.settings, slots_, pattern))
            rows[row.place] += row.sets;
    return rows;
}
} // namespace

BeamPanel::BeamPanel(Draft& draft, QWidget* parent)
    : QFrame(parent), draft_(draft), tallies_(new TallyModel(this)), beams_(new BeamView(this)),
      list_(new TallyList(*tallies_, this)), all_(new FoldHead(tr("Beam"), this)),
      bars_(new FoldHead(tr("sets by pattern"), this)) {
    all_->setObjectName(QStringLiteral("beam-head"));
    bars_->setObjectName(QStringLiteral("tally-head"));
    all_->setChecked(Remembered::shown(kBeam).value_or(true));
    bars_->setChecked(Remembered::shown(kTallies).value_or(false));
    assemble();
    wire();
    fold();
}

void BeamPanel::assemble() {
    lookLikePaper(*this);
    QFont bold = all_->font();
    bold.setBold(true);
    all_->setFont(bold);
    all_->setAccessibleName(tr("Beam: the balance of the month"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(1, 4, 1, 6);
    column->setSpacing(2);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(6, 0, 6, 0);
    head->addWidget(all_);
    head->addStretch(1);
    head->addWidget(bars_);
    column->addLayout(head);
    column->addWidget(beams_);
    auto* bars = new QHBoxLayout;
    bars->setContentsMargins(6, 4, 6, 0);
    bars->addWidget(list_);
    column->addLayout(bars, 1);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    setMinimumHeight(all_->sizeHint().height() + 10); // a small screen needs no more
}

void BeamPanel::wire() {
    connect(all_, &FoldHead::clicked, this, [this](bool open) {
        Remembered::setShown(kBeam, open);
        fold();
    });
    connect(bars_, &FoldHead::clicked, this, [this](bool open) {
        Remembered::setShown(kTallies, open);
        fold();
    });
    connect(beams_, &BeamView::picked, this, &BeamPanel::mark);
    connect(list_, &TallyList::picked, this,
            [this](int row, bool go) { mark({TallyModel::patternOf(row)}, go); });
    connect(&draft_, &Draft::changed, this, &BeamPanel::refresh);
    parentWidget()->installEventFilter(this);
}

bool BeamPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) unfoldWhereRoom();
    return QFrame::eventFilter(watched, event);
}

void BeamPanel::unfoldWhereRoom() {
    constexpr int kForBeams = 330, kForTallies = 520; // pixels; the findings keep the larger half
    const int high = parentWidget()->height();
    all_->setChecked(Remembered::shown(kBeam).value_or(high >= kForBeams));
    bars_->setChecked(Remembered::shown(kTallies).value_or(high >= kForTallies));
    fold();
}

void BeamPanel::goTo() {
    all_->setChecked(true);
    fold();
    beams_->setFocus(Qt::ShortcutFocusReason);
}

void BeamPanel::fold() {
    const bool open = all_->isChecked();
    beams_->setHidden(!open);
    bars_->setHidden(!open);
    list_->setHidden(!open || !bars_->isChecked());
    refresh();
}

void BeamPanel::refresh() {
    if (!all_->isChecked()) return;
    const Block* block = draft_.block();
    const Gym& gym = draft_.gym().gym();
    beams_->setEnabled(block);
    list_->setEnabled(block);
    if (!block) {
        beams_->show({});
        return tallies_->show({}, 1);
    }
    const Balances balances = balancesOf(gym, *block);
    beams_->show(beamScales(gym, *block, balances));
    tallies_->show(balances, static_cast<int>(windowOf(gym, *block).size()));
}

void BeamPanel::mark(const std::vector<Pattern>& patterns, bool go) {
    if (!draft_.block()) return;
    const auto rows = rowsOf(draft_.gym().gym(), *draft_.block(), patterns);
    std::map<Place, QString> marks;
    for (const auto& [place, sets] : rows) marks.emplace(place, setsText(sets));
    if (marks.empty()) return draft_.mark({}, {});
    const Place first = marks.begin()->first;
    draft_.mark(std::move(marks), first);
    if (go) Q_EMIT picked();
}

} // namespace bw

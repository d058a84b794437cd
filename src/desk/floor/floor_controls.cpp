// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_controls.hpp"

#include "desk/frame/frame_style.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSignalBlocker>
#include <QSpinBox>

namespace bw {

namespace {
enum StartChoice { AsDrafted, Together, Spread, Best, Heads };
// How much members differ, how much one member's sets do, whether chance is left out.
struct Mix {
    double pace, sets;
    bool steady;
};
constexpr Mix kMixes[] = {
    {0.15, 0.10, false}, {0.05, 0.05, false}, {0.30, 0.15, false}, {0, 0, true}};

// "6 + 6", "6,6", "6 6"
Result<StartCounts> headsFrom(const QString& text) {
    static const QRegularExpression kBetween(QStringLiteral("[+,;\\s]+"));
    StartCounts counts;
    for (const QString& part : text.split(kBetween, Qt::SkipEmptyParts)) {
        bool number = false;
        counts.heads.push_back(part.toInt(&number));
        if (!number) return Message{"“%1” is not a number of members.", {part.toStdString()}};
    }
    if (counts.heads.empty()) return Message{"Write how many start at each group: 6 + 6.", {}};
    return counts;
}
} // namespace

FloorControls::FloorControls(QWidget* parent)
    : QWidget(parent), members_(new QSpinBox(this)),
      start_(choice("floor-start", {tr("as drafted"), tr("all together"), tr("spread"),
                                    tr("the best way"), tr("heads per group")})),
      mix_(choice("floor-mix", {tr("as mixed as usual"), tr("much alike"), tr("very mixed"),
                                tr("all the same, no chance")})),
      order_(choice("floor-order", {tr("members"), tr("kit")})),
      loads_(new QCheckBox(tr("By the &load"), this)), heads_(new QLineEdit(this)) {
    dressAsFrame(this);
    members_->setObjectName(QStringLiteral("floor-members"));
    members_->setRange(1, FloorOptions::kMostMembers);
    members_->setKeyboardTracking(false);
    members_->setAccessibleName(tr("Members in the class"));
    heads_->setObjectName(QStringLiteral("floor-heads"));
    heads_->setAccessibleName(tr("Heads per group"));
    heads_->setPlaceholderText(QStringLiteral("6 + 6"));
    heads_->setToolTip(tr("For the sections with as many groups as numbers; the others start as "
                          "drafted"));
    heads_->setMaximumWidth(120);
    loads_->setObjectName(QStringLiteral("floor-loads"));
    loads_->setToolTip(tr("Kit that tells its loads is taken by the load: each member as in their "
                          "latest result"));
    order_->setAccessibleName(tr("A lane for each"));
    start_->setAccessibleName(tr("How members start"));
    mix_->setAccessibleName(tr("How mixed the class is"));
    mix_->setToolTip(tr("How much members differ in pace, and one member's sets from each other"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    label(row, tr("Mem&bers"), members_);
    label(row, tr("&Start"), start_);
    row->addWidget(heads_);
    label(row, tr("&Class"), mix_);
    row->addSpacing(12);
    row->addWidget(loads_);
    row->addStretch(1);
    label(row, tr("L&anes"), order_);
    heads_->hide();
    connect(members_, &QSpinBox::valueChanged, this, &FloorControls::changed);
    connect(start_, &QComboBox::currentIndexChanged, this, &FloorControls::startChosen);
    connect(mix_, &QComboBox::currentIndexChanged, this, &FloorControls::changed);
    connect(loads_, &QCheckBox::toggled, this, &FloorControls::changed);
    connect(order_, &QComboBox::currentIndexChanged, this, &FloorControls::orderChanged);
    connect(heads_, &QLineEdit::textChanged, this, &FloorControls::changed);
}

QComboBox* FloorControls::choice(const char* name, const QStringList& words) {
    auto* box = new QComboBox(this);
    box->setObjectName(QLatin1String(name));
    box->addItems(words);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    box->setMinimumWidth(90); // in a narrow window
    return box;
}

void FloorControls::label(QHBoxLayout* row, const QString& text, QWidget* buddy) {
    auto* words = new QLabel(text, this);
    words->setBuddy(buddy);
    if (row->count() > 0) row->addSpacing(12);
    row->addWidget(words);
    row->addWidget(buddy);
}

void FloorControls::setPlaces(int places) {
    if (places == places_) return;
    const bool own = places_ > 0 && members_->value() != places_;
    places_ = places;
    members_->setToolTip(tr("The gym has %1 places").arg(places));
    if (own) return;
    const QSignalBlocker quiet(members_);
    members_->setValue(places);
}

void FloorControls::startChosen() {
    const bool heads = start_->currentIndex() == Heads;
    heads_->setVisible(heads);
    if (heads) heads_->setFocus();
    Q_EMIT changed();
}

LaneOrder FloorControls::order() const {
    return order_->currentIndex() == 0 ? LaneOrder::Members : LaneOrder::Kit;
}

Result<FloorOptions> FloorControls::options() const {
    FloorOptions options;
    if (members_->value() != places_) options.members = members_->value();
    const Mix& mix = kMixes[mix_->currentIndex()];
    options.steady = mix.steady;
    options.loadAware = loads_->isChecked();
    options.paceSigma = mix.pace;
    options.setSigma = mix.sets;
    switch (start_->currentIndex()) {
    case Together: options.start = StartTogether{}; break;
    case Spread: options.start = StartSpread{}; break;
    case Best: options.start = StartBest{}; break;
    case Heads: {
        auto counts = headsFrom(heads_->text());
        if (!counts) return counts.why();
        options.start = std::move(counts).value();
        break;
    }
    default: break;
    }
    return options;
}

} // namespace bw

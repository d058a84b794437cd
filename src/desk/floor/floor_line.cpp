// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_line.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>

namespace bw {

namespace {
constexpr int kBlink = 500; // milliseconds

QString stageWords(FloorStage stage) {
    switch (stage) {
    case FloorStage::Classes: return FloorLine::tr("Floor: playing classes");
    case FloorStage::BestStart: return FloorLine::tr("Floor: looking for the best start");
    default: return FloorLine::tr("Floor: trying changes");
    }
}
} // namespace

FloorLine::FloorLine(FloorRunner& runner, QWidget* parent)
    : QWidget(parent), runner_(runner), words_(new QLabel(this)), bar_(new QProgressBar(this)),
      button_(new QPushButton(this)) {
    words_->setObjectName(QStringLiteral("floor-line"));
    words_->setAccessibleName(tr("Simulated class"));
    bar_->setMaximumWidth(120);
    bar_->setMaximumHeight(10);
    bar_->setTextVisible(false);
    blink_.setSingleShot(true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(words_);
    row->addWidget(bar_);
    row->addWidget(button_);
    connect(button_, &QPushButton::clicked, this,
            [this] { runner_.halted() ? runner_.goOn() : runner_.halt(); });
    connect(&blink_, &QTimer::timeout, this, &FloorLine::showWork);
    connect(&runner_, &FloorRunner::stateChanged, this, &FloorLine::follow);
    connect(&runner_, &FloorRunner::told, this, &FloorLine::follow);
    connect(&runner_, &FloorRunner::progressed, this, &FloorLine::progress);
    bar_->hide();
    follow();
}

QString FloorLine::standing() const {
    if (runner_.halted()) return tr("Floor: stopped");
    const FloorView& view = runner_.usual();
    if (view.why) return tr("Floor: the class can't be played");
    if (!view.answer) return {};
    return tr("Floor: %1 classes played").arg(QLocale().toString(view.answer->runs));
}

// What takes no longer than a blink does not show.
void FloorLine::follow() {
    if (runner_.running()) {
        if (!bar_->isVisibleTo(this) && !blink_.isActive()) blink_.start(kBlink);
        return;
    }
    blink_.stop();
    bar_->hide();
    words_->setText(standing());
    button_->setText(tr("Go on"));
    button_->setAccessibleName(tr("Go on simulating the class"));
    button_->setVisible(runner_.halted());
}

void FloorLine::showWork() {
    words_->setText(stageWords(FloorStage::Classes));
    bar_->setRange(0, 0);
    bar_->setAccessibleName(tr("How far the simulated class is"));
    bar_->show();
    button_->setText(tr("Stop"));
    button_->setAccessibleName(tr("Stop simulating the class"));
    button_->show();
}

void FloorLine::progress(FloorStage stage, int done, int total) {
    if (!bar_->isVisibleTo(this)) return;
    words_->setText(stageWords(stage));
    bar_->setRange(0, total);
    bar_->setValue(done);
}

} // namespace bw

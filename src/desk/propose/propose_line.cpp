// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/propose/propose_line.hpp"

#include "desk/propose/propose_strip.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include <algorithm>

namespace bw {

ProposeLine::ProposeLine(ProposeStrip& strip, QWidget* parent, int blink)
    : QWidget(parent), strip_(strip), words_(new QLabel(tr("Looking for proposals"), this)),
      bar_(new QProgressBar(this)), stop_(new QPushButton(tr("Stop"), this)) {
    setObjectName(QStringLiteral("propose-line"));
    bar_->setAccessibleName(tr("How much of the proposal is proved, in per cent"));
    bar_->setMaximumWidth(120);
    bar_->setMaximumHeight(10);
    bar_->setTextVisible(false);
    stop_->setAccessibleName(tr("Stop looking and keep the best so far"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{words_, bar_, stop_}) row->addWidget(part);
    blink_.setSingleShot(true);
    blink_.setInterval(blink);
    connect(&blink_, &QTimer::timeout, this, &QWidget::show);
    connect(stop_, &QPushButton::clicked, &strip_, &ProposeStrip::stop);
    connect(&strip_, &ProposeStrip::lookingChanged, this, &ProposeLine::follow);
    connect(&strip_, &ProposeStrip::progressed, this, &ProposeLine::progress);
    hide();
}

void ProposeLine::follow() {
    if (!strip_.looking()) {
        blink_.stop();
        return hide();
    }
    bar_->setRange(0, 0); // nothing is known yet
    if (blink_.interval() == 0) return show();
    blink_.start();
}

// The bound rises and the best falls until they meet.
void ProposeLine::progress(double best, double bound) {
    bar_->setRange(0, 100);
    bar_->setValue(best > 0 ? static_cast<int>(std::clamp(100 * bound / best, 0.0, 100.0)) : 100);
}

} // namespace bw

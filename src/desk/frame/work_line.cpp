// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/work_line.hpp"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

namespace bw {

WorkLine::WorkLine(QWidget* parent, std::chrono::milliseconds blink)
    : QWidget(parent), what_(new QLabel(this)), bar_(new QProgressBar(this)),
      stop_(new QPushButton(tr("Stop"), this)), blink_(blink) {
    bar_->setMaximumWidth(160);
    bar_->setTextVisible(false);
    stop_->setAccessibleName(tr("Stop the work that is running"));
    connect(stop_, &QPushButton::clicked, this, [this] { stopped_ = true; });
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(what_);
    layout->addWidget(bar_);
    layout->addWidget(stop_);
    hide();
}

bool WorkLine::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::Close: // first comes the end of the work
        stopped_ = true;
        event->ignore();
        return watched->isWidgetType();
    case QEvent::Shortcut:
    case QEvent::KeyPress:
    case QEvent::KeyRelease:
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::Wheel:
    case QEvent::ContextMenu:
    case QEvent::DragEnter: return watched != stop_ && !watched->isWindowType();
    default: return false;
    }
}

WorkLine::Run::Run(WorkLine& line, const QString& what, int total)
    : line_(line), focus_(QApplication::focusWidget()) {
    line_.running_ = true;
    line_.stopped_ = false;
    line_.what_->setText(what);
    line_.bar_->setAccessibleName(what);
    line_.bar_->setRange(0, total);
    line_.show();
    line_.stop_->setFocus();
    qApp->installEventFilter(&line_);
    sinceShown_.start();
}

WorkLine::Run::~Run() {
    qApp->removeEventFilter(&line_);
    line_.hide();
    line_.running_ = false;
    if (focus_) focus_->setFocus();
}

bool WorkLine::Run::at(int done) {
    if (sinceShown_.elapsed() >= line_.blink_.count()) {
        sinceShown_.restart();
        line_.bar_->setValue(done);
        QApplication::processEvents();
    }
    return !line_.stopped_;
}

} // namespace bw

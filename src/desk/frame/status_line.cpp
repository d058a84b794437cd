// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/status_line.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/work_line.hpp"
#include "store/gym_file.hpp"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>

namespace bw {

StatusLine::StatusLine(GymFile& file, QWidget* parent)
    : QWidget(parent), state_(new QLabel(this)), work_(new WorkLine(this)) {
    setObjectName(QStringLiteral("status"));
    dressAsFrame(this);
    const QString path = QFileInfo(pathText(file.path())).absoluteFilePath();
    const QString name = QFileInfo(path).fileName();
    state_->setTextFormat(Qt::PlainText);
    state_->setToolTip(path);
    state_->setAccessibleName(tr("Gym file"));
    if (file.writable())
        state_->setText(tr("%1 · all changes kept").arg(name));
    else if (file.writer().empty())
        state_->setText(tr("%1 · read-only: the file or its folder can't be written").arg(name));
    else
        state_->setText(tr("%1 · read-only: %2 is writing to it").arg(name, plain(file.writer())));
    state_->setSizePolicy(QSizePolicy::Ignored,
                          QSizePolicy::Preferred); // may be cut off when narrow
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 2, 16, 4);
    layout->addWidget(state_, 1);
    layout->addWidget(work_);
}

void StatusLine::add(QWidget* part) { layout()->addWidget(part); }

QString StatusLine::text() const { return state_->text(); }

} // namespace bw

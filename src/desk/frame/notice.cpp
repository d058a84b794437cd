// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/notice.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/words.hpp"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace bw {

Notice::Notice(QWidget* parent)
    : QFrame(parent), words_(new QLabel(this)), away_(new QToolButton(this)) {
    setObjectName(QStringLiteral("notice"));
    dressAsFrame(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    words_->setAccessibleName(tr("What could not be done"));
    away_->setText(tr("Put away"));
    away_->setAccessibleName(tr("Put this notice away"));
    connect(away_, &QToolButton::clicked, this, &Notice::quiet);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(12, 6, 8, 6);
    layout->addWidget(words_, 1);
    layout->addWidget(away_, 0, Qt::AlignTop);
    hide();
}

void Notice::tell(const Message& what) {
    words_->setText(say(what));
    show();
    QAccessibleEvent alert(words_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void Notice::quiet() {
    words_->clear();
    hide();
}

QString Notice::text() const { return words_->text(); }

} // namespace bw

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
    : QFrame(parent), words_(new QLabel(this)), way_(new QToolButton(this)),
      away_(new QToolButton(this)) {
    setObjectName(QStringLiteral("notice"));
    dressAsFrame(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    words_->setAccessibleName(tr("What happened"));
    way_->setObjectName(QStringLiteral("way-on"));
    way_->setFocusPolicy(Qt::StrongFocus);
    way_->hide();
    away_->setText(tr("Put away"));
    away_->setAccessibleName(tr("Put this notice away"));
    connect(away_, &QToolButton::clicked, this, &Notice::quiet);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(12, 6, 8, 6);
    layout->addWidget(words_, 1);
    layout->addWidget(way_, 0, Qt::AlignTop);
    layout->addWidget(away_, 0, Qt::AlignTop);
    hide();
}

void Notice::tell(const Message& what) {
    words_->setText(say(what));
    way_->hide();
    show();
    QAccessibleEvent alert(words_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void Notice::offer(const QString& words, const std::function<void()>& go) {
    way_->setText(words);
    way_->disconnect(this);
    connect(way_, &QToolButton::clicked, this, go);
    way_->show();
}

void Notice::quiet() {
    words_->clear();
    hide();
}

QString Notice::text() const { return words_->text(); }

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/preview_bar.hpp"

#include "sheets/sheet_words.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace bw {

namespace {
constexpr double kStep = 1.25;

QToolButton* button(QWidget* parent, const QString& text, const QString& name) {
    auto* made = new QToolButton(parent);
    made->setText(text);
    made->setAccessibleName(name);
    made->setToolTip(name);
    made->setAutoRaise(true);
    made->setFocusPolicy(Qt::TabFocus);
    return made;
}
} // namespace

PreviewBar::PreviewBar(SheetPreview& preview, QWidget* parent)
    : QWidget(parent), preview_(preview), page_(new QLabel(this)),
      back_(button(this, QStringLiteral("‹"), tr("Page before"))),
      on_(button(this, QStringLiteral("›"), tr("Page after"))),
      farther_(button(this, QStringLiteral("−"), tr("Farther"))),
      fit_(button(this, tr("fit"), tr("Fit the page"))),
      nearer_(button(this, QStringLiteral("+"), tr("Nearer"))) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 0, 12, 6);
    row->addStretch(1);
    for (QWidget* w : std::initializer_list<QWidget*>{back_, page_, on_}) row->addWidget(w);
    row->addSpacing(24);
    for (QWidget* w : {farther_, fit_, nearer_}) row->addWidget(w);
    row->addStretch(1);
    connect(back_, &QToolButton::clicked, this, [this] { preview_.turn(-1); });
    connect(on_, &QToolButton::clicked, this, [this] { preview_.turn(1); });
    connect(farther_, &QToolButton::clicked, this,
            [this] { preview_.setZoom(preview_.zoom() / kStep); });
    connect(fit_, &QToolButton::clicked, this, [this] { preview_.setZoom(1); });
    connect(nearer_, &QToolButton::clicked, this,
            [this] { preview_.setZoom(preview_.zoom() * kStep); });
    connect(&preview_, &SheetPreview::changed, this, &PreviewBar::refresh);
    refresh();
}

void PreviewBar::refresh() {
    const int pages = preview_.pages();
    page_->setText(pages > 0 ? pageText(preview_.page() + 1, pages) : QString());
    back_->setEnabled(preview_.page() > 0);
    on_->setEnabled(preview_.page() + 1 < pages);
    farther_->setEnabled(preview_.zoom() > 1);
    fit_->setEnabled(preview_.zoom() > 1);
    nearer_->setEnabled(pages > 0);
}

} // namespace bw

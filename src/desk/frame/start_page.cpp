// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/start_page.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/resources.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

#include <QAccessible>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace bw {

namespace {
constexpr int kCardWidth = 620, kLongestName = 200;

QFont larger(QFont font, double times) {
    font.setPointSizeF(font.pointSizeF() * times);
    return font;
}
QLabel* wordsOf(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}
} // namespace

StartPage::StartPage(QWidget* parent)
    : QWidget(parent), trouble_(wordsOf({}, this)), name_(new QLineEdit(this)),
      demo_(new QPushButton(tr("&Look around Saltmarsh Boathouse"), this)),
      back_(new QPushButton(this)), way_(new QPushButton(this)) {
    auto* scroll = new QScrollArea(this); // a small window shows it all the same
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* middle = new QWidget(scroll);
    auto* across = new QHBoxLayout(middle);
    across->addStretch(1);
    across->addWidget(makeCard(), 0, Qt::AlignVCenter);
    across->addStretch(1);
    scroll->setWidget(middle);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll);
    connect(back_, &QPushButton::clicked, this, &StartPage::backWanted);
    offerBack({});
    dressAsFrame(this);
}

QWidget* StartPage::makeCard() {
    auto* card = new QFrame(this);
    card->setObjectName(QStringLiteral("card"));
    card->setFixedWidth(kCardWidth);
    auto* layout = new QVBoxLayout(card);
    layout->setContentsMargins(36, 30, 36, 30);
    layout->setSpacing(6);
    layout->addLayout(heading(card));
    trouble_->setObjectName(QStringLiteral("trouble"));
    trouble_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    trouble_->setAccessibleName(tr("What happened"));
    trouble_->hide();
    layout->addWidget(trouble_);
    way_->setObjectName(QStringLiteral("way-on"));
    way_->hide();
    layout->addWidget(way_, 0, Qt::AlignLeft);

    connect(demo_, &QPushButton::clicked, this, &StartPage::demoWanted);
    addChoice(layout, nullptr, demo_,
              tr("An invented gym with fourteen finished months and a draft. It is a copy of your "
                 "own: change what you like."));

    name_->setPlaceholderText(tr("Name of the gym"));
    name_->setAccessibleName(tr("Name of the new gym"));
    name_->setMaxLength(kLongestName);
    auto* empty = new QPushButton(tr("&Start an empty gym"), card);
    const auto start = [this] { Q_EMIT emptyWanted(name_->text()); };
    connect(empty, &QPushButton::clicked, this, start);
    connect(name_, &QLineEdit::returnPressed, this, start);
    addChoice(
        layout, name_, empty,
        tr("The Shelf of exercises comes with it; kit, months and members are yours to add."));

    auto* bundle = new QPushButton(tr("&Bring in a bundle…"), card);
    connect(bundle, &QPushButton::clicked, this, &StartPage::bundleWanted);
    addChoice(layout, nullptr, bundle, tr("A gym that someone wrote as a *.bundle.json file."));

    auto* other = new QPushButton(tr("&Open a gym file…"), card);
    connect(other, &QPushButton::clicked, this, &StartPage::otherWanted);
    addChoice(layout, nullptr, other, tr("A *.bwgym file that is on this machine already."));
    layout->addSpacing(14);
    layout->addWidget(back_, 0, Qt::AlignLeft);
    setFocusProxy(demo_);
    return card;
}

QLayout* StartPage::heading(QWidget* card) {
    auto* mark = new QLabel(card);
    mark->setPixmap(programIcon().pixmap(QSize(40, 40), devicePixelRatioF()));
    auto* title = wordsOf(tr("Which gym is it?"), card);
    title->setFont(larger(font(), 1.7));
    auto* line = new QHBoxLayout;
    line->setSpacing(14);
    line->addWidget(mark);
    line->addWidget(title, 1);
    return line;
}

void StartPage::addChoice(QBoxLayout* card, QWidget* before, QPushButton* button,
                          const QString& sentence) {
    card->addSpacing(14);
    auto* line = new QHBoxLayout;
    line->addWidget(button);
    if (before) line->addWidget(before, 1);
    if (!before) line->addStretch(1);
    card->addLayout(line);
    QLabel* words = wordsOf(sentence, this);
    words->setProperty("quiet", true);
    card->addWidget(words);
    button->setAccessibleDescription(sentence);
    button->setAutoDefault(true); // Enter presses it too
}

void StartPage::tell(const Message& trouble) {
    trouble_->setText(levelShape(Level::Look) + QLatin1Char(' ') + say(trouble));
    trouble_->show();
    way_->hide();
    setFocusProxy(demo_);
    QAccessibleEvent alert(trouble_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void StartPage::offer(const QString& words, const std::function<void()>& go) {
    way_->setText(words);
    way_->disconnect(this);
    connect(way_, &QPushButton::clicked, this, go);
    way_->show();
    setFocusProxy(way_);
    setFocus();
}

void StartPage::offerBack(const QString& gymName) {
    back_->setText(tr("Back to %1").arg(gymName));
    back_->setVisible(!gymName.isEmpty());
}

QString StartPage::trouble() const { return trouble_->text(); }

} // namespace bw

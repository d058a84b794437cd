// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/command_panel.hpp"

#include "desk/frame/command_delegate.hpp"
#include "desk/frame/frame_style.hpp"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bw {

CommandPanel::CommandPanel(QWidget* window)
    : QFrame(window), words_(new QLineEdit(this)), list_(new QListWidget(this)),
      none_(new QLabel(tr("Nothing is called that. Fewer letters find more."), this)) {
    setObjectName(QStringLiteral("commands"));
    setAutoFillBackground(true);
    dressAsFrame(this);
    assemble();
    connect(words_, &QLineEdit::textEdited, this, &CommandPanel::fill);
    connect(list_, &QListWidget::currentRowChanged, this, &CommandPanel::tellLine);
    connect(list_, &QListWidget::itemClicked, this, &CommandPanel::runLine);
    connect(qApp, &QApplication::focusChanged, this, [this](const QWidget*, const QWidget* now) {
        if (now && isVisible() && now != this && !isAncestorOf(now)) hide();
    });
    for (QWidget* part : {static_cast<QWidget*>(words_), static_cast<QWidget*>(list_), window})
        part->installEventFilter(this);
    hide();
}

void CommandPanel::assemble() {
    auto* name = new QLabel(tr("Find a command"), this);
    name->setProperty("quiet", true);
    name->setBuddy(words_);
    words_->setObjectName(QStringLiteral("command-words"));
    words_->setAccessibleName(name->text());
    words_->setContextMenuPolicy(Qt::NoContextMenu);
    list_->setObjectName(QStringLiteral("command-list"));
    list_->setAccessibleName(tr("Commands"));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setItemDelegate(new CommandDelegate(list_));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    none_->setProperty("quiet", true);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 10);
    layout->addWidget(name);
    layout->addWidget(words_);
    layout->addWidget(none_);
    layout->addWidget(list_, 1);
}

namespace {
// A cell's editor goes when it loses the keyboard: then its table has it.
QWidget* lastingFocus() {
    QWidget* focus = QApplication::focusWidget();
    for (QWidget* w = focus; w; w = w->parentWidget())
        if (qobject_cast<QAbstractItemView*>(w)) return w;
    return focus;
}
} // namespace

void CommandPanel::open(QList<CommandLine> lines) {
    if (!isVisible()) before_ = lastingFocus();
    all_ = std::move(lines);
    words_->clear();
    fill();
    place();
    show();
    raise();
    words_->setFocus(Qt::ShortcutFocusReason);
}

void CommandPanel::place() {
    const QRect room = parentWidget()->rect();
    const int width = std::min(580, room.width() - 24);
    const int height = std::min(460, room.height() - 60);
    setGeometry((room.width() - width) / 2, std::min(72, room.height() - height), width, height);
}

void CommandPanel::fill() {
    found_ = linesFor(all_, words_->text());
    list_->clear();
    QListWidgetItem* first = nullptr;
    for (qsizetype i = 0; i < found_.size(); ++i) {
        const CommandLine& l = found_[i];
        if (i == 0 || found_[i - 1].group != l.group) {
            auto* heading = new QListWidgetItem(l.group, list_);
            heading->setFlags(Qt::NoItemFlags);
        }
        auto* item = new QListWidgetItem(l.text, list_);
        const QString right = l.atHand ? l.keys.value(0) : l.whyNot;
        item->setData(CommandDelegate::AtRole, static_cast<int>(i));
        item->setData(CommandDelegate::RightRole, right);
        item->setData(CommandDelegate::AwayRole, !l.atHand);
        QString spoken = l.group + QStringLiteral(": ") + l.text;
        if (!l.atHand) spoken += QStringLiteral(", ") + tr("not at hand");
        if (!right.isEmpty()) spoken += QStringLiteral(", ") + right;
        item->setData(Qt::AccessibleTextRole, spoken);
        if (!first && l.atHand) first = item;
    }
    none_->setVisible(found_.isEmpty());
    list_->setCurrentItem(first ? first : list_->item(1)); // a line, never a heading
    if (list_->currentRow() <= 1) list_->scrollToTop();
    tellLine();
}

const CommandLine* CommandPanel::line() const {
    const QListWidgetItem* item = list_->currentItem();
    const QVariant at = item ? item->data(CommandDelegate::AtRole) : QVariant();
    return at.isValid() ? &found_[at.toInt()] : nullptr;
}

// The keyboard stays with the words; what is lit is read out from there.
void CommandPanel::tellLine() {
    const QListWidgetItem* item = list_->currentItem();
    words_->setAccessibleDescription(item ? item->data(Qt::AccessibleTextRole).toString()
                                          : none_->text());
}

void CommandPanel::walk(int step) {
    const int way = step < 0 ? -1 : 1;
    int at = std::clamp(list_->currentRow() + step, 0, std::max(0, list_->count() - 1));
    const auto isLine = [this](int row) {
        const QListWidgetItem* item = list_->item(row);
        return item && item->data(CommandDelegate::AtRole).isValid();
    };
    if (!isLine(at)) at += isLine(at + way) ? way : -way;
    if (!isLine(at)) return;
    list_->setCurrentRow(at);
    if (at == 1) list_->scrollToTop(); // with its heading
}

void CommandPanel::runLine() {
    const CommandLine* at = line();
    if (!at || !at->atHand) return;
    const auto run = at->run;
    leave();
    run();
}

void CommandPanel::leave() {
    hide();
    if (before_) before_->setFocus(Qt::OtherFocusReason);
}

bool CommandPanel::takesKey(int key) {
    const int page = std::max(1, list_->height() / std::max(1, list_->sizeHintForRow(1)) - 1);
    switch (key) {
    case Qt::Key_Escape: leave(); return true;
    case Qt::Key_Return:
    case Qt::Key_Enter: runLine(); return true;
    case Qt::Key_Down: walk(1); return true;
    case Qt::Key_Up: walk(-1); return true;
    case Qt::Key_PageDown: walk(page); return true;
    case Qt::Key_PageUp: walk(-page); return true;
    default: return false;
    }
}

bool CommandPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && watched == parentWidget() && isVisible()) place();
    if (event->type() != QEvent::KeyPress || watched == parentWidget())
        return QFrame::eventFilter(watched, event);
    auto* key = static_cast<QKeyEvent*>(event);
    if (takesKey(key->key())) return true;
    if (watched == list_ && !key->text().isEmpty() && key->text().at(0).isPrint()) {
        words_->setFocus();
        QApplication::sendEvent(words_, event);
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

bool CommandPanel::focusNextPrevChild(bool) {
    (words_->hasFocus() ? static_cast<QWidget*>(list_) : words_)->setFocus(Qt::TabFocusReason);
    return true;
}

} // namespace bw

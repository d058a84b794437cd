// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook_window.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/resources.hpp"
#include "desk/handbook/found_delegate.hpp"
#include "desk/handbook/handbook_view.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScreen>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace bw {

namespace {
constexpr QSize kFirstSize{1040, 680};
const QString kName = QStringLiteral("handbook");
constexpr int kSide = 280; // logical pixels
constexpr int kSpot = Qt::UserRole;

void setSpot(QTreeWidgetItem* item, HandbookSpot spot) {
    item->setData(0, kSpot, QPoint(spot.page, spot.heading));
}
bool isLetter(const QKeyEvent& event) {
    return !(event.modifiers() & ~Qt::ShiftModifier) && !event.text().isEmpty() &&
           event.text().front().isLetterOrNumber();
}
HandbookSpot spotOf(const QTreeWidgetItem* item) {
    const QVariant stored = item ? item->data(0, kSpot) : QVariant();
    if (!stored.isValid()) return {};
    return {stored.toPoint().x(), stored.toPoint().y()};
}
} // namespace

HandbookWindow::HandbookWindow()
    : words_(new QLineEdit(this)), side_(new QStackedWidget(this)),
      contents_(new QTreeWidget(side_)), found_(new QListWidget(side_)), count_(new QLabel(this)),
      back_(makeStep(tr("Back"), QStringLiteral("handbook-back"), -1)),
      forward_(makeStep(tr("Forward"), QStringLiteral("handbook-forward"), 1)),
      view_(new HandbookView(this)) {
    setObjectName(kName);
    setWindowIcon(programIcon());
    setAttribute(Qt::WA_QuitOnClose, false); // the program's window does that
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(makeSide());
    across->addWidget(makePage(), 1);
    fillContents();
    addKeys();
    connect(words_, &QLineEdit::textChanged, this, &HandbookWindow::find);
    connect(words_, &QLineEdit::returnPressed, this, [this] { choose(found_->currentRow()); });
    connect(found_, &QListWidget::currentRowChanged, this, &HandbookWindow::choose);
    connect(contents_, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (const HandbookSpot spot = spotOf(item); spot.found()) open(spot);
    });
    connect(view_, &HandbookView::placeWanted, this, &HandbookWindow::goTo);
    resize(kFirstSize.boundedTo(screen()->availableSize()));
    restoreGeometry(Remembered::geometry(kName));
    setTabOrder(words_, contents_);
}

QToolButton* HandbookWindow::makeStep(const QString& text, const QString& name, int by) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setObjectName(name);
    connect(button, &QToolButton::clicked, this, [this, by] { step(by); });
    return button;
}

QWidget* HandbookWindow::makeSide() {
    auto* side = new QWidget(this);
    side->setFixedWidth(kSide);
    dressAsFrame(side);
    words_->setObjectName(QStringLiteral("handbook-words"));
    words_->setPlaceholderText(tr("Find words"));
    words_->setAccessibleName(tr("Words to find in the Handbook"));
    words_->setClearButtonEnabled(true);
    count_->setProperty("quiet", true);
    contents_->setObjectName(QStringLiteral("handbook-contents"));
    contents_->setAccessibleName(tr("Contents"));
    contents_->setHeaderHidden(true);
    contents_->setIndentation(14);
    contents_->setRootIsDecorated(false);
    found_->setObjectName(QStringLiteral("handbook-found"));
    found_->setAccessibleName(tr("Found"));
    found_->setItemDelegate(new FoundDelegate(found_));
    for (QAbstractItemView* list :
         {static_cast<QAbstractItemView*>(contents_), static_cast<QAbstractItemView*>(found_)}) {
        list->setFrameShape(QFrame::NoFrame);
        list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
        side_->addWidget(list);
    }
    auto* down = new QVBoxLayout(side);
    down->setContentsMargins(10, 12, 0, 0);
    auto* top = new QVBoxLayout;
    top->setContentsMargins(0, 0, 10, 0);
    top->addWidget(words_);
    top->addWidget(count_);
    down->addLayout(top);
    down->addWidget(side_, 1);
    count_->hide();
    return side;
}

QWidget* HandbookWindow::makePage() {
    auto* page = new QWidget(this);
    auto* steps = new QWidget(page);
    dressAsFrame(steps);
    auto* across = new QHBoxLayout(steps);
    across->setContentsMargins(12, 8, 12, 8);
    across->addWidget(back_);
    across->addWidget(forward_);
    across->addStretch(1);
    back_->setToolTip(tr("Alt+Left"));
    forward_->setToolTip(tr("Alt+Right"));
    auto* down = new QVBoxLayout(page);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(steps);
    down->addWidget(view_, 1);
    return page;
}

void HandbookWindow::fillContents() {
    const QList<HandbookPage>& pages = handbookPages();
    QTreeWidgetItem* group = nullptr;
    for (int p = 0; p < pages.size(); ++p) {
        if (!group || group->text(0) != pages[p].group()) {
            group = new QTreeWidgetItem(contents_, {pages[p].group()});
            group->setFlags(Qt::ItemIsEnabled);
            group->setFont(0, smallFont(contents_->font()));
            group->setExpanded(true);
        }
        auto* page = new QTreeWidgetItem(group, {pages[p].title()});
        setSpot(page, {p, 0});
        for (int h = 1; h < pages[p].headings.size(); ++h)
            setSpot(new QTreeWidgetItem(page, {pages[p].headings[h].title}), {p, h});
    }
}

void HandbookWindow::addKeys() {
    const auto add = [this](const QKeySequence& key, auto run) {
        connect(new QShortcut(key, this), &QShortcut::activated, this, run);
    };
    add(QKeySequence::Find, [this] {
        words_->setFocus(Qt::ShortcutFocusReason);
        words_->selectAll();
    });
    add(Qt::Key_F6, [this] { goRound(); });
    add(Qt::ALT | Qt::Key_Left, [this] { step(-1); });
    add(Qt::ALT | Qt::Key_Right, [this] { step(1); });
    add(Qt::Key_F1, [this] { close(); }); // the key that opened it
}

void HandbookWindow::goTo(const QString& place) {
    if (const HandbookSpot spot = handbookSpot(place); spot.found()) open(spot);
    view_->setFocus(Qt::OtherFocusReason);
}

QString HandbookWindow::place() const {
    const HandbookSpot spot = view_->spot();
    return spot.found() ? handbookPages()[spot.page].place(spot.heading) : QString();
}

void HandbookWindow::open(HandbookSpot spot, bool instead) {
    looking_ = false;
    if (now_ >= 0 && stop().spot == spot) return put({spot, -1});
    if (now_ >= 0) stop().sight = view_->verticalScrollBar()->value();
    if (!instead || now_ < 0) ++now_;
    way_.resize(static_cast<std::size_t>(now_));
    way_.push_back({spot, -1});
    put(stop());
}

void HandbookWindow::step(int by) {
    const int next = now_ + by;
    if (next < 0 || next >= static_cast<int>(way_.size())) return;
    stop().sight = view_->verticalScrollBar()->value();
    now_ = next;
    looking_ = false;
    put(stop());
}

void HandbookWindow::put(const Stop& stop) {
    view_->show(stop.spot);
    if (stop.sight >= 0) view_->verticalScrollBar()->setValue(stop.sight);
    follow();
}

void HandbookWindow::follow() {
    const HandbookSpot spot = view_->spot();
    const HandbookPage& page = handbookPages()[spot.page];
    setWindowTitle(tr("%1 · Handbook").arg(page.title()));
    back_->setEnabled(now_ > 0);
    forward_->setEnabled(now_ + 1 < static_cast<int>(way_.size()));
    const QSignalBlocker quiet(contents_);
    for (QTreeWidgetItemIterator it(contents_); *it; ++it) {
        const HandbookSpot there = spotOf(*it);
        if (there.heading == 0) (*it)->setExpanded(there.page == spot.page);
        if (there == spot) contents_->setCurrentItem(*it);
    }
    contents_->scrollToItem(contents_->currentItem());
}

void HandbookWindow::find(const QString& typed) {
    hits_ = searchHandbook(typed);
    {
        const QSignalBlocker quiet(found_);
        found_->clear();
        for (const HandbookHit& hit : hits_) {
            const HandbookPage& page = handbookPages()[hit.spot.page];
            const QString title = page.headings[hit.spot.heading].title;
            const QString above =
                hit.spot.heading ? QStringLiteral(" · ") + page.title() : QString();
            auto* item = new QListWidgetItem(title + above, found_);
            item->setData(FoundDelegate::kLine, hit.line);
            item->setData(Qt::AccessibleDescriptionRole, hit.line);
        }
    }
    const QStringList words = handbookWords(typed);
    side_->setCurrentWidget(words.isEmpty() ? static_cast<QWidget*>(contents_) : found_);
    count_->setVisible(!words.isEmpty());
    count_->setText(hits_.isEmpty() ? tr("Nothing has all of these words.")
                                    : tr("Found: %1").arg(hits_.size()));
    view_->mark(words);
    if (!hits_.isEmpty()) found_->setCurrentRow(0);
}

void HandbookWindow::choose(int hit) {
    if (hit < 0 || hit >= hits_.size()) return;
    open(hits_[hit].spot, looking_);
    looking_ = true;
    view_->showFirstMark();
}

// The words, what is on the left, the page; and round again.
void HandbookWindow::goRound() {
    QWidget* next = words_->hasFocus()                   ? side_->currentWidget()
                    : side_->currentWidget()->hasFocus() ? static_cast<QWidget*>(view_)
                                                         : words_;
    next->setFocus(Qt::ShortcutFocusReason);
}

void HandbookWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (words_->text().isEmpty()) {
            close();
        } else {
            words_->clear();
            view_->setFocus(Qt::ShortcutFocusReason);
        }
    } else if (view_->hasFocus() && isLetter(*event)) { // a word that one is looking for
        words_->setFocus(Qt::ShortcutFocusReason);
        words_->setText(event->text());
    } else if (event->key() == Qt::Key_Down && words_->hasFocus()) {
        side_->currentWidget()->setFocus(Qt::ShortcutFocusReason);
    } else {
        QWidget::keyPressEvent(event);
    }
}

void HandbookWindow::closeEvent(QCloseEvent* event) {
    Remembered::setGeometry(saveGeometry(), kName);
    QWidget::closeEvent(event);
}

void HandbookWindow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) dressAgain(this);
}

} // namespace bw

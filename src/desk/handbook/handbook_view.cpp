// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook_view.hpp"

#include "desk/frame/mixed_ink.hpp"
#include "desk/frame/theme.hpp"
#include "desk/handbook/handbook_pictures.hpp"
#include "desk/handbook/handbook_text.hpp"

#include <QAbstractTextDocumentLayout>
#include <QEvent>
#include <QFontMetricsF>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextFrame>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kType = 1.1;     // of the program's size: it is read, not glanced at
constexpr double kLetters = 84;   // to a line at most, of the average
constexpr double kNarrowest = 24; // logical pixels beside the text
constexpr int kAbove = 12;        // between the upper edge and a heading that is gone to
constexpr double kLastLines = 48; // below the text
} // namespace

HandbookView::HandbookView(QWidget* parent)
    : QTextBrowser(parent), pictures_(new HandbookPictures(this)) {
    setObjectName(QStringLiteral("handbook-page"));
    setAccessibleName(tr("Page of the Handbook"));
    setFrameShape(QFrame::NoFrame);
    setOpenLinks(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    QFont type = font();
    type.setPointSizeF(type.pointSizeF() * kType);
    document()->setDefaultFont(type);
    document()->documentLayout()->registerHandler(QTextFormat::ImageObject, pictures_);
    connect(this, &QTextBrowser::anchorClicked, this,
            [this](const QUrl& link) { Q_EMIT placeWanted(link.toString()); });
}

void HandbookView::show(HandbookSpot spot) {
    const bool turned = spot.page != spot_.page;
    spot_ = spot;
    if (turned) {
        pictures_->forget();
        set();
    }
    scrollTo(spot.heading <= 0 ? 0 : blockOfHeading(*document(), spot.heading));
}

void HandbookView::set() {
    if (!spot_.found()) return;
    setHandbookPage(*document(), handbookPages()[spot_.page]);
    setColumn();
    markAgain();
}

void HandbookView::setColumn() {
    const double most = kLetters * QFontMetricsF(document()->defaultFont()).averageCharWidth();
    const double room = viewport()->width();
    const double column = std::floor(std::min(most, room - 2 * kNarrowest));
    QTextFrame* paper = document()->rootFrame();
    QTextFrameFormat format = paper->frameFormat();
    const double left = std::floor((room - column) / 2);
    const bool scaled = pictures_->setColumn(column, devicePixelRatioF());
    if (!scaled && format.leftMargin() == left && format.rightMargin() == room - column - left)
        return;
    format.setTopMargin(kNarrowest);
    format.setBottomMargin(kLastLines);
    format.setLeftMargin(left);
    format.setRightMargin(room - column - left);
    paper->setFrameFormat(format);
}

void HandbookView::scrollTo(int block) {
    const QTextBlock wanted = document()->findBlockByNumber(std::max(0, block));
    moveCursor(QTextCursor::Start);
    setTextCursor(QTextCursor(wanted));
    const double top = document()->documentLayout()->blockBoundingRect(wanted).top();
    (void)document()->size(); // the whole page is laid out, so that it can be scrolled
    verticalScrollBar()->setValue(block <= 0 ? 0 : static_cast<int>(top) - kAbove);
}

void HandbookView::mark(const QStringList& words) {
    if (words == words_) return;
    words_ = words;
    markAgain();
}

void HandbookView::markAgain() {
    QList<ExtraSelection> found;
    QTextCharFormat ink;
    ink.setBackground(mixedInk(inks().paper, inks().section[1], 0.35));
    for (const QString& word : words_)
        for (QTextCursor at = document()->find(word); !at.isNull();
             at = document()->find(word, at)) {
            const QChar before = document()->characterAt(at.selectionStart() - 1);
            if (!before.isLetterOrNumber()) found << ExtraSelection{at, ink};
        }
    std::sort(found.begin(), found.end(), [](const ExtraSelection& a, const ExtraSelection& b) {
        return a.cursor.position() < b.cursor.position();
    });
    setExtraSelections(found);
}

void HandbookView::showFirstMark() {
    const int from = textCursor().position();
    for (const ExtraSelection& mark : extraSelections()) {
        if (mark.cursor.selectionStart() < from) continue;
        const double top =
            document()->documentLayout()->blockBoundingRect(mark.cursor.block()).top();
        const int sight = verticalScrollBar()->value();
        if (top > sight + viewport()->height() * 0.8)
            verticalScrollBar()->setValue(static_cast<int>(top) - viewport()->height() / 3);
        return;
    }
}

// The inks are in the text.
void HandbookView::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() != QEvent::PaletteChange || !pictures_) return;
    const int sight = verticalScrollBar()->value();
    set();
    verticalScrollBar()->setValue(sight);
}

// What is read stays where it is while the lines break anew.
void HandbookView::resizeEvent(QResizeEvent* event) {
    const auto* layout = document()->documentLayout();
    const int sight = verticalScrollBar()->value();
    const int at =
        layout->hitTest(QPointF(viewport()->width() / 2.0, sight + kAbove), Qt::FuzzyHit);
    const int block = document()->findBlock(std::max(0, at)).blockNumber();
    const auto top = [&] {
        return layout->blockBoundingRect(document()->findBlockByNumber(block)).top();
    };
    const double below = sight - top();
    QTextBrowser::resizeEvent(event);
    setColumn();
    (void)document()->size(); // the whole page is laid out, so that it can be scrolled
    verticalScrollBar()->setValue(static_cast<int>(top() + below));
}

} // namespace bw

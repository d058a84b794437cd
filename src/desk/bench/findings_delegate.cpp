// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_delegate.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

#include <QAbstractItemView>
#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace bw {

namespace {
constexpr int kSide = 12, kTop = 8, kShape = 22, kGauge = 56, kHintWide = 40, kButtonPad = 6,
              kKeyWide = 16;

const FindingRow& rowOf(const QModelIndex& index) {
    return static_cast<const FindingsModel*>(index.model())->at(index.row());
}

// With the place in it where that has no room of its own; with the reason first.
QString basisText(const FindingRow& row, bool placed, bool open) {
    QStringList parts{row.weeks};
    if (!placed) parts.prepend(row.where);
    if (!open && !row.before.isEmpty()) parts.prepend(FindingsDelegate::tr("accepted before"));
    if (!row.basis.isEmpty()) parts << row.basis;
    const QString text = parts.join(QStringLiteral(" · "));
    const QString reason = QChar(0x201C) + row.reason + QChar(0x201D);
    if (!row.accepted()) return text;
    return open ? reason + QLatin1Char('\n') + text : reason;
}

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

QString keyOf(int action) {
    if (action < 0 || action >= 9) return {};
    return action == 0 ? QStringLiteral("T") : QString::number(action + 1);
}

QRect besideLast(const FindingPlaces& at, const QRect& column, int wide, int high) {
    if (at.verdicts.empty()) return {column.left(), at.bottom, wide, high};
    const QRect& last = at.verdicts.back().rect;
    return {last.right() + 7, last.top(), wide, high};
}

// One painting of a finding.
class FindingInk {
public:
    FindingInk(QPainter& p, const QStyleOptionViewItem& option, const FindingRow& row,
               const FindingPlaces& at, const Inks& k)
        : p_(p), font_(option.font), small_(smallFont(option.font)), row_(row), at_(at), k_(k),
          colour_(k.level[static_cast<std::size_t>(row.finding.level)]) {}

    void paint(bool open, int hover) {
        p_.setFont(font_);
        p_.setPen(colour_);
        p_.drawText(at_.shape, Qt::AlignLeft | Qt::AlignTop, levelShape(row_.finding.level));
        p_.setPen(k_.ink);
        p_.drawText(at_.text, Qt::TextWordWrap, row_.text);
        meta();
        basis(open);
        if (!at_.tryHint.isNull()) button(at_.tryHint, FindingsDelegate::tr("Try"), hover >= 0, {});
        if (!open) return;
        p_.setFont(small_);
        p_.setPen(k_.ink);
        p_.drawText(at_.before, Qt::TextWordWrap, row_.before);
        for (const auto& line : at_.remedies) remedy(line, hover);
        for (const auto& line : at_.verdicts)
            button(line.rect, line.text, hover == line.action, line.key);
    }

private:
    void meta() {
        p_.setFont(strong(small_));
        p_.setPen(k_.ink);
        p_.drawText(at_.where, Qt::AlignLeft | Qt::AlignVCenter, row_.where);
        p_.setFont(small_);
        p_.drawText(at_.figures, Qt::AlignRight | Qt::AlignVCenter, row_.figures);
        if (!at_.gauge.isNull()) paintGauge(p_, at_.gauge, row_.gauge, colour_, k_);
    }

    void basis(bool open) {
        p_.setFont(small_);
        p_.setPen(k_.quiet);
        const QString text = basisText(row_, at_.where.isValid(), open);
        if (open) return p_.drawText(at_.basis, Qt::TextWordWrap, text);
        p_.drawText(at_.basis, Qt::AlignLeft | Qt::AlignVCenter,
                    QFontMetrics(small_).elidedText(text, Qt::ElideRight, at_.basis.width()));
    }

    void remedy(const FindingPlaces::Line& line, int hover) {
        if (line.action < 0) {
            p_.setFont(small_);
            p_.setPen(k_.ink);
            p_.drawText(line.rect, Qt::TextWordWrap, line.text);
            return;
        }
        button(line.rect, line.text, hover == line.action, line.key);
    }

    void button(const QRect& rect, const QString& text, bool hover, const QString& key) {
        p_.setPen(QPen(k_.accent, 1));
        p_.setBrush(hover ? k_.accent : k_.paper);
        p_.drawRoundedRect(QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
        p_.setBrush(Qt::NoBrush);
        p_.setPen(hover ? k_.onAccent : k_.accent);
        p_.setFont(small_);
        const QRect room =
            rect.adjusted(kButtonPad, 0, -kButtonPad - (key.isEmpty() ? 0 : kKeyWide), 0);
        p_.drawText(room,
                    (key.isEmpty() ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter |
                        Qt::TextWordWrap,
                    text);
        p_.drawText(rect.adjusted(0, 0, -kButtonPad, 0), Qt::AlignRight | Qt::AlignVCenter, key);
    }

    QPainter& p_;
    QFont font_, small_;
    const FindingRow& row_;
    const FindingPlaces& at_;
    const Inks& k_;
    QColor colour_;
};

} // namespace

int FindingsDelegate::wrapped(const QFont& font, int width, const QString& text) const {
    constexpr int kMostKept = 1000, kTall = 100000;
    if (heights_.size() > kMostKept) heights_.clear();
    const std::pair key(text, width * 64 + font.pointSize());
    const auto kept = heights_.constFind(key);
    if (kept != heights_.constEnd()) return *kept;
    const QRect room(0, 0, std::max(width, 40), kTall);
    const int height = QFontMetrics(font).boundingRect(room, Qt::TextWordWrap, text).height();
    heights_.insert(key, height);
    return height;
}

void FindingsDelegate::placeRemedies(FindingPlaces& at, const FindingRow& row, const QRect& column,
                                     const QFont& small) const {
    int action = 0;
    for (const Remedy& remedy : row.finding.remedies) {
        const bool button = static_cast<bool>(remedy.action);
        const QString label = say(remedy.label);
        FindingPlaces::Line line{{}, button ? tr("Try: %1").arg(label) : label, {}, -1};
        if (button) line.action = action++;
        line.key = keyOf(line.action);
        const int room = column.width() - (button ? 2 * kButtonPad + kKeyWide : 0);
        const int high = wrapped(small, room, line.text) + (button ? 8 : 2);
        line.rect = QRect(column.left(), at.bottom, column.width(), high);
        at.remedies.push_back(line);
        at.bottom += high + 4;
    }
}

void FindingsDelegate::putOpen(FindingPlaces& at, const FindingRow& row, const QRect& column,
                               const QFont& small) const {
    if (!row.before.isEmpty()) {
        const int high = wrapped(small, column.width(), row.before);
        at.before = QRect(column.left(), at.bottom, column.width(), high);
        at.bottom += high + 6;
    }
    placeRemedies(at, row, column, small);
    const QFontMetrics metrics(small);
    const int high = metrics.height() + 8;
    const auto add = [&](const QString& text, const QString& key, int action) {
        const int wide = metrics.horizontalAdvance(text) + 2 * kButtonPad + kKeyWide;
        at.verdicts.push_back({besideLast(at, column, wide, high), text, key, action});
    };
    add(row.accepted() ? tr("Take back") : tr("Accept…"), QStringLiteral("A"), kAccept);
    if (!row.finding.limitName.empty()) add(tr("Limit…"), QStringLiteral("L"), kLimit);
    add(tr("Rule…"), QStringLiteral("R"), kRule);
    at.bottom += high + 4;
}

FindingPlaces FindingsDelegate::places(const QStyleOptionViewItem& option, const QModelIndex& index,
                                       bool open) const {
    const FindingRow& row = rowOf(index);
    const QFont smallType = smallFont(option.font);
    const QFontMetrics metrics(option.font), small(smallType);
    const QRect r = option.rect;
    const int left = r.left() + kSide + kShape, right = r.right() - kSide, top = r.top() + kTop;
    const int width = right - left, line = small.height() + 2;
    const bool hint = !open && row.actions() > 0;
    const int hintWide = std::max(kHintWide, small.horizontalAdvance(tr("Try")) + 2 * kButtonPad);
    const int textWide = width - (hint ? hintWide + 8 : 0);
    FindingPlaces at;
    at.shape = QRect(r.left() + kSide, top, kShape, metrics.height());
    at.text = QRect(left, top, textWide, wrapped(option.font, textWide, row.text));
    if (hint) at.tryHint = QRect(right - hintWide, top, hintWide, small.height() + 4);
    const int metaTop = at.text.bottom() + 3;
    at.gauge = QRect(right - kGauge, metaTop, kGauge, line);
    const int figuresWide = small.horizontalAdvance(row.figures);
    if (!row.gauge.shown || figuresWide + 8 + kGauge > width) at.gauge = {};
    const int figuresRight = at.gauge.isNull() ? right : at.gauge.left() - 8;
    at.figures = QRect(figuresRight - figuresWide, metaTop, figuresWide, line);
    const int whereWide = QFontMetrics(strong(smallType)).horizontalAdvance(row.where);
    const bool placed = left + whereWide + 8 <= at.figures.left();
    if (placed) at.where = QRect(left, metaTop, whereWide + 4, line);
    const int basisHigh =
        open ? wrapped(smallType, width, basisText(row, placed, true)) : small.height();
    at.basis = QRect(left, metaTop + line + 1, width, basisHigh);
    at.bottom = at.basis.bottom() + (open ? 6 : 2);
    if (open) putOpen(at, row, QRect(left, 0, width, 0), smallType);
    return at;
}

int FindingsDelegate::actionAt(const QStyleOptionViewItem& option, const QModelIndex& index,
                               bool open, QPoint point) const {
    const FindingPlaces at = places(option, index, open);
    if (at.tryHint.contains(point)) return kHint;
    for (const auto* lines : {&at.remedies, &at.verdicts})
        for (const auto& line : *lines)
            if (line.action >= 0 && line.rect.contains(point)) return line.action;
    return -1;
}

bool FindingsDelegate::setHover(const QModelIndex& index, int action) {
    if (hoverRow_ == index && hoverAction_ == action) return false;
    hoverRow_ = index;
    hoverAction_ = action;
    return true;
}

void FindingsDelegate::setOpen(const QModelIndex& index) {
    const QModelIndex before = open_;
    open_ = index;
    if (before.isValid()) Q_EMIT sizeHintChanged(before);
    if (index.isValid()) Q_EMIT sizeHintChanged(index);
}

void FindingsDelegate::paint(QPainter* p, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const Inks& k = inks();
    const bool open = open_ == index;
    p->save();
    p->setRenderHint(QPainter::Antialiasing);
    if (open) {
        p->fillRect(option.rect, k.wash);
        p->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), k.accent);
    }
    p->fillRect(
        QRect(option.rect.left() + kSide, option.rect.bottom(), option.rect.width() - 2 * kSide, 1),
        k.line);
    const FindingPlaces at = places(option, index, open);
    const int hover = hoverRow_ == index ? hoverAction_ : -1;
    FindingInk(*p, option, rowOf(index), at, k).paint(open, hover);
    if (option.state & QStyle::State_HasFocus) {
        p->setPen(QPen(k.accent, k.stroke + 1));
        p->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    p->restore();
}

QSize FindingsDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    QStyleOptionViewItem there = option;
    const auto* list = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = list ? list->viewport()->width() : option.rect.width();
    there.rect = QRect(0, 0, width, 0);
    return {width, places(there, index, open_ == index).bottom + kTop - 2};
}

} // namespace bw

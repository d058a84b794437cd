// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_delegate.hpp"

#include "desk/almanac/almanac_model.hpp"
#include "desk/almanac/almanac_ratio_paint.hpp"
#include "desk/frame/mixed_ink.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace bw {

namespace {
using Kind = AlmanacLine::Kind;

QFont scaled(QFont font, double by, bool bold = false) {
    font.setPointSizeF(font.pointSizeF() * by);
    font.setBold(bold);
    return font;
}

// One painting of a cell.
class Cell {
public:
    Cell(QPainter& p, const QStyleOptionViewItem& option, const QModelIndex& index)
        : p_(p), o_(option), r_(option.rect), k_(inks()), font_(option.font),
          model_(*static_cast<const AlmanacModel*>(index.model())), line_(model_.line(index.row())),
          column_(index.column()) {}

    void paint() {
        ground();
        switch (line_.kind) {
        case Kind::Heading:
        case Kind::Figures: figure(); break;
        case Kind::Format:
        case Kind::Exercise: use(); break;
        case Kind::Ratio:
            paintRatio(p_, r_, font_, line_, static_cast<std::size_t>(column_),
                       model_.isShown(column_), k_);
            break;
        }
        if (line_.mark && model_.isShown(column_)) mark();
        if (o_.state & QStyle::State_HasFocus) {
            p_.setPen(QPen(k_.ink, 2));
            p_.setBrush(Qt::NoBrush);
            p_.drawRect(r_.adjusted(1, 1, -1, -1));
        }
    }

private:
    [[nodiscard]] AlmanacCell cell(int column) const {
        const auto at = static_cast<std::size_t>(column);
        return column >= 0 && at < line_.cells.size() ? line_.cells[at] : AlmanacCell{};
    }

    void ground() {
        const bool shown = model_.isShown(column_),
                   drafted = model_.month(column_).block != nullptr;
        p_.fillRect(r_, shown ? k_.wash : drafted ? k_.paper : k_.desk);
        p_.setPen(QPen(k_.line, k_.stroke));
        if (model_.month(column_).month.month() == 1) p_.drawLine(r_.topLeft(), r_.bottomLeft());
        if (line_.kind == Kind::Heading) p_.drawLine(r_.bottomLeft(), r_.bottomRight());
    }

    void figure() {
        const auto at = static_cast<std::size_t>(column_);
        if (at >= line_.figures.size()) return;
        p_.setFont(line_.kind == Kind::Heading ? scaled(font_, 0.88) : font_);
        p_.setPen(line_.kind == Kind::Heading ? k_.quiet : k_.ink);
        p_.drawText(r_, Qt::AlignCenter, line_.figures[at]);
    }

    // From this cell's edge where the band comes in or goes out, else short of it.
    void band(const QRectF& lane, bool from, bool to) {
        constexpr double kGap = 3, kRound = 4;
        QRectF bar = lane.adjusted(from ? -kRound : kGap, 0, to ? kRound : -kGap, 0);
        p_.save();
        p_.setClipRect(QRectF(r_).adjusted(0, 0, 0, 1));
        p_.setPen(QPen(k_.accent, 1));
        p_.setBrush(bandFill(k_));
        p_.drawRoundedRect(bar.adjusted(0.5, 0.5, -0.5, -0.5), kRound, kRound);
        p_.restore();
    }

    void use() {
        const AlmanacCell now = cell(column_);
        if (!now.used()) return;
        const double high = std::round(r_.height() * 0.58);
        const QRectF lane(r_.left(), r_.top() + std::floor((r_.height() - high) / 2), r_.width(),
                          high);
        band(lane, cell(column_ - 1).used() && now.streak > 1, cell(column_ + 1).used());
        if (now.main) ring();
        if (line_.kind == Kind::Format && now.streak == 1) return; // the usual: no word of it
        const QString text = now.fresh ? AlmanacDelegate::tr("new") : QString::number(now.streak);
        p_.setFont(scaled(font_, now.fresh && now.main ? 0.72 : 0.88, now.main || now.fresh));
        p_.setPen(k_.ink);
        p_.drawText(middle(), Qt::AlignCenter, text);
    }

    // Where the number stands: beside the mark, if there is one.
    [[nodiscard]] QRectF middle() const {
        const bool marked = line_.mark && model_.isShown(column_);
        return QRectF(r_).adjusted(0, 0, marked ? -13 : 0, 0);
    }

    void ring() {
        const double d = r_.height() - 3.0;
        const double wide = cell(column_).fresh ? std::min(d * 1.5, r_.width() - 4.0) : d;
        QRectF circle(0, 0, wide, d);
        circle.moveCenter(middle().center());
        p_.setPen(QPen(k_.accent, 2.2));
        p_.setBrush(k_.paper);
        p_.drawRoundedRect(circle.adjusted(1.1, 1.1, -1.1, -1.1), d / 2, d / 2);
    }

    void mark() {
        p_.setFont(scaled(font_, 0.95));
        p_.setPen(k_.level[static_cast<std::size_t>(line_.mark->level)]);
        const auto side = line_.kind == Kind::Ratio ? Qt::AlignTop : Qt::AlignVCenter;
        p_.drawText(r_.adjusted(0, 0, -5, 0), static_cast<int>(Qt::AlignRight | side),
                    levelShape(line_.mark->level));
    }

    QPainter& p_;
    const QStyleOptionViewItem& o_;
    QRect r_;
    const Inks& k_;
    QFont font_;
    const AlmanacModel& model_;
    const AlmanacLine& line_;
    int column_;
};
} // namespace

QColor bandFill(const Inks& k) { return mixedInk(k.paper, k.accent, 0.24); }

void AlmanacDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    Cell(*painter, option, index).paint();
    painter->restore();
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_rows.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;

class Rows {
public:
    Rows(PagePen& pen, const WallContent& content, const WallPlan& plan)
        : pen_(pen), content_(content), plan_(plan), c_(plan.columns), t_(plan.type) {}

    void columnHeads(double top) {
        const Look look{{t_.small}, Ink::Quiet, Rank::Small};
        const double y = top + 0.95 * t_.small;
        if (c_.tempoWidth > 0) pen_.right(tempoHead(), {c_.tempoRight, y}, c_.tempoWidth, look);
        if (c_.effortWidth > 0) pen_.right(effortHead(), {c_.effortRight, y}, c_.effortWidth, look);
    }
    void piece(const WallPiece& p, double top) {
        const auto s = static_cast<std::size_t>(p.section);
        const double spare = spareOf(p);
        const double first = base(top + p.headHeight + spare / 2 + t_.rowPad(), t_.key);
        if (p.head) head(content_.sections[s], p, top, first);
        if (p.group < 0) return;
        const auto g = static_cast<std::size_t>(p.group);
        group(content_.sections[s].groups[g], p, top + p.headHeight, spare);
    }

private:
    // Baseline of a line of this type whose top is y.
    [[nodiscard]] double base(double y, double em) const {
        return y + 0.5 * kPitch * em + 0.5 * pen_.ruler().cap(em);
    }
    // From the baseline of such a line to its foot.
    [[nodiscard]] double below(double em) const { return kPitch * em - base(0, em); }
    [[nodiscard]] const GroupBox& boxOf(const WallPiece& p) const {
        return plan_.boxes.sections[static_cast<std::size_t>(p.section)]
            .groups[static_cast<std::size_t>(p.group)];
    }
    // Height that a row has over what it needs.
    [[nodiscard]] double spareOf(const WallPiece& p) const {
        if (p.end == p.first) return 0;
        return (p.height - boxOf(p).rowsHeight(p.first, p.end)) /
               static_cast<double>(p.end - p.first);
    }
    // first: baseline of the first row.
    void head(const WallSection& section, const WallPiece& p, double y, double first) {
        pen_.line({c_.left, y}, {c_.right, y}, 2.5 * t_.hair, Ink::Accent);
        const Look name{{t_.second, Weight::Bold}, Ink::Accent, Rank::Head};
        const Look minutes{{t_.minutes}, Ink::Quiet, Rank::Second};
        const QString second = p.again ? continuedText() : section.minutes;
        if (plan_.style.marginHeads) {
            pen_.left(section.name, {c_.left, first}, c_.headWidth, name);
            pen_.left(second, {c_.left, first + 1.3 * t_.minutes}, c_.headWidth, minutes);
            return;
        }
        const double line = y + 1.12 * t_.second;
        pen_.left(section.name, {c_.left, line}, c_.right - c_.left, name);
        pen_.right(second, {c_.right, line}, c_.noteWidth + c_.doseWidth, minutes);
    }
    void group(const WallGroup& group, const WallPiece& p, double top, double spare) {
        const GroupBox& box = boxOf(p);
        double y = top;
        for (std::size_t i = p.first; i < p.end; ++i) {
            if (i > p.first) pen_.line({c_.label, y}, {c_.rowsRight, y}, t_.hair, Ink::Hair);
            row(group.rows[i], box.rows[i], y + spare / 2);
            y += box.rows[i].height + spare;
        }
        const double inset = t_.rowPad() + spare / 2;
        bracket(p, top + inset + 0.1 * t_.key, y - inset - 0.05 * t_.key);
        note(box, (top + y - box.noteHeight) / 2);
    }
    // Left open where the group goes on over the page.
    void bracket(const WallPiece& p, double top, double bottom) {
        QPolygonF points;
        if (p.opens) points << QPointF(c_.bracket - c_.hook, top);
        points << QPointF(c_.bracket, top) << QPointF(c_.bracket, bottom);
        if (p.closes) points << QPointF(c_.bracket - c_.hook, bottom);
        pen_.stroke(points, 4 * t_.hair, Ink::Accent);
    }
    void note(const GroupBox& box, double y) {
        const auto lines = [&](const QStringList& texts, Weight weight) {
            for (const QString& text : texts) {
                pen_.left(text, {c_.note, base(y, t_.second)}, c_.noteWidth,
                          {{t_.second, weight}, Ink::Text, Rank::Second});
                y += kPitch * t_.second;
            }
        };
        lines(box.rounds, Weight::Bold);
        lines(box.rest, Weight::Book);
    }
    void row(const WallRow& row, const RowBox& box, double y) {
        const double first = base(y + t_.rowPad(), t_.key);
        pen_.left(row.label, {c_.label, first}, c_.labelWidth, {{t_.key}, Ink::Accent, Rank::Key});
        if (row.name.isEmpty())
            openLine(first);
        else
            name(row, box, first);
        const auto lines = static_cast<double>(box.name.size());
        doses(box, first + (plan_.style.plain ? kPitch * (t_.key + box.nameEm * (lines - 1)) : 0));
        const Look second{{t_.second}, Ink::Text, Rank::Second};
        if (c_.tempoWidth > 0) pen_.right(row.tempo, {c_.tempoRight, first}, c_.tempoWidth, second);
        if (c_.effortWidth > 0)
            pen_.right(row.effort, {c_.effortRight, first}, c_.effortWidth, second);
    }
    void name(const WallRow& row, const RowBox& box, double y) {
        const Type type{box.nameEm, row.main ? Weight::Bold : Weight::Book};
        for (const QString& line : box.name) {
            pen_.left(line, {c_.name, y}, c_.nameWidth, {type, Ink::Text, Rank::Key});
            y += kPitch * box.nameEm;
        }
        y = base(y - kPitch * box.nameEm + below(t_.key), t_.hint);
        for (const QString& line : box.hints) {
            pen_.left(line, {c_.name, y}, c_.nameWidth, {{t_.hint}, Ink::Quiet, Rank::Small});
            y += kPitch * t_.hint;
        }
    }
    // A line to write on.
    void openLine(double y) {
        const Look look{{t_.hint}, Ink::Quiet, Rank::Small};
        const double text = pen_.ruler().width(openSlotText(), look.type);
        const double end = c_.name + c_.nameWidth;
        pen_.line({c_.name, y}, {std::max(c_.name, end - text - t_.hint), y}, 2 * t_.hair,
                  Ink::Text);
        pen_.right(openSlotText(), {end, y}, c_.nameWidth, look);
    }
    void doses(const RowBox& box, double y) {
        for (const QString& line : box.dose) {
            pen_.right(line, {c_.doseRight, y}, c_.doseWidth,
                       {{t_.key, Weight::Bold}, Ink::Text, Rank::Key});
            y += kPitch * t_.key;
        }
        if (!box.dose.isEmpty()) y -= kPitch * t_.key;
        for (const QString& line : box.stacked) {
            y += kPitch * t_.second + 0.05 * t_.key;
            pen_.right(line, {c_.doseRight, y}, c_.doseWidth,
                       {{t_.second}, Ink::Text, Rank::Second});
        }
    }

    PagePen& pen_;
    const WallContent& content_;
    const WallPlan& plan_;
    const WallColumns& c_;
    const WallType& t_;
};
} // namespace

void drawWallRows(PagePen& pen, const WallContent& content, const WallPlan& plan, std::size_t page,
                  double top) {
    Rows rows(pen, content, plan);
    if (plan.columnHeads > 0) rows.columnHeads(top);
    for (const WallPiece& piece : plan.pages[page])
        rows.piece(piece, top + plan.columnHeads + piece.top);
}

} // namespace bw

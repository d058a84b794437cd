// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_boxes.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr qsizetype kUsualName = 40; // characters; longer ones may be set smaller than the rest
constexpr double kLeastNameEms = 5;

class Boxer {
public:
    Boxer(const WallStyle& style, const WallType& type, const WallColumns& columns,
          const TypeRuler& ruler)
        : style_(style), type_(type), columns_(columns), ruler_(ruler) {
        out_.smallestKey = type.key;
        out_.cramped = columns.nameWidth < kLeastNameEms * type.key && type.key > type.floor;
    }
    WallBoxes of(const WallContent& content) {
        for (const WallSection& section : content.sections) out_.sections.push_back(box(section));
        return std::move(out_);
    }

private:
    SectionBox box(const WallSection& section) {
        SectionBox b;
        b.head = style_.marginHeads ? 0.15 * type_.key : 1.5 * type_.second;
        b.least = style_.marginHeads ? kPitch * (type_.key + type_.minutes) : 0;
        for (const WallGroup& group : section.groups) b.groups.push_back(box(group));
        return b;
    }
    GroupBox box(const WallGroup& group) {
        GroupBox b;
        b.rounds = ruler_.wrap(group.rounds, {type_.second, Weight::Bold}, columns_.noteWidth);
        b.rest = restLines(group.rest);
        b.noteHeight = kPitch * type_.second * static_cast<double>(b.rounds.size() + b.rest.size());
        for (const WallRow& row : group.rows) b.rows.push_back(box(row));
        return b;
    }
    // Keeps the figure and its unit on one line.
    QStringList restLines(const QString& rest) const {
        const Type type{type_.second};
        const QString figure = rest.section(QLatin1Char(' '), 1);
        if (ruler_.width(rest, type) <= columns_.noteWidth || figure.isEmpty())
            return ruler_.wrap(rest, type, columns_.noteWidth);
        return QStringList{rest.section(QLatin1Char(' '), 0, 0)} +
               ruler_.wrap(figure, type, columns_.noteWidth);
    }
    RowBox box(const WallRow& row) {
        RowBox b;
        fitName(b, row);
        b.dose = ruler_.wrap(row.dose, {type_.key, Weight::Bold}, columns_.doseWidth);
        if (style_.stacked)
            b.stacked = ruler_.wrap(stackedText(row), {type_.second}, columns_.doseWidth);
        if (style_.hints) b.hints = hintLines(row);
        const double left =
            kPitch * (type_.key + b.nameEm * static_cast<double>(b.name.size() - 1) +
                      type_.hint * static_cast<double>(b.hints.size()));
        const double right =
            kPitch * (type_.key * static_cast<double>(std::max<qsizetype>(1, b.dose.size())) +
                      type_.second * static_cast<double>(b.stacked.size()));
        b.height = std::max(left, right) + 2 * type_.rowPad();
        return b;
    }
    // Two lines; a longer name is set smaller, down to the floor, and then takes the lines it
    // needs.
    void fitName(RowBox& b, const WallRow& row) {
        b.nameEm = type_.key;
        if (row.name.isEmpty()) {
            b.name = {QString()};
            return;
        }
        const Weight weight = row.main ? Weight::Bold : Weight::Book;
        b.name = ruler_.wrap(row.name, {b.nameEm, weight}, columns_.nameWidth);
        while (b.name.size() > 2 && b.nameEm > type_.floor) {
            b.nameEm = std::max(type_.floor, 0.94 * b.nameEm);
            b.name = ruler_.wrap(row.name, {b.nameEm, weight}, columns_.nameWidth);
        }
        if (b.nameEm < type_.key && row.name.size() <= kUsualName) out_.cramped = true;
        out_.smallestKey = std::min(out_.smallestKey, b.nameEm);
    }
    // Side by side when they fit.
    QStringList hintLines(const WallRow& row) const {
        const Type type{type_.hint};
        const QString both = row.easier + QStringLiteral("   ") + row.harder;
        if (!row.easier.isEmpty() && !row.harder.isEmpty() &&
            ruler_.width(both, type) <= columns_.nameWidth)
            return {both};
        return ruler_.wrap(row.easier, type, columns_.nameWidth) +
               ruler_.wrap(row.harder, type, columns_.nameWidth);
    }

    const WallStyle& style_;
    const WallType& type_;
    const WallColumns& columns_;
    const TypeRuler& ruler_;
    WallBoxes out_;
};
} // namespace

double GroupBox::rowsHeight(std::size_t first, std::size_t end) const {
    double sum = 0;
    for (std::size_t i = first; i < end; ++i) sum += rows[i].height;
    return sum;
}

double GroupBox::height(std::size_t first, std::size_t end) const {
    return std::max(noteHeight, rowsHeight(first, end));
}

WallBoxes wallBoxes(const WallContent& content, const WallStyle& style, const WallType& type,
                    const WallColumns& columns, const TypeRuler& ruler) {
    return Boxer(style, type, columns, ruler).of(content);
}

} // namespace bw

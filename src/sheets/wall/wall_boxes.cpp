// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_boxes.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr qsizetype kUsualName = 40; // characters; longer ones may be set smaller than the rest

class Boxer {
public:
    Boxer(const WallStyle& style, const WallType& type, const WallColumns& columns,
          const TypeRuler& ruler)
        : style_(style), type_(type), columns_(columns), ruler_(ruler) {}
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
        out_.smallestKey = out_.smallestKey > 0 ? std::min(out_.smallestKey, b.nameEm) : b.nameEm;
        b.dose = ruler_.wrap(row.dose, {type_.key, Weight::Bold}, columns_.doseWidth);
        if (style_.stacked || style_.plain)
            b.stacked = ruler_.wrap(stackedText(row), {type_.second}, columns_.doseWidth);
        if (style_.hints) b.hints = hintLines(row);
        const double left =
            nameHeight(b) + kPitch * type_.hint * static_cast<double>(b.hints.size());
        const double right = kPitch * (type_.key * static_cast<double>(b.dose.size()) +
                                       type_.second * static_cast<double>(b.stacked.size()));
        const double text = style_.plain ? left + right : std::max(left, right);
        b.height = text + 2 * type_.rowPad();
        return b;
    }
    [[nodiscard]] double nameHeight(const RowBox& b) const {
        return kPitch * (type_.key + b.nameEm * static_cast<double>(b.name.size() - 1));
    }
    // Two lines. A name of unusual length is set smaller, and then takes the lines it needs.
    void fitName(RowBox& b, const WallRow& row) {
        b.nameEm = type_.key;
        b.name = {QString()};
        if (row.name.isEmpty()) return;
        const Weight weight = row.main ? Weight::Bold : Weight::Book;
        const auto lines = [&] {
            return ruler_.wrap(row.name, {b.nameEm, weight}, columns_.nameWidth);
        };
        b.name = lines();
        const bool usual = row.name.size() <= kUsualName;
        if (usual && b.name.size() > 2) out_.cramped = true;
        while (!usual && b.name.size() > 2 && b.nameEm > type_.floor) {
            b.nameEm = std::max(type_.floor, 0.94 * b.nameEm);
            b.name = lines();
        }
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

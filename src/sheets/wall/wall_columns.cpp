// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_columns.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace bw {

namespace {
struct Widest { // of every column's text
    double head = 0, label = 0, dose = 0, tempo = 0, effort = 0, stacked = 0, note = 0;
};

class Survey {
public:
    Survey(const WallType& type, const TypeRuler& ruler) : type_(type), ruler_(ruler) {}

    Widest of(const WallContent& content) {
        for (const WallSection& section : content.sections) {
            grow(w_.head, section.name, {type_.second, Weight::Bold});
            for (const QString& text : {section.minutes, continuedText()})
                grow(w_.head, text, {type_.minutes});
            for (const WallGroup& group : section.groups) add(group);
        }
        if (w_.tempo > 0) grow(w_.tempo, tempoHead(), {type_.small});
        if (w_.effort > 0) grow(w_.effort, effortHead(), {type_.small});
        return w_;
    }

private:
    void add(const WallGroup& group) {
        grow(w_.note, group.rounds, {type_.second, Weight::Bold});
        // "rest" may stand on a line of its own, its figure stays whole
        grow(w_.note, group.rest.section(QLatin1Char(' '), 1), {type_.second});
        for (const WallRow& row : group.rows) {
            grow(w_.label, row.label, {type_.key});
            grow(w_.dose, row.dose, {type_.key, Weight::Bold});
            grow(w_.tempo, row.tempo, {type_.second});
            grow(w_.effort, row.effort, {type_.second});
            grow(w_.stacked, stackedText(row), {type_.second});
        }
    }
    void grow(double& width, const QString& text, Type t) {
        if (!text.isEmpty()) width = std::max(width, ruler_.width(text, t) + 0.01);
    }
    const WallType& type_;
    const TypeRuler& ruler_;
    Widest w_;
};

// Places columns from the right edge inwards.
class FromRight {
public:
    FromRight(double edge, double gap) : edge_(edge), gap_(gap) {}
    double take(double width) { // its right edge
        const double at = edge_;
        if (width > 0) edge_ -= width + gap_;
        return at;
    }
    [[nodiscard]] double edge() const { return edge_; }

private:
    double edge_, gap_;
};
} // namespace

QString continuedText() { return QCoreApplication::translate("bw::sheets", "continued"); }
QString tempoHead() { return QCoreApplication::translate("bw::sheets", "tempo"); }
QString effortHead() { return QCoreApplication::translate("bw::sheets", "RIR"); }

QString stackedText(const WallRow& row) {
    QString text = row.tempo;
    if (row.effort.isEmpty()) return text;
    if (!text.isEmpty()) text += QStringLiteral(" · ");
    return text + effortHead() + QLatin1Char(' ') + row.effort;
}

WallColumns wallColumns(const WallContent& content, const SheetOptions& options,
                        const WallStyle& style, const WallType& type, const TypeRuler& ruler) {
    const Widest widest = Survey(type, ruler).of(content);
    const double gap = 0.45 * type.key;
    WallColumns c;
    c.left = paperMargin(options);
    c.right = paperSize(options).width() - c.left;
    const double width = c.right - c.left;
    c.headWidth = style.marginHeads ? widest.head : 0;
    c.label = c.left + (style.marginHeads ? widest.head + gap : 0);
    c.labelWidth = widest.label;
    c.name = c.label + c.labelWidth + 0.3 * type.key;
    c.noteWidth = std::min(widest.note, 0.25 * width);
    c.note = c.right - c.noteWidth;
    c.hook = 0.22 * type.key;
    c.bracket = c.note - 0.3 * type.key;
    c.rowsRight = c.bracket - c.hook - 0.25 * type.key;
    FromRight columns(c.rowsRight, gap);
    const bool stacked = style.stacked || style.plain;
    c.effortWidth = stacked ? 0 : widest.effort;
    c.effortRight = columns.take(c.effortWidth);
    c.tempoWidth = stacked ? 0 : widest.tempo;
    c.tempoRight = columns.take(c.tempoWidth);
    const double dose = stacked ? std::max(widest.dose, widest.stacked) : widest.dose;
    c.doseWidth = std::min(dose, style.plain ? c.rowsRight - c.name : 0.32 * width);
    c.doseRight = style.plain ? c.rowsRight : columns.take(c.doseWidth);
    c.nameWidth = columns.edge() - c.name;
    return c;
}

} // namespace bw

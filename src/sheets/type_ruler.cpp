// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/type_ruler.hpp"

#include <QFontMetricsF>
#include <QTextBoundaryFinder>

#include <algorithm>

namespace bw {

namespace {
constexpr double kReference = 10.0;       // mm, the em at which all is measured
constexpr std::size_t kMostKept = 20'000; // widths and boxes remembered
constexpr int kEveningSteps = 6;          // halvings

std::size_t at(Weight weight) { return static_cast<std::size_t>(weight); }

// Cuts after every character of `marks` that has something behind it.
QStringList cutAfter(const QString& word, const QString& marks) {
    QStringList parts;
    qsizetype from = 0;
    for (qsizetype i = 0; i + 1 < word.size(); ++i)
        if (marks.contains(word[i])) {
            parts << word.mid(from, i + 1 - from);
            from = i + 1;
        }
    return parts << word.mid(from);
}

QStringList letters(const QString& word) {
    QStringList parts;
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, word);
    for (qsizetype from = 0, to = finder.toNextBoundary(); to > from;
         to = finder.toNextBoundary()) {
        parts << word.mid(from, to - from);
        from = to;
    }
    return parts;
}
} // namespace

QFont sheetFont(const QString& family, Type type) {
    QFont font;
    font.setFamilies({family, QStringLiteral("sans-serif")});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(std::max(1, qRound(type.em * kUnitsPerMm)));
    font.setWeight(type.weight == Weight::Bold ? QFont::Bold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setLetterSpacing(QFont::AbsoluteSpacing, 1.0 / 64); // the least there is: no ligatures
    return font;
}

TypeRuler::TypeRuler(const QString& family)
    : fonts_{sheetFont(family, {kReference, Weight::Book}),
             sheetFont(family, {kReference, Weight::Bold})} {
    cap_ = QFontMetricsF(fonts_[0]).capHeight() / (kReference * kUnitsPerMm);
}

double TypeRuler::width(const QString& text, Type type) const {
    auto& known = widths_[at(type.weight)];
    if (const auto found = known.find(text); found != known.end()) return found->second * type.em;
    if (known.size() > kMostKept) known.clear();
    const double ems =
        QFontMetricsF(fonts_[at(type.weight)]).horizontalAdvance(text) / (kReference * kUnitsPerMm);
    known.emplace(text, ems);
    return ems * type.em;
}

QRectF TypeRuler::inkBox(const QString& text, Type type) const {
    auto& known = boxes_[at(type.weight)];
    auto found = known.find(text);
    if (found == known.end()) {
        if (known.size() > kMostKept) known.clear();
        const QFontMetricsF metrics(fonts_[at(type.weight)]);
        found = known.emplace(text, metrics.tightBoundingRect(text)).first;
    }
    const QRectF& box = found->second;
    const double scale = type.em / (kReference * kUnitsPerMm);
    return {box.topLeft() * scale, box.size() * scale};
}

QStringList TypeRuler::pieces(const QString& word, Type type, double room) const {
    if (width(word, type) <= room) return {word};
    QStringList out, cut;
    for (const QString& part : cutAfter(word, QStringLiteral("-–/+")))
        cut += width(part, type) <= room ? QStringList{part} : letters(part);
    for (const QString& part : cut) {
        if (!out.isEmpty() && width(out.back() + part, type) <= room)
            out.back() += part;
        else
            out << part;
    }
    return out;
}

QStringList TypeRuler::fill(const QStringList& words, Type type, double room) const {
    QStringList lines;
    for (const QString& word : words) {
        if (!lines.isEmpty()) {
            const QString longer = lines.back() + QLatin1Char(' ') + word;
            if (width(longer, type) <= room) {
                lines.back() = longer;
                continue;
            }
        }
        lines += pieces(word, type, room);
    }
    return lines;
}

QStringList TypeRuler::wrap(const QString& text, Type type, double room, Lines lines) const {
    const QString plain = text.simplified();
    if (plain.isEmpty()) return {};
    if (width(plain, type) <= room) return {plain};
    const QStringList words = plain.split(QLatin1Char(' '));
    QStringList best = fill(words, type, room);
    if (lines == Lines::Full) return best;
    double widest = 0;
    for (const QString& word : words) widest = std::max(widest, width(word, type));
    double lo = std::min(widest, room), hi = room;
    for (int i = 0; i < kEveningSteps && lo < hi; ++i) {
        const double middle = (lo + hi) / 2;
        const QStringList tried = fill(words, type, middle);
        (tried.size() > best.size() ? lo : hi) = middle;
        if (tried.size() == best.size()) best = tried;
    }
    return best;
}

} // namespace bw

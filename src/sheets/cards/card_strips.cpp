// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/cards/card_strips.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kNameShare = 0.32, kGapEms = 0.6;
constexpr double kBesideRoom = 11; // mm behind a load that a hand can write in
} // namespace

CardSetter::CardSetter(const CardFrame& frame, const CardType& type, double width,
                       const TypeRuler& ruler)
    : frame_(frame), t_(type), width_(width),
      label_(ruler.width(QStringLiteral("AA00"), {type.em, Weight::Bold})), ruler_(ruler) {
    const double weeks = static_cast<double>(std::max<std::size_t>(1, frame.weeks.size()));
    names_ = kNameShare * width;
    week_ = (width - names_) / weeks;
}

Band CardSetter::head(const QString& member, const QString& part) const {
    Band band;
    PagePen pen(ruler_, band.items);
    const Look quiet{{t_.small()}, Ink::Accent, Rank::Head};
    BandColumn(band, ruler_, width_)
        .add(part.isEmpty() ? frame_.block : frame_.block + QStringLiteral(" · ") + part, quiet);
    const double top = band.height + 0.1 * t_.em;
    BandColumn(band, ruler_, names_ - kGapEms * t_.em)
        .addFitted(member, {{1.6 * t_.em, Weight::Bold}, Ink::Text, Rank::Title}, t_.em);
    for (std::size_t w = 0; w < frame_.weeks.size(); ++w) {
        const CardWeek& week = frame_.weeks[w];
        Band cell;
        cell.height = top;
        BandColumn lines(cell, ruler_, week_ - kGapEms * t_.em, weekLeft(w));
        lines.add(week.name, {{t_.em, Weight::Bold}, Ink::Text, Rank::Second});
        lines.add(week.days, {{t_.small()}, Ink::Text, Rank::Small});
        lines.add(week.aim, {{t_.small()}, Ink::Quiet, Rank::Small});
        pen.put(cell.items, {});
        band.height = std::max(band.height, cell.height);
    }
    band.height += 0.3 * t_.em;
    pen.line({0, band.height}, {width_, band.height}, 3 * t_.hair, Ink::Accent);
    band.height += 0.3 * t_.em;
    return band;
}

Band CardSetter::foot(const QString& number) const {
    Band band;
    PagePen pen(ruler_, band.items);
    const Look quiet{{t_.least}, Ink::Quiet, Rank::Small};
    band.height = 0.5 * t_.least;
    BandColumn(band, ruler_, width_).add(cautionText(), {{t_.least}, Ink::Text, Rank::Small});
    const double beside = ruler_.width(number, quiet.type) + t_.least;
    pen.right(number, {width_, band.height + 0.95 * t_.least}, width_, quiet);
    BandColumn(band, ruler_, width_ - beside).add(frame_.whose, quiet);
    band.height += 0.1 * t_.least;
    return band;
}

std::vector<CardStrip> CardSetter::strips(const Card& card) const {
    std::vector<CardStrip> out;
    for (const CardPart& part : card.parts) {
        if (part.brief) {
            addBrief(out, part);
            continue;
        }
        out.push_back({partHead(part), true});
        for (std::size_t i = 0; i < part.rows.size(); ++i) {
            if (part.rows[i].opens && i > 0) out.back().keeps = false;
            out.push_back({row(part.rows[i], i > 0), true});
        }
        out.back().keeps = false;
    }
    return out;
}

// A strip a line, as a warm-up of many exercises may be long.
void CardSetter::addBrief(std::vector<CardStrip>& strips, const CardPart& part) const {
    QStringList all;
    for (const CardRow& row : part.rows) {
        QStringList words{row.label, row.name, row.dose};
        if (!row.instead.isEmpty()) words << QStringLiteral("(%1)").arg(row.instead);
        words.removeAll(QString());
        all << words.join(QLatin1Char(' '));
    }
    const QString rounds = part.rounds.value(0);
    const QString text = part.head + QStringLiteral(": ") + all.join(QStringLiteral(", ")) +
                         (rounds.isEmpty() ? QString() : QStringLiteral("; ") + rounds) +
                         QLatin1Char('.');
    const Look look{{t_.small()}, Ink::Text, Rank::Second};
    for (const QString& line : proseLines(ruler_, text, look.type, width_)) {
        Band band;
        PagePen(ruler_, band.items).left(line, {0, 0.95 * look.type.em}, width_, look);
        band.height = kPitch * look.type.em;
        strips.push_back({std::move(band), true});
    }
    strips.back().band.height += 0.3 * t_.em;
    strips.back().keeps = false;
}

// The rounds of the weeks stand in the weeks' columns.
Band CardSetter::partHead(const CardPart& part) const {
    Band band;
    PagePen pen(ruler_, band.items);
    const double em = t_.small(), top = 0.12 * em;
    const Look bold{{em, Weight::Bold}, Ink::Accent, Rank::Second};
    const Look book{{em}, Ink::Accent, Rank::Small};
    Band texts;
    texts.height = top;
    BandColumn(texts, ruler_, names_ - kGapEms * em, 0.2 * em).add(part.head, bold);
    double height = texts.height;
    for (std::size_t w = 0; w < frame_.weeks.size(); ++w) {
        texts.height = top;
        BandColumn(texts, ruler_, week_ - kGapEms * em, weekLeft(w))
            .add(part.rounds.value(static_cast<qsizetype>(w)), book);
        height = std::max(height, texts.height);
    }
    band.height = height + top;
    pen.fill(QPolygonF(QRectF(0, 0, width_, band.height)), Ink::Tint);
    pen.put(texts.items, {});
    return band;
}

void CardSetter::pair(Band& band, double left, double room, const QString& text, const Look& look,
                      const QString& more, const Look& moreLook) const {
    const double base = band.height + 0.95 * look.type.em, gap = 0.8 * look.type.em;
    const double used = ruler_.width(text, look.type), beside = ruler_.width(more, moreLook.type);
    BandColumn lines(band, ruler_, room, left);
    lines.add(text, look);
    if (used + gap + beside + gap <= room) // clear of the next column
        PagePen(ruler_, band.items).left(more, {left + used + gap, base}, beside, moreLook);
    else
        lines.add(more, moreLook);
}

void CardSetter::nameCell(Band& band, const CardRow& row) const {
    const double room = names_ - label_ - kGapEms * t_.em;
    PagePen(ruler_, band.items)
        .left(row.label, {0, band.height + 0.95 * t_.em}, label_,
              {{t_.em, Weight::Bold}, Ink::Accent, Rank::Second});
    pair(band, label_, room, row.name,
         {{t_.em, row.main ? Weight::Bold : Weight::Book}, Ink::Text, Rank::Key}, row.dose,
         {{t_.small(), Weight::Bold}, Ink::Text, Rank::Second});
    BandColumn(band, ruler_, room, label_)
        .add(row.instead, {{t_.small()}, Ink::Quiet, Rank::Small});
}

bool CardSetter::beside(const CardRow& row) const {
    double widest = 0;
    for (const CardCell& cell : row.cells)
        widest = std::max({widest, ruler_.width(cell.load, {t_.em, Weight::Bold}),
                           ruler_.width(cell.word, {t_.em})});
    return widest > 0 && week_ - widest - 2 * kGapEms * t_.em >= kBesideRoom;
}

double CardSetter::cell(Band& band, const CardCell& cell, std::size_t week, double top,
                        double room) const {
    Band texts;
    texts.height = top;
    BandColumn lines(texts, ruler_, room, weekLeft(week));
    lines.add(cell.load, {{t_.em, Weight::Bold}, Ink::Text, Rank::Key});
    lines.add(cell.word, {{t_.em}, Ink::Text, Rank::Key});
    lines.add(cell.how, {{t_.small()}, Ink::Text, Rank::Small});
    PagePen(ruler_, band.items).put(texts.items, {});
    return texts.height;
}

Band CardSetter::row(const CardRow& row, bool apart) const {
    Band band;
    const double gap = kGapEms * t_.em, top = row.opens && apart ? 0.45 * t_.em : 0;
    band.height = top;
    nameCell(band, row);
    const bool side = beside(row);
    const double room = week_ - gap - (side ? kBesideRoom + gap : 0);
    double text = top;
    for (std::size_t w = 0; w < row.cells.size(); ++w)
        text = std::max(text, cell(band, row.cells[w], w, top, room));
    if (!row.cells.empty())
        band.height =
            std::max(band.height, side ? std::max(text, top + t_.writing) : text + t_.writing);
    band.height += 0.15 * t_.em;
    for (std::size_t w = 0; w < row.cells.size(); ++w) {
        const double to = weekLeft(w) + week_ - gap, y = band.height - 0.25 * t_.em;
        PagePen(ruler_, band.items)
            .line({side ? to - kBesideRoom : weekLeft(w), y}, {to, y}, 2 * t_.hair, Ink::Hair);
    }
    return band;
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/notes_parts.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kIndentEms = 2.6, kTallest = 60; // mm, that two columns may stand side by side

struct Point {
    QString text;
    Ink ink = Ink::Text;
};

class Rows {
public:
    Rows(SheetFlow& flow, const SheetMatter& matter, const MonthNews& news)
        : flow_(flow), matter_(matter), news_(news), t_(flow.type()),
          indent_(kIndentEms * t_.body) {}

    void group(const Group& group, Place place) {
        const Look quiet{{t_.small, Weight::Bold}, Ink::Accent, Rank::Second};
        flow_.text(printed(groupLetter(matter_.block, place)) + QStringLiteral(" · ") +
                       roundsAndRest(group),
                   quiet, 0.9 * t_.body, SheetFlow::Keep::WithNext);
        for (int i = 0; i < static_cast<int>(group.slots.size()); ++i) {
            Place at = place;
            at.slot = i;
            slot(group.slots[static_cast<std::size_t>(i)], at);
        }
    }

private:
    void slot(const Slot& slot, Place place) {
        const Exercise* e = slot.exercise ? matter_.gym.shelf.find(*slot.exercise) : nullptr;
        const auto left = cuesOf(e), right = besidesOf(slot, e);
        const bool bare = left.empty() && right.empty();
        head(slot, place, bare);
        if (bare) return;
        Band both = columns(left, right);
        if (both.height <= kTallest) return flow_.put(std::move(both), 0);
        for (const auto* points : {&left, &right})
            for (const Point& p : *points)
                flow_.text(p.text, {{t_.body}, p.ink, Rank::Second}, 0, SheetFlow::Keep::Free,
                           indent_);
    }
    void head(const Slot& slot, Place place, bool bare) {
        Band band;
        PagePen pen(flow_.ruler(), band.items);
        const QString plan = slotPlan(matter_.gym.shelf, slot);
        const Look beside{{t_.body}, Ink::Text, Rank::Second};
        const double planWidth =
            std::min(0.4 * flow_.width(), flow_.ruler().width(plan, beside.type) + t_.body);
        pen.left(slotLabel(matter_.block, place), {0, 0.95 * t_.body}, indent_,
                 {{t_.body, Weight::Bold}, Ink::Accent, Rank::Second});
        QString name =
            slot.exercise ? nameOf(matter_.gym.shelf, *slot.exercise) : openSlotWords(slot);
        if (const QString mark = newsMark(slot); !mark.isEmpty())
            name += QStringLiteral("  · ") + mark;
        BandColumn(band, flow_.ruler(), flow_.width() - indent_ - planWidth, indent_)
            .add(name, {{t_.body, slot.exercise ? Weight::Bold : Weight::Book},
                        slot.exercise ? Ink::Text : Ink::Quiet,
                        Rank::Second});
        double y = 0.95 * t_.body;
        for (const QString& line : flow_.ruler().wrap(plan, beside.type, planWidth)) {
            pen.right(line, {flow_.width(), y}, planWidth, beside);
            y += kPitch * t_.body;
        }
        band.height = std::max(band.height, y - 0.95 * t_.body) + 0.1 * t_.body;
        flow_.put(std::move(band), 0.45 * t_.body,
                  bare ? SheetFlow::Keep::Free : SheetFlow::Keep::WithNext);
    }
    QString newsMark(const Slot& slot) const {
        if (!slot.exercise) return {};
        const auto it = std::find_if(news_.lines.begin(), news_.lines.end(), [&](const auto& line) {
            return line.exercise == *slot.exercise;
        });
        if (it == news_.lines.end() || !it->changed) return {};
        return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "new"));
    }
    std::vector<Point> cuesOf(const Exercise* e) const {
        std::vector<Point> out;
        if (e)
            for (const std::string& cue : e->cues)
                out.push_back({QStringLiteral("– ") + printed(cue), Ink::Text});
        return out;
    }
    std::vector<Point> besidesOf(const Slot& slot, const Exercise* e) const {
        std::vector<Point> out;
        if (!slot.note.empty())
            out.push_back({QStringLiteral("“%1”").arg(printed(slot.note)), Ink::Accent});
        if (!e) return out;
        const auto options = [&](const std::vector<ExerciseId>& ids, const char* english) {
            QStringList names;
            for (const ExerciseId& id : ids)
                if (matter_.gym.shelf.find(id)) names << nameOf(matter_.gym.shelf, id);
            if (!names.isEmpty())
                out.push_back(
                    {sheetSay(english).arg(names.join(QStringLiteral(", "))), Ink::Quiet});
        };
        options(e->easier, QT_TRANSLATE_NOOP("bw::sheets", "easier: %1"));
        options(e->harder, QT_TRANSLATE_NOOP("bw::sheets", "harder: %1"));
        for (const std::string& caution : e->cautions)
            out.push_back(
                {sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "caution: %1")).arg(printed(caution)),
                 Ink::Text});
        return out;
    }
    Band columns(const std::vector<Point>& left, const std::vector<Point>& right) const {
        const double gap = 1.5 * t_.body, half = (flow_.width() - indent_ - gap) / 2;
        Band band = column(left, half, indent_);
        const Band other = column(right, half, indent_ + half + gap);
        PagePen(flow_.ruler(), band.items).put(other.items, {});
        band.height = std::max(band.height, other.height);
        return band;
    }
    Band column(const std::vector<Point>& points, double width, double left) const {
        Band band;
        BandColumn lines(band, flow_.ruler(), width, left);
        for (const Point& p : points) lines.add(p.text, {{t_.body}, p.ink, Rank::Second});
        return band;
    }

    SheetFlow& flow_;
    const SheetMatter& matter_;
    const MonthNews& news_;
    const SheetType& t_;
    double indent_;
};
} // namespace

void putSection(SheetFlow& flow, const SheetMatter& matter, const MonthNews& news, int section) {
    Rows rows(flow, matter, news);
    bool first = true;
    eachGroup(matter.block, section, [&](const Group& group, Place place) {
        if (std::exchange(first, false))
            flow.heading(sectionName(sectionAt(matter.block, {section})->kind));
        rows.group(group, place);
    });
}

} // namespace bw

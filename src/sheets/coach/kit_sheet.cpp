// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/kit_list.hpp"
#include "sheets/coach/kit_room.hpp"
#include "sheets/coach_sheets.hpp"

#include <algorithm>
#include <utility>

namespace bw {

namespace {
constexpr double kListShare = 0.37;
constexpr double kLeastBeside = 44, kMostBeside = 26; // ems: width of a page, height of a section

class KitPage {
public:
    KitPage(SheetFlow& flow, const KitWords& words)
        : flow_(flow), words_(words), em_(flow.type().body) {}

    void section(const KitSection& section, const KitSection* before) {
        const auto moves = kitMoves(before ? before->kit : std::vector<KitLine>{}, section.kit);
        flow_.heading(words_.heading(section), words_.people(section));
        if (!beside(section, moves)) below(section, moves);
    }

private:
    // List and room side by side; false where they are too tall or the page too narrow.
    bool beside(const KitSection& section, const std::vector<KitMove>& moves) {
        if (flow_.width() < kLeastBeside * em_) return false;
        const double list = kListShare * flow_.width(), left = list + 1.5 * em_;
        auto room = kitRoom(flow_, words_, section, moves, flow_.width() - left);
        Band both;
        PagePen pen(flow_.ruler(), both.items);
        for (const Band& row : kitList(flow_, words_, section, moves, list)) {
            pen.put(row.items, {0, both.height});
            both.height += row.height;
        }
        if (!room || std::max(both.height, room->height) > kMostBeside * em_) return false;
        pen.put(room->items, {left, 0});
        both.height = std::max(both.height, room->height);
        flow_.put(std::move(both), 0);
        return true;
    }
    void below(const KitSection& section, const std::vector<KitMove>& moves) {
        for (Band& row : kitList(flow_, words_, section, moves, flow_.width()))
            flow_.put(std::move(row), 0, SheetFlow::Keep::WithNext);
        if (auto room = kitRoom(flow_, words_, section, moves, flow_.width()))
            flow_.put(std::move(*room), 0.7 * em_);
        else
            putStationLines(flow_, words_, section);
    }

    SheetFlow& flow_;
    const KitWords& words_;
    double em_;
};
} // namespace

Layout layoutKit(const SheetMatter& matter, const SheetOptions& options) {
    SheetWords words = sheetWords(SheetKind::Kit, matter.gym, matter.block, options);
    words.sentence = sheetSay(QT_TRANSLATE_NOOP(
        "bw::sheets", "What stands where before each section, for a full class; loads are those on "
                      "the members’ cards."));
    words.note = sheetSay(QT_TRANSLATE_NOOP(
        "bw::sheets", "For the coach. In the rooms, bold comes out for this section and plain "
                      "stands already. The rooms are sketches, not to scale."));
    const auto plan = kitPlan(matter.gym, matter.block, matter.ledger);
    const KitWords kit(matter, options.massUnit);
    return forStanding([&](SheetReader reader) {
        SheetFlow flow(SheetKind::Kit, matter.block, words, options, reader);
        KitPage page(flow, kit);
        const KitSection* before = nullptr;
        for (const KitSection& section : plan)
            if (!section.stations.empty()) page.section(section, std::exchange(before, &section));
        return flow.done();
    });
}

} // namespace bw

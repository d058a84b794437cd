// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/kit_rows.hpp"

#include "store/rows/reading.hpp"

namespace bw::store {

namespace {
void readStock(sqlite::Rows& rows, std::int64_t key, std::map<Mass, int>& stock) {
    for (; rows.at(key); rows.next()) stock[mass(*rows, 1)] = small(*rows, 2);
}
} // namespace

void putKit(sqlite::Database& db, const KitItem& item) {
    const auto key = db.number(
        "INSERT INTO kit_item (id, name, units, claim, bar_ug, extras) VALUES (?, ?, ?, ?, ?, ?) "
        "ON CONFLICT (id) DO UPDATE SET name = excluded.name, units = excluded.units, "
        "claim = excluded.claim, bar_ug = excluded.bar_ug, extras = excluded.extras RETURNING key",
        item.id.text(), item.name, item.units, wordOf(item.claim),
        item.bar ? std::optional(item.bar->micrograms()) : std::nullopt, item.extras.json);
    db.run("DELETE FROM kit_load WHERE kit = ?", key);
    for (const auto& [mass, count] : item.loads)
        db.run("INSERT INTO kit_load VALUES (?, ?, ?)", key, mass.micrograms(), count);
    db.run("DELETE FROM kit_plate WHERE kit = ?", key);
    for (const auto& [mass, count] : item.plates)
        db.run("INSERT INTO kit_plate VALUES (?, ?, ?)", key, mass.micrograms(), count);
}

void removeKit(sqlite::Database& db, const KitId& id) {
    db.run("DELETE FROM kit_item WHERE id = ?", id.text());
}

std::vector<KitItem> readKit(sqlite::Database& db) {
    std::vector<KitItem> kit;
    auto loads = db.query("SELECT kit, mass_ug, count FROM kit_load ORDER BY 1, 2");
    auto plates = db.query("SELECT kit, mass_ug, count FROM kit_plate ORDER BY 1, 2");
    for (auto r = db.query("SELECT key, id, name, units, claim, bar_ug, extras FROM kit_item "
                           "ORDER BY key");
         r.any(); r.next()) {
        KitItem item{id<KitId>(*r, 1),   r->string(2), small(*r, 3),  word<Claim>(*r, 4), {},
                     ifAny(*r, 5, mass), {},           {r->string(6)}};
        readStock(loads, r->integer(0), item.loads);
        readStock(plates, r->integer(0), item.plates);
        kit.push_back(std::move(item));
    }
    exhausted(loads);
    exhausted(plates);
    return kit;
}

} // namespace bw::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/kit_verbs.hpp"

#include "edit/gym_verbs.hpp"

namespace bw {

namespace {
KitItem ownedItem(const KitItem& item, int places) {
    KitItem now = item;
    if (now.units > 0) return now;
    now.units = usualUnits(item.id, places);
    if (!now.loads.empty() && now.claim == Claim::Group) now.units = piecesOf(now.loads);
    return now;
}

// From the name, unlike any there is.
KitId freshId(const Gym& gym, std::string_view name) {
    std::string base = idTextFrom(name);
    if (base.empty()) base = "kit";
    auto id = KitId::parse(base);
    for (int n = 2; !id || gym.findKit(*id); ++n)
        id = KitId::parse((id ? base : "kit") + "-" + std::to_string(n));
    return *id;
}
} // namespace

Did writeGymField(OpenGym& gym, GymField field, std::string_view typed) {
    auto now = withGymField(gym.gym().settings, field, typed);
    if (!now) return now.why();
    return setSettings(gym, std::move(now).value());
}

Did writeKitField(OpenGym& gym, const KitId& id, KitField field, std::string_view typed) {
    const KitItem* old = gym.gym().findKit(id);
    if (!old) return false;
    auto now = withKitField(gym.gym(), *old, field, typed);
    if (!now) return now.why();
    return putKit(gym, std::move(now).value());
}

Did ownKit(OpenGym& gym, const KitId& id, bool owned) {
    const KitItem* old = gym.gym().findKit(id);
    if (!old) return false;
    if (owned) return putKit(gym, ownedItem(*old, gym.gym().settings.places));
    KitItem none = *old;
    none.units = 0;
    return putKit(gym, std::move(none));
}

Did ownUsualKit(OpenGym& gym) {
    std::vector<Change> changes;
    for (const KitItem& item : gym.gym().kit)
        if (usuallyOwned(item.id))
            changes.emplace_back(PutKit{ownedItem(item, gym.gym().settings.places)});
    return gym.change({{"the usual kit", {}}, std::move(changes), {}, {}});
}

Result<KitId> addKit(OpenGym& gym, std::string_view name) {
    KitItem item{.id = freshId(gym.gym(), name),
                 .name = {},
                 .units = 1,
                 .claim = Claim::Group,
                 .loads = {},
                 .bar = {},
                 .plates = {},
                 .extras = {}};
    auto named = withKitField(gym.gym(), std::move(item), KitField::Name, name);
    if (!named) return named.why();
    const KitId id = named->id;
    const Did did = putKit(gym, std::move(named).value());
    if (!did) return did.why();
    return id;
}

} // namespace bw

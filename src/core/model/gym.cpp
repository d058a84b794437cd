// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/gym.hpp"

#include <algorithm>

namespace bw {

namespace {
template <class V, class I> auto findById(V& list, const I& id) {
    return std::find_if(list.begin(), list.end(), [&](const auto& x) { return x.id == id; });
}
template <class V, class T> void putById(V& list, T item) {
    const auto it = findById(list, item.id);
    if (it == list.end())
        list.push_back(std::move(item));
    else
        *it = std::move(item);
}
} // namespace

SectionWeights::SectionWeights()
    : of{Share::of(0.25).value(), Share::of(0.5).value(), Share::whole(), Share::of(0.5).value()} {}

const KitItem* Gym::findKit(const KitId& id) const {
    const auto it = findById(kit, id);
    return it == kit.end() ? nullptr : &*it;
}
const Member* Gym::findMember(const MemberId& id) const {
    const auto it = findById(members, id);
    return it == members.end() ? nullptr : &*it;
}
Gym::BlockPtr Gym::block(Month m) const {
    const auto it = blocks.find(m);
    return it == blocks.end() ? nullptr : it->second;
}
Gym::BlockPtr Gym::latest() const { return blocks.empty() ? nullptr : blocks.rbegin()->second; }

void Gym::put(Block block) {
    const Month month = block.month;
    blocks[month] = std::make_shared<const Block>(std::move(block));
}
void Gym::put(KitItem item) { putById(kit, std::move(item)); }
void Gym::put(Member member) { putById(members, std::move(member)); }

} // namespace bw

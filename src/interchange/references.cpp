// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/references.hpp"

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
Message twice(std::string_view id) {
    return {"“%1” is here a second time. Give it another id, or take one of the two out.",
            {std::string(id)}};
}
} // namespace

void References::have(Words& words, Node id) {
    if (id == kNone || !reader_.tree.is(id, Kind::Text)) return;
    if (!words.insert(reader_.tree.text(id)).second)
        reader_.error(id, twice(reader_.tree.text(id)));
}

void References::haveExercise(Node id) {
    if (id == kNone || !reader_.tree.is(id, Kind::Text)) return;
    if (!exercises_.try_emplace(reader_.tree.text(id)).second)
        reader_.error(id, twice(reader_.tree.text(id)));
}

void References::havePace(Node id, const Pace& pace) {
    const auto it = exercises_.find(reader_.tree.text(id));
    if (it != exercises_.end() && !it->second) it->second = pace; // of two, the first counts
}

void References::haveResult(Node at, const LiftResult& result) {
    std::string key = result.member.text() + ' ' + result.exercise.text() + ' ' +
                      std::to_string(result.date.days().time_since_epoch().count()) + ' ' +
                      std::to_string(result.set);
    if (results_.insert(std::move(key)).second) return;
    reader_.error(at, {"%1 already has set %2 of “%3” on %4. Number the sets with “set”.",
                       {result.member.text(), std::to_string(result.set), result.exercise.text(),
                        result.date.text()}});
}

template <class M>
void References::follow(const std::vector<Node>& refs, const M& known, std::string_view what) {
    for (const Node ref : refs) {
        const auto id = reader_.tree.text(ref);
        if (!known.contains(id))
            reader_.error(ref, {"There is no %1 “%2” in this bundle or in the gym beneath it.",
                                {std::string(what), std::string(id)}});
    }
}

void References::addFrom(const Gym& over) {
    for (const auto& e : over.shelf.entries()) exercises_.try_emplace(e->id.text(), e->pace);
    for (const auto& item : over.kit) kit_.insert(item.id.text());
    for (const auto& member : over.members) members_.insert(member.id.text());
}

void References::follow(const Parts& bundle, const Gym* over) {
    if (over) addFrom(*over);
    follow(exerciseRefs_, exercises_, "exercise");
    if (bundle.kit || (over && !over->kit.empty())) follow(kitRefs_, kit_, "kit");
    if (bundle.members || over) follow(memberRefs_, members_, "member");
    if (bundle.shelf || over) follow(liftedRefs_, exercises_, "exercise");
    checkTimes();
}

void References::checkTimes() {
    for (const auto& [dose, exercise, measure] : timed_) {
        const auto it = exercises_.find(reader_.tree.text(exercise));
        if (it == exercises_.end() || !it->second || it->second->times(measure)) continue;
        reader_.error(dose, {"“%1” can't be timed in %2: it has no pace for that. Give the dose in "
                             "%3, or give the exercise its pace.",
                             {std::string(it->first), std::string(wordOf(measure)),
                              std::string(wordOf(it->second->usual()))}});
    }
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// What a bundle names: which ids stand for something, and which are only referred to. Collected
// while the parts are read, followed when all are known, so the parts may come in any order.
#pragma once
#include "blockwright/model/block.hpp"
#include "blockwright/model/exercise.hpp"
#include "blockwright/model/gym.hpp"
#include "interchange/read_values.hpp"

#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace bw {

class References {
public:
    explicit References(Reader& reader) : reader_(reader) {}

    // A second one of the same id or month is a fault at the later place.
    void haveExercise(json::Node id);
    void haveKit(json::Node id) { have(kit_, id); }
    void haveMember(json::Node id) { have(members_, id); }
    void haveMonth(json::Node month) { have(months_, month); }
    void havePace(json::Node id, const Pace& pace);
    // One member, date, exercise and set.
    void haveResult(json::Node at, const LiftResult& result);

    void toExercise(json::Node id) { exerciseRefs_.push_back(id); }
    void toKit(json::Node id) { kitRefs_.push_back(id); }
    void toMember(json::Node id) { memberRefs_.push_back(id); }
    void toLiftedExercise(json::Node id) { liftedRefs_.push_back(id); } // of a result
    void toTimed(json::Node dose, json::Node exercise, Measure measure) {
        timed_.push_back({dose, exercise, measure});
    }

    // Which parts the bundle has; a part that neither it nor the gym beneath has is not followed,
    // except for the exercises of slots.
    struct Parts {
        bool kit = false, shelf = false, members = false;
    };
    void follow(const Parts& bundle, const Gym* over);

private:
    using Words = std::unordered_set<std::string_view>; // in the tree or in the gym beneath
    struct Timed {
        json::Node dose, exercise;
        Measure measure;
    };
    void have(Words& words, json::Node id);
    template <class M>
    void follow(const std::vector<json::Node>& refs, const M& known, std::string_view what);
    void checkTimes();
    void addFrom(const Gym& over);

    Reader& reader_;
    std::unordered_map<std::string_view, std::optional<Pace>> exercises_; // none: faulty entry
    Words kit_, members_, months_;
    std::unordered_set<std::string> results_;
    std::vector<json::Node> exerciseRefs_, kitRefs_, memberRefs_, liftedRefs_;
    std::vector<Timed> timed_;
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// Playing a class takes no memory once its pieces are made.
#include "core/floor/class_pass.hpp"
#include "core/floor/draws.hpp"
#include "core/floor/floor_random.hpp"
#include "core/floor/load_plan.hpp"
#include "support/catch.hpp"

#include <cstdlib>
#include <memory>
#include <new>

namespace {
thread_local long g_taken = 0; // pieces of memory that this thread has asked for
}

void* operator new(std::size_t size) {
    ++g_taken;
    if (void* p = std::malloc(size == 0 ? 1 : size)) return p;
    throw std::bad_alloc();
}
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
    ++g_taken;
    return std::malloc(size == 0 ? 1 : size);
}
void operator delete(void* p) noexcept { std::free(p); }
void operator delete(void* p, std::size_t) noexcept { std::free(p); }

namespace bw::test {

TEST_CASE("drawing and playing classes asks for no memory") {
    const long before = g_taken;
    const auto counted = std::make_unique<int>(1);
    REQUIRE(g_taken == before + 1);
    std::uint64_t seed = 90'000;
    for (int i = 0; i < 40; ++i) {
        RandomFloor f = servedFloor(seed);
        FloorOptions o;
        o.loadAware = i % 2 == 1;
        const FloorPlan plan = planClass(f.t.gym, f.t.draft, o, f.members);
        Draws draws(plan, o);
        FloorSteps steps(plan, f.members);
        ClassRecord record(plan, f.members);
        ClassRun run(plan, startsOf(plan, o.start, f.members), f.members);
        const long made = g_taken;
        for (int r = 0; r < 5; ++r) {
            draws.fill(r, f.members, steps);
            run.play(steps, record);
        }
        const long playing = g_taken - made;
        INFO("seed " << seed - 1);
        CHECK(playing == 0);
    }
}

} // namespace bw::test

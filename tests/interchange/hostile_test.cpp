// SPDX-License-Identifier: GPL-3.0-or-later
// Files that were cut, damaged or made to harm. None may crash, hang or be half taken over.
#include "bundle_support.hpp"
#include "interchange/utf8.hpp"
#include "support/catch.hpp"

#include <random>

using namespace bw;
using namespace bw::test;

namespace {
const std::string kHead = R"({"format": "blockwright-bundle", "version": 1, )";

BundleFault onlyFault(std::string_view json) {
    const auto reading = readBundle(json);
    INFO(listed(reading.errors));
    REQUIRE(reading.errors.size() == 1);
    CHECK_FALSE(reading.bundle);
    return reading.errors[0];
}

bool isThere(const Json& bundle, const std::string& pointer) {
    return pointer.empty() || bundle.contains(Json::json_pointer(pointer));
}

// One to four bytes changed, put in, taken out or moved; or the end lost.
std::string damaged(std::string text, std::mt19937& draw) {
    static const std::vector<std::string> pieces{"{",
                                                 "}",
                                                 "[",
                                                 "]",
                                                 ",",
                                                 ":",
                                                 "\"",
                                                 "\\",
                                                 "null",
                                                 "-",
                                                 "1e999",
                                                 "\xFF",
                                                 "\xED\xA0\x80",
                                                 "\\ud800",
                                                 "0",
                                                 "e",
                                                 ".",
                                                 std::string(1, '\0')};
    for (auto n = 1 + draw() % 4; n > 0; --n) {
        const auto at = draw() % text.size();
        switch (draw() % 5) {
        case 0: text[at] = static_cast<char>(draw() % 256); break;
        case 1: text.insert(at, pieces[draw() % pieces.size()]); break;
        case 2: text.erase(at, 1 + draw() % 30); break;
        case 3: text.insert(at, text.substr(draw() % text.size(), draw() % 60)); break;
        default:
            if (draw() % 20 == 0) text.resize(at + 1);
            break;
        }
    }
    return text;
}
} // namespace

TEST_CASE("an empty file, or one of blanks, is said to be empty") {
    for (const auto* text : {"", " \n\t\r ", "\xEF\xBB\xBF"})
        CHECK(onlyFault(text).text.english() == "The bundle is empty (line 1, column 1).");
}

TEST_CASE("a byte order mark is left out with a note") {
    const auto reading = readBundle("\xEF\xBB\xBF" + docExample());
    REQUIRE(reading.bundle);
    CHECK(pointersOf(reading.notes) == std::vector<std::string>{""});
}

TEST_CASE("what is no JSON is told with line and column") {
    const auto said = [](std::string_view json) { return onlyFault(json).text.args; };
    CHECK(said("{\n  \"format\": \"x\",\n  \"a\" 5}") == std::vector<std::string>{"3", "7", "5"});
    CHECK(said("{\"é\": tru}")[1] == "10"); // in characters
    CHECK(onlyFault(kHead + "\"gym\": {\"name\": NaN}}").pointer == "/gym/name");
    CHECK(onlyFault(kHead + "\"shelf\": [{}, Infinity]}").pointer == "/shelf/1");
    CHECK(onlyFault("{} {}").pointer.empty());
    CHECK(onlyFault("{}\n,").text.args[0] == "2");
    CHECK(onlyFault("/* no */ {}").text.args[0] == "1");
    CHECK(onlyFault(std::string("{}\n\0{}", 6)).text.args[0] == "2");
}

TEST_CASE("a file that was cut says so") {
    const auto& whole = docExample();
    for (std::size_t n = whole.size() - 2; n > 0; n -= std::min<std::size_t>(n, 97)) {
        const auto fault = onlyFault(std::string_view(whole).substr(0, n));
        CHECK(fault.text.args.size() >= 2);
    }
    CHECK(onlyFault("{\"format\": ").text.english() ==
          "The text ends in line 1, column 12, before it is complete: part of it may be lost.");
}

TEST_CASE("bytes that are not UTF-8 are refused where they are") {
    for (const auto* bad :
         {"\xFF", "\xC0\xAF", "\xE2\x82", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\x80"}) {
        const auto fault = onlyFault(kHead + "\n\"gym\": {\"name\": \"" + bad + "\"}}");
        CHECK(fault.text.args == std::vector<std::string>{"2", "18"});
    }
    CHECK(codePoints("a\u00e9\u20ac\U0001F3CB") == 4);
    CHECK_FALSE(firstNotUtf8("a\u00e9\u20ac\U0001F3CB\U0010FFFF\uD7FF\uE000"));
}

TEST_CASE("half a surrogate pair is refused, a whole one is a character") {
    CHECK(onlyFault(kHead + R"("gym": {"name": "\ud800"}})").pointer == "/gym/name");
    CHECK(onlyFault(kHead + R"("gym": {"name": "\udc00\ud800"}})").pointer == "/gym/name");
    CHECK(readGood(kHead + R"("gym": {"name": "\ud83c\udfcb"}})").settings->name == "\U0001F3CB");
}

TEST_CASE("a number too large for any use names its place") {
    const auto fault = onlyFault(kHead + "\"gym\": {\"class\": {\"minutes\": 1e999}}}");
    CHECK(fault.pointer == "/gym/class/minutes");
    CHECK(onlyFault(kHead + "\"gym\": {\"class\": {\"minutes\": 99999999999999999999999}}}")
              .pointer == "/gym/class/minutes");
    CHECK(onlyFault(kHead + "\"gym\": {\"limits\": {\"x\": -1e300}}}").pointer == "/gym/limits/x");
    CHECK(
        onlyFault(kHead + "\"gym\": {\"class\": {\"minutes\": " + std::string(400'000, '9') + "}}}")
            .pointer == "/gym/class/minutes");
}

TEST_CASE("nesting is followed 64 deep and no deeper") {
    const auto nested = [](int deep) {
        return kHead + "\"x\": " + std::string(static_cast<std::size_t>(deep), '[') +
               std::string(static_cast<std::size_t>(deep), ']') + "}";
    };
    const auto b = readGood(nested(63)); // and the bundle itself
    CHECK(same(readGood(writeBundle(b)), b));
    CHECK(onlyFault(nested(64)).pointer.starts_with("/x/0/0"));
    CHECK(onlyFault(std::string(5'000'000, '[')).pointer.starts_with("/0/0"));
    std::string objects;
    for (int i = 0; i < 1'000'000; ++i) objects += "{\"\":";
    CHECK(onlyFault(objects).pointer.starts_with("///"));
}

TEST_CASE("more than 32 MiB are not looked at") {
    const std::string large(kMostBundleBytes + 1, ' ');
    CHECK(onlyFault(large).text.args == std::vector<std::string>{"32"});
}

TEST_CASE("an object of very many keys and a list of very many faults are read in good time") {
    std::string text = kHead;
    for (int i = 0; i < 50'000; ++i) text += "\"k" + std::to_string(i) + "\": 0, ";
    const auto reading = readBundle(text + "\"results\": []}");
    REQUIRE(reading.bundle);
    CHECK(reading.notes.size() == kMostFaults + 1);
    CHECK(same(readGood(writeBundle(*reading.bundle)), *reading.bundle));

    std::string faults = kHead + "\"shelf\": [0";
    for (int i = 0; i < 100'000; ++i) faults += ",0";
    const auto refused = readBundle(faults + "]}");
    CHECK(refused.errors.size() == kMostFaults + 1);
    CHECK(refused.errors[1].pointer == "/shelf/1");
}

TEST_CASE("sentences hold only what can be shown") {
    const auto fault =
        onlyFault(kHead + "\"gym\": {\"paper\": \"\\u001b[2J" + std::string(195, 'p') + "é\"}}");
    const auto sentence = fault.text.english();
    CHECK_FALSE(firstNotUtf8(sentence));
    CHECK(sentence.find('\x1B') == sentence.npos);
}

TEST_CASE("a bundle damaged at random is read whole or refused, in thousands of ways") {
    std::mt19937 draw(7);
    int whole = 0;
    for (int i = 0; i < 4000; ++i) {
        const auto text = damaged(docExample(), draw);
        const auto reading = readBundle(text);
        INFO("draw " << i << "\n" << text);
        REQUIRE(reading.bundle.has_value() == reading.errors.empty());
        for (const auto& fault : reading.errors) REQUIRE_FALSE(firstNotUtf8(fault.text.english()));
        if (!reading.bundle) continue;
        ++whole;
        REQUIRE(same(readGood(writeBundle(*reading.bundle)), *reading.bundle));
    }
    CHECK(whole > 100);
}

TEST_CASE("whatever stands where another thing should, each fault names a place in the file") {
    std::mt19937 draw(11);
    const auto flat = example().flatten();
    const std::vector<Json> odd{nullptr,
                                false,
                                7,
                                -0.5,
                                1e12,
                                "",
                                "two words",
                                "\u0000",
                                Json::array(),
                                Json::object(),
                                Json::array({Json::object()}),
                                Json{{"id", "x"}}};
    int refused = 0;
    for (int i = 0; i < 1500; ++i) {
        Json bundle = example();
        for (auto n = 1 + draw() % 3; n > 0; --n) {
            Json::json_pointer at(
                std::next(flat.begin(), static_cast<int>(draw() % flat.size())).key());
            for (auto up = draw() % 4; up > 0 && !at.parent_pointer().empty(); --up)
                at = at.parent_pointer();
            if (bundle.contains(at)) bundle[at] = odd[draw() % odd.size()];
        }
        const auto reading = readBundle(bundle.dump());
        REQUIRE(reading.bundle.has_value() == reading.errors.empty());
        refused += reading.bundle ? 0 : 1;
        for (const auto& fault : reading.errors) {
            INFO(fault.pointer << ": " << fault.text.english() << "\n" << bundle.dump(1));
            REQUIRE(isThere(bundle, fault.pointer));
        }
    }
    CHECK(refused > 1000);
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/csv_text.hpp"
#include "interchange/results_csv.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <random>

using namespace bw;
using namespace bw::test;

namespace {
using Rows = std::vector<std::vector<std::string>>;

Rows rowsOf(std::string_view text, char separator = ',') {
    Rows out;
    const auto records = parseCsv(text, separator);
    if (records)
        for (const CsvRecord& r : *records) out.push_back(r.fields);
    return out;
}

std::string written(const std::vector<std::string>& fields) {
    CsvWriter csv;
    for (const auto& f : fields) csv.text(f);
    csv.endRecord();
    return csv.take();
}

MemberId memberId(std::string_view id) { return MemberId::parse(id).value(); }
Date day(std::string_view text) { return Date::parse(text).value(); }

struct House {
    Gym gym;
    House() {
        gym.put(Member{memberId("m-001"), "Ann Lee", {}, true, {}});
        gym.put(Member{memberId("m-002"), "Bo", {}, true, {}});
        gym.put(Member{memberId("m-003"), "Bo", {}, true, {}});
        Exercise e = exercise("front-squat", Pattern::Squat);
        e.name = "Front squat";
        gym.shelf.put(e);
        gym.shelf.put(exercise("chin-up", Pattern::VerticalPull));
    }
    [[nodiscard]] ResultsReading read(std::string_view text) const {
        return readResultsCsv(text, gym);
    }
};

LiftResult squat(int set, int reps, std::optional<double> rir, std::optional<double> kg) {
    LiftResult r{memberId("m-001"), day("2026-09-03"), ex("front-squat"), set, reps, {}, {}, {}};
    if (rir) r.rir = Rir::of(*rir).value();
    if (kg) r.load = Mass::fromKg(*kg).value();
    return r;
}
} // namespace

// RFC 4180, section 2: quotes around fields with comma, quote or line break; a quote inside twice;
// CRLF at the end of a record.
TEST_CASE("fields are quoted as RFC 4180 asks, and only where it asks") {
    CHECK(written({"a", "b c", ""}) == "a,b c,\r\n");
    CHECK(written({"a,b", "a\"b,c"}) == "\"a,b\",\"a\"\"b,c\"\r\n");
    CHECK(written({"two\r\nlines"}) == "\"two\r\nlines\"\r\n");
    CHECK(rowsOf("a,\"b,c\",\"d\"\"e\"\r\n,x\n") == Rows{{"a", "b,c", "d\"e"}, {"", "x"}});
    CHECK(rowsOf("a;b\rc;d", ';') == Rows{{"a", "b"}, {"c", "d"}});
    CHECK(rowsOf("\xEF\xBB\xBF"
                 "a,b\n\n\"x\ny\",z") == Rows{{"a", "b"}, {"x\ny", "z"}});
    CHECK(rowsOf("").empty());
    CHECK(rowsOf("a,") == Rows{{"a", ""}});
}

TEST_CASE("a quote out of place is refused with its line") {
    for (const char* text : {"a,b\nc\"d,e", "a,b\n\"c\"d,e", "a,b\n\"never closed"}) {
        const auto refused = parseCsv(text, ',');
        REQUIRE(!refused.ok());
        CHECK(refused.why().english() == "Line 2: a quote stands where none may stand. Within "
                                         "quotes write it twice.");
    }
}

// OWASP, CSV injection; ASVS 5, 1.2.10; CVE-2021-41270.
TEST_CASE("text that a spreadsheet would run is made harmless, and comes back as it was") {
    CHECK(written({"=1+1", "+1", "-press", "@home"}) == "'=1+1,'+1,'-press,'@home\r\n");
    CHECK(written({"'quoted", "a=1", "\tx"}) == "''quoted,a=1,'\tx\r\n");
    CHECK(written({"\r\n=1"}) == "\"'\r\n=1\"\r\n");
    for (const std::string& text :
         {std::string("=1+1"), std::string("-press"), std::string("@home"), std::string("'quoted"),
          std::string("''"), std::string("'"), std::string("'=x"), std::string("o'clock"),
          std::string("\0x", 2), std::string("+"), std::string("a,\"b\"\n=c")}) {
        const auto back = parseCsv(written({text}), ',');
        CHECK(withoutGuard(back->at(0).fields.at(0)) == text);
    }
    CHECK(withoutGuard("'quoted") == "'quoted"); // from elsewhere, unguarded
}

TEST_CASE("whatever is written is read again, field by field") {
    std::mt19937 engine(41);
    const std::string letters = "a,\";=+-@'\r\n\t x";
    for (int round = 0; round < 500; ++round) {
        std::vector<std::string> fields;
        for (int f = 0; f < 3; ++f) {
            std::string text = "k";
            if (engine() % 2 == 0) text.clear();
            for (unsigned n = engine() % 6; n > 0; --n) text += letters[engine() % letters.size()];
            fields.push_back(text);
        }
        fields.emplace_back("end");
        const auto back = parseCsv(written(fields), ',');
        REQUIRE(back.ok());
        REQUIRE(back->size() == 1);
        for (std::size_t i = 0; i < fields.size(); ++i)
            CHECK(withoutGuard(back->front().fields.at(i)) == fields[i]);
    }
}

TEST_CASE("columns are known by the words of the first line, in any order and case") {
    const House house;
    const auto reading = house.read("Reps,Weight (kg),Mood,MEMBER,Date,Exercise,Set no,RIR\r\n"
                                    "5,62.5,good,m-001,2026-09-03,front-squat,2,1.5\r\n");
    CHECK(reading.faults.empty());
    CHECK(reading.results == std::vector{squat(2, 5, 1.5, 62.5)});
    CHECK(reading.leftOut == std::vector<std::string>{"Mood"});
}

TEST_CASE("members and exercises go by id or name, effort by reserve or RPE, empty is unknown") {
    const House house;
    const auto reading = house.read("name;exercise;date;reps;rpe;load\n"
                                    "ann lee;FRONT SQUAT;3.9.2026;5;8,5;62,5\n"
                                    "Ann Lee;front-squat;2026-09-03;6;;\n"
                                    ";;;;;\n");
    CHECK(reading.faults.empty());
    CHECK(reading.rows == 2);
    CHECK(reading.results == std::vector{squat(1, 5, 1.5, 62.5), squat(2, 6, {}, {})});
}

TEST_CASE("a load without a unit is in the gym's, pounds are exact") {
    House house;
    const auto load = [&](const char* text) {
        const auto reading = house.read(text);
        REQUIRE(reading.results.size() == 1);
        return reading.results[0].load->micrograms();
    };
    house.gym.settings.massUnit = MassUnit::Lb;
    const std::int64_t pounds = 135 * Mass::kMicrogramsPerLb;
    CHECK(load("member,exercise,date,reps,load\nm-001,chin-up,2026-09-03,5,135\n") == pounds);
    house.gym.settings.massUnit = MassUnit::Kg;
    CHECK(load("member,exercise,date,reps,lb\nm-001,chin-up,2026-09-03,5,135\n") == pounds);
}

TEST_CASE("every fault is named by line and column, and the good rows are still there") {
    const House house;
    const auto reading = house.read("member,date,exercise,set,reps,rir,load_kg\n"
                                    "m-001,2026-09-03,front-squat,1,5,2,60\n"
                                    "m-009,2026-09-31,front-squat,1,five,2,60\n"
                                    "Bo,2026-09-03,bench,1,5,11,-5\n"
                                    ",,front-squat,0,2000,,\n");
    CHECK(reading.rows == 4);
    CHECK(reading.faultyRows == 3);
    CHECK(reading.results.size() == 1);
    std::vector<std::string> said;
    for (const CsvFault& f : reading.faults)
        said.push_back(std::to_string(f.line) + " " + f.column + ": " + f.text.english());
    REQUIRE(said.size() == 11);
    CHECK(said[0] == "3 member: There is no member “m-009”.");
    CHECK(said[1] == "3 date: “2026-09-31” is no date: write it as 2026-09-03 or 3.9.2026.");
    CHECK(said[2] == "3 reps: “five” is no whole number from 0 to 1000.");
    CHECK(said[3] == "4 member: There are 2 by the name of “Bo”: write the id.");
    CHECK(said[4] == "4 exercise: There is no exercise “bench” on the Shelf.");
    CHECK(said[7] == "5 member: This is empty.");
}

TEST_CASE("a set that stands twice is left out when it says the same, a fault when it does not") {
    const House house;
    const auto reading = house.read("member,date,exercise,set,reps\n"
                                    "m-001,2026-09-03,chin-up,1,5\n"
                                    "m-001,2026-09-03,chin-up,1,5\n"
                                    "m-001,2026-09-03,chin-up,1,6\n"
                                    "m-001,2026-09-03,chin-up,,6\n");
    CHECK(reading.results.size() == 2);
    CHECK(reading.results[1].set == 2);
    CHECK(reading.twice == 1);
    REQUIRE(reading.faults.size() == 1);
    CHECK(reading.faults[0].text.english() == "Line 2 says the same set with other figures.");
}

TEST_CASE("what is no table of results is refused in one sentence") {
    const House house;
    const auto why = [&](std::string_view text) {
        const auto reading = house.read(text);
        REQUIRE(reading.faults.size() == 1);
        CHECK(reading.results.empty());
        return reading.faults[0].text.english();
    };
    CHECK(why("") == "The table is empty.");
    CHECK(why("member,load\nm-001,5\n") ==
          "The first line must name the columns; missing: date, exercise, reps.");
    CHECK(why("member,date\n\xFF\xFE") ==
          "This is not UTF-8 text: save the table as CSV in UTF-8.");
    CHECK(house.read("member,date\n\xFF\xFE").faults[0].line == 2);
}

TEST_CASE("results beside those that are stored are fresh, changed or the same") {
    LiftResult stored = squat(1, 5, 2.0, 60.0), other = squat(2, 5, 2.0, 60.0);
    stored.extras = {R"({"mood":"good"})"};
    auto change = compare({squat(1, 5, 2.0, 60.0), squat(2, 5, 1.0, 60.0), squat(3, 5, 2.0, 60.0)},
                          std::vector{other, stored});
    CHECK(change.same == 1);
    CHECK(change.changed == std::vector{squat(2, 5, 1.0, 60.0)});
    CHECK(change.fresh == std::vector{squat(3, 5, 2.0, 60.0)});
    change = compare({squat(1, 6, 2.0, 60.0)}, std::vector{stored});
    CHECK(change.changed.at(0).extras == stored.extras);
}

TEST_CASE("results written are read again, every grain of them") {
    House house;
    Member odd{memberId("m-004"), "=HYPERLINK(\"x\"), \"Jo\"\n'", {}, true, {}};
    house.gym.put(odd);
    std::vector<LiftResult> results{squat(1, 5, 2.0, 62.5), squat(2, 0, 0.5, {}),
                                    squat(3, 8, {}, 20.0)};
    results[0].member = odd.id;
    results[2].load = Mass::fromMicrograms(61'234'969'951).value();
    ResultsWriter writer(house.gym);
    for (const auto& r : results) writer.add(r);
    const std::string text = writer.take();
    CHECK(text.find("m-004,\"'=HYPERLINK(") != std::string::npos);
    CHECK(text.find(",61.234969951\r\n") != std::string::npos);
    const auto reading = house.read(text);
    CHECK(reading.faults.empty());
    CHECK(reading.leftOut.empty());
    CHECK(reading.results == results);
}

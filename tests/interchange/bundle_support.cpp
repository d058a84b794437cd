// SPDX-License-Identifier: GPL-3.0-or-later
#include "bundle_support.hpp"

#include "support/fixtures.hpp"

#include <algorithm>
#include <cstdlib>
#include <sstream>
#include <stdexcept>
#include <sys/wait.h>

namespace bw::test {

namespace fs = std::filesystem;

namespace {
const fs::path kProject = BW_SOURCE_DIR;

std::string exampleOfTheDocs() {
    const auto page = readText(kProject / "docs/bundle.md");
    const std::string open = "```json\n";
    const auto start = page.find(open);
    const auto end = page.find("\n```", start);
    if (start == page.npos || end == page.npos) throw std::runtime_error("no example in bundle.md");
    return page.substr(start + open.size(), end - start - open.size() + 1);
}
} // namespace

const std::string& docExample() {
    static const std::string text = exampleOfTheDocs();
    return text;
}
Json example() { return Json::parse(docExample()); }

std::vector<fs::path> projectBundles() {
    std::vector<fs::path> out;
    for (const auto* folder : {"resources/shelf", "data/demo"})
        for (const auto& entry : fs::directory_iterator(kProject / folder))
            if (entry.path().string().ends_with(".bundle.json")) out.push_back(entry.path());
    std::sort(out.begin(), out.end());
    return out;
}

Json withChange(const Json& change) {
    Json bundle = example();
    const Json::json_pointer at(change.at("at").get<std::string>());
    if (change.contains("put")) {
        bundle[at] = change["put"];
    } else if (change.contains("repeat")) {
        std::string text;
        for (int i = 0; i < change["repeat"][1].get<int>(); ++i)
            text += change["repeat"][0].get<std::string>();
        bundle[at] = text;
    } else {
        bundle[at.parent_pointer()].erase(at.back());
    }
    return bundle;
}
Json faultTable() { return Json::parse(readText(kProject / "tests/interchange/faults.json")); }

std::vector<std::string> pointersOf(const std::vector<BundleFault>& faults) {
    std::vector<std::string> out;
    for (const auto& fault : faults) out.push_back(fault.pointer);
    return out;
}
std::vector<std::string> errorsIn(std::string_view json) {
    return pointersOf(readBundle(json).errors);
}

std::string listed(const std::vector<BundleFault>& faults) {
    std::string out;
    for (const auto& fault : faults) out += fault.pointer + ": " + fault.text.english() + "\n";
    return out;
}

Bundle readGood(std::string_view json, const Gym* over) {
    auto reading = readBundle(json, over);
    if (!reading.bundle) throw std::runtime_error(listed(reading.errors));
    return std::move(*reading.bundle);
}

const Gym& shelfGym() {
    static const Gym gym = [] {
        Gym g;
        layOver(g, shippedShelf());
        return g;
    }();
    return gym;
}

bool same(const Bundle& a, const Bundle& b) {
    return a.settings == b.settings && a.hasKit == b.hasKit && a.hasShelf == b.hasShelf &&
           a.kit == b.kit && a.shelf == b.shelf && a.blocks == b.blocks && a.members == b.members &&
           a.results == b.results && a.extras == b.extras && a.gymExtras == b.gymExtras;
}

std::optional<std::vector<std::string>> schemaVerdicts(const std::vector<std::string>& bundles) {
    const TempFolder folder;
    std::string lines;
    for (const auto& bundle : bundles) lines += Json::parse(bundle).dump() + "\n";
    writeText(folder / "list", lines);
    const std::string python = fs::exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3";
    const auto script = (kProject / "tests/interchange/schema_check.py").string();
    const auto schema = (kProject / "docs/bundle.schema.json").string();
    const auto out = folder / "verdicts";
    const std::string command = python + " \"" + script + "\" \"" + schema + "\" \"" +
                                (folder / "list").string() + "\" > \"" + out.string() + "\"";
    const int status = std::system(command.c_str());
    if (status != -1 && (WEXITSTATUS(status) == 77 || WEXITSTATUS(status) == 127))
        return std::nullopt;
    if (status != 0) throw std::runtime_error("schema_check.py failed");
    std::vector<std::string> verdicts;
    std::istringstream in(readText(out));
    for (std::string line; std::getline(in, line);) verdicts.push_back(Json::parse(line));
    return verdicts;
}

} // namespace bw::test
